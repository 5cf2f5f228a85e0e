import type { TorsionalModel } from './torsional-model.js';

/** Signed speed of every inertia per unit speed of the reference, or what keeps the train from turning as one. */
export interface TorsionalSpeeds {
  readonly reference: string;
  readonly speeds: ReadonlyMap<string, number>;
  readonly faults: readonly string[];
}

/** Two ways round a loop agree when they give one speed to this relative precision (tooth-count ratios do exactly). */
const SAME_SPEED = 1e-9;

/** Follows shafts (same speed) and gears (ratio and sense) outward from the reference. Needs complete data. */
export function torsionalSpeeds(model: TorsionalModel): TorsionalSpeeds {
  const reference = model.reference ?? model.inertias[0]!.name;
  const links = speedLinks(model);
  const speeds = new Map([[reference, 1]]);
  const faults: string[] = [];
  const disagreeing = new Set<string>();
  const queue = [reference];
  for (let at = queue.shift(); at !== undefined; at = queue.shift()) {
    for (const { to, factor, element } of links.get(at) ?? []) {
      const speed = speeds.get(at)! * factor;
      const before = speeds.get(to);
      if (before === undefined) {
        speeds.set(to, speed);
        queue.push(to);
      } else if (Math.abs(before - speed) > SAME_SPEED * Math.abs(before)) {
        disagreeing.add(element);
      }
    }
  }
  for (const element of disagreeing)
    faults.push(`${element} closes a loop in which ratios or senses disagree, so the train would be locked.`);
  for (const { name } of model.inertias)
    if (!speeds.has(name)) faults.push(`${name} is not connected to ${reference} by any shaft or gear.`);
  return { reference, speeds, faults };
}

interface SpeedLink {
  readonly to: string;
  readonly factor: number;
  readonly element: string;
}

function speedLinks({ shafts, gears = [] }: TorsionalModel): Map<string, SpeedLink[]> {
  const links = new Map<string, SpeedLink[]>();
  const join = (from: string, to: string, factor: number, element: string) => {
    links.set(from, [...(links.get(from) ?? []), { to, factor, element }]);
    links.set(to, [...(links.get(to) ?? []), { to: from, factor: 1 / factor, element }]);
  };
  for (const { name, from, to } of shafts) join(from, to, 1, name);
  for (const { name, driver, driven, ratio, sense } of gears)
    join(driver, driven, (sense === 'opposite' ? -1 : 1) / ratio!.si, name);
  return links;
}
