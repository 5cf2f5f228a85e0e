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
  title: 'Every helm shows thrust direction and gear oil, and has an engine stop of its own',
  mistakes: [],
  severity: 'warning',
  criterion:
    'indication of thrust direction, gear oil pressure and temperature, and an engine stop that does not ' +
    'depend on the speed lever, at each station',
  source: {
    title: 'fittings that casualty reports ask for where loss of thrust control led to contact',
    confidence: 'common practice',
  },
  manual:
    'A lever shows what was ordered, not what the shaft does. If the gear sticks ahead or a linkage falls off, the helm notices only when the vessel does not ' +
    'answer, unless an indication is taken from the shaft or the gear. The engine can then be stopped ' +
    'only by a stop that does not use the same lever. ' +
    'Declare each station in "helm". Where passengers are carried, the fittings must be stated. Name the ' +
    'regulation that requires them as "required by": flag and class decide which one applies.',
  caution: `${DEFER} Where the regulation allows alarms instead of gauges, accept the finding with that reason.`,
  noFigure: 'no number is compared',
  noCure: 'The fittings belong to the helm, not to the drivetrain.',
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
    'Whether the helm shows thrust direction and can stop the engine',
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
      message: `Helm ${station.name}: ${wrong.map(one => one.words).join('; ')}. ${by ? `"${by}" requires it` : 'Vessels that carry passengers need it'}: without it the helm notices a sticking gear only when the vessel does not answer.`,
    });
  }
  if (needs.any)
    return waits(
      say,
      needs,
      station.origin,
      `Helm ${station.name}: whether it shows thrust direction and can stop the engine`,
      {
        criterion,
      },
    );
  return say.holds({
    place: station.origin,
    criterion,
    message: `Helm ${station.name} shows thrust direction, gear oil pressure and temperature, and has an engine stop apart from the speed lever.`,
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
