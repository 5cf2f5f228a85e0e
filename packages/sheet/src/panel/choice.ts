import type { Arrangement, Direction, Vessel } from '@tailshaft/drivetrain';
import type { LinesView } from '../drawing/view.js';
import type { SheetInput } from '../input.js';

/** What a person has chosen to look at. Names that the spec does not hold (any more) give way to the usual ones. */
export interface PanelChoice {
  readonly arrangement?: string | undefined;
  /** Another arrangement beside it. */
  readonly beside?: string | undefined;
  /** Name of one line, or nothing for all. */
  readonly line?: string | undefined;
  readonly point?: string | undefined;
  readonly direction?: Direction | undefined;
}

/** What there is to choose from, and what is chosen. */
export interface PanelChoices {
  readonly arrangements: readonly string[];
  readonly lines: readonly string[];
  readonly points: readonly string[];
  readonly chosen: {
    readonly arrangement: string;
    readonly beside: string;
    readonly line: string;
    readonly point: string;
    readonly direction: Direction;
  };
}

const USUAL_POINT = 'rated power';

/** The last arrangement is what is proposed: it is shown unless another is chosen. */
export function choicesOf(input: SheetInput, choice: PanelChoice): PanelChoices {
  const { vessel } = input;
  const arrangement = find(vessel, choice.arrangement) ?? vessel.arrangements.at(-1);
  const beside = choice.beside ? find(vessel, choice.beside) : undefined;
  const lines = arrangement?.lines.map(one => one.name) ?? [];
  const points = pointsOf(input, arrangement);
  const wanted = choice.point ?? USUAL_POINT;
  return {
    arrangements: vessel.arrangements.map(one => one.name),
    lines,
    points,
    chosen: {
      arrangement: arrangement?.name ?? '',
      beside: beside && beside !== arrangement ? beside.name : '',
      line: choice.line && lines.includes(choice.line) ? choice.line : '',
      point: points.includes(wanted) ? wanted : (points.at(-1) ?? ''),
      direction: choice.direction ?? 'ahead',
    },
  };
}

/** The view of one arrangement that the choice asks for. */
export function viewOf(arrangement: Arrangement, { chosen }: PanelChoices): LinesView {
  const line = arrangement.lines.find(one => one.name === chosen.line);
  return {
    direction: chosen.direction,
    ...(chosen.point ? { point: chosen.point } : {}),
    ...(line ? { line: line.path } : {}),
  };
}

export function find(vessel: Vessel, name: string | undefined): Arrangement | undefined {
  return vessel.arrangements.find(one => one.name === name);
}

/** Names of operating points without their direction, which has its own switch. */
function pointsOf(input: SheetInput, arrangement: Arrangement | undefined): string[] {
  const names = arrangement?.lines.flatMap(line =>
    input.analysisOf(line).operatingPoints.map(one => one.name.replace(/ (ahead|astern)$/, '')),
  );
  return [...new Set(names)].filter(name => name !== 'full load');
}
