import type { Suiting, SuitingRatio } from '@tailshaft/drivetrain';
import { formatValue } from '@tailshaft/mechanics';
import { bullets, paragraphs, plain } from './markdown.js';

/** What would suit a part, or what has to be stated before that can be worked out. */
export function suitsHover(found: Suiting | undefined): string | undefined {
  if (!found) return undefined;
  const { routes, missing, refusal, ratio } = found as SuitingRatio;
  const lines = routes.map(one => plain(one.title));
  if (ratio) lines.unshift(`the propeller absorbs the rated power at a ratio of ${formatValue(ratio, 3)}`);
  if (lines.length > 0)
    return paragraphs('What would suit, by the criteria of this vessel:', bullets(lines), ASKED);
  if (missing.length > 0)
    return `What would suit can be worked out once these are stated: ${missing.map(one => plain(one.what)).join('; ')}.`;
  return refusal && `What would suit cannot be worked out: ${plain(refusal)}`;
}

const ASKED = 'Each is offered among the code actions here, with what it makes worse.';
