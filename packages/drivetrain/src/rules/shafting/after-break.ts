import { percent, renamed, torsionalShearStress, type Value } from '@tailshaft/mechanics';
import { allowing } from '../../analysis/allowing.js';
import { placesOfTwo, type SizedSection, sizesOf, weakestInTorsion } from '../../analysis/shaft-sections.js';
import type { LineContext } from '../../judge/context.js';
import type { Balance } from '../../judge/needed.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { isAsFound } from '../../model/as-found.js';
import { type Damage, damagesOf, damageWords } from '../../model/damage.js';
import { type Apart, each } from '../../model/reads.js';
import type { Shaft } from '../../model/shafting.js';
import type { ShaftLine } from '../../model/vessel.js';
import { greatestTorqueAt } from '../capacity/greatest-torque.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { AFTER_BREAK } from './damage-specs.js';
import { strongerShafts } from './shaft-routes.js';
import { DEFER } from './sources.js';

const INFO: RuleInfo = {
  id: 'shafting/after-break',
  title: 'The shaft that follows a broken or cracked one runs at clearly less stress',
  mistakes: [],
  severity: 'error',
  criterion: 'torsional stress at greatest torque, at most 80 % of that at which the shaft broke or cracked',
  source: {
    title:
      'a break or crack in service is fatigue until proven otherwise; the 80 % is chosen here, no source, and a fatigue calculation takes precedence',
    confidence: 'common practice',
  },
  manual:
    'A diameter formula asks whether a sound bar is thick enough for a steady torque. A shaft that broke or ' +
    'cracked in service was not strong enough, whatever margin the formula shows; a crack at a keyway, ' +
    'fillet or bearing is usually fatigue, in torsion, bending or both. Another shaft of the same section ' +
    'under the same load breaks again. Record it in a "damage" block of the shaft, find the cause ' +
    '(alignment, overhang, torsional vibration, sharp keyway, corrosion), then fit a thicker shaft or reduce ' +
    'its load, or write whose fatigue calculation covers it as "fatigue statement". A lower stress does not ' +
    'cure another cause.',
  caution: `${DEFER} Nominal torsion only: no notch, bending or vibration is counted, before or after.`,
  limitOf: 'a share of what broke the one before: no estimate makes it good',
  examples: examples(() => ({
    failing: changed(AFTER_BREAK, ['diameter 75 mm [drawing] }', 'diameter 65 mm [drawing] }']),
    passing: AFTER_BREAK,
    cannotTell: changed(AFTER_BREAK, [
      'diameter 65 mm [drawing]\n        damage broken',
      'diameter unknown\n        damage broken',
    ]),
  })),
};

export const afterBreak: Rule = { ...INFO, scope: 'line', check };

/** Share of the stress at which the one before broke. */
const ALLOWED = 0.8;

function check(context: LineContext): Apart<Verdict> | undefined {
  const { line, arrangement, vessel } = context;
  // As found is what broke: the next one is compared with it.
  if (isAsFound(arrangement, vessel)) return undefined;
  return each(line.shafts, (shaft, index) => {
    const broke = brokenBefore(line, shaft, index);
    return broke && judge(context, shaft, broke);
  });
}

interface Broken {
  readonly shaft: Shaft;
  readonly line: ShaftLine;
  readonly damage: Damage;
}

/** The shaft at this place that broke or cracked, as found or since: this one, or the one whose place it takes. */
function brokenBefore(line: ShaftLine, shaft: Shaft, index: number): Broken | undefined {
  const before = line.before;
  const places: readonly (readonly [ShaftLine, Shaft | undefined])[] = [
    ...(before ? [[before, before.shafts[index] ?? before.shafts.at(-1)] as const] : []),
    [line, shaft],
  ];
  for (const [at, one] of places) {
    const damage = one && damagesOf(one).find(({ what }) => what === 'broken' || what === 'cracked');
    if (damage) return { shaft: one, line: at, damage };
  }
  return undefined;
}

