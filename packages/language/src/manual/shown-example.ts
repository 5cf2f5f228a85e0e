import type { Examples } from '@tailshaft/drivetrain';
import { BASE_SPECS } from '@tailshaft/drivetrain/examples';
import { formatText } from '../format/format-text.js';
import { type ChangedLine, distance, specChange } from './spec-change.js';

/** An example as a page shows it: what it is like, and the lines in which it differs. */
export interface ShownExample {
  readonly title: 'Holds' | 'Fails' | 'Cannot tell';
  /** The spec that it is told by, with its name where it is a base spec; nothing where the lines are the whole spec. */
  readonly like?: { readonly words: string; readonly base?: string };
  readonly lines: readonly ChangedLine[];
  /** Why there is no spec. */
  readonly sentence?: string;
}

interface Like {
  readonly words: string;
  readonly base?: string;
  readonly text: string;
}

/** The three examples of a rule, each by what changes: the passing one against a base spec, the others against that. */
export function shownExamples({ failing, passing, cannotTell }: Examples): readonly ShownExample[] {
  const holds = formatText(passing);
  const passes: Like = { words: 'the example that holds', text: holds };
  return [
    shown('Holds', holds, baseSpecs()),
    shown('Fails', formatText(failing), [passes, ...baseSpecs()]),
    cannotTell.includes('{')
      ? shown('Cannot tell', formatText(cannotTell), [passes, ...baseSpecs()])
      : { title: 'Cannot tell', lines: [], sentence: cannotTell },
  ];
}

let formatted: readonly Like[] | undefined;

/** The base specs as the formatter lays them out, made once. */
function baseSpecs(): readonly Like[] {
  formatted ??= Object.entries(BASE_SPECS).map(([base, spec]) => ({
    words: `base spec "${base}"`,
    base,
    text: formatText(spec),
  }));
  return formatted;
}

/** A reader has the example above at hand and has to look a base spec up: worth a few lines more. */
const LOOKING_UP = 3;

/** Against the nearest of the specs that the reader knows; whole where that takes fewer lines. */
function shown(title: ShownExample['title'], text: string, likes: readonly Like[]): ShownExample {
  const cost = (one: Like) => distance(one.text, text) + (one.base ? LOOKING_UP : 0);
  const nearest = likes.reduce((best, one) => (cost(one) < cost(best) ? one : best));
  const lines = withoutVessel(specChange(nearest.text, text));
  const whole = text.trim().split('\n');
  if (lines.length >= whole.length) return { title, lines: whole.map(line => ({ sign: ' ', text: line })) };
  const { words, base } = nearest;
  return { title, like: { words, ...(base ? { base } : {}) }, lines };
}

/** A change inside a vessel without the line that opens it, where one further in says where it stands. */
function withoutVessel(lines: readonly ChangedLine[]): readonly ChangedLine[] {
  const [first, second] = lines;
  const nested = first?.sign === ' ' && first.text.startsWith('vessel') && second?.sign === ' ';
  const inOne = lines.slice(1).every(one => one.text === '' || one.text.startsWith(' '));
  return nested && inOne ? lines.slice(1) : lines;
}
