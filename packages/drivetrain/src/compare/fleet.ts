import { count } from '@tailshaft/mechanics';
import { ruleWords } from '../judge/rule-words.js';
import type { SpecChange, VerdictMove } from './change.js';
import { type Comparison, isSame, type VesselComparison } from './compare.js';
import { addedLevels, type Level, levelsOf, removedLevels, vesselLevels } from './levels.js';
import { headline } from './sections.js';
import type { Judged } from './side.js';
import { outcomeWords } from './verdict-moves.js';

/** `9 vessels touched, 5 worse; worst: Ternhaven would go astern`: the sentence above everything else. */
export function fleetHeadline(comparison: Comparison, marginLost?: number): string {
  const { vessels, addedVessels, removedVessels, entries, unread } = comparison;
  if (isSame(comparison)) return 'No change in meaning.';
  const touched = vessels.length + addedVessels.length + removedVessels.length;
  const told: string[] = [];
  if (unread.length > 0) told.push(`${count(unread.length, 'text')} could not be read whole`);
  if (touched > 0 || entries.length === 0) told.push(`${count(touched, 'vessel')} touched`);
  else
    told.push(`${count(entries.length, 'catalogue entry', 'catalogue entries')} changed, no vessel touched`);
  const worse = worseOf(comparison, marginLost);
  if (touched > 0) told[told.length - 1] += worse.length > 0 ? `, ${worse.length} worse` : ', none worse';
  const worst = worse[0];
  return `${told.join('; ')}${worst ? `; worst: ${worst}` : ''}.`;
}

/** What became worse, in words, the worst first: by level, then as the vessels stand. */
function worseOf(comparison: Comparison, marginLost?: number): string[] {
  const order = (level: Level | undefined) => (level ? levelsOf(comparison, marginLost).indexOf(level) : 99);
  return [
    ...comparison.vessels.map(one => ({
      level: vesselLevels(one, marginLost)[0],
      words: worstOf(one, marginLost),
    })),
    ...comparison.addedVessels.map(one => ({ level: addedLevels(one)[0], words: worstOfAdded(one) })),
    ...comparison.removedVessels.map(one => ({
      level: removedLevels(one)[0],
      words: `${one.key ?? one.vessel.name}, taken out: none of its checks is judged any more`,
    })),
  ]
    .filter(one => one.level !== undefined)
    .sort((one, other) => order(one.level) - order(other.level))
    .map(one => one.words);
}

function worstOf(vessel: VesselComparison, marginLost?: number): string {
  const [level] = vesselLevels(vessel, marginLost);
  const ofLevel = vessel.changes.filter(one => isOfLevel(one, level, marginLost));
  // Which way the vessel goes matters more than why.
  if (ofLevel.some(goesAstern)) return `${vessel.name} would go astern`;
  const [worst] = ofLevel;
  if (!worst) return vessel.name;
  return worst.kind === 'verdict'
    ? `${vessel.name}${consequence(worst, vessel.name)}`
    : `${vessel.name}, ${inShort(worst)}`;
}

function goesAstern(change: SpecChange): boolean {
  if (change.kind !== 'verdict' || change.after?.outcome !== 'fails') return false;
  return [change.after, ...(change.after.folds ?? [])].some(
    one => one.rule === 'rotation/propeller-hand' && one.outcome === 'fails',
  );
}

function inShort(change: SpecChange): string {
  if (change.kind === 'open')
    return `${change.words.split(': not assessed before')[0]}, with consequences not assessed before or now`;
  if (change.kind !== 'statement' || change.about !== 'acceptance') return change.words;
  return `${change.words.split(': ')[0]}: ${(change.after ?? change.before)!.split(' by ')[0]}`;
}

function isOfLevel(
  change: VesselComparison['changes'][number],
  level: Level | undefined,
  marginLost?: number,
) {
  return vesselLevels({ changes: [change] } as unknown as VesselComparison, marginLost)[0] === level;
}

function consequence({ rule, subject, movement, after, before }: VerdictMove, vessel: string): string {
  const name = ruleWords(rule);
  return `${subject === vessel ? '' : ` ${subject}`}: ${name} ${movement}, ${outcomeWords(before)} before, ${outcomeWords(after)} now`;
}

function worstOfAdded({ vessel, key, verdicts }: Judged): string {
  const failing = verdicts.filter(one => one.outcome === 'fails' && one.severity !== 'note').length;
  const accepted = verdicts.filter(one => one.outcome === 'accepted').length;
  const told = [
    failing > 0 ? `${count(failing, 'check fails', 'checks fail')}` : '',
    accepted > 0 ? `${count(accepted, 'failure is accepted', 'failures are accepted')}` : '',
  ].filter(Boolean);
  return `${key ?? vessel.name}, added: ${told.join(', ')}`;
}

/** One line for each vessel. */
export function summaryLines(comparison: Comparison, marginLost?: number): string[] {
  const level = (levels: readonly Level[]) => (levels[0] ? `${levels[0]}` : 'not worse');
  return [
    ...comparison.vessels.map(
      one => `${one.name}: ${level(vesselLevels(one, marginLost))}. ${headline(one)}`,
    ),
    ...comparison.addedVessels.map(one => `${one.key ?? one.vessel.name}: added, ${level(addedLevels(one))}`),
    ...comparison.removedVessels.map(one => `${one.key ?? one.vessel.name}: taken out`),
  ];
}
