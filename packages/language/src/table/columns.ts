/** Between the blocks of a path and its property. */
const BETWEEN = ' / ';

/** A column of a table of parts: the way to a property, and the unit that all its cells are in. */
export interface Column {
  /** `ratio 2.04:1 / clutch A / output`, `full-load power #2`. */
  readonly path: string;
  readonly unit?: string;
}

/** `mass [kg]`. */
export function headerOf({ path, unit }: Column): string {
  return unit === undefined ? path : `${path} [${unit}]`;
}

export function columnOf(header: string): Column {
  const said = /^([^[]*)\[([^[\]]*)\]\s*$/.exec(header);
  const path = (said?.[1] ?? header)
    .trim()
    .split(/\s+\/\s+/)
    .join(BETWEEN);
  return said ? { path, unit: said[2]!.trim() } : { path };
}

/** The blocks of a path, outermost first, and the words of its property. */
export function stepsOf(path: string): { readonly blocks: readonly string[]; readonly words: string } {
  const steps = path.split(BETWEEN);
  return { blocks: steps.slice(0, -1), words: withoutNumber(steps.at(-1)!) };
}

/** A step without which of several of its kind it is: `full-load power` of `full-load power #2`. */
export function withoutNumber(step: string): string {
  return step.replace(/ #\d+$/, '');
}

export function joined(blocks: readonly string[], words: string): string {
  return [...blocks, words].join(BETWEEN);
}
