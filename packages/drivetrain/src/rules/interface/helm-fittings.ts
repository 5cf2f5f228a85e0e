import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Criterion, Verdict } from '../../judge/verdict.js';
import { type Apart, each } from '../../model/reads.js';
import type { HelmStation, Vessel } from '../../model/vessel.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER } from './sources.js';

const FITTED = changed(SINGLE_LINE, [
  '  arrangement proposed {',
  `  helm {
    station wheelhouse {
      thrust direction shown
      gear oil pressure shown
      gear oil temperature shown
      engine stop apart from the speed lever
    }
  }

  arrangement proposed {`,
]);

const INFO: RuleInfo = {
  id: 'interface/helm-fittings',
  title: 'Every helm shows thrust direction and gear oil, and stops the engine apart from the speed lever',
  mistakes: [],
  severity: 'warning',
  criterion:
    'indication of thrust direction, gear oil pressure and temperature, and an engine stop apart from the speed lever, at each station',
  source: {
    title: 'fittings that casualty reports ask for where loss of thrust control led to contact',
    confidence: 'common practice',
  },
  manual:
    'A lever shows what was asked, not what the shaft does. Where the gear sticks ahead, or a linkage falls off, the ' +
    'helm learns it from the quay, unless an indication is taken from the shaft or the gear; and the engine can only ' +
    'be stopped if that does not go by the same lever. Declare each station of the vessel in "helm". Where ' +
    'passengers are carried the fittings are asked for. Name the text that requires them as "required by": which ' +
    'text applies is for flag and class to say, and nothing is taken from memory here.',
  caution: `${DEFER} Alarms may stand for gauges where the text allows it: then accept the finding with that reason.`,
  noFigure: 'no number is compared',
  noCure: 'Fitting it is work on the vessel, not on the drivetrain of the spec.',
  examples: examples(() => ({
    failing: changed(FITTED, ['thrust direction shown', 'thrust direction not shown']),
    passing: FITTED,
    cannotTell: changed(FITTED, ['      gear oil temperature shown\n', '']),
  })),
};

export const helmFittings: Rule = { ...INFO, scope: 'vessel', check };

function check({ vessel }: Context): Apart<Verdict> | Verdict | undefined {
  const stations = vessel.helm?.stations ?? [];
  if (stations.length > 0) return each(stations, one => judge(vessel, one));
  const carried = vessel.duty?.passengers?.value === 'carried';
  if (!vessel.helm && !carried) return undefined;
  const needs = new Needs();
  needs.miss({
    what: 'the stations of the helm, with what each of them shows and stops',
    host: vessel.helm?.origin ?? vessel.origin,
    property: vessel.helm ? 'station' : 'helm',
  });
  return waits(
    sayFor(INFO, vessel.name),
    needs,
    vessel.helm?.origin ?? vessel.duty?.passengers?.origin ?? vessel.nameOrigin,
    'Whether the helm sees the thrust and can stop the engine',
    { criterion: criterionOf(vessel) },
  );
}

function criterionOf({ helm }: Vessel): Criterion {
  const by = helm?.requiredBy?.value;
  return by
    ? { said: `${INFO.criterion}, required by "${by}"`, chosenBy: 'author' }
    : { said: INFO.criterion, chosenBy: 'default' };
}

function judge(vessel: Vessel, station: HelmStation): Verdict {
  const say = sayFor(INFO, vessel.name);
  const criterion = criterionOf(vessel);
  const needs = new Needs();
  const wrong = FITTINGS.flatMap(({ property, wanted, of, words }) => {
    const fact = of(station);
    const value = needs.fact<string>(fact, {
      what: `${property} at ${station.name}`,
      host: station.origin,
      property,
    });
    return value !== undefined && value !== wanted ? [{ words: words(value), at: fact!.origin }] : [];
  });
  if (wrong.length > 0) {
    const by = vessel.helm?.requiredBy?.value;
    return say.fails({
      place: wrong[0]!.at,
      criterion,
      message: `Helm ${station.name}: ${wrong.map(one => one.words).join('; ')}. ${by ? `"${by}" asks for it` : 'Where passengers are carried it is asked for'}: a gear that sticks is first seen by the helm, or by the quay.`,
    });
  }
  if (needs.any)
    return waits(
      say,
      needs,
      station.origin,
      `Helm ${station.name}: whether it sees the thrust and can stop the engine`,
      {
        criterion,
      },
    );
  return say.holds({
    place: station.origin,
    criterion,
    message: `Helm ${station.name} shows thrust direction, gear oil pressure and temperature, and stops the engine apart from the speed lever.`,
  });
}

const FITTINGS = [
  {
    property: 'thrust direction',
    wanted: 'shown',
    of: (one: HelmStation) => one.thrustDirection,
    words: () => 'no indication of thrust direction',
  },
  {
    property: 'gear oil pressure',
    wanted: 'shown',
    of: (one: HelmStation) => one.gearOilPressure,
    words: () => 'no indication of gear oil pressure',
  },
  {
    property: 'gear oil temperature',
    wanted: 'shown',
    of: (one: HelmStation) => one.gearOilTemperature,
    words: () => 'no indication of gear oil temperature',
  },
  {
    property: 'engine stop',
    wanted: 'apart from the speed lever',
    of: (one: HelmStation) => one.engineStop,
    words: (value: string) =>
      value === 'none' ? 'no engine stop' : 'no engine stop apart from the speed lever',
  },
] as const;
