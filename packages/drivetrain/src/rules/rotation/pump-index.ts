import { turnAtFlywheel } from '@tailshaft/mechanics';
import { OPEN } from '@tailshaft/vocabulary';
import { statementOf } from '../../analysis/rotation.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Rotation } from '../../model/fact.js';
import { nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { engineWord, stubRoutes, writeInPlace } from './edits.js';
import { DOCK_CAUTION, MAKER } from './sources.js';

const INDEXED = changed(
  SINGLE_LINE,
  ['input rotation standard viewed from flywheel', 'input rotation either by pump index'],
  ['ratio 2.04:1 ahead clutch B', 'ratio 2.04:1 ahead clutch B { pump set for standard }'],
);

const INFO: RuleInfo = {
  id: 'rotation/pump-index',
  title: 'The gear oil pump is set for the engine rotation',
  mistakes: ['R13'],
  severity: 'warning',
  criterion: 'rotation that the pump is set for against the engine rotation, both at the flywheel',
  source: MAKER,
  manual:
    'Some gears accept either engine rotation once their oil pump is set for it. Set for the other rotation, the ' +
    'pump makes no pressure, and the gear does not drive or burns its clutches. The pump needs setting whenever ' +
    'the engine rotation changes. Write the setting at the gear in its line: `pump set for standard` or `pump ' +
    'set for opposite`.',
  caution: `${DOCK_CAUTION} Read the index mark on the pump, and check the oil pressure before loading the gear.`,
  noFigure: 'a sense, a hand or a clutch',
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(INDEXED, ['pump set for standard', 'pump set for opposite']),
    passing: INDEXED,
    cannotTell: changed(INDEXED, [' { pump set for standard }', '']),
  })),
};

export const pumpIndex: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis } = context;
  const { gear, engine } = line;
  if (!gear || !engine) return undefined;
  const indexed = gear.inputRotation?.value?.word === 'either by pump index';
  if (!indexed && !gear.pumpIndex) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const wanted = {
    what: `what the pump of ${nameOf(gear)} is set for`,
    host: gear.origin,
    property: 'pump set for',
  };
  const set = needs.fact(gear.pumpIndex, wanted);
  const setFor = set && wordOf(set);
  if (set && !setFor) needs.miss(wanted, gear.pumpIndex?.origin);
  const needed = analysis.rotation.neededPump;
  if (!needed) {
    needs.take({
      value: undefined,
      missing: analysis.rotation.missingAtGear,
    });
  }
  const place = gear.pumpIndex?.origin ?? gear.nameOrigin ?? gear.origin;
  const from = gear.pumpIndex?.value?.viewedFrom;
  const seen = from && { viewedFrom: 'flywheel' as const };
  const setRoute = (title: string) => ({
    title,
    edits: [
      writeInPlace(
        gear,
        'pump set for',
        needed ? { is: 'rotation', rotation: { word: needed, ...seen } } : OPEN,
      ),
    ],
  });
  if (needs.any || !needed || !setFor) {
    return say.cannotTell(needs, {
      place,
      message:
        cannotTellWords(
          `${line.name}: whether the pump of ${nameOf(gear)} is set for this engine`,
          needs.missing,
        ) + (needed ? ` It must be set for ${needed}, or it makes no pressure.` : ''),
      routes: () => [
        ...(needed && !gear.pumpIndex
          ? [setRoute(`Write that the pump is set for ${needed}, once it is`)]
          : []),
        ...stubRoutes(needs.missing),
      ],
    });
  }
  if (setFor === needed) {
    return say.holds({ place, message: `${line.name}: the pump is set for ${needed}, as the engine turns.` });
  }
  const before =
    line.before?.engine && line.before.gear ? context.analysisOf(line.before).rotation.neededPump : undefined;
  const moved =
    before && before !== needed ? ` The engine rotation changes from ${before} to ${needed}.` : '';
  return say.fails({
    place,
    message:
      `${line.name}: the pump of ${nameOf(gear)} is set for ${setFor}, and the engine has ${needed} rotation.${moved} ` +
      'Set it for the engine, or it makes no pressure.',
    related: [{ at: engine.rotation?.origin ?? engine.origin, message: `rotation of ${nameOf(engine)}` }],
    routes: () => [
      setRoute(`Set the pump of ${line.name} for ${needed}, as its engine turns (a work item for the yard)`),
    ],
  });
}

/** A pump is set for the rotation of an engine: standard and opposite are that engine's words, and need no view. */
function wordOf(set: Rotation): 'standard' | 'opposite' | undefined {
  if ((set.word === 'standard' || set.word === 'opposite') && !set.viewedFrom) return set.word;
  const told = turnAtFlywheel(statementOf(set));
  return told.known ? engineWord(told.value) : undefined;
}
