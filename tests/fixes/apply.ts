import type { Verdict } from '@tailshaft/drivetrain';
import { applyEdits, formatText, type Offer } from '@tailshaft/language';
import { type Checked, checkText } from '../support/check.js';
import { type Offered, offeredFor } from './offered.js';

/** What is wrong with an offer, in words; nothing when it keeps its promise. */
export async function faultsOf(before: Checked, { finding }: Offered, offer: Offer): Promise<string[]> {
  const text = applyEdits(before.text, offer.edits);
  const after = await checkText(text);
  const faults: string[] = [];
  const old = new Map<string, number>();
  for (const one of before.check.problems) old.set(one.code, (old.get(one.code) ?? 0) + 1);
  for (const one of after.check.problems) {
    const left = old.get(one.code) ?? 0;
    if (left === 0) faults.push(`does not read: ${one.message}`);
    old.set(one.code, left - 1);
  }
  if (formatText(before.text) === before.text && formatText(text) !== text) faults.push('is not laid out');
  if (!ORDERED_WITH_IT.has(finding.code) && writesEntry(before.text, offer))
    faults.push('alters what a catalogue entry says');
  if (finding.verdict && !offer.asks) {
    const left = worst(after).get(keyOf(finding.verdict));
    if (
      left?.outcome === 'fails' ||
      (left?.outcome === 'cannot tell' && !saysWhatIsOpen(offer, finding.verdict, left))
    )
      faults.push('does not clear its finding');
  }
  const was = worst(before);
  const gone = [...worst(after)].filter(
    ([key, { outcome }]) =>
      (finding.verdict === undefined || key !== keyOf(finding.verdict)) &&
      (outcome === 'fails'
        ? was.get(key)?.outcome !== 'fails'
        : outcome === 'cannot tell' && was.get(key)?.outcome === 'holds'),
  );
  if (gone.length > 0 && !offer.asks && offer.route) {
    if (!offer.title.includes('; but then '))
      faults.push(`worse unsaid: ${gone.map(([key]) => key).join(', ')}`);
    if (offer.preferred) faults.push('preferred though something gets worse');
  }
  return faults;
}

/** Every offer for a text with its faults, and how many of what kind there were. */
export async function triedOn(text: string) {
  const before = await checkText(text);
  const offered = await offeredFor(text);
  const faults: string[] = [];
  const counts = {
    findings: offered.length,
    cures: 0,
    questions: 0,
    worse: 0,
    errors: 0,
    uncured: [] as string[],
  };
  for (const one of offered) {
    counts.cures += one.cures.length;
    counts.questions += one.questions.length;
    const keys = [...one.cures, ...one.questions].map(offer => JSON.stringify(offer.edits));
    if (new Set(keys).size < keys.length) faults.push(`${one.finding.code}: offers one edit twice`);
    if (one.finding.severity === 'error' && one.finding.verdict?.outcome === 'fails') counts.errors += 1;
    if (one.finding.severity !== 'hint' && one.finding.verdict?.outcome === 'fails' && one.cures.length === 0)
      counts.uncured.push(`${one.finding.severity} ${one.finding.code}`);
    for (const offer of [...one.cures, ...one.questions]) {
      if (offer.title.includes('; but then ')) counts.worse += 1;
      for (const fault of await faultsOf(before, one, offer))
        faults.push(`${one.finding.code}: "${offer.title}" ${fault}`);
    }
  }
  return { faults, counts };
}

/** The failing half is put right, and what the other half waits for is no more than what it waited for before. */
function saysWhatIsOpen({ title, preferred }: Offer, failed: Verdict, left: Verdict): boolean {
  const waited = failed.open?.map(one => one.property) ?? [];
  return (
    !preferred &&
    left.missing.length > 0 &&
    left.missing.every(one => waited.includes(one.property) && title.includes(one.what)) &&
    title.includes('open question')
  );
}

function worst(checked: Checked): Map<string, Verdict> {
  const order: readonly Verdict['outcome'][] = [
    'does not apply',
    'holds',
    'accepted',
    'cannot tell',
    'fails',
  ];
  const map = new Map<string, Verdict>();
  for (const verdict of [...checked.check.vessels, ...checked.check.entries].flatMap(one => one.verdicts)) {
    for (const one of [verdict, ...(verdict.folds ?? [])]) {
      const had = map.get(keyOf(one));
      if (!had || order.indexOf(one.outcome) > order.indexOf(had.outcome)) map.set(keyOf(one), one);
    }
  }
  return map;
}

function keyOf({ rule, subject }: Verdict): string {
  return `${rule} ${subject}`;
}

/** Bolts and starters are ordered with the part, and written where it is described. */
const ORDERED_WITH_IT = new Set(['rotation/accessory', 'shafting/coupling-bolts']);

/** Whether an offer for a vessel changes words of an entry: a bought part is what its sheet says. */
function writesEntry(text: string, { edits, route }: Offer): boolean {
  if (route !== 'changes the design') return false;
  const vessel = text.search(/^vessel\b/m);
  return vessel > 0 && edits.some(edit => edit.end > edit.start && edit.start < vessel);
}
