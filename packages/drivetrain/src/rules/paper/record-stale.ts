import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { type Damage, damagesOf, damageWords } from '../../model/damage.js';
import type { Fact } from '../../model/fact.js';
import { nameOf, type Part, statementOf } from '../../model/part.js';
import { type Apart, each, isSaid } from '../../model/reads.js';
import type { Propeller, Shaft } from '../../model/shafting.js';
import type { ShaftLine } from '../../model/vessel.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { MADE_GOOD } from '../shafting/damage-specs.js';
import { waits } from '../waiting.js';

const RECORDED = changed(MADE_GOOD, [
  'retain shaft\n',
  'modify shaft { runout 0.05 mm [measured 2025-12-02]  coupling alignment 0.04 mm [measured 2026-02-01] }\n',
]);

const INFO: RuleInfo = {
  id: 'paper/record-stale',
  title: 'Records are newer than the damage and changes to the line',
  mistakes: [],
  severity: 'warning',
  criterion:
    'date on which runout, alignment and clearances were measured, against damage and changes to the line',
  source: {
    title: 'a record taken before a part was bent, broken or changed does not describe the line as it is now',
    confidence: 'common practice',
  },
  manual:
    'Runout, coupling alignment and propeller clearances are measured on the line as it stood that day. Once ' +
    'a shaft has been bent, a coupling struck, or an engine or gear exchanged, the old record no longer ' +
    'applies. Measure again after the work (alignment afloat) and write the day: `[measured 2026-02-01]`. ' +
    'The sizes of a damaged part must be measured again too.',
  caution: 'Only dates are compared; the quality of a record is not judged.',
  noFigure: 'a record or its dates',
  curesRecord: true,
  judgesEvidence: true,
  noCure: 'Only another measurement settles it.',
  examples: examples(() => ({
    failing: changed(RECORDED, [
      'modify shaft { runout 0.05 mm [measured 2025-12-02]',
      'modify shaft { runout 0.05 mm [measured 2025-03-02]',
    ]),
    passing: RECORDED,
    cannotTell: changed(RECORDED, [
      'modify shaft { runout 0.05 mm [measured 2025-12-02]',
      'modify shaft { runout 0.05 mm',
    ]),
  })),
};

export const recordStale: Rule = { ...INFO, scope: 'line', check };

interface LineRecord {
  readonly what: string;
  readonly fact: Fact<unknown>;
  readonly part: Part;
  /** Set where an exchange of these parts makes it stale as well. */
  readonly with?: readonly Part['role'][];
}

function check({ line }: LineContext): Apart<Verdict> {
  return each(recordsOf(line), record => judge(line, record));
}

/** Everything that was measured on a line as it stood. */
function recordsOf(line: ShaftLine): LineRecord[] {
  const of = (part: Part, what: string, look: () => Fact<unknown> | undefined, more?: LineRecord['with']) => {
    // What nobody measured is no record that is left open.
    const fact = isSaid(look) ? look() : undefined;
    return fact ? [{ what, fact, part, ...(more ? { with: more } : {}) }] : [];
  };
  return line.chain.flatMap(part => {
    if (part.role === 'shaft') {
      const shaft = part as Shaft;
      return [
        ...of(part, 'runout', () => shaft.runout),
        ...of(part, 'coupling alignment', () => shaft.couplingAlignment, ALIGNED),
        ...(damagesOf(part).length > 0 ? of(part, 'diameter', () => shaft.diameter) : []),
      ];
    }
    if (part.role !== 'propeller') return [];
    const wheel = part as Propeller;
    return [
      ...of(part, 'tip clearance', () => wheel.tipClearance),
      ...of(part, 'rudder clearance', () => wheel.rudderClearance),
      ...of(part, 'strut clearance', () => wheel.strutClearance),
      ...(damagesOf(part).length > 0
        ? [...of(part, 'diameter', () => wheel.diameter), ...of(part, 'pitch', () => wheel.pitch)]
        : []),
    ];
  });
}

