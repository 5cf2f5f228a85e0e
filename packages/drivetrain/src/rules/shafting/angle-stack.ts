import { engineAngleNeeded, given, listed, plural, shaftAngle, type Value } from '@tailshaft/mechanics';
import { amount, inUnit, type NewValue, numberIn, spell } from '@tailshaft/vocabulary';
import { type AngleStack, angleStack, jointBend, jointsOf } from '../../analysis/angles.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Criterion, Verdict } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { writeInPlace } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { WITH_ANGLES } from './angle-specs.js';
import { DEFER, GEOMETRY } from './sources.js';

const INFO: RuleInfo = {
  id: 'shafting/angle-stack',
  title: 'Angles of engine, gear and shaft add up',
  mistakes: ['L18'],
  severity: 'error',
  estimate: USUAL_ESTIMATE,
  criterion: 'engine angle plus down-angle of gear and transfers against the shaft angle',
  source: GEOMETRY,
  manual:
    'Hull and tube fix the shaft angle; the engine lies at that angle less the down-angle of the gear. Figures ' +
    'from three drawings that do not add up end in beds at the wrong height, or in a coupling pulled together by ' +
    'its bolts. The declared angles are added, aft end down positive, with the angle of a V-drive; universal joints between may take up ' +
    'what they are declared to bend. Half a degree is taken as drawing accuracy unless the criteria say "angle difference at most". Correct the figure that is wrong.',
  caution:
    `${DEFER} The coupling faces must agree within 0.003 in: that is alignment, done afloat. The half degree is ` +
    'common practice.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(WITH_ANGLES, ['angle 11 deg', 'angle 13 deg']),
    passing: WITH_ANGLES,
    cannotTell: changed(WITH_ANGLES, ['  angle 11 deg', '']),
  })),
};

export const angleStackRule: Rule = { ...INFO, scope: 'line', check };

/** Half a degree. */
const DRAWING_ACCURACY = given('angle difference allowed', 'Δα', 'angle', (0.5 * Math.PI) / 180, {
  assumed: 'half a degree: accuracy of drawings (common practice)',
  replaceWith: 'angle difference at most',
});

function check(context: LineContext): Verdict | undefined {
  const { line, vessel, analysis } = context;
  const prime = line.engine ?? line.motor;
  const shaft = line.shafts.at(-1);
  if (!prime || !shaft || !(prime.angle || shaft.angle)) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const stack = angleStack(line, needs);
  const place = shaft.angle?.origin ?? prime.angle!.origin;
  const joints = jointsOf(line);
  const bend = joints.length > 0 ? jointBend(joints, needs) : STRAIGHT;
  if (!stack || !bend) return waits(say, needs, place, `${line.name}: whether the angles add up`);
  const own = vessel.criteria?.angleDifference?.value;
  const allowed: Value<'angle'> = own ?? DRAWING_ACCURACY;
  const tell = (value: Value) => analysis.tell(value, 3);
  const open = Math.abs(stack.leftOpen.si);
  if (open < bend.least - allowed.si) {
    // A joint that bends the line at all bends it in height or athwart, and only the first is declared elsewhere.
    needs.miss({
      what: `how much of the angle of ${nameOf(joints[0]!)} lies in height`,
      host: joints[0]!.origin,
      property: 'joint angle',
    });
    return waits(say, needs, place, `${line.name}: whether the angles add up`);
  }
  const boxes = stack.boxes.length > 0 ? listed(stack.boxes) : 'gear';
  const sum = `engine ${tell(stack.engine)} and ${boxes} ${tell(stack.gear)} add up to ${tell(shaftAngle({ engineAngle: stack.engine, gearDownAngle: stack.gear }))}; the shaft is at ${tell(stack.shaft)}`;
  const bent = listed(bend.angles.map(one => tell(one)));
  const taken = bent && `; the ${plural(bend.angles.length, 'joint')} between may bend by ${bent}`;
  const criterion: Criterion = {
    said: `${INFO.criterion}, within ${own?.written ?? 'half a degree (common practice)'}`,
    chosenBy: own ? 'author' : 'default',
  };
  return say.within({
    place,
    criterion,
    difference: open,
    differs: stack.leftOpen,
    allowed: bend.most + allowed.si,
    workings: [stack.leftOpen, ...bend.angles],
    message: `${line.name}: ${sum}${taken}.`,
    failMessage: `${line.name}: ${sum}: ${tell({ ...stack.leftOpen, si: open })} apart${taken}. One of the figures is wrong, or the beds do not match the tube.`,
    related: [
      ...(prime.angle ? [{ at: prime.angle.origin, message: 'engine angle' }] : []),
      ...(line.gear?.layout ? [{ at: line.gear.layout.origin, message: 'down-angle of the gear' }] : []),
      ...line.transfers.flatMap(({ downAngle }) =>
        downAngle ? [{ at: downAngle.origin, message: 'down-angle of the transfer' }] : [],
      ),
    ],
    routes: () => routes(context, stack),
  });
}

const STRAIGHT = { angles: [], most: 0, least: 0 };

function routes({ line }: LineContext, stack: AngleStack): Route[] {
  const prime = (line.engine ?? line.motor)!;
  const engine = written(engineAngleNeeded({ shaftAngle: stack.shaft, gearDownAngle: stack.gear }));
  const shaft = written(shaftAngle({ engineAngle: stack.engine, gearDownAngle: stack.gear }));
  return [
    {
      title: `Set the engine at ${spell(engine)}: alter the beds to suit`,
      edits: [writeInPlace(prime, 'angle', engine)],
    },
    {
      title: `Set the shaft at ${spell(shaft)}: tube, strut and tip clearance change with it`,
      edits: [writeInPlace(line.shafts.at(-1)!, 'angle', shaft)],
    },
  ];
}

function written(angle: Value<'angle'>): NewValue {
  return amount(inUnit('angle', Number(numberIn(angle, 'deg').toPrecision(4)), 'deg'));
}
