import { PLACE_VOCABULARY } from '@tailshaft/vocabulary';
import type { Change, Lost } from './change.js';
import type { Judged } from './rejudge.js';

/** What may happen all the same, with its reason. */
interface Exception {
  readonly letters: string;
  readonly rule?: RegExp;
  readonly about?: RegExp;
  readonly how?: RegExp;
  /** Only where the sheet says that nothing of it was assessed. */
  readonly notAssessed?: true;
  /** Only where the verdict says this there. */
  readonly says?: RegExp;
  /** Only where this rule fails there instead. */
  readonly tellsInstead?: string;
  /** Only where the verdict tells what it takes the property for that is left out. */
  readonly saysSo?: true;
  readonly because: string;
}

/** Kept by hand, and short. */
export const EXCEPTIONS: readonly Exception[] = [
  {
    letters: 'aij',
    about:
      /^(shaft diameter by|(tip|rudder|strut) clearance at least|(overhang|tip speed|source age) at most|span diameters at (least|most))$/,
    rule: /^(shafting\/(diameter|service-factor|overhang|span-guide)|propeller\/(tip|other)-clearance|speed\/tip-speed|paper\/sheet-age)/,
    because: 'the author chose that criterion; without it the default one judges, and the verdict says which',
  },
  {
    letters: 'ij',
    rule: /^(shafting\/diameter|interface\/torsional-stress)$/,
    about: /^(coupling end diameter|taper large end|bore)$/,
    because:
      'a shaft of which nothing else is said is solid and as thick at its ends; one that is bored or turned down is another shaft',
  },
  {
    letters: 'a',
    rule: /^(shafting\/diameter|interface\/torsional-stress)$/,
    about: /^(coupling end diameter|taper large end|bore)$/,
    how: /^fails became holds$/,
    saysSo: true,
    because:
      'a shaft of which nothing else is said is solid and as thick at its ends, and the verdict says that it takes it so',
  },
  {
    letters: 'i',
    rule: /^shafting\/(thrust-path|joint-angles)$/,
    how: /fails became holds/,
    because:
      'what fails is that no part for it is in the line: a motor rated for thrust, a second joint, is another part',
  },
  {
    letters: 'i',
    rule: /^capacity\/gear-input-torque$/,
    about: /^gear torque margin at least$/,
    because: 'the owner asks for more than the sheet does',
  },
  {
    letters: 'i',
    rule: /^(interface\/torsional-statement|propeller\/tolerance-class|shafting\/tailshaft-exam|rotation\/controllable-pitch)$/,
    how: /fails became holds/,
    because: 'what fails is that a paper, an order or the line does not say something, and there it says it',
  },
  {
    letters: 'i',
    rule: /^capacity\/power-and-torque$/,
    about: /^full-load (power|torque)$/,
    how: /^holds became fails$/,
    because: 'the example writes a point that no curve with the declared peak torque has',
  },
  {
    letters: 'i',
    rule: /^rotation\//,
    about: /^set for hand$/,
    how: /^holds became fails$/,
    because:
      'a convertible blade is assembled for the hand that is said: without it, for the hand of the propeller',
  },
  {
    letters: 'i',
    rule: /^rotation\//,
    about: /^set for hand$/,
    how: /^fails became holds$/,
    tellsInstead: 'rotation/convertible-hand',
    because: 'the hand that is asked for and the one that it is set for differ, and that fails by itself',
  },
  {
    letters: 'i',
    rule: /^rotation\/(propeller-hand|input-accepted)$/,
    about: /^(after hand|rotation)$/,
    how: /^holds became fails$/,
    because:
      'that says another propeller behind the first, or of one input of a gear what the gear does not say of it',
  },
  {
    letters: 'i',
    about: /^(exact|air temperature|effective pitch)$/,
    because:
      'optional by nature: a blade that loads with its own pitch, a round ratio, standard air are what its absence says',
  },
  {
    letters: 'i',
    rule: /^shafting\/after-break$/,
    about: /^fatigue statement$/,
    how: /fails became holds/,
    because: 'the failure asks for the calculation that covers fatigue, and there it is named',
  },
  {
    letters: 'f',
    about: measuredWithOthers(),
    how: /^cannot tell became fails$/,
    because: 'what lapsed with another fact is known again where it is said anew',
  },
  {
    letters: 'b',
    rule: /^(rotation\/turning-requirement|trace\/requirement-met|propeller\/tolerance-class)$/,
    about: /^behind$/,
    because:
      'an arrangement that another revises is as found, and requirements and orders are about proposals: the other one fails them',
  },
  {
    letters: 'b',
    rule: /^(rotation\/turning-requirement|trace\/requirement-met)$/,
    about: /^between$/,
    how: /^silence became fails when repeated$/,
    because:
      'requirements are about proposals: the arrangement as found is asked for none, and its first repetition is',
  },
  {
    letters: 'b',
    rule: /^shafting\/(after-break|tailshaft-exam)$/,
    how: /^silence became fails when repeated$/,
    because:
      'what fails is that work on the vessel leaves it undone, and an arrangement as found is no work: the first that revises it is',
  },
  {
    letters: 'c',
    rule: /^(capacity\/retained-|speed\/vessel-speed-per-engine-rpm$)/,
    how: /^silence became fails$/,
    because:
      'what the first step fits for the old load is kept by the second under the new one: it is compared with where it was declared',
  },
  {
    letters: 'c',
    how: /^fails became cannot tell$/,
    says: /was measured with/,
    because:
      'what the first step measures is measured with a part that the second one replaces: it lapses with that',
  },
  {
    letters: 'a',
    rule: /^(propeller\/(tip-clearance|blade-area)|speed\/idle-pressure|shafting\/(overhang|thrust-capacity|tube-bore))$/,
    how: /became silence/,
    notAssessed: true,
    because: 'the only fact of its subject: then that stands under Not assessed',
  },
  {
    letters: 'a',
    rule: /^shafting\/combined-stress$/,
    how: /became silence/,
    notAssessed: true,
    because:
      'mass or overhang alone is said for other checks: it is judged where torque and thrust fail by themselves, else it is not assessed',
  },
  {
    letters: 'a',
    rule: /^(paper\/place-against-entry|rotation\/sheet-view|capacity\/power-and-torque|propeller\/clearance-by-diameter)$/,
    how: /became silence/,
    because:
      'what fails is that two statements of one thing disagree; with one of them gone there are not two, and what rests on it asks for it',
  },
  {
    letters: 'a',
    rule: /^propeller\/tolerance-class$/,
    how: /became silence/,
    because: 'what fails is that an order leaves out its class; without the facts of an order it is none',
  },
  {
    letters: 'a',
    rule: /^rotation\/controllable-pitch$/,
    about: /^kind$/,
    because: 'what fails is the kind that is said; a propeller of which none is said is fixed',
  },
  {
    letters: 'a',
    rule: /^trial\/(prediction|requirement|pair)$/,
    about: /^(engine speed|shaft speed|speed|shaft power)$/,
    how: /became silence/,
    because: 'what fails is that very reading; one that was not taken differs from nothing',
  },
  {
    letters: 'i',
    rule: /^propeller\/clearance-by-diameter$/,
    about: /^(axis to hull|tip clearance)$/,
    because: 'what fails is that two statements of one thing disagree, and there the second is made',
  },
  {
    letters: 'j',
    rule: /^units\/near-miss$/,
    how: /^fails became holds$/,
    because: 'what fails is that two figures nearly agree; one that is ten times the other does not',
  },
  {
    letters: 'i',
    rule: /^propeller\/tip-clearance$/,
    about: /^tip clearance$/,
    because:
      'it is measured, the axis to the hull only leaves it by reckoning: what is measured goes before, and another rule holds the two together',
  },
  {
    letters: 'i',
    rule: /^shafting\/bearing-water$/,
    about: /^water from$/,
    how: /^holds became fails$/,
    because: 'a strut of which nothing is said is open to the sea; one that is fed is another bearing',
  },
  {
    letters: 'a',
    rule: /^interface\/barred-range$/,
    how: /became silence/,
    tellsInstead: 'interface/torsional-stress',
    because:
      'where the stress may not even be passed, barring its speeds is no answer: the graver failure is told',
  },
  {
    letters: 'e',
    rule: /^paper\/sister-vessel$/,
    because:
      'what fails is where the value was taken from; of one that is only assumed nothing holds, as every check says',
  },
  {
    letters: 'a',
    rule: /^(units\/|propeller\/stamped-size)/,
    how: /became silence$/,
    because:
      'what fails is how or against what that very fact is written; without it there is nothing to put right',
  },
];

