import { newWord } from '@tailshaft/vocabulary';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Fact } from '../../model/fact.js';
import { type Apart, apart, aside, each, isSaid } from '../../model/reads.js';
import type { Bearing, Shaft, WaterSupply } from '../../model/shafting.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { WITH_BEARINGS } from './bearing-specs.js';
import { DEFER, PRACTICE } from './sources.js';

const INFO: RuleInfo = {
  id: 'shafting/bearing-water',
  title: 'Water-lubricated bearings and seals have a water supply',
  mistakes: ['L22'],
  severity: 'warning',
  criterion: 'each water-lubricated bearing and each lip or face seal states its water supply',
  source: PRACTICE,
  manual:
    'A rubber bearing in a tube and a dripless seal need a supply of water: the engine’s raw-water pump, a ' +
    'scoop, or a separate pump. A strut bearing stands in open water and needs none. A seal fed by its own ' +
    'engine runs dry when that engine is stopped and the other drives the vessel: on twins the feeds are ' +
    'cross-connected. Write "water from" in the bearing and "seal water from" in the shaft.',
  caution: `${DEFER} The maker of the bearing or seal states how much water is needed, and from which speed.`,
  noFigure: 'no number is compared',
  noCure: 'The water supply is a matter of piping, not of the spec.',
  examples: examples(() => ({
    failing: changed(WITH_BEARINGS, ['water from own engine\n        }', 'water from none\n        }']),
    passing: WITH_BEARINGS,
    cannotTell: changed(WITH_BEARINGS, ['        seal water from own engine\n', '']),
  })),
};

export const bearingWater: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> {
  return each(context.line.shafts, shaft =>
    apart(
      () => each(shaft.bearings ?? [], bearing => ofBearing(context, shaft, bearing)),
      () => ofSeal(context, shaft),
    ),
  );
}

function ofBearing(context: LineContext, shaft: Shaft, bearing: Bearing): Verdict | undefined {
  const { line } = context;
  const name = `bearing ${bearing.name}`;
  const subject = `${shaft.path}.${bearing.name}`;
  const say = sayFor(INFO, subject);
  const needs = new Needs();
  const inside = bearing.kind?.value === 'intermediate' || bearing.kind?.value === 'thrust';
  if (inside && !bearing.lubrication) return undefined;
  const by = needs.fact(bearing.lubrication, {
    what: `lubrication of ${name}`,
    host: bearing.origin,
    property: 'lubrication',
  });
  if (!by) return waits(say, needs, bearing.origin, `${line.name}: what ${name} needs`);
  if (by !== 'water') {
    return say.holds({
      place: bearing.lubrication!.origin,
      message: `${line.name}: ${name} runs on ${by}.`,
    });
  }
  // Open to the sea whether or not anybody says so.
  const strut = bearing.kind?.value === 'strut' && aside(() => bearing.water?.value) === undefined;
  if (strut) {
    return say.holds({
      place: bearing.origin,
      message: `${line.name}: ${name} stands in a strut, open to the sea.`,
    });
  }
  return judge(context, subject, name, bearing.water, { host: bearing.origin, property: 'water from' });
}

function ofSeal(context: LineContext, shaft: Shaft): Verdict | undefined {
  const seal = shaft.seal?.value;
  if (seal !== 'lip seal' && seal !== 'face seal' && !isSaid(() => shaft.sealWater)) return undefined;
  return judge(context, `${shaft.path}.seal`, `the ${seal ?? 'seal'}`, shaft.sealWater, {
    host: shaft.origin,
    property: 'seal water from',
  });
}

function judge(
  { line, arrangement }: LineContext,
  subject: string,
  name: string,
  fact: Fact<WaterSupply> | undefined,
  where: { host: object; property: string },
): Verdict {
  const say = sayFor(INFO, subject);
  const needs = new Needs();
  const place = fact?.origin ?? where.host;
  const from = needs.fact(fact, { what: `where the water of ${name} comes from`, ...where });
  if (!from) return waits(say, needs, place, `${line.name}: whether ${name} has a water supply`);
  if (from === 'none') {
    return say.fails({
      place,
      message: `${line.name}: ${name} is water-lubricated and has no supply. Feed it from the engine, a scoop or a pump of its own.`,
    });
  }
  const twins = arrangement.lines.length > 1;
  if (from === 'own engine' && twins) {
    return say.fails({
      place,
      severity: 'note',
      message: `${line.name}: ${name} is fed by its own engine only: with that engine stopped and the other driving, it runs dry. Cross-feed the two sides, or lock the shaft.`,
      routes: () =>
        fact
          ? [
              {
                title: `Cross-feed ${name} from both engines`,
                edits: [{ do: 'replace', at: fact.origin, value: newWord('cross-fed') }],
              },
            ]
          : [],
    });
  }
  return say.holds({ place, message: `${line.name}: water supply of ${name}: ${from}.` });
}