/** What stands in line with the shaft. */
const ALIGNED: readonly Part['role'][] = ['engine', 'motor', 'gear', 'transfer', 'coupling', 'shaft'];

function judge(line: ShaftLine, record: LineRecord): Verdict | undefined {
  const { what, fact, part } = record;
  const events = line.chain.flatMap(one =>
    BEARS.has(one.role) && (one === part || !OF_THE_PART.has(what))
      ? damagesOf(one).map(damage => ({ damage, part: one }))
      : [],
  );
  const exchanged = exchangedSince(line, record);
  const measured = fact.evidence?.kind === 'measured';
  if (events.length === 0 && !exchanged) return undefined;
  // A size from a drawing is no record of the part as it is.
  if (!measured && SIZES.has(what)) return undefined;
  const say = sayFor(INFO, `${part.path}.${what.replaceAll(' ', '-')}`);
  const name = `${line.name}: ${what} ${fact.written}`;
  const needs = new Needs();
  if (exchanged)
    return say.fails({
      place: fact.origin,
      related: [{ at: exchanged.origin, message: `${nameOf(exchanged)}, ${statementOf(exchanged)}` }],
      message: `${name} was measured before ${nameOf(exchanged)} was ${statementOf(exchanged)}. The record no longer describes this line: measure again after the work.`,
    });
  const day = fact.evidence?.dated;
  if (!measured || !day)
    needs.miss(
      { what: `the day on which ${what} of ${line.name} was measured`, host: part.origin, property: what },
      fact.origin,
    );
  for (const { damage, part: hurt } of events) {
    const dated = since(damage, hurt, needs);
    if (dated === undefined || day === undefined || day >= dated) continue;
    return say.fails({
      place: fact.origin,
      related: [{ at: damage.origin, message: damageWords(damage) }],
      message: `${name} was measured on ${day}, and ${nameOf(hurt)} was found ${damageWords(damage)}${dated === damage.dated?.value ? '' : ` and made good on ${dated}`}. The record no longer describes this line: measure again.`,
    });
  }
  if (needs.any)
    return waits(say, needs, fact.origin, `${name}: whether it was measured after the damage or change`);
  return say.holds({
    place: fact.origin,
    message: `${name} was measured on ${day}, after the damage or change.`,
  });
}

/** Parts whose damage moves the shaft. */
const BEARS: ReadonlySet<string> = new Set(['shaft', 'coupling', 'propeller']);
/** What only the damage of the part itself changes. */
const OF_THE_PART: ReadonlySet<string> = new Set(['diameter', 'pitch', 'runout']);
const SIZES: ReadonlySet<string> = new Set(['diameter', 'pitch']);

/** The day from which the part was as it is now. */
function since(damage: Damage, part: Part, needs: Needs): string | undefined {
  const { madeGood, madeGoodOn, dated } = damage;
  const of = `${nameOf(part)} was ${madeGood ? 'made good' : `found ${damage.what}`}`;
  if (madeGood && !madeGoodOn)
    return needs.miss({ what: `the day on which ${of}`, host: damage.origin, property: 'made good on' });
  return madeGood
    ? needs.fact(madeGoodOn, {
        what: `the day on which ${of}`,
        host: damage.origin,
        property: 'made good on',
      })
    : needs.fact(dated, { what: `the day on which ${of}`, host: damage.origin, property: 'dated' });
}

/** A part that was exchanged or altered by the arrangement that only takes this record over. */
function exchangedSince(line: ShaftLine, { fact, part, with: others }: LineRecord): Part | undefined {
  const old = part.keptFrom?.part as unknown as Record<string, unknown> | undefined;
  const taken =
    old && Object.values(old).some(one => (one as Fact<unknown> | undefined)?.origin === fact.origin);
  if (!others || !taken) return undefined;
  return line.chain.find(
    one => one !== part && others.includes(one.role) && ['replaced', 'modified'].includes(statementOf(one)),
  );
}
