import { otherTurn, type Sense } from '@tailshaft/mechanics';
import { newWord } from '@tailshaft/vocabulary';
import { clutchesOf } from '../../analysis/gear-data.js';
import { type Pair, pairOf } from '../../analysis/twin.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { ArrangementContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Gear } from '../../model/gear.js';
import { nameOf } from '../../model/part.js';
import { type Apart, apart, each } from '../../model/reads.js';
import type { ShaftLine } from '../../model/vessel.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { exchange, stubRoutes, turnWords } from './edits.js';
import { GEARS_EXCHANGED, HANDED_GEARS } from './exchange-examples.js';
import { gearRoutes, handRoutes, pairRoutes } from './hand-routes.js';
import { handFolds } from './pair-folds.js';
import { ALGEBRA, DOCK_CAUTION } from './sources.js';

const INFO: RuleInfo = {
  id: 'rotation/gears-exchanged',
  title: 'Each gear of a handed pair stands on its own side',
  mistakes: ['R08'],
  severity: 'error',
  criterion: 'output of each gear ahead against the plan: the hands of the pair, or an expected output',
  source: ALGEBRA,
  manual:
    'Paired gears, one that keeps the engine rotation and one that reverses it, look alike and get ' +
    'exchanged. Both shafts then turn the wrong way. This rule finds the exchange when both propellers of a ' +
    'pair would drive astern and exchanging the gears corrects both, or when a gear does not turn as its ' +
    '`expected output` says. Exchange the gears in the spec, and check whether their ratios were meant for ' +
    'the other side too.',
  caution: `${DOCK_CAUTION} Compare ratios and serial plates as well: exchanged gears often differ in ratio.`,
  noFigure: 'a sense, a hand or a clutch',
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: GEARS_EXCHANGED,
    passing: HANDED_GEARS,
    cannotTell: changed(
      SINGLE_LINE,
      ['ratio 2.04:1 ahead clutch B', 'ratio 2.04:1 ahead clutch B { expected output clockwise }'],
      ['dated 2025-01-20\n  rotation standard viewed from flywheel', 'dated 2025-01-20'],
    ),
  })),
};

export const gearsExchanged: Rule = { ...INFO, scope: 'arrangement', check };

function check(context: ArrangementContext): Verdict | Apart<Verdict> {
  const pair = pairOf(context.arrangement);
  const exchanged = apart(() => pair && judgePair(context, pair));
  if (exchanged[0]?.outcome === 'fails') return exchanged;
  return apart(
    () => exchanged,
    () => each(context.arrangement.lines, line => judgeExpected(context, line)),
  );
}

function judgePair(context: ArrangementContext, pair: Pair): Verdict | undefined {
  const { arrangement, analysisOf } = context;
  const { port, starboard } = pair;
  if (!port.gear || !starboard.gear) return undefined;
  const [p, s] = [analysisOf(port), analysisOf(starboard)];
  const [atPort, atStarboard] = [p.rotation.factor, s.rotation.factor];
  if (!atPort || !atStarboard || atPort === atStarboard || !areDifferent(pair)) return undefined;
  const say = sayFor(INFO, arrangement.path);
  const place = port.gear.nameOrigin ?? port.gear.origin;
  const states = [p.hand?.state, s.hand?.state];
  if (states.every(state => state === 'right')) {
    return say.holds({
      place,
      message: `Each gear stands on its side: the port one ${does(atPort)} the rotation, the starboard one ${does(atStarboard)} it.`,
    });
  }
  if (!states.every(state => state === 'wrong')) return undefined;
  const edits = exchange(port.gear, starboard.gear);
  return say.fails({
    place,
    message:
      `The gear to port${named(port.gear)} ${does(atPort)} the rotation of its engine and the one to starboard${named(starboard.gear)} ` +
      `${does(atStarboard)} it; with these engines and propellers it must be the other way round. ` +
      'Both propellers would drive astern with the lever ahead: the gears are exchanged.',
    related: [{ at: starboard.gear.nameOrigin ?? starboard.gear.origin, message: 'the other gear' }],
    steps: [...p.rotation.steps, ...s.rotation.steps].map(step => step.text),
    explains: [port, starboard].flatMap(line => [
      ...handFolds(line.path, arrangement.path),
      { rule: 'rotation/ratio-flips-output', subject: line.path },
    ]),
    routes: () => [
      ...(edits.length > 0
        ? [{ title: `Exchange the gears${ratioWords(pair)}: both propellers then drive ahead`, edits }]
        : []),
      ...pairRoutes(context),
    ],
  });
}

