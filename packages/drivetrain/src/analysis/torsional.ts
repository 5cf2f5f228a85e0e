import {
  type CriticalsChart,
  criticalsChart,
  type ExcitationOrder,
  engineOrders,
  given,
  propellerInertiaInWater,
  propellerOrders,
  renamed,
  shaftTorsionalStiffness,
  shearModulus,
  solveTorsional,
  TORSIONAL_ENTRAINED_WATER,
  type TorsionalCritical,
  type TorsionalModel,
  type TorsionalSolution,
  torsionalCriticals,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Quantity } from '../model/fact.js';
import { home, nameOf, type Part } from '../model/part.js';
import type { Shaft } from '../model/shafting.js';
import type { ShaftLine } from '../model/vessel.js';
import { inputCouplings } from './couplings.js';
import type { LineAnalysis } from './line.js';
import { gradeOf, shaftSize, wantedOf } from './shaft-strength.js';
import { gearRatio } from './speeds.js';

/** The torsional system of a line, solved, with its criticals at engine speed. */
export interface TorsionalSystem {
  readonly solution: TorsionalSolution;
  readonly criticals: readonly TorsionalCritical[];
  readonly chart: CriticalsChart;
}

const ENGINE = 'engine';
const GEAR_INPUT = 'gear input';
const GEAR_OUTPUT = 'gear output';
const PROPELLER = 'propeller';

/** Whether the spec says anything of the inertias and springs of a line. */
export function hasTorsionalData(line: ShaftLine): boolean {
  return (
    [line.engine?.inertia ?? line.motor?.inertia, line.gear?.inputInertia ?? line.gear?.outputInertia].every(
      one => one !== undefined,
    ) && inputCouplings(line).some(one => one.stiffness !== undefined)
  );
}

/** Engine, damper, gear, shaft and propeller in a row: frequencies, criticals and their chart, or what is missing. */
export function torsionalSystem(analysis: LineAnalysis, needs: Needs): TorsionalSystem | undefined {
  const { line } = analysis;
  const model = torsionalModel(line, needs);
  const from = needs.take(analysis.idleSpeed);
  const to = needs.take(analysis.governedSpeed);
  const orders = ordersOf(line, needs);
  if (!model || !from || !to || needs.any) return undefined;
  const solution = solveTorsional(model);
  if (!solution.solved) return undefined;
  const range = { from, to, at: ENGINE };
  return {
    solution,
    criticals: torsionalCriticals(solution, orders, range),
    chart: criticalsChart(solution, orders, range),
  };
}

function torsionalModel(line: ShaftLine, needs: Needs): TorsionalModel | undefined {
  const prime = line.engine ?? line.motor;
  const { gear, propeller } = line;
  const shaft = line.shafts.at(-1);
  if (!prime || !gear || !propeller || !shaft || line.transfers.length > 0) return undefined;
  const damper = inputCouplings(line).find(one => one.stiffness);
  const J = (part: Part, fact: Quantity<'moment of inertia'> | undefined, property: string) =>
    needs.fact(fact, { what: `${property} of ${nameOf(part)}`, host: home(part), property });
  const spring =
    damper &&
    needs.fact(damper.stiffness, {
      what: `torsional stiffness of ${nameOf(damper)}`,
      host: home(damper),
      property: 'torsional stiffness',
    });
  const engine = J(prime, prime.inertia, 'inertia');
  const input = J(gear, gear.inputInertia, 'input inertia');
  const output = J(gear, gear.outputInertia, 'output inertia');
  const dry = J(propeller, propeller.inertia, 'inertia');
  const ratio = needs.take(gearRatio(gear, 'ahead'))?.value;
  const stiffness = line.shafts.map(one => shaftStiffness(one, needs));
  if (!engine || !input || !output || !dry || !ratio || !spring || stiffness.some(one => !one))
    return undefined;
  const joints = line.shafts.map((_, index) =>
    index === line.shafts.length - 1 ? PROPELLER : `coupling behind shaft ${index + 1}`,
  );
  const none = given('inertia of the coupling', 'J', 'moment of inertia', 0, {
    assumed: 'left out: small against gear and propeller',
  });
  return {
    inertias: [
      { name: ENGINE, inertia: engine },
      { name: GEAR_INPUT, inertia: input },
      { name: GEAR_OUTPUT, inertia: output },
      ...joints.slice(0, -1).map(name => ({ name, inertia: none })),
      {
        name: PROPELLER,
        inertia: propellerInertiaInWater({
          I: renamed(dry, 'propeller inertia', 'I'),
          w: TORSIONAL_ENTRAINED_WATER,
        }),
      },
    ],
    shafts: [
      { name: 'damper', from: ENGINE, to: GEAR_INPUT, stiffness: spring },
      ...line.shafts.map((_, index) => ({
        name: `shaft ${index + 1}`,
        from: index === 0 ? GEAR_OUTPUT : joints[index - 1]!,
        to: joints[index]!,
        stiffness: stiffness[index]!,
      })),
    ],
    gears: [{ name: nameOf(gear), driver: GEAR_INPUT, driven: GEAR_OUTPUT, ratio, sense: 'same' }],
    reference: ENGINE,
  };
}

function shaftStiffness(shaft: Shaft, needs: Needs): Value<'torsional stiffness'> | undefined {
  const size = shaftSize(shaft, needs);
  const length = needs.fact(shaft.length, {
    what: 'length of the shaft',
    host: shaft.origin,
    property: 'length',
  });
  const grade = gradeOf(shaft, needs);
  const declared = grade?.shearModulus?.value;
  const young =
    declared || !grade ? undefined : needs.fact(grade.youngsModulus, wantedOf(grade, 'elastic modulus'));
  const G =
    declared ??
    (young &&
      shearModulus({
        youngsModulus: young,
        poissonRatio: given('Poisson’s ratio', 'ν', 'number', 0.3, { assumed: 'as for steel' }),
      }));
  if (!size || !length || !G) return undefined;
  return shaftTorsionalStiffness({ G, d: size.outsideDiameter, di: size.bore, L: length });
}

/** Firing order of the engine with its first multiple, blade rate of the propeller. */
function ordersOf(line: ShaftLine, needs: Needs): ExcitationOrder[] {
  const { engine, propeller } = line;
  const blades = propeller?.blades?.value?.si;
  const byBlades = blades ? propellerOrders(blades, 1, PROPELLER) : [];
  if (!engine) return byBlades;
  const cylinders = needs.fact(engine.cylinders, {
    what: `cylinders of ${nameOf(engine)}`,
    host: home(engine),
    property: 'cylinders',
  });
  const cycle = needs.fact(engine.cycle, {
    what: `cycle of ${nameOf(engine)}`,
    host: home(engine),
    property: 'cycle',
  });
  if (!cylinders || !cycle) return byBlades;
  const firing = cycle === 'four-stroke' ? cylinders.si / 2 : cylinders.si;
  return [...engineOrders({ cycle, cylinders: cylinders.si, highest: firing, at: ENGINE }), ...byBlades];
}