/** How often each was asked for since the start, with the cases: a run prints those that nothing needed. */
export const used = new Map<string, Set<string>>();

export function exceptionFor(
  { letter, about }: Pick<Change, 'letter' | 'about'>,
  { rule, subject, how }: Lost,
  after: Pick<Judged, 'isNotAssessed' | 'told'>,
): Exception | undefined {
  const found = EXCEPTIONS.find(
    one =>
      one.letters.includes(letter) &&
      (one.rule?.test(rule) ?? true) &&
      (one.about?.test(about) ?? true) &&
      (one.how?.test(how) ?? true) &&
      (!one.notAssessed || after.isNotAssessed(rule, subject)) &&
      (!one.says ||
        after.told.some(it => it.rule === rule && it.subject === subject && one.says!.test(it.message))) &&
      (!one.tellsInstead || fails(after.told, one.tellsInstead, subject)) &&
      (!one.saysSo || saysSo(after.told, rule, subject, about)),
  );
  if (found) {
    const cases = used.get(found.because) ?? new Set();
    used.set(found.because, cases.add(`${letter} ${rule} | ${about} | ${how}`));
  }
  return found;
}

/** What holds there says of every such property what it is taken for. */
function saysSo(told: Judged['told'], rule: string, subject: string, about: string): boolean {
  const holding = told.filter(one => one.rule === rule && one.subject === subject && one.outcome === 'holds');
  return holding.length > 0 && holding.every(one => one.assumed.includes(about));
}

function fails(told: Judged['told'], rule: string, subject: string): boolean {
  return told.some(one => one.rule === rule && one.subject === subject && one.outcome === 'fails');
}

/** Properties that lapse with what they were measured with. */
function measuredWithOthers(): RegExp {
  const words = Object.values(PLACE_VOCABULARY).flatMap(({ rows }) =>
    rows.filter(row => row.measuredWith).map(row => row.words),
  );
  return new RegExp(`^(${[...new Set(words)].join('|')})$`);
}
