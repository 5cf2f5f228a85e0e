import { listed } from '@tailshaft/mechanics';
import { newWord } from '@tailshaft/vocabulary';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { writeInPlace } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER, PRACTICE } from './sources.js';

const WITH_GAUGES = changed(SINGLE_LINE, [
  'ahead clutch B\n',
  'ahead clutch B { oil pressure gauge fitted  oil temperature gauge fitted  oil cooler fitted }\n',
]);

const INFO: RuleInfo = {
  id: 'interface/gear-gauges',
  title: 'Gear oil has its gauges and cooler',
  mistakes: ['I09'],
  severity: 'note',
  criterion: 'oil pressure gauge, oil temperature gauge and oil cooler of the gear are fitted',
  source: PRACTICE,
  manual:
    'A clutch that slips for lack of oil pressure burns before it is heard, and hot oil is the first sign. ' +
    'Some makers require pressure and temperature indication for their warranty; most require a cooler. ' +
    'Where the spec mentions one of them, it should mention all: "oil pressure gauge fitted", "oil ' +
    'temperature gauge fitted", "oil cooler fitted".',
  caution: `${DEFER} Small mechanical gears have neither pump nor gauge: then accept the finding with that reason.`,
  noFigure: 'no number is compared',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(WITH_GAUGES, ['oil temperature gauge fitted', 'oil temperature gauge not fitted']),
    passing: WITH_GAUGES,
    cannotTell: changed(WITH_GAUGES, ['  oil cooler fitted', '']),
  })),
};

export const gearGauges: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line } = context;
  const { gear } = line;
  if (!gear) return undefined;
  const gauges = [
    ['oil pressure gauge', gear.pressureGauge],
    ['oil temperature gauge', gear.temperatureGauge],
    ['oil cooler', gear.oilCooler],
  ] as const;
  if (gauges.every(([, fact]) => !fact)) return undefined;
  const say = sayFor(INFO, line.path);
  const place = gauges.find(([, fact]) => fact)![1]!.origin;
  const needs = new Needs();
  const absent = gauges.filter(([property, fact]) => {
    const wanted = { what: `${property} of ${nameOf(gear)}`, host: gear.origin, property };
    return needs.fact(fact, wanted) === 'not fitted';
  });
  if (absent.length > 0) {
    return say.fails({
      place: absent[0]![1]!.origin,
      message: `${line.name}: ${nameOf(gear)} has no ${listed(absent.map(([property], at) => (at === 0 ? property : `no ${property}`)))}. Its maker may require it for warranty, and it gives the first sign of a slipping clutch.`,
      routes: () => [
        {
          title: `Fit ${listed(absent.map(([property]) => property))}`,
          edits: absent.map(([property]) => writeInPlace(gear, property, newWord('fitted'))),
        },
      ],
    });
  }
  if (needs.any) return waits(say, needs, place, `${line.name}: whether gear oil is monitored and cooled`);
  return say.holds({
    place,
    message: `${line.name}: pressure and temperature of the gear oil are shown, and it is cooled.`,
  });
}
