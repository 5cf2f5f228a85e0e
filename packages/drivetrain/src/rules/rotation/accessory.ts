import { capital } from '@tailshaft/mechanics';
import { turnDeclared } from '../../analysis/rotation.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Accessory, Engine } from '../../model/engine.js';
import { home, nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { engineRotation, engineWord, stubRoutes } from './edits.js';
import { DOCK_CAUTION, PRACTICE } from './sources.js';
import { type Use, usesOf } from './uses.js';

const STARTER = 'accessory starter rotation standard viewed from flywheel';
const WITH_STARTER = changed(SINGLE_LINE, ['  cylinders 6', `  ${STARTER}\n  cylinders 6`]);

const INFO: RuleInfo = {
  id: 'rotation/accessory',
  title: 'Starter, pumps and fans are built for the engine rotation',
  mistakes: ['R14'],
  severity: 'warning',
  criterion: 'rotation that each accessory is built for against the rotation of the engine',
  source: PRACTICE,
  manual:
    'Starters, raw-water pumps, alternator fans and distributors are built for one rotation. Moved over from an ' +
    'engine of the opposite rotation, a starter cranks the engine backwards, a pump delivers no water and a fan ' +
    'blows the wrong way. Order the accessory for this rotation and list the change as a work item.',
  caution: `${DOCK_CAUTION} A raw-water pump that runs backwards goes unnoticed until the engine overheats.`,
  noFigure: 'a sense, a hand or a clutch',
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: changed(WITH_STARTER, [STARTER, 'accessory starter rotation opposite viewed from flywheel']),
    passing: WITH_STARTER,
    cannotTell: changed(WITH_STARTER, [STARTER, 'accessory starter rotation unknown']),
  })),
};

export const accessory: Rule = { ...INFO, scope: 'vessel', check };

interface Fitted {
  readonly engine: Engine;
  readonly accessory: Accessory;
}

function check(context: Context): Apart<Verdict> {
  const uses = usesOf(context.vessel, ({ engine }) =>
    (engine?.accessories ?? []).map(one => ({ of: { engine: engine!, accessory: one }, at: one.origin })),
  );
  return each(uses, judge);
}

function judge({ of, line }: Use<Fitted>): Verdict {
  const { engine } = of;
  const say = sayFor(INFO, line.path);
  const name = `the ${of.accessory.name} of ${nameOf(engine)}`;
  const facing = engine.flywheelFaces?.value;
  const built = turnDeclared(of.accessory.rotation, facing);
  const turns = turnDeclared(engine.rotation, facing);
  const place = of.accessory.rotation?.origin ?? of.accessory.origin;
  const needs = new Needs();
  if (!built) {
    needs.miss(
      {
        what: `which rotation ${name} is built for, and from where it is seen`,
        host: of.accessory.origin,
        property: 'rotation',
      },
      of.accessory.rotation?.origin,
    );
  }
  if (!turns) {
    needs.miss(
      { what: `rotation of ${nameOf(engine)}`, host: home(engine), property: 'rotation' },
      engine.rotation?.origin,
    );
  }
  if (!built || !turns) {
    return say.cannotTell(needs, {
      place,
      message: cannotTellWords(`Whether ${name} suits the engine`, needs.missing),
      routes: () => stubRoutes(needs.missing),
    });
  }
  if (built === turns) {
    return say.holds({
      place,
      message: `${begin(name)} is built for ${engineWord(built)} rotation, as the engine turns.`,
    });
  }
  const value = engineRotation(turns);
  return say.fails({
    place,
    message: `${begin(name)} is built for ${engineWord(built)} rotation, and the engine is ${engineWord(turns)}: it would work backwards.`,
    related: [{ at: engine.rotation!.origin, message: 'rotation of the engine' }],
    routes: () => [
      {
        title: `Order the ${of.accessory.name} for ${engineWord(turns)} rotation (a work item for the yard)`,
        edits: [
          of.accessory.rotation
            ? { do: 'replace', at: of.accessory.rotation.origin, value }
            : { do: 'set', host: of.accessory.origin, property: 'rotation', value },
        ],
      },
    ],
  });
}

function begin(words: string): string {
  return capital(words);
}
