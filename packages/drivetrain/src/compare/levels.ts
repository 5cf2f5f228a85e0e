import type { SilentChange, SpecChange, StatementChange, VerdictMove } from './change.js';
import type { Comparison, VesselComparison } from './compare.js';
import type { Judged } from './side.js';

/** What a reviewer must not pass unread, the gravest first. */
export const LEVELS = [
  'not read whole',
  'newly fails',
  'newly accepted',
  'acceptance weakened',
  'criterion relaxed',
  'margin lost',
  'newly unknown',
] as const;
export type Level = (typeof LEVELS)[number];

/** A margin that shrinks by this much is told, unless the caller chooses another: 10 points of a percentage. */
export const MARGIN_LOST = 0.1;

/** Every level that a comparison reaches, the gravest first. */
export function levelsOf(comparison: Comparison, marginLost = MARGIN_LOST): Level[] {
  const reached = new Set<Level>();
  if (comparison.unread.length > 0) reached.add('not read whole');
  for (const vessel of comparison.vessels)
    for (const level of vesselLevels(vessel, marginLost)) reached.add(level);
  for (const added of comparison.addedVessels) for (const level of addedLevels(added)) reached.add(level);
  for (const removed of comparison.removedVessels)
    for (const level of removedLevels(removed)) reached.add(level);
  return LEVELS.filter(one => reached.has(one));
}

export function vesselLevels({ changes }: VesselComparison, marginLost = MARGIN_LOST): Level[] {
  const reached = new Set(changes.map(one => levelOf(one, marginLost)));
  return LEVELS.filter(one => reached.has(one));
}

/** A vessel with nothing to compare it with is as bad as its verdicts. */
export function addedLevels({ verdicts }: Judged): Level[] {
  const grave = verdicts.filter(one => one.severity !== 'note');
  const reached: Level[] = [];
  if (grave.some(one => one.outcome === 'fails')) reached.push('newly fails');
  if (verdicts.some(one => one.outcome === 'accepted')) reached.push('newly accepted');
  return reached;
}

/** Of a vessel that is there no more nothing is judged any more. One that was not read is told as such. */
export function removedLevels({ verdicts }: Judged): Level[] {
  return verdicts.some(one => one.outcome !== 'does not apply') ? ['newly unknown'] : [];
}

function levelOf(change: SpecChange, marginLost = MARGIN_LOST): Level | undefined {
  if (change.kind === 'verdict')
    return change.severity === 'note' ? undefined : levelOfMove(change, marginLost);
  if (change.kind === 'open') return 'newly unknown';
  if (change.kind === 'derived') return change.after === undefined ? 'newly unknown' : undefined;
  // Nobody has said that what was found damaged is sound now, or which of two units was meant.
  if (change.kind === 'silent') return LEVEL_OF_SILENT[change.what];
  return change.kind === 'statement' ? levelOfStatement(change) : undefined;
}

const LEVEL_OF_SILENT: Readonly<Partial<Record<SilentChange['what'], Level>>> = {
  'holds by another figure': 'criterion relaxed',
  'same number, other unit': 'newly unknown',
  damage: 'newly unknown',
};

function levelOfMove(move: VerdictMove, marginLost: number): Level | undefined {
  const { movement, before, after } = move;
  switch (movement) {
    case 'newly fails':
    case 'no longer accepted':
    case 'fails by more':
      return 'newly fails';
    case 'newly accepted':
    case 'accepted on other figures':
      return 'newly accepted';
    case 'newly cannot tell':
      return 'newly unknown';
    case 'no longer judged':
      // That nothing judges it any more is no answer, unless the rule says that it does not apply.
      return after === undefined && before?.outcome !== 'cannot tell' ? 'newly unknown' : undefined;
    case 'margin smaller':
      return before!.margin! - after!.margin! >= marginLost ? 'margin lost' : undefined;
    case 'newly holds':
    case 'margin larger':
    case 'fails by less':
      // What the spec chooses in the place of the default is easily the weaker of the two.
      return isChosen(move) ? 'criterion relaxed' : undefined;
    default:
      return undefined;
  }
}

const isChosen = ({ before, after }: VerdictMove) =>
  before?.criterionChosenBy === 'default' && after?.criterionChosenBy === 'author';

function levelOfStatement({ about, tendency }: StatementChange): Level | undefined {
  // What was judged of a mode that is gone is judged no more.
  if (about === 'mode') return tendency === 'relaxed' ? 'newly unknown' : undefined;
  if (tendency !== 'relaxed' && tendency !== 'chosen otherwise') return undefined;
  return LEVEL_OF[about];
}

const LEVEL_OF: Readonly<Partial<Record<StatementChange['about'], Level>>> = {
  acceptance: 'acceptance weakened',
  'right to accept': 'acceptance weakened',
  criterion: 'criterion relaxed',
  requirement: 'criterion relaxed',
  certificate: 'criterion relaxed',
  practice: 'criterion relaxed',
  gravity: 'criterion relaxed',
  duty: 'criterion relaxed',
  assumption: 'criterion relaxed',
};
