import { outsideRange, type Value, valuesBehind } from '@tailshaft/mechanics';

/** The part of what a check says that can hold a number, or words about one. */
interface Told {
  readonly message: string;
  readonly capacity?: Value;
  readonly demand?: Value;
  readonly workings?: readonly Value[];
  readonly steps?: unknown;
  readonly routes?: unknown;
}

/**
 * Whether a judgement stands on numbers. A zero where a thickness should be, or a figure out of all proportion, gives
 * results that are no number, and no comparison with such a result is true or false: it must not hold, nor fail.
 */
export function isUsable(said: Told): boolean {
  return numbersOf(said).every(one => Number.isFinite(one.si)) && !NO_NUMBER.test(said.message);
}

/** The same said without the numbers that are none: which declared figure makes it so, where that can be seen. */
export function withoutNumber<T extends Told>(said: T): Omit<T, 'capacity' | 'demand' | 'steps' | 'routes'> {
  const { capacity: _, demand: __, steps: ___, routes: ____, ...rest } = said;
  const lead = /^[^:.]{1,40}: /.exec(said.message)?.[0] ?? '';
  const values = numbersOf(said);
  const declared = new Set(
    values
      .flatMap(value => [...valuesBehind(value)])
      .filter(one => !one.working && (one.si === 0 || !Number.isFinite(one.si)))
      .map(one => `${one.label} is ${one.written ?? (one.si === 0 ? 'zero' : 'no number')}`),
  );
  const broken = new Set(values.filter(one => !Number.isFinite(one.si)).flatMap(outsideRange));
  const why = declared.size > 0 ? declared : broken;
  const because = why.size > 0 ? `: ${[...why].slice(0, 3).join('; ')}` : '';
  return {
    ...rest,
    message: `${lead}the declared figures give no usable result${because}. Look for a zero or implausible figure.`,
  };
}

const NO_NUMBER = /\bNaN\b|Infinity|no finite value/;

function numbersOf({ capacity, demand, workings = [] }: Told): Value[] {
  return [capacity, demand, ...workings].filter(one => one !== undefined);
}
