import type { TorsionalModel } from './torsional-model.js';

/** Vibratory torque of one element in a mode, N·m per rad of the unit inertia. */
export interface ElementTorque {
  readonly element: string;
  readonly kind: 'shaft' | 'gear';
  /** In the shaft, or at the driver of a gear, at its own speed; positive when it drives the far end forward. */
  readonly torque: number;
}

/**
 * Torque in every shaft, k (θ_from − θ_to), and through every gear: the inertia torques of everything on its driver's
 * side, at the driver's speed. A gear inside a loop shares its load with another path that rigid teeth cannot tell,
 * and is left out.
 */
export function elementTorques(
  model: TorsionalModel,
  speeds: ReadonlyMap<string, number>,
  amplitudes: ReadonlyMap<string, number>,
  angular: number,
): ElementTorque[] {
  const shafts = model.shafts.map(
    ({ name, from, to, stiffness }): ElementTorque => ({
      element: name,
      kind: 'shaft',
      torque: stiffness!.si * (amplitudes.get(from)! - amplitudes.get(to)!),
    }),
  );
  const gears = (model.gears ?? []).flatMap(({ name, driver, driven }): ElementTorque[] => {
    const side = sideOf(model, driver, name);
    if (side.has(driven)) return [];
    const torque = gearTorque(model, speeds, amplitudes, angular, side, driver);
    return torque === undefined ? [] : [{ element: name, kind: 'gear', torque }];
  });
  return [...shafts, ...gears];
}

/** A held inertia takes an unknown reaction, so the side without one is summed. */
function gearTorque(
  model: TorsionalModel,
  speeds: ReadonlyMap<string, number>,
  amplitudes: ReadonlyMap<string, number>,
  angular: number,
  driverSide: ReadonlySet<string>,
  driver: string,
): number | undefined {
  const heldOnDriverSide = model.inertias.some(one => one.held && driverSide.has(one.name));
  const heldBeyond = model.inertias.some(one => one.held && !driverSide.has(one.name));
  if (heldOnDriverSide && heldBeyond) return undefined;
  const summed = model.inertias
    .filter(one => driverSide.has(one.name) !== heldOnDriverSide)
    .reduce(
      (sum, one) => sum + (one.inertia?.si ?? 0) * amplitudes.get(one.name)! * speeds.get(one.name)!,
      0,
    );
  return ((heldOnDriverSide ? -1 : 1) * summed * angular ** 2) / speeds.get(driver)!;
}

/** Every inertia that can be reached from here without passing the cut element. */
function sideOf({ shafts, gears = [] }: TorsionalModel, start: string, cut: string): Set<string> {
  const edges = [
    ...shafts.map(one => ({ name: one.name, a: one.from, b: one.to })),
    ...gears.map(one => ({ name: one.name, a: one.driver, b: one.driven })),
  ].filter(edge => edge.name !== cut);
  const reached = new Set<string>();
  const queue = [start];
  for (let at = queue.pop(); at !== undefined; at = queue.pop()) {
    if (reached.has(at)) continue;
    reached.add(at);
    for (const { a, b } of edges) {
      if (a === at) queue.push(b);
      if (b === at) queue.push(a);
    }
  }
  return reached;
}
