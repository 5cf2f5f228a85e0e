import { formatValue, percent, type Value } from '@tailshaft/mechanics';
import { fuelWords } from '../analysis/fuel-words.js';
import { type RunningProfile, runningProfile } from '../analysis/running-profile.js';
import type { DerivedChange } from './change.js';
import { LOST, SAME, shareOf, shareWords } from './derived.js';
import type { Side } from './side.js';

interface Fuel {
  readonly what: string;
  readonly weight: number;
  readonly value: Value | undefined;
  /** As a share, either way. */
  readonly uncertainty: number | undefined;
}

/** What the running profile burns before and after, arrangement by arrangement. */
export function fuelChanges(before: Side, after: Side): DerivedChange[] {
  return [...after.arrangements.keys()].flatMap(key => {
    if (!before.arrangements.has(key)) return [];
    const [was, is] = [fuelsOf(before, key), fuelsOf(after, key)];
    // A speed that only one profile has is no figure that was lost: the duty says that it is another.
    const told = [...new Set([...was.keys(), ...is.keys()])].filter(
      what => !atSpeed.test(what) || (was.has(what) && is.has(what)),
    );
    return told.flatMap(what => fuelChange(key, was.get(what), is.get(what)));
  });
}

/** The same of one side, in words; what cannot be told is left out. */
export function fuelsTold(
  side: Side,
): { readonly key: string; readonly what: string; readonly words: string }[] {
  return [...side.arrangements.keys()].flatMap(key =>
    [...fuelsOf(side, key).values()].flatMap(fuel => {
      const words = wordsOf(fuel);
      return words === undefined ? [] : [{ key, what: fuel.what, words }];
    }),
  );
}

const atSpeed = / an hour at /;

function fuelsOf(side: Side, key: string): ReadonlyMap<string, Fuel> {
  const profile = profileOf(side, key);
  if (!profile) return new Map();
  const fuels: Fuel[] = [
    {
      what: 'fuel a year, running profile',
      weight: 40,
      value: profile.perYear,
      uncertainty: profile.uncertainty,
    },
    {
      what: 'fuel a nautical mile, running profile',
      weight: 41,
      value: profile.perMile,
      uncertainty: profile.uncertainty,
    },
    ...profile.runs.map(({ vesselSpeed, flow, uncertainty }) => ({
      what: `fuel an hour at ${formatValue(vesselSpeed)}`,
      weight: 42,
      value: flow,
      uncertainty,
    })),
  ];
  return new Map(fuels.map(one => [one.what, one]));
}

function profileOf(side: Side, key: string): RunningProfile | undefined {
  const { lines } = side.arrangements.get(key)!;
  const analyses = new Map([...side.lines.values()].map(one => [one.line, one.analysis]));
  return runningProfile(lines, side.vessel, line => analyses.get(line)!);
}

function fuelChange(key: string, was: Fuel | undefined, is: Fuel | undefined): DerivedChange[] {
  const { what, weight } = (is ?? was)!;
  const [before, after] = [wordsOf(was), wordsOf(is)];
  const share = shareOf(was?.value, is?.value);
  // Known as well and as much as before, or on neither side.
  if (before === after && (share === undefined || Math.abs(share) < SAME)) return [];
  return [
    {
      kind: 'derived',
      what,
      subject: key,
      before,
      after,
      ...(share === undefined ? {} : { share }),
      ...(was?.value ? { valueBefore: was.value } : {}),
      ...(is?.value ? { valueAfter: is.value } : {}),
      weight: weight - (is?.value ? 0 : LOST) + (share === undefined ? 0 : 0.9 / (1 + Math.abs(share))),
      words: `${what}: ${before ?? 'not known'} → ${after ?? 'not known'}${shareWords(share)}`,
    },
  ];
}

/** `12,300 L ±5 %`. */
function wordsOf(fuel: Fuel | undefined): string | undefined {
  return fuel?.value && `${fuelWords(fuel.value)} ±${percent(fuel.uncertainty!)}`;
}