/** What one gear gives against what the plan expects of it. */
function judgeExpected(context: ArrangementContext, line: ShaftLine): Verdict | undefined {
  const expected = line.gear?.expectedOutput;
  if (!expected?.value || !line.gear) return undefined;
  const say = sayFor(INFO, line.path);
  const analysis = context.analysisOf(line);
  const { ahead, missing } = analysis.rotation;
  if (!ahead) {
    const needs = new Needs();
    needs.take({ value: ahead, missing });
    return say.cannotTell(needs, {
      place: expected.origin,
      message: cannotTellWords(
        `${line.name}: whether the gear gives the expected ${expected.value} output`,
        missing,
      ),
      explains: [{ rule: 'rotation/propeller-hand', subject: line.path }],
      routes: () => stubRoutes(missing),
    });
  }
  const turn = turnWords(ahead);
  if (turn === expected.value) {
    return say.holds({
      place: expected.origin,
      message: `${line.name}: the output turns ${turn} ahead, as expected.`,
    });
  }
  const wanted: Sense = ahead === 1 ? -1 : 1;
  return say.fails({
    place: expected.origin,
    message: `${line.name}: the plan expects ${otherTurn(turn)} output ahead of ${nameOf(line.gear)}, but with this engine and clutch it turns ${turn} seen from aft.`,
    related: analysis.rotation.steps.map(step => ({ at: step.at, message: step.text })),
    explains: handFolds(line.path, context.arrangement.path),
    routes: () => [
      ...(analysis.hand?.state === 'wrong' ? handRoutes({ ...context, line, analysis }) : []),
      {
        title: `Expect ${turn} output, as this engine and clutch give`,
        edits: [{ do: 'replace', at: expected.origin, value: newWord(turn) }],
      },
      ...(analysis.hand?.state === 'wrong' ? [] : gearRoutes({ ...context, line, analysis }, wanted)),
    ],
  });
}

/**
 * Two gears of one make and ratio are the same gear, and so are one declared in place and its mirror: then the clutches
 * are exchanged, not the gears.
 */
function areDifferent({ port, starboard }: Pair): boolean {
  const [a, b] = [port.gear!, starboard.gear!];
  if (a.ratioUsed?.value?.si !== b.ratioUsed?.value?.si) return true;
  if (a.entry || b.entry) return a.entry?.name !== b.entry?.name;
  return !isOneDeclaration(a, b);
}

/** A mirrored gear has no clutches of its own: they are those that the other line declares. */
function isOneDeclaration(a: Gear, b: Gear): boolean {
  const [one, other] = [clutchesOf(a, a.variant), clutchesOf(b, b.variant)];
  return (
    one.length > 0 &&
    one.length === other.length &&
    one.every((clutch, index) => clutch.origin === other[index]!.origin)
  );
}

function does(factor: Sense): string {
  return factor === 1 ? 'keeps' : 'reverses';
}

function ratioWords({ port, starboard }: Pair): string {
  const [a, b] = [port.gear?.ratioUsed?.written, starboard.gear?.ratioUsed?.written];
  return a && b && a !== b ? ` with their ratios (${b} to port, ${a} to starboard)` : '';
}

function named(gear: Gear): string {
  return gear.entry ? `, ${gear.entry.name},` : '';
}
