/** Maps numbers to places along an axis. */
export interface Scale {
  (value: number): number;
  /** Where the axis ends. */
  readonly ends: readonly [from: number, to: number];
  /** Round numbers within the axis, about so many. */
  readonly ticks: (about: number) => number[];
}

export interface ScaleSpec {
  /** What the axis shows; its ends are moved out to round numbers. */
  readonly domain: readonly [from: number, to: number];
  /** Where it stands on the page. */
  readonly range: readonly [from: number, to: number];
  /** About so many round numbers lie between the ends. */
  readonly nice: number;
  /** What lies beyond the ends is put at the end. */
  readonly clamp?: boolean;
}

/** A straight scale between round numbers: ones, twos or fives of a power of ten. */
export function linearScale({ domain, range, nice, clamp = false }: ScaleSpec): Scale {
  const [from, to] = rounded(domain, nice);
  const [start, end] = range;
  const scale = (value: number): number => {
    const share = to === from ? 0.5 : (value - from) / (to - from);
    return start + (end - start) * (clamp ? Math.min(1, Math.max(0, share)) : share);
  };
  return Object.assign(scale, {
    ends: [from, to] as const,
    ticks: (about: number) => ticksBetween(from, to, about),
  });
}

/** Rounding the ends may make the step larger, and then the ends again; it settles at once or never matters. */
function rounded([from, to]: readonly [number, number], about: number): readonly [number, number] {
  let ends: readonly [number, number] = [from, to];
  let last = 0;
  for (let turn = 0; turn < 10; turn++) {
    const step = stepBetween(ends[0], ends[1], about);
    if (step === last || !(step > 0)) break;
    ends = [Math.floor(ends[0] / step + FUZZ) * step, Math.ceil(ends[1] / step - FUZZ) * step];
    last = step;
  }
  return [clean(ends[0], last), clean(ends[1], last)];
}

function ticksBetween(from: number, to: number, about: number): number[] {
  const step = stepBetween(from, to, about);
  if (!(step > 0)) return from === to ? [from] : [];
  const first = Math.ceil(from / step - FUZZ);
  const count = Math.min(MOST_TICKS, Math.floor(to / step + FUZZ) - first + 1);
  return Array.from({ length: Math.max(0, count) }, (_, index) => clean((first + index) * step, step));
}

/** What rounding a division by a step may leave. */
const FUZZ = 1e-9;
const MOST_TICKS = 100;

/** One, two or five times a power of ten, whichever comes nearest to so many steps. */
function stepBetween(from: number, to: number, about: number): number {
  const raw = (to - from) / about;
  if (!(raw > 0) || !Number.isFinite(raw)) return 0;
  const power = 10 ** Math.floor(Math.log10(raw));
  const share = raw / power;
  const factor = share >= Math.sqrt(50) ? 10 : share >= Math.sqrt(10) ? 5 : share >= Math.sqrt(2) ? 2 : 1;
  return factor * power;
}

/** Without the tail that multiplying a decimal fraction leaves. */
function clean(value: number, step: number): number {
  if (!(step > 0)) return value;
  const digits = Math.max(0, Math.ceil(-Math.log10(step)) + 1);
  return digits <= 100 ? Number(value.toFixed(digits)) : value;
}
