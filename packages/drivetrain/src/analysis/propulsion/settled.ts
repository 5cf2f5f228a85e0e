import { given, type Outcome, type Value } from '@tailshaft/mechanics';
import { aside } from '../../model/reads.js';
import { assumedOf } from '../efficiencies.js';
import type { Case } from './case.js';
import { fullThrottleTable } from './engine-table.js';
import type { HullFlow } from './hull-flow.js';

/** Wake and thrust deduction depend on the speed that they help to find: repeated until it stays. */
export function settled<T extends { readonly vesselSpeed: Value<'speed'> }>(
  one: Case,
  what: string,
  first: number,
  find: (flow: HullFlow) => Outcome<T>,
): Outcome<T> {
  const key = `${what} ${inputsOf(one)}`;
  const at = (V: number) =>
    find(one.flow(given('vessel speed for the flow', 'V', 'speed', V, { assumed: TRIED })));
  const known = SETTLED.get(key);
  if (known !== undefined) return at(known);
  let V = first;
  let found = at(V);
  for (let turn = 0; turn < 8 && found.applies; turn++) {
    const next = found.vesselSpeed.si;
    if (Math.abs(next - V) < 1e-4 * next) break;
    V = next;
    found = at(V);
  }
  if (SETTLED.size >= MOST_SETTLED) SETTLED.clear();
  SETTLED.set(key, V);
  return found;
}

const TRIED = 'tried until the balance gives it back to one part in ten thousand';

/** Speed of the last turn for inputs already seen, so that a keystroke elsewhere does not repeat the others. */
const SETTLED = new Map<string, number>();
const MOST_SETTLED = 500;

/** Every number that a balance depends on. */
function inputsOf({ vessel, curve, rated, ratio, available, screws, method, line }: Case): string {
  const { diameter, pitch, blades, areaRatio } = curve.geometry;
  const numbers = [diameter, pitch, blades, areaRatio, rated.speed, rated.power, ratio, available].map(
    value => value.si,
  );
  const table = fullThrottleTable(line, vessel, rated);
  const engine = table?.speeds.map(speed => `${speed} ${table.torqueAt(speed)}`) ?? [];
  // A key that looks at everything: the balance itself rests on what it then reads.
  const hull = aside(() =>
    JSON.stringify(vessel.hull, (key, value) => (key === 'origin' ? undefined : value)),
  );
  const correlation = assumedOf(vessel, 'resistance correlation', 'ratio')?.si ?? 1;
  return [method, curve.series.name, screws, correlation, ...numbers, ...engine, hull].join(' ');
}
