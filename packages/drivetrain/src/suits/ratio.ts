import { given, percent, type Value } from '@tailshaft/mechanics';
import { LineAnalysis } from '../analysis/line.js';
import type { LineContext } from '../judge/context.js';
import type { RatioVariant } from '../model/gear.js';
import type { ShaftLine } from '../model/vessel.js';
import { findOffered } from '../rules/capacity/offered-ratios.js';
import { gearEdits } from '../rules/gear-edits.js';
import { demandWords } from '../rules/propeller/run-words.js';
import { NOTHING_SUITS, type Suiting } from './suiting.js';

/** The ratio with which the propeller of the line absorbs the rated power. */
export interface SuitingRatio extends Suiting {
  readonly ratio?: Value<'ratio'>;
}

/** The ratio that the propeller asks for, and the offered one of this gear whose demand comes nearest to the rated power. */
export function suitingRatio(context: LineContext): SuitingRatio {
  const { line, vessel, analysis } = context;
  const { gear } = line;
  const now = analysis.propulsion;
  if (!gear?.variant || !now) return NOTHING_SUITS;
  if (!now.value)
    return { routes: [], missing: now.missing, ...(now.refusal ? { refusal: now.refusal } : {}) };
  const demandAt = (ratio: number) =>
    new LineAnalysis(withRatio(line, ratio), vessel).propulsion?.value?.demand.si;
  const found = ratioFor(demandAt, gear.variant.nominal.si, now.value.demand.si);
  const offered = findOffered(context, other => other.propulsion?.value !== undefined);
  const away = (other: LineAnalysis) => Math.abs(Math.log(other.propulsion!.value!.demand.si));
  const best = offered.sort((a, b) => away(a.other) - away(b.other))[0];
  const better = best && away(best.other) < away(analysis);
  return {
    missing: [],
    ...(found === undefined
      ? { refusal: 'At no ratio near this one does the propeller absorb the rated power.' }
      : {
          ratio: given('ratio that suits the propeller', 'i', 'ratio', found, {
            assumed: 'the ratio at which the propeller absorbs the rated power',
          }),
        }),
    routes: better
      ? [
          {
            title: `Take ${best.ratio}${found === undefined ? '' : ` (${found.toFixed(2)}:1 would suit best)`}: ${best.change}, and the propeller absorbs ${demandWords(best.other.propulsion!.value!)}, where it absorbs ${percent(now.value.demand.si)} now`,
            edits: gearEdits(gear, best.gear),
            workings: [best.other.propulsion!.value!.demand],
          },
        ]
      : [],
  };
}

/** Demand falls as the ratio grows: halved from both sides of the present ratio. */
function ratioFor(
  demandAt: (ratio: number) => number | undefined,
  now: number,
  demand: number,
): number | undefined {
  let [low, high] = demand > 1 ? [now, now * REACH] : [now / REACH, now];
  for (let step = 0; step < STEPS; step++) {
    const middle = Math.sqrt(low * high);
    const then = demandAt(middle);
    if (then === undefined) return undefined;
    if (then > 1) low = middle;
    else high = middle;
  }
  const found = Math.sqrt(low * high);
  return Math.abs((demandAt(found) ?? 0) - 1) < 0.01 ? found : undefined;
}

const REACH = 2;
const STEPS = 12;

/** The line with its gear at any ratio. */
function withRatio(line: ShaftLine, si: number): ShaftLine {
  const { exact: _exact, train: _train, ...variant } = line.gear!.variant as RatioVariant;
  const bare = line.gear!.clutches;
  const nominal = { ...variant.nominal, si };
  const clutches = variant.clutches.map(({ exact: _own, train: _gears, ...one }) => one);
  const gear = {
    ...line.gear!,
    variant: { ...variant, nominal, clutches },
    ...(bare ? { clutches: bare.map(({ exact: _own, train: _gears, ...one }) => one) } : {}),
  };
  return { ...line, gear, chain: line.chain.map(part => (part === line.gear ? gear : part)) };
}
