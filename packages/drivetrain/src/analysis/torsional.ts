import {
  type CriticalsChart,
  criticalsChart,
  type ExcitationOrder,
  engineOrders,
  propellerOrders,
  type RunningRange,
  solveTorsional,
  type TorsionalCritical,
  type TorsionalGap,
  type TorsionalSolution,
  torsionalCriticals,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import { home, nameOf } from '../model/part.js';
import { isSaid } from '../model/reads.js';
import type { ShaftLine } from '../model/vessel.js';
import type { LineAnalysis } from './line.js';
import { ENGINE, PROPELLER, type TorsionalTrain, torsionalTrain } from './torsional-model.js';

/** The torsional system of a line, solved, with its criticals at engine speed. */
export interface TorsionalSystem {
  readonly train: TorsionalTrain;
  readonly solution: TorsionalSolution;
  readonly range: RunningRange;
  readonly criticals: readonly TorsionalCritical[];
  readonly chart: CriticalsChart;
}

/** Whether the spec says anything of the inertias and springs of a line. */
export function hasTorsionalData(line: ShaftLine): boolean {
  const { gear } = line;
  const prime = line.engine ?? line.motor;
  const turning = [
    prime?.inertia,
    gear ? (gear.inputInertia ?? gear.outputInertia) : line.propeller?.inertia,
  ];
  return turning.some(one => one !== undefined) && line.couplings.some(one => isSaid(() => one.stiffness));
}

/** Everything from engine to propeller as springs and inertias: frequencies, criticals and their chart, or what is missing. */
export function torsionalSystem(analysis: LineAnalysis, needs: Needs): TorsionalSystem | undefined {
  const { line } = analysis;
  const train = torsionalTrain(line, needs);
  const from = needs.take(analysis.idleSpeed);
  const to = needs.take(analysis.governedSpeed);
  const orders = ordersOf(line, needs);
  if (!train || !from || !to || needs.any) return undefined;
  const solved = solveTorsional(train.model);
  if (!solved.solved) return unsolved(line, solved, needs);
  const solution = { ...solved, modes: solved.modes.slice(0, train.frequencies) };
  const range = { from, to };
  const at = { ...range, at: ENGINE };
  return {
    train,
    solution,
    range,
    criticals: torsionalCriticals(solution, orders, at),
    chart: criticalsChart(solution, orders, at),
  };
}

/** Figures that are all there and yet cannot be solved are asked about: a slip in one of them is not to go unseen. */
function unsolved({ couplings }: ShaftLine, { faults }: TorsionalGap, needs: Needs): undefined {
  const soft = couplings.find(one => isSaid(() => one.stiffness));
  if (!soft) return undefined;
  return needs.miss(
    {
      what: `torsional stiffness that the natural frequencies can be computed from (${faults.join(' ')})`,
      host: home(soft),
      property: 'torsional stiffness',
    },
    soft.stiffness?.origin,
  );
}

/** Firing order of the engine, blade rate of the propeller. */
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
  return [...engineOrders({ cycle, cylinders: cylinders.si, multiples: 1, at: ENGINE }), ...byBlades];
}
