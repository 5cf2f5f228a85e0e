import { smallCraftSafetyFactor, type Value } from '@tailshaft/mechanics';
import { keptOf } from '../../analysis/kept.js';
import type { Load } from '../../analysis/loads.js';
import { placesOfTwo, type SizedSection, sizesOf, weakestInTorsion } from '../../analysis/shaft-sections.js';
import { gradeOf, ratedShaftLoad, wantedOf } from '../../analysis/shaft-strength.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Shaft } from '../../model/shafting.js';
import { changed, REPOWER } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { strongerShafts } from './shaft-routes.js';
import { DEFER, SHAFT_DIAMETER } from './sources.js';

const TWO_GRADES = changed(
  REPOWER,
  [
    'shaft material high-strength-stainless {',
    `shaft material nickel-alloy {
  source "Mill certificate 91" dated 2024-03-03
  torsional yield 67000 psi
}

shaft material high-strength-stainless {`,
  ],
  ['retain shaft', 'replace shaft { material high-strength-stainless  diameter 65 mm }'],
  [
    'material high-strength-stainless  diameter 65 mm [drawing]',
    'material nickel-alloy  diameter 65 mm [drawing]',
  ],
);

const INFO: RuleInfo = {
  id: 'shafting/material-changed',
  title: 'A shaft of another grade at the same diameter is no weaker',
  mistakes: ['L04'],
  severity: 'warning',
  estimate: USUAL_ESTIMATE,
  criterion: 'factor against torsional yield of the new grade against the old one, at the proposed power',
  source: SHAFT_DIAMETER,
  manual:
    'A new bar of the old diameter looks like the old shaft and may carry a third of its torque: grades differ ' +
    'that much in torsional yield. Where the grade changes and the diameter does not grow, the factors of both ' +
    'are compared under the load of the new arrangement. Stiffness and corrosion change with the grade as well: ' +
    'whirling speed, bearings, and contact with propeller and hull metals. Use the old grade or a stronger one, ' +
    'or a thicker bar.',
  caution: `${DEFER} A stronger grade may be more prone to crevice corrosion in a tube with still water.`,
  examples: examples(() => ({
    failing: changed(TWO_GRADES, ['torsional yield 67000 psi', 'torsional yield 95000 psi']),
    passing: TWO_GRADES,
    cannotTell: changed(TWO_GRADES, ['  torsional yield 67000 psi\n', '']),
  })),
};

export const materialChanged: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis } = context;
  const shaft = line.shafts.at(-1);
  const old = shaft && (line.before?.shafts.at(-1) ?? keptOf(shaft, line, context.vessel)?.was);
  if (!shaft || !old) return undefined;
  const [now, then] = [shaft.material?.value, old.material?.value];
  if (now === then) return undefined;
  const say = sayFor(INFO, line.path);
  const place = shaft.material?.origin ?? shaft.origin;
  const needs = new Needs();
  for (const [of, which] of [
    [shaft, ''],
    [old, ' of before'],
  ] as const)
    needs.fact(of.material, { what: `material of the shaft${which}`, host: of.origin, property: 'material' });
  const load = ratedShaftLoad(analysis, shaft, needs);
  const worst = worstPlace(shaft, old, load, needs);
  if (!worst || needs.any) return waits(say, needs, place, `${line.name}: whether the new grade is weaker`);
  const { after, before, also } = worst;
  const numbers = `${then} ${worst.was.written}${worst.where} before, factor ${before.si.toFixed(1)}; ${now} ${worst.now.written} now, factor ${after.si.toFixed(1)} under the same load`;
  return say.compare({
    place,
    capacity: after,
    demand: before,
    balance: { more: after, less: before, also },
    workings: [after, before],
    message: `${line.name}: ${numbers}. Stiffness and corrosion differ too.`,
    failMessage: `${line.name}: ${numbers}: the new shaft is weaker. Use the old grade, a stronger one or a thicker bar, or accept it with the margin of its diameter.`,
    related: [{ at: old.material!.origin, message: 'the grade before' }],
    routes: () =>
      strongerShafts(
        context,
        shaft,
        other => {
          const place = worstPlace(other, old, load, new Needs());
          return place && place.after.si / place.before.si - 1;
        },
        'factor over the old one',
      ),
  });
}

/** The place of the new shaft whose factor compares worst with that of the old one there, with the other places. */
function worstPlace(shaft: Shaft, old: Shaft, load: Load | undefined, needs: Needs) {
  // The half of it that is known is told, whatever the other half waits for.
  for (const one of [shaft, old]) {
    const sizes = sizesOf(one, new Needs());
    if (sizes) factorOf(one, weakestInTorsion(sizes), load, needs);
  }
  const factors = placesOfTwo(shaft, old, needs)?.map(one => ({
    ...one,
    after: factorOf(shaft, one.now, load, needs),
    before: factorOf(old, one.was, load, needs),
  }));
  const known = factors?.flatMap(({ after, before, ...one }) =>
    after && before ? [{ ...one, after, before }] : [],
  );
  if (!known || known.length < factors!.length) return undefined;
  const worst = known.reduce((worst, one) =>
    one.after.si / one.before.si < worst.after.si / worst.before.si ? one : worst,
  );
  const also = known.filter(one => one !== worst).map(({ after, before }) => ({ more: after, less: before }));
  return { ...worst, also };
}

function factorOf(
  shaft: Shaft,
  { size }: SizedSection,
  load: Load | undefined,
  needs: Needs,
): Value<'number'> | undefined {
  const grade = gradeOf(shaft, needs);
  const torsionalYield = grade && needs.fact(grade.torsionalYield, wantedOf(grade, 'torsional yield'));
  if (!torsionalYield || !load) return undefined;
  return needs.found(
    smallCraftSafetyFactor({ ...size, torsionalYield, power: load.power, speed: load.speed }),
  );
}
