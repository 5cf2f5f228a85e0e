import { speedEntering } from '../../analysis/speeds.js';
import { boxBefore } from '../../analysis/stages.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { gearsThatCarry } from '../capacity/gear-routes.js';
import { DEFER, PART_SHEET } from '../capacity/sources.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';

const INFO: RuleInfo = {
  id: 'speed/gear-input-maximum',
  title: 'Governed speed is within the gear’s greatest input speed',
  mistakes: ['T09'],
  severity: 'error',
  criterion:
    'high idle of the engine, or top speed of the motor, against the greatest input speed of the gear',
  source: PART_SHEET,
  manual:
    'The governor lets an unloaded engine run above rated speed, so out of gear, or with the propeller out of ' +
    'the water, the gear input turns at high idle. The greatest input speed of the gear must cover high idle, ' +
    'not only rated speed. Overspeed churns and overheats the oil and overstresses clutch drums. Lower the ' +
    'governed speed with the maker’s consent, or choose a gear for faster engines.',
  caution: DEFER,
  limitOf: 'the maker’s limit',
  severalMovers: 'each',
  oneInput: true,
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, ['input speed at most 3000 rpm', 'input speed at most 2400 rpm']),
    passing: SINGLE_LINE,
    cannotTell: changed(SINGLE_LINE, ['  high idle 2530 rpm\n', '']),
  })),
};

export const gearInputMaximum: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis, vessel } = context;
  const { gear } = line;
  const mover = line.engine ?? line.motor;
  if (!gear || !mover) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const limit = needs.fact(gear.inputSpeedMax, {
    what: `greatest input speed of ${nameOf(gear)}`,
    host: home(gear),
    property: 'input speed at most',
  });
  const governed = speedEntering(line, gear, needs.take(analysis.governedSpeed), needs);
  const rated = speedEntering(line, gear, analysis.rated.value?.speed, new Needs());
  const box = boxBefore(line, gear);
  const through = box ? ` through ${nameOf(box)}` : '';
  const place = gear.inputSpeedMax?.origin ?? gear.nameOrigin ?? gear.origin;
  const related = [
    {
      at: line.engine?.highIdle?.origin ?? mover.nameOrigin ?? mover.origin,
      message: `speed of ${nameOf(mover)}`,
    },
  ];
  const routes = () => {
    const duty = vessel.duty?.class?.value;
    return duty === undefined
      ? []
      : gearsThatCarry(context, duty, 'ahead', vessel.criteria?.gearTorqueMargin?.value?.si ?? 0);
  };
  const fastest = governed ?? rated;
  if (limit && fastest && fastest.si > limit.si * (1 + 1e-9)) {
    const what = `${governed ? 'governed speed' : 'rated speed alone'}${through}`;
    return say.fails({
      place: gear.nameOrigin ?? gear.origin,
      capacity: limit,
      demand: fastest,
      message:
        `${line.name}: ${what} of ${nameOf(mover)}, ${analysis.tell(fastest)}, exceeds the ${analysis.tell(limit)} that the input of ` +
        `${nameOf(gear)} may turn. Lower the governed speed with the maker’s consent, or take another gear.`,
      related: [{ at: place, message: 'greatest input speed' }, ...related],
      routes,
    });
  }
  if (!limit || !governed) {
    return say.cannotTell(needs, {
      place: needs.missing[0]?.at ?? gear.nameOrigin ?? gear.origin,
      message: cannotTellWords(
        `${line.name}: whether ${nameOf(mover)} can overspeed ${nameOf(gear)}`,
        needs.missing,
      ),
      routes: () => stubRoutes(needs.missing),
    });
  }
  return say.holds({
    place,
    capacity: limit,
    demand: governed,
    related,
    message: `${line.name}: ${nameOf(mover)} turns ${through ? 'it ' : ''}at most ${analysis.tell(governed)}${through}, ${nameOf(gear)} may turn ${analysis.tell(limit)}.`,
  });
}
