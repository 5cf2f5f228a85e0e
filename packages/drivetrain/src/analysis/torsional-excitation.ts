import {
  couplingDamping,
  type Damper,
  engineDamping,
  propellerDampingArcher,
  relativeDampingOfMagnifier,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import { home, nameOf } from '../model/part.js';
import type { Excitation } from '../model/torsion.js';
import type { LineAnalysis } from './line.js';
import type { TorsionalSystem } from './torsional.js';
import { ENGINE, PROPELLER } from './torsional-model.js';

/** A declared torque that swings with the turning of one part. */
export interface ExcitedOrder {
  readonly label: string;
  /** Oscillations per turn of the inertia that it acts on. */
  readonly order: number;
  readonly inertia: string;
  readonly torque: Value<'torque'>;
}

/** What shakes the line, and what calms it: declared figures only. */
export interface Excited {
  readonly orders: readonly ExcitedOrder[];
  /** Torque of an order with the propeller shaft at this share of its rated speed: that of the propeller goes with the square. */
  readonly torqueAt: (order: ExcitedOrder, share: number) => number;
  /** Dampers at a frequency and a propeller shaft speed, both rad/s. */
  readonly dampersAt: (angular: number, shaftSpeed: number) => Damper[];
  /** Where the damping comes from, in words. */
  readonly dampedBy: readonly string[];
}

/** Whether the spec says anything of torques that shake the line. */
export function hasExcitation({ line }: LineAnalysis): boolean {
  return [line.engine, line.propeller].some(one => (one?.excitations ?? []).length > 0);
}

/**
 * Torque of the firing order always, that of the blade rate where it meets a natural frequency in the running range
 * or near it, and every other order that is declared; damping of coupling, engine and propeller as far as declared.
 */
export function excitationOf(
  analysis: LineAnalysis,
  system: TorsionalSystem,
  needs: Needs,
): Excited | undefined {
  const { line } = analysis;
  const rated = needs.take(analysis.rated);
  const load = rated && analysis.loads(rated).shaft;
  const orders: ExcitedOrder[] = [];
  for (const [part, inertia] of [
    [line.engine, ENGINE],
    [line.propeller, PROPELLER],
  ] as const) {
    if (!part) continue;
    for (const one of firstOfEach(part.excitations ?? [])) {
      const torque = needs.fact(one.torque, {
        what: `torque of order ${one.order.si} of ${nameOf(part)}`,
        host: one.origin,
        property: 'torque',
      });
      const label = inertia === ENGINE ? `engine order ${one.order.si}` : `propeller order ${one.order.si}`;
      if (torque) orders.push({ label, order: one.order.si, inertia, torque });
    }
    for (const asked of ordersAsked(system, inertia)) {
      if ((part.excitations ?? []).some(one => one.order.si === asked)) continue;
      needs.miss({
        what: `excitation torque of ${nameOf(part)} at order ${asked}`,
        host: home(part),
        property: 'excitation order',
      });
    }
  }
  const damping = dampingOf(analysis, system, load, needs);
  if (!load || !damping || needs.any) return undefined;
  return {
    orders,
    torqueAt: ({ inertia, torque }, share) => torque.si * (inertia === PROPELLER ? share ** 2 : 1),
    ...damping,
  };
}

/** Share of the running range on either side in which a critical of the blade rate still asks for its torque. */
const NEAR = 0.2;

function ordersAsked({ criticals }: TorsionalSystem, inertia: string): number[] {
  const own = criticals.filter(one => one.order.at === inertia);
  const near = own.filter(
    one =>
      one.order.kind === 'engine firing' ||
      (one.place && (one.place.position === 'inside' || one.place.margin < NEAR)),
  );
  return [...new Set(near.map(one => one.order.order))];
}

/** What is written at the part stands before what its catalogue entry says of the same order. */
function firstOfEach(excitations: readonly Excitation[]): Excitation[] {
  return excitations.filter(
    (one, at) => excitations.findIndex(other => other.order.si === one.order.si) === at,
  );
}

/** Only what is declared calms: leaving one out makes the computed stress larger, never smaller. */
function dampingOf(
  { line }: LineAnalysis,
  { train, solution }: TorsionalSystem,
  load: { readonly speed: Value<'rotational speed'>; readonly torque: Value<'torque'> } | undefined,
  needs: Needs,
): Pick<Excited, 'dampersAt' | 'dampedBy'> | undefined {
  const makers: ((angular: number, shaftSpeed: number) => Damper)[] = [];
  const dampedBy: string[] = [];
  for (const coupling of line.couplings) {
    const [shaft] = train.springs.get(coupling) ?? [];
    const stiffness = shaft && coupling.stiffness?.value?.si;
    if (!shaft || !stiffness) continue;
    const relative = coupling.relativeDamping?.value;
    const magnifier = coupling.magnifier?.value;
    const psi = relative?.si ?? (magnifier && relativeDampingOfMagnifier({ magnifier }).si);
    if (psi === undefined) continue;
    dampedBy.push(`${nameOf(coupling)} (relative damping ${Number(psi.toPrecision(3))})`);
    makers.push(omega => ({ shaft, damping: couplingDamping.spec.compute({ psi, k: stiffness, omega }) }));
  }
  const M = line.engine?.magnifier?.value?.si;
  const J = solution.referred && train.model.inertias.find(one => one.name === ENGINE)?.inertia?.si;
  if (M && J) {
    dampedBy.push(`the engine (magnifier ${M})`);
    makers.push(omega => ({ inertia: ENGINE, damping: engineDamping.spec.compute({ omega, J, M }) }));
  }
  const a = line.propeller?.dampingFactor?.value?.si;
  if (a && load) {
    dampedBy.push(`the propeller (factor ${a})`);
    makers.push((_, shaftSpeed) => ({
      inertia: PROPELLER,
      damping: propellerDampingArcher.spec.compute({
        a,
        Q: load.torque.si * (shaftSpeed / load.speed.si) ** 2,
        Omega: shaftSpeed,
      }),
    }));
  }
  if (makers.length === 0) {
    const soft = line.couplings.find(one => train.springs.has(one));
    if (!soft) return undefined;
    return needs.miss({
      what: `damping of ${nameOf(soft)}`,
      host: home(soft),
      property: 'dynamic magnifier',
    });
  }
  return { dampersAt: (angular, shaftSpeed) => makers.map(make => make(angular, shaftSpeed)), dampedBy };
}
