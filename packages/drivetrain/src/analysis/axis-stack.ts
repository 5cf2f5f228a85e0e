import { given, lengthLeftOver, stackLength, type Value } from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import { home, nameOf } from '../model/part.js';
import { isSaid } from '../model/reads.js';
import type { ShaftLine } from '../model/vessel.js';

/** A direction square to the shaft line in which engine and gears are stacked. */
export interface Across {
  readonly axis: 'axisHeight' | 'axisOffset';
  readonly axisWords: string;
  readonly step: 'outputDrop' | 'outputOffset';
  readonly stepWords: string;
  /** What a step does to the place of the output. */
  readonly sign: 1 | -1;
  readonly ways: readonly [more: string, less: string];
}

export const ACROSS: readonly Across[] = [
  {
    axis: 'axisHeight',
    axisWords: 'axis height',
    step: 'outputDrop',
    stepWords: 'output drop',
    sign: -1,
    ways: ['higher', 'lower'],
  },
  {
    axis: 'axisOffset',
    axisWords: 'axis offset',
    step: 'outputOffset',
    stepWords: 'output offset',
    sign: 1,
    ways: ['further to starboard', 'further to port'],
  },
];

/** Whether anything is said of this direction in either line. */
export function saysAcross({ axis, step }: Across, lines: readonly ShaftLine[]): boolean {
  return lines.some(line => {
    const prime = line.engine ?? line.motor;
    return [prime && (() => prime[axis]), ...stagesOf(line).map(stage => () => stage[step])].some(
      look => look && isSaid(look),
    );
  });
}

/** How far the output of the last gear or transfer moves in this direction between two arrangements of a line. */
export function outputMoves(
  across: Across,
  line: ShaftLine,
  before: ShaftLine,
  needs: Needs,
): Value<'length'> | undefined {
  const same = areSameStages(line, before);
  const [now, then] = [placeOf(across, line, same, needs), placeOf(across, before, same, needs)];
  const primes = [line, before].map(one => one.engine ?? one.motor);
  const angles = primes.map(one => (one && isSaid(() => one.angle) ? one.angle?.value?.si : undefined));
  const [prime] = primes;
  if (prime && angles.every(one => one !== undefined) && Math.abs(angles[0]! - angles[1]!) > TURNED)
    return needs.miss({
      what: `${across.axisWords} at which ${nameOf(prime)} turned to its new angle leaves the output where it was`,
      host: prime.origin,
      property: across.axisWords,
    });
  return now && then && lengthLeftOver({ stack: now, room: then });
}

/** A tenth of a degree: beyond it the output moves by the turn of the engine as well. */
const TURNED = (0.1 * Math.PI) / 180;

function placeOf(
  { axis, axisWords, step, stepWords, sign }: Across,
  line: ShaftLine,
  same: boolean,
  needs: Needs,
): Value<'length'> | undefined {
  const prime = line.engine ?? line.motor;
  if (!prime) return undefined;
  const place = needs.fact(prime[axis], {
    what: `${axisWords} of ${nameOf(prime)} in ${line.path}`,
    host: prime.origin,
    property: axisWords,
  });
  const steps = (same ? [] : stagesOf(line)).map(stage => {
    const found = needs.fact(stage[step], {
      what: `${stepWords} of ${nameOf(stage)}`,
      host: home(stage),
      property: stepWords,
    });
    if (!found || sign > 0) return found;
    return given(`${stepWords} of ${nameOf(stage)}, downward`, 'L', 'length', -found.si, {
      ...(found.origin ? { origin: found.origin } : {}),
      assumed: 'declared drop, counted negative because it leads down',
    });
  });
  if (!place || steps.some(one => one === undefined)) return undefined;
  return stackLength([place, ...steps.map(one => one!)]);
}

function stagesOf(line: ShaftLine) {
  return [...(line.gear ? [line.gear] : []), ...line.transfers];
}

/** Stages that stand in both lines take each other out. */
function areSameStages(line: ShaftLine, before: ShaftLine): boolean {
  const [now, then] = [stagesOf(line), stagesOf(before)];
  return (
    now.length === then.length &&
    now.every(
      (one, at) =>
        one.change === 'retained' || (one.entry !== undefined && one.entry.name === then[at]!.entry?.name),
    )
  );
}
