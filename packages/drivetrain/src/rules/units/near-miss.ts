import { formatValue, isInInches, type Value } from '@tailshaft/mechanics';
import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Quantity } from '../../model/fact.js';
import { home } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import type { Shaft } from '../../model/shafting.js';
import type { ShaftLine } from '../../model/vessel.js';
import { changed, TWIN_LINES } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { SP811 } from './unit-rule.js';

/** Sizes closer than this are taken for one another at the bench; the nearest inch and metric bar sizes lie inside it. */
const NEAR = 0.0006;

const INFO: RuleInfo = {
  id: 'units/near-miss',
  title: 'No two shaft sizes are a near miss between inch and metric',
  mistakes: ['U04'],
  severity: 'warning',
  criterion: 'two shaft diameters that differ by less than 0.6 mm, one in inches and one in millimetres',
  source: SP811,
  manual:
    'A 38 mm shaft and a 1 1/2 in shaft (38.1 mm) differ by a tenth of a millimetre: enough that a bearing, seal ' +
    'or coupling bored for one does not fit the other. Where two shafts of a vessel nearly agree across inch and ' +
    'metric sizes, one of the figures was probably rounded. Measure both, and keep the measured values.',
  caution: 'Never round a measured size to a nominal one to clear this finding.',
  noFigure: 'how a figure is written, and not how large it is',
  standsWithout: 'anything',
  curesRecord: true,
  noCure: 'Only the author knows which size is meant.',
  examples: examples(() => ({
    failing: changed(TWIN_LINES, ['diameter 65 mm [drawing]', 'diameter 2.55 in [drawing]']),
    passing: TWIN_LINES,
    cannotTell: changed(TWIN_LINES, ['diameter 65 mm [drawing]', 'diameter unknown']),
  })),
};

export const nearMiss: Rule = { ...INFO, scope: 'vessel', check };

interface Sized {
  readonly who: string;
  readonly shaft: Shaft;
  readonly diameter: Quantity<'length'> | undefined;
  readonly value: Value<'length'> | undefined;
}

function check({ vessel }: Context): Verdict | Apart<Verdict> | undefined {
  const say = sayFor(INFO, vessel.name);
  // A size that an arrangement keeps or mirrors is the same statement, and near to the others once.
  const stated = new Map(
    vessel.arrangements
      .flatMap(one => one.lines.flatMap(sizesOf))
      .map(one => [(one.diameter ?? one.shaft).origin, one] as const)
      .reverse(),
  );
  const sizes = [...stated.values()].reverse();
  const first = sizes.find(one => one.value);
  if (!first) return undefined;
  const found = each(sizes, (one, index) => {
    if (!one.value) return sizes.length > 1 ? open(say, one) : undefined;
    const near = sizes.slice(0, index).find(other => isNear(one.value, other.value));
    return near && tooNear(say, one, near);
  });
  if (found.length > 0) return found;
  return say.holds({
    place: first.diameter!.origin,
    message: `${vessel.name}: no two shaft diameters nearly agree across inch and metric.`,
  });
}

function tooNear(say: ReturnType<typeof sayFor>, one: Sized, near: Sized): Verdict {
  return say.fails({
    place: one.diameter!.origin,
    message:
      `${one.who} is ${one.value!.written} (${exactly(one.value!)}) and ${near.who} ${near.value!.written} (${exactly(near.value!)}): ` +
      'close enough to be taken for each other, far enough that bearings, seals and couplings differ. Measure both.',
    related: [{ at: near.diameter!.origin, message: `${near.value!.written} here` }],
  });
}

/** One that nobody knows may be near to any of the others. */
function open(say: ReturnType<typeof sayFor>, { who, shaft, diameter }: Sized): Verdict {
  const needs = new Needs();
  needs.fact(diameter, { what: `diameter of ${who}`, host: home(shaft), property: 'diameter' });
  return waits(say, needs, shaft.origin, `whether ${who} is a near miss of another size`);
}

function sizesOf(line: ShaftLine): Sized[] {
  return line.shafts.map(shaft => ({
    who: `the shaft of ${line.path}`,
    shaft,
    diameter: shaft.diameter,
    value: shaft.diameter?.value,
  }));
}

function isNear(a: Value<'length'> | undefined, b: Value<'length'> | undefined): boolean {
  if (!a || !b) return false;
  const difference = Math.abs(a.si - b.si);
  const mixed = isInInches(a) !== isInInches(b);
  return mixed && difference > 1e-9 && difference < NEAR;
}

function exactly(value: Value): string {
  return formatValue(value, 5);
}
