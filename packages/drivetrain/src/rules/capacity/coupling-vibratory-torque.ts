import { FORCED_TORSION, given, percent, type Value } from '@tailshaft/mechanics';
import { hasExcitation } from '../../analysis/torsional-excitation.js';
import { responseInputs, type TorsionalStress, torsionalStressOf } from '../../analysis/torsional-stress.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import type { Coupling } from '../../model/shafting.js';
import { couplingRoutes } from '../coupling-routes.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { WITH_EXCITATION } from '../interface/torsional-specs.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER, PART_SHEET } from './sources.js';

const INFO: RuleInfo = {
  id: 'capacity/coupling-vibratory-torque',
  title: 'Vibratory torque is within the coupling’s continuous limit',
  mistakes: [],
  severity: 'warning',
  criterion: 'greatest vibratory torque from idle up against the continuous limit on the coupling sheet',
  source: PART_SHEET,
  manual:
    'Rubber turns vibratory torque into heat, so a coupling well within its mean torque may burn at a ' +
    'critical speed. Where the spec declares the excitation, the damped response is computed over the ' +
    'running range, and the greatest vibratory torque in each coupling is compared with its "vibratory ' +
    'torque at most". A softer coupling passes less above its resonance; one with more damping passes less ' +
    'at resonance.',
  caution:
    `${DEFER} Even firing only. The limit on the sheet may fall with frequency and with the temperature of the ` +
    'space.',
  limitOf: 'the maker’s limit',
  examples: examples(() => ({
    failing: changed(WITH_EXCITATION, [
      'vibratory torque at most 480 N.m',
      'vibratory torque at most 150 N.m',
    ]),
    passing: WITH_EXCITATION,
    cannotTell: changed(WITH_EXCITATION, ['  excitation order 3 torque 620 N.m\n', '']),
  })),
};

export const couplingVibratoryTorque: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> | undefined {
  const { line, analysis } = context;
  if (!line.propeller || !hasExcitation(analysis)) return undefined;
  return each(line.couplings, one => (one.vibratoryTorque ? judge(context, one) : undefined));
}

function judge(context: LineContext, coupling: Coupling): Verdict | undefined {
  const { line, analysis } = context;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const name = nameOf(coupling);
  const place = coupling.nameOrigin ?? coupling.origin;
  const allowed = needs.fact(coupling.vibratoryTorque, {
    what: `vibratory torque limit of ${name}`,
    host: home(coupling),
    property: 'vibratory torque at most',
  });
  const stress = needs.take(torsionalStressOf(analysis));
  if (stress && !stress.excited) needs.take({ value: undefined, missing: stress.open });
  const worst = stress && greatestIn(stress, coupling);
  if (!allowed || !worst) {
    return needs.any
      ? waits(say, needs, place, `${line.name}: whether vibratory torque is within the limit of ${name}`)
      : undefined;
  }
  const numbers = `vibratory torque in ${name} reaches ${analysis.tell(worst.torque, 3)} at ${analysis.tell(worst.engineSpeed, 3)} engine speed; its continuous limit is ${analysis.tell(allowed, 3)}`;
  return say.compare({
    place,
    capacity: allowed,
    demand: worst.torque,
    workings: [worst.torque],
    message: `${line.name}: ${numbers}.`,
    failMessage: `${line.name}: ${numbers}: ${percent(worst.torque.si / allowed.si - 1)} too much. It overheats there: fit another coupling, or bar the speed with its maker’s consent.`,
    related: [{ at: coupling.vibratoryTorque!.origin, message: 'its vibratory torque limit' }],
    routes: () =>
      couplingRoutes(context, coupling, (after, fitted) => outlook(torsionalStressOf(after).value, fitted)),
  });
}

function outlook(stress: TorsionalStress | undefined, coupling: Coupling) {
  const worst = stress && greatestIn(stress, coupling);
  const allowed = coupling.vibratoryTorque?.value;
  if (!worst || !allowed) return undefined;
  const margin = allowed.si / worst.torque.si - 1;
  return { margin, words: `${percent(margin)} margin of vibratory torque` };
}

function greatestIn(stress: TorsionalStress, coupling: Coupling) {
  const own = stress.couplings.filter(one => one.coupling === coupling);
  if (own.length === 0 || !stress.excited || !stress.system) return undefined;
  const worst = own.reduce((a, b) => (b.torque > a.torque ? b : a));
  const torque: Value<'torque'> = {
    label: 'vibratory torque of the coupling',
    symbol: 'T',
    dimension: 'torque',
    si: worst.torque,
    working: {
      name: 'vibratory torque by damped forced response',
      text: '(K − ω² J + iωC) θ = T for each order, T = |k + iωC| |Δθ|, orders added',
      inputs: responseInputs(stress.system, stress.excited),
      source: FORCED_TORSION,
      range: [],
      notes: [`Damped by ${stress.excited.dampedBy.join(', ')}.`],
    },
  };
  const engineSpeed = given('engine speed', 'n', 'rotational speed', worst.engineSpeed, {
    assumed: 'where it is greatest in the running range',
  });
  return { torque, engineSpeed };
}
