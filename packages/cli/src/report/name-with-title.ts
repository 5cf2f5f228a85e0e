import type { Io } from '../terminal/io.js';
import { visible } from '../terminal/visible.js';

/** The name, and the title without the name that it usually begins with. */
export function nameWithTitle(io: Io, name: string, title: string | undefined): string {
  const rest = title?.startsWith(name) ? title.slice(name.length).replace(/^\W+/, '') : title;
  return rest ? `${io.paint.strong(name)}  ${io.paint.quiet(visible(rest))}` : io.paint.strong(name);
}