function judge(context: LineContext, shaft: Shaft, broke: Broken): Verdict {
  const { line, analysis } = context;
  const say = sayFor(INFO, line.path);
  const place = shaft === broke.shaft ? broke.damage.origin : shaft.origin;
  const related =
    shaft === broke.shaft ? [] : [{ at: broke.damage.origin, message: damageWords(broke.damage) }];
  const happened = `${line.name}: its shaft was found ${damageWords(broke.damage)}`;
  const statement = shaft.fatigueStatement;
  const needs = new Needs();
  if (statement) {
    const by = needs.fact(statement, {
      what: `whose calculation covers fatigue of the shaft of ${line.name}`,
      host: shaft.origin,
      property: 'fatigue statement',
    });
    if (by === undefined) return waits(say, needs, place, `${happened}; whether the new shaft will last`);
    return say.holds({ place, related, message: `${happened}; fatigue of this one is covered by "${by}".` });
  }
  const worst = worstPlace(context, shaft, broke, needs);
  const { now, was: then, allowed } = worst ?? {};
  if (!now || !then || !allowed || needs.any)
    return waits(say, needs, place, `${happened}; whether this one runs at clearly less stress`, { related });
  const numbers = `${worst!.where.trimStart()}${worst!.where && ' '}${analysis.tell(now, 3)} of torsional stress at greatest torque, ${analysis.tell(then, 3)} then`;
  return say.compare({
    place,
    related,
    capacity: allowed,
    demand: now,
    balance: { more: allowed, less: now, also: worst!.also },
    workings: [then, now],
    message: `${happened}; this one runs at ${numbers}.`,
    failMessage: `${happened}, which is evidence of fatigue and outweighs the diameter formula: ${numbers}, at most ${percent(ALLOWED)} of it is allowed. Find the cause, fit a thicker shaft or less ratio, or write whose fatigue calculation covers it.`,
    // The shaft that broke is none the thicker for what is written of it now.
    ...(shaft === broke.shaft
      ? {}
      : {
          routes: () =>
            strongerShafts(
              context,
              shaft,
              other => {
                const then = worstPlace(context, other, broke, new Needs());
                return then && then.allowed.si / then.now.si - 1;
              },
              'margin',
              undefined,
            ),
        }),
  });
}

/** The place of the shaft at which it runs least below the stress that broke the one before. */
function worstPlace(
  context: LineContext,
  shaft: Shaft,
  broke: Broken,
  needs: Needs,
): (StressedPlace & { readonly also: readonly Balance[] }) | undefined {
  const torque = greatestTorqueAt(context.analysis, shaft, needs);
  const then =
    shaft === broke.shaft ? torque : greatestTorqueAt(context.analysisOf(broke.line), broke.shaft, needs);
  // The half of it that is known is told, whatever the other half waits for.
  const [own, old] = [sizesOf(shaft, needs), sizesOf(broke.shaft, needs)];
  if (torque && own) needs.found(stressIn(weakestInTorsion(own), torque));
  if (then && old) needs.found(limitFrom(needs.found(stressIn(weakestInTorsion(old), then))));
  const places = placesOfTwo(shaft, broke.shaft, needs);
  if (!torque || !then || !places) return undefined;
  const stressed = places.map(({ where, ...of }) => {
    const before = stressIn(of.was, then);
    return { where, now: stressIn(of.now, torque), was: before, allowed: limitFrom(before) };
  });
  const margin = ({ now, allowed }: StressedPlace) => allowed.si / now.si;
  const worst = stressed.reduce((worst, one) => (margin(one) < margin(worst) ? one : worst));
  const also = stressed
    .filter(one => one !== worst)
    .map(({ now, allowed }) => ({ more: allowed, less: now }));
  return needs.found({ ...worst, also });
}

function limitFrom(before: Value<'pressure'>): Value<'pressure'> {
  return allowing(
    before,
    ALLOWED - 1,
    'stress allowed after the break',
    `${percent(ALLOWED)} of that at which the one before broke; chosen here, no source`,
  );
}

interface StressedPlace {
  readonly where: string;
  readonly now: Value<'pressure'>;
  readonly was: Value<'pressure'>;
  readonly allowed: Value<'pressure'>;
}

const stressIn = ({ size }: SizedSection, torque: Value<'torque'>): Value<'pressure'> =>
  torsionalShearStress({ torque: renamed(torque, 'greatest torque of the shaft', 'T'), ...size });
