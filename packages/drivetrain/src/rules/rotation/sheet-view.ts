import { turnAtFlywheel } from '@tailshaft/mechanics';
import { spell } from '@tailshaft/vocabulary';
import { rotationOf, statementOf } from '../../analysis/rotation.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Engine } from '../../model/engine.js';
import { home, nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { engineRotation, engineWord } from './edits.js';
import { DOCK_CAUTION, ENGINE_ROTATION } from './sources.js';
import { foldOn, type Use, usesOf } from './uses.js';
import { withRotation } from './viewpoint-routes.js';

const STATED = 'rotation standard viewed from flywheel\n  fuel';

const INFO: RuleInfo = {
  id: 'rotation/sheet-view',
  title: 'The declared rotation agrees with the words of the data sheet',
  mistakes: ['R05'],
  severity: 'error',
  criterion: 'declared rotation against the sheet rotation, both converted to the flywheel end',
  source: ENGINE_ROTATION,
  manual:
    'Data sheets often view the engine from the front, while the spec views it from the flywheel. Copying the ' +
    'word without converting it gives the wrong rotation, and with it the wrong propeller hand and pump setting. ' +
    'Keep the words of the sheet as `sheet rotation`; both are converted to the flywheel end and must agree.',
  caution: `${DOCK_CAUTION} Keep the original words of the source: they are the evidence.`,
  noFigure: 'a sense, a hand or a clutch',
  standsWithout: 'anything',
  judgesEvidence: true,
  curesRecord: true,
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, [
      STATED,
      'rotation opposite viewed from flywheel\n  sheet rotation clockwise viewed from front\n  fuel',
    ]),
    passing: changed(SINGLE_LINE, [
      STATED,
      'rotation standard viewed from flywheel\n  sheet rotation clockwise viewed from front\n  fuel',
    ]),
    cannotTell: changed(SINGLE_LINE, [
      STATED,
      'rotation standard viewed from flywheel\n  sheet rotation clockwise\n  fuel',
    ]),
  })),
};

export const sheetView: Rule = { ...INFO, scope: 'vessel', check };

function check(context: Context): Apart<Verdict> {
  const uses = usesOf(context.vessel, ({ engine }) =>
    engine?.sheetRotation ? [{ of: engine, at: engine.sheetRotation.origin }] : [],
  );
  return each(uses, judge);
}

function judge({ of: engine, line, lines }: Use<Engine>): Verdict {
  const say = sayFor(INFO, line.path);
  const name = nameOf(engine);
  const sheet = engine.sheetRotation!;
  const needs = new Needs();
  const host = home(engine);
  const facing = engine.flywheelFaces?.value;
  const sides = [
    { fact: engine.rotation, property: 'rotation', what: `rotation of ${name} and from where it is seen` },
    {
      fact: sheet,
      property: 'sheet rotation',
      what: `the end that the sheet of ${name} views the engine from`,
    },
  ];
  const turns = sides.map(({ fact, property, what }) => {
    const told = turnAtFlywheel(statementOf(fact?.value), facing);
    return told.known ? told.value : needs.miss({ what, host, property }, fact?.origin);
  });
  const [declared, ofSheet] = turns;
  if (!declared || !ofSheet) {
    return say.cannotTell(needs, {
      place: needs.missing[0]!.at ?? sheet.origin,
      message: cannotTellWords(`whether the rotation of ${name} agrees with its sheet`, needs.missing),
    });
  }
  const place = engine.rotation!.origin;
  const same = `${sheet.written} is ${engineWord(ofSheet)} (${ofSheet} at the flywheel end)`;
  if (declared === ofSheet) return say.holds({ place, message: `${name}: ${same}, as declared.` });
  const value = engineRotation(ofSheet);
  return say.fails({
    place,
    message: `The sheet of ${name} says ${same}. The spec declares it as ${engine.rotation!.written}, which is the other way round.`,
    related: [{ at: sheet.origin, message: 'the words of the sheet' }],
    explains: foldOn(lines, ...RESTING),
    routes: (): Route[] => [
      {
        title: `Declare the rotation as "${spell(value)}", as the sheet has it${hands(engine, lines, engineWord(ofSheet))}`,
        edits: [{ do: 'replace', at: place, value }],
      },
    ],
  });
}

function hands(engine: Engine, lines: Use<Engine>['lines'], word: ReturnType<typeof engineWord>): string {
  const needed = lines.flatMap(line => {
    const fact = { ...engine.rotation!, value: { word, viewedFrom: 'flywheel' } as const };
    const hand = rotationOf(withRotation(line, fact)).neededHand;
    return hand ? [`${line.path} then needs a ${hand}-hand propeller`] : [];
  });
  return needed.length > 0 ? `: ${needed.join('; ')}` : '';
}

/** Rules that rest on the rotation of the engine: with the wrong one they say nothing of worth. */
const RESTING = [
  'rotation/propeller-hand',
  'rotation/engine-changed',
  'rotation/input-accepted',
  'rotation/pump-index',
  'rotation/accessory',
];
