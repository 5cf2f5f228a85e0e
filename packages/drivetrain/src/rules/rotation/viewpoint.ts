import type { Origin } from '@tailshaft/mechanics';
import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Fact, Rotation } from '../../model/fact.js';
import { home, nameOf, type Part } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import type { ShaftLine } from '../../model/vessel.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { DOCK_CAUTION, ENGINE_ROTATION } from './sources.js';
import { foldOn, type Use, usesOf } from './uses.js';
import { readingsOf } from './viewpoint-routes.js';

const ENGINE_FACT = 'rotation standard viewed from flywheel\n  fuel';

/** A line whose gear takes either reading. */
const OPEN_LINE = changed(SINGLE_LINE, [
  'input rotation standard viewed from flywheel',
  'input rotation either',
]);

const INFO: RuleInfo = {
  id: 'rotation/viewpoint',
  title: 'Every rotation states its viewpoint',
  mistakes: ['R04'],
  severity: 'error',
  criterion: 'a viewpoint beside every rotation, and one that its word allows',
  source: ENGINE_ROTATION,
  manual:
    'The same crankshaft turns clockwise seen from the flywheel and counter-clockwise seen from the front. A ' +
    'rotation without its viewpoint is therefore not a fact. Standard and opposite are defined at the flywheel ' +
    'end and have no other viewpoint. Write what the source says together with the end it is viewed from: ' +
    '`viewed from flywheel` or `viewed from front`.',
  caution: `${DOCK_CAUTION} Do not guess the viewpoint from habit: makers and countries differ.`,
  noFigure: 'a sense, a hand or a clutch',
  standsWithout: 'anything',
  judgesEvidence: true,
  curesRecord: true,
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: changed(OPEN_LINE, [ENGINE_FACT, 'rotation standard viewed from front\n  fuel']),
    passing: SINGLE_LINE,
    cannotTell: changed(OPEN_LINE, [ENGINE_FACT, 'rotation clockwise\n  fuel']),
  })),
};

export const viewpoint: Rule = { ...INFO, scope: 'vessel', check };

interface Stated {
  readonly part: Part;
  readonly fact: Fact<Rotation>;
  readonly property: string;
}

function check(context: Context): Apart<Verdict> {
  return each(usesOf(context.vessel, statedOn), judge);
}

function statedOn(line: ShaftLine): { of: Stated; at: Origin }[] {
  const stated = [
    { part: line.engine, fact: line.engine?.rotation, property: 'rotation' },
    { part: line.motor, fact: line.motor?.rotation, property: 'rotation' },
    { part: line.gear, fact: line.gear?.inputRotation, property: 'input rotation' },
  ];
  return stated.flatMap(({ part, fact, property }) =>
    part && fact?.value && !fact.value.word.startsWith('either')
      ? [{ of: { part, fact, property }, at: fact.origin }]
      : [],
  );
}

function judge({ of, lines }: Use<Stated>): Verdict {
  const { part, fact, property } = of;
  const rotation = fact.value!;
  const view = rotation.viewedFrom;
  const say = sayFor(INFO, of.part.path);
  const subject = property === 'rotation' ? nameOf(part) : `the input of ${nameOf(part)}`;
  const routes = () => readingsOf(fact, lines, part.role);
  const needs = new Needs();
  needs.miss(
    { what: `from where the rotation of ${subject} is seen`, host: home(part), property },
    fact.origin,
  );
  const byStandard = rotation.word === 'standard' || rotation.word === 'opposite';
  if (view && byStandard && view !== 'flywheel') {
    return say.fails(
      {
        place: fact.origin,
        message:
          `The rotation of ${subject} is given as ${rotation.word} viewed from ${view}, but standard and opposite are ` +
          'defined at the flywheel end. Write clockwise or counter-clockwise with the end it is seen from.',
        explains: foldOn(lines, ...WAITING),
        routes,
      },
      needs.missing,
    );
  }
  if (view) {
    return say.holds({ place: fact.origin, message: `The rotation of ${subject} is viewed from ${view}.` });
  }
  return say.cannotTell(needs, {
    place: fact.origin,
    message:
      `"${fact.written}" of ${subject} needs a viewing point, flywheel end or front: the word flips between the two. ` +
      'Until then neither propeller hand nor pump setting can be checked.',
    explains: foldOn(lines, ...WAITING),
    routes,
  });
}

/** Rules that ask for the same fact. */
const WAITING = [
  'rotation/propeller-hand',
  'rotation/input-accepted',
  'rotation/pump-index',
  'rotation/accessory',
  'rotation/sheet-view',
  'rotation/engine-changed',
];
