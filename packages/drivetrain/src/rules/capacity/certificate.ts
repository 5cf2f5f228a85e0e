import type { Value } from '@tailshaft/mechanics';
import { OPEN } from '@tailshaft/vocabulary';
import { tellLike } from '../../analysis/telling.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { ArrangementContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';

const CERTIFIED = changed(SINGLE_LINE, [
  '  duty medium { hours 1500 per year  passengers none }\n',
  '  duty medium { hours 1500 per year  passengers none }\n  certificate { power 300 kW }\n',
]);

const INFO: RuleInfo = {
  id: 'capacity/certificate',
  title: 'Installed power is within the certificate',
  mistakes: ['T19'],
  severity: 'error',
  criterion: 'rated power of all engines and motors together against the power on the certificate or licence',
  source: {
    title: 'practice of authorities that license vessels by propulsion power',
    confidence: 'common practice',
  },
  manual:
    'A certificate, licence or registration states the propulsion power of the vessel. More powerful engines ' +
    'need an amended certificate, or a document that limits them to the old power: a sealed fuel stop or a ' +
    'locked rating, with the maker’s statement. Authorities may measure shaft torque. Name the document after ' +
    '"limited by", install less power, or have the certificate amended.',
  caution:
    'Authorities count power at different points and by different standards: ask the one that issued the ' +
    'certificate.',
  limitOf: 'the power on the certificate',
  noCure:
    'Only the issuer can change the certificate, and a power limit needs a document; the spec can only record either.',
  overModes: 'fails in any',
  examples: examples(() => ({
    failing: changed(CERTIFIED, ['certificate { power 300 kW }', 'certificate { power 220 kW }']),
    passing: CERTIFIED,
    cannotTell: changed(CERTIFIED, ['certificate { power 300 kW }', 'certificate { power unknown }']),
  })),
};

export const certificate: Rule = { ...INFO, scope: 'arrangement', check };

function check(context: ArrangementContext): Verdict | undefined {
  const { arrangement, vessel, analysisOf } = context;
  const paper = vessel.certificate;
  const driven = arrangement.lines.filter(line => line.engine || line.motor);
  if (!paper || driven.length === 0) return undefined;
  const say = sayFor(INFO, arrangement.path);
  const needs = new Needs();
  const allowed = needs.fact(paper.power, {
    what: 'power on the certificate',
    host: paper.origin,
    property: 'power',
  });
  const powers = driven.flatMap(line => declaredPower(needs, analysisOf(line)) ?? []);
  const place = paper.power?.origin ?? paper.origin;
  if (!allowed || powers.length < driven.length) {
    return say.cannotTell(needs, {
      place: needs.missing[0]?.at ?? place,
      message: cannotTellWords(`Whether ${arrangement.name} stays within the certificate`, needs.missing),
      routes: () => stubRoutes(needs.missing),
    });
  }
  const installed = totalOf(powers);
  const tell = tellLike(allowed);
  const numbers = `the certificate shows ${tell(allowed)}, ${arrangement.name} installs ${tell(installed)}`;
  const said = {
    place,
    capacity: allowed,
    demand: installed,
    workings: [installed],
    related: driven.map(line => ({
      at: (line.engine ?? line.motor)!.nameOrigin ?? (line.engine ?? line.motor)!.origin,
      message: `${line.name}: ${tell(analysisOf(line).rated.value!.power)}`,
    })),
  };
  if (paper.limitedBy?.value !== undefined && installed.si > allowed.si) {
    return say.holds({ ...said, message: `As limited: ${numbers}, limited by ${paper.limitedBy.value}.` });
  }
  return say.compare({
    ...said,
    message: `Within the certificate: ${numbers}.`,
    failMessage:
      `Over the certificate: ${numbers}, and no document limits it. Have the certificate amended, or name the document ` +
      'that limits the power with "limited by".',
    routes: () => [
      {
        title: 'Write "limited by" as an open question: the sheet then lists it until the document is there',
        edits: [{ do: 'set', host: paper.origin, property: 'limited by', value: OPEN }],
        stub: true,
      },
    ],
  });
}

function declaredPower(
  needs: Needs,
  analysis: ReturnType<ArrangementContext['analysisOf']>,
): Value<'power'> | undefined {
  return needs.take(analysis.rated)?.power;
}

/** The sum, with its parts as its working. */
function totalOf(powers: readonly Value<'power'>[]): Value<'power'> {
  return {
    label: 'installed power',
    symbol: 'P',
    dimension: 'power',
    si: powers.reduce((sum, power) => sum + power.si, 0),
    working: {
      name: 'installed power',
      text: `P = ${powers.map((_, index) => `P_${index + 1}`).join(' + ')}`,
      inputs: powers,
      source: { title: 'sum of all propulsion engines and motors', confidence: 'derived' },
      range: [],
      again: parts => parts.reduce((sum, one) => sum + one, 0),
    },
  };
}
