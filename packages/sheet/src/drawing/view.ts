import type { Direction, LineAnalysis, OperatingPoint, ShaftLine } from '@tailshaft/drivetrain';
import type { Origin, Turn } from '@tailshaft/mechanics';
import { type Child, element, joined, type Markup } from '../document/markup.js';
import type { Sheet } from '../sheet.js';

/** What a picture of the lines shows of them. */
export interface LinesView {
  readonly direction: Direction;
  /** Name of the operating point whose speeds stand beside the parts. */
  readonly point?: string;
  /** Only the line of this path. */
  readonly line?: string;
}

/** Lever ahead, nothing else: what is printed. */
export const AHEAD: LinesView = { direction: 'ahead' };

export function shownLines(lines: readonly ShaftLine[], { line }: LinesView): readonly ShaftLine[] {
  const chosen = lines.filter(one => one.path === line);
  return chosen.length > 0 ? chosen : lines;
}

/** The senses along a line in the direction of the view. */
export function stepsOf({ rotation }: LineAnalysis, { direction }: LinesView) {
  return direction === 'astern' ? rotation.asternSteps : rotation.steps;
}

/** The way the propeller shaft turns in the direction of the view. */
export function senseOf({ rotation }: LineAnalysis, { direction }: LinesView) {
  return direction === 'astern' ? rotation.astern : rotation.ahead;
}

/** The tops of a pair seen from aft: the other way round astern. */
export function turningOf({ rotation }: LineAnalysis, view: LinesView, turn: Turn | undefined) {
  if (view.direction === 'ahead') return rotation.turning;
  const ahead = rotation.ahead;
  if (!rotation.turning || !turn || ahead === undefined) return undefined;
  const reversed = rotation.astern !== ahead;
  if (!reversed) return rotation.turning;
  return rotation.turning === 'outward' ? 'inward' : 'outward';
}

/** The operating point of the view on one line; directions keep their own points. */
export function pointOf(analysis: LineAnalysis, { point, direction }: LinesView): OperatingPoint | undefined {
  if (point === undefined) return undefined;
  const bare = (name: string) => name.replace(/ (ahead|astern)$/, '');
  return analysis.operatingPoints.find(one => bare(one.name) === bare(point) && one.direction === direction);
}

/**
 * A part of a picture that a host can follow: a group that takes the focus and says what it is. Where the host follows
 * nothing, the drawing stays as it is.
 */
export function followed(
  sheet: Sheet,
  part: { readonly path: string; readonly origin: Origin; readonly entry?: { readonly origin: Origin } },
  /** What it is called where what is drawn does not say it. */
  words: string | undefined,
  ...children: readonly Child[]
): Markup {
  const key = sheet.input.placeKey?.(part.origin);
  if (key === undefined) return joined(...children);
  return element(
    'g',
    {
      class: 'followed',
      'data-part': part.path,
      'data-place': key,
      'data-entry': part.entry && sheet.input.placeKey?.(part.entry.origin),
      role: 'button',
      tabindex: 0,
      'aria-label': words,
    },
    ...children,
  );
}
