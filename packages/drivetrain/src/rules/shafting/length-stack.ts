import { given, lengthLeftOver, shaftShift, stackLength, type Value } from '@tailshaft/mechanics';
import { ACROSS, type Across, outputMoves, saysAcross } from '../../analysis/axis-stack.js';
import { outputCouplings } from '../../analysis/couplings.js';
import { changedOf, keptOf } from '../../analysis/kept.js';
import { turnsBack } from '../../analysis/stages.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Criterion, Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { type Apart, apart, isSaid } from '../../model/reads.js';
import type { Coupling, Shaft } from '../../model/shafting.js';
import type { ShaftLine, Vessel } from '../../model/vessel.js';
import { changed, REPOWER } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER, GEOMETRY } from './sources.js';

const WITH_LENGTHS = changed(
  REPOWER,
  ['  slip device offered\n', '  slip device offered\n  length 520 mm\n'],
  [
    'engine Old-Eight at medium { flywheel aft }',
    'engine Old-Eight at medium { flywheel aft  output face at 0.62 m }',
  ],
  [
    'replace engine Kittiwake-9 at medium { flywheel aft',
    'replace engine Kittiwake-9 at medium { flywheel aft  output face at 0.62 m',
  ],
);

const INFO: RuleInfo = {
  id: 'shafting/length-stack',
  title: 'The propeller keeps its place along the shaft line',
  mistakes: ['L19'],
  severity: 'warning',
  estimate: USUAL_ESTIMATE,
  criterion: 'output face of the engine, lengths of gear, boxes, coupling and shaft, before against after',
  source: GEOMETRY,
  manual:
    'A new gear is longer or shorter than the old one; engine, coupling and shaft shift with it, and a retained ' +
    'shaft then extends further aft: overhang, seal and the gap to the rudder change. Where lengths are ' +
    'declared, the coupling face is followed from before to after, and so are height and offset of the output of the gear. Move the engine, order a shaft of the new ' +
    'length, or fit a spacer that the coupling maker approves.',
  caution: `${DEFER} 5 mm is allowed unless the criteria say "length difference at most": common practice.`,
  noCure: 'The designer decides which length changes.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(WITH_LENGTHS, [
      'Kittiwake-9 at medium { flywheel aft  output face at 0.62 m',
      'Kittiwake-9 at medium { flywheel aft  output face at 0.66 m',
    ]),
    passing: WITH_LENGTHS,
    cannotTell: changed(WITH_LENGTHS, ['  length 520 mm\n', '  length unknown\n']),
  })),
};

export const lengthStack: Rule = { ...INFO, scope: 'line', check };

const ALLOWED = 5e-3;

function check(context: LineContext): Apart<Verdict> {
  return apart(() => alongTheLine(context), ...ACROSS.map(one => () => acrossTheLine(context, one)));
}

/** Whether the output of the gear stays where the shaft that goes on from it lies, in height or sideways. */
function acrossTheLine({ line, vessel, analysis }: LineContext, across: Across): Verdict | undefined {
  const { before } = line;
  const shaft = line.shafts.at(-1);
  if (!before || !shaft || !saysAcross(across, [line, before])) return undefined;
  const say = sayFor(INFO, `${line.path}.${across.axisWords.replace(' ', '-')}`);
  const needs = new Needs();
  const moves = outputMoves(across, line, before, needs);
  const place = (line.gear ?? line.engine ?? line.motor ?? shaft).origin;
  if (!moves)
    return waits(
      say,
      needs,
      place,
      `${line.name}: whether the output of the gear stays where the shaft lies`,
    );
  const own = vessel.criteria?.lengthDifference?.value;
  const far = analysis.tell({ ...moves, si: Math.abs(moves.si) }, 3);
  const way = across.ways[moves.si > 0 ? 0 : 1];
  return say.within({
    place,
    criterion: {
      said: `${across.axisWords} of the engine and ${across.stepWords} of its gears, before against after, within ${own?.written ?? '5 mm (common practice)'}`,
      chosenBy: own ? 'author' : 'default',
    },
    difference: moves.si,
    differs: moves,
    allowed: own?.si ?? ALLOWED,
    workings: [moves],
    message: `${line.name}: the output of the gear stays within ${far} of where the shaft lies.`,
    failMessage: `${line.name}: the output of the gear lies ${far} ${way} than before, and tube and shaft stay. Set the engine by as much the other way, or take a gear of the same drop.`,
    related: [{ at: shaft.origin, message: 'the shaft that goes on from it' }],
  });
}

function alongTheLine(context: LineContext): Verdict | undefined {
  const { line, vessel, analysis } = context;
  const { before } = line;
  const written = [line, before].some(one => one && (one.gear?.length || (one.engine ?? one.motor)?.faceAt));
  const shaft = line.shafts.at(-1);
  if (!before || !written || !shaft || before.shafts.length !== line.shafts.length) {
    return undefined;
  }
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const apart: Apartness = { couplings: !isSameStack(line, before), boxes: !haveSameBoxes(line, before) };
  const [now, then] = [stackOf(line, needs, apart), stackOf(before, needs, apart)];
  if (now && then && Math.abs(now.si - then.si) > SLACK) askWhereItTurns([line, before], needs);
  const [face, oldFace] = [faceOf(line, needs), faceOf(before, needs)];
  const keepsShaft = line.shafts.every(one => keepsLength(one, line, vessel));
  const [shafts, oldShafts] = keepsShaft ? [NONE, NONE] : [shaftsOf(line, needs), shaftsOf(before, needs)];
  const place = (line.gear ?? line.engine ?? line.motor ?? shaft).origin;
  if (!now || !then || !face || !oldFace || !shafts || !oldShafts || needs.any) {
    return waits(say, needs, place, `${line.name}: whether the propeller stays where it was`);
  }
  const engineMovedAft = lengthLeftOver({ stack: face, room: oldFace });
  const coupling = shaftShift({ before: then, after: now, engineMovedAft });
  const longer = lengthLeftOver({ stack: shafts, room: oldShafts });
  const shift = stackLength([coupling, longer]);
  const own = vessel.criteria?.lengthDifference?.value;
  const allowed = own?.si ?? ALLOWED;
  const far = analysis.tell({ ...shift, si: Math.abs(shift.si) }, 3);
  const way = shift.si > 0 ? 'further aft' : 'further forward';
  const criterion: Criterion = {
    said: `${INFO.criterion}, within ${own?.written ?? '5 mm (common practice)'}`,
    chosenBy: own ? 'author' : 'default',
  };
  return say.within({
    place,
    criterion,
    difference: shift.si,
    differs: shift,
    allowed,
    workings: [shift, coupling],
    message: `${line.name}: lengths before and after agree: the propeller moves ${far}.`,
    failMessage:
      `${line.name}: the coupling face moves ${analysis.tell({ ...coupling, si: Math.abs(coupling.si) }, 3)}, ` +
      `and the propeller sits ${far} ${way} with this shaft. Move the engine, order a shaft of the right length, or fit a spacer with the maker’s consent.`,
    related: [{ at: shaft.origin, message: keepsShaft ? 'the shaft that stays' : 'the new shaft' }],
  });
}

/** A kept shaft, whatever else is done to it. */
function keepsLength(shaft: Shaft, line: ShaftLine, vessel: Vessel): boolean {
  const kept = keptOf(shaft, line, vessel);
  return kept !== undefined && changedOf(kept, ['length']).length === 0;
}

/** A tenth of a millimetre: lengths that differ by less are the same. */
const SLACK = 1e-4;

const NONE = given('shaft length', 'L', 'length', 0, { assumed: 'the same shaft before and after' });

/** Couplings that stand in both lines take each other out, whatever their length. */
function isSameStack(line: ShaftLine, before: ShaftLine): boolean {
  const entries = [line, before].map(one => outputCouplings(one).map(coupling => coupling.entry?.name));
  const [now, then] = entries as [(string | undefined)[], (string | undefined)[]];
  const kept = outputCouplings(line).every(one => one.change === 'retained');
  return (
    now.length === then.length && (kept || now.every((one, at) => one !== undefined && one === then[at]))
  );
}

/** A rigid half-coupling sits on the end of the shaft, and its face is where the length of the shaft begins. */
function hasLength(coupling: Coupling): boolean {
  return coupling.kind?.value !== 'rigid' || isSaid(() => coupling.length);
}

/** What does not stand alike in both lines, and so counts with its length. */
interface Apartness {
  readonly couplings: boolean;
  readonly boxes: boolean;
}

/** Boxes that stand in both lines take each other out as well. */
function haveSameBoxes({ transfers }: ShaftLine, before: ShaftLine): boolean {
  return (
    transfers.length === before.transfers.length &&
    transfers.every(
      (one, at) =>
        one.change === 'retained' ||
        (one.entry !== undefined && one.entry.name === before.transfers[at]!.entry?.name),
    )
  );
}

/** Lengths before a box that turns the line back lead forward, and none is declared for what it does itself. */
function askWhereItTurns(lines: readonly ShaftLine[], needs: Needs): void {
  for (const box of lines.flatMap(one => one.transfers)) {
    const back = turnsBack(box);
    if (back === false) continue;
    const property = back ? 'length' : 'turns the line back';
    const what = back
      ? `how far forward of its input ${nameOf(box)} takes the shaft, where the lengths before it are others`
      : `whether ${nameOf(box)} turns the line back`;
    needs.miss(
      { what, host: home(box), property },
      back ? (box.length?.origin ?? box.origin) : box.turnsBack?.origin,
    );
  }
}

/** Gear, boxes and coupling, input face to the coupling face of the shaft. */
function stackOf(line: ShaftLine, needs: Needs, apart: Apartness): Value<'length'> | undefined {
  const couplings = apart.couplings ? outputCouplings(line).filter(hasLength) : [];
  const parts = [...(line.gear ? [line.gear] : []), ...(apart.boxes ? line.transfers : []), ...couplings];
  const lengths = parts.map(part =>
    needs.fact(part.length, { what: `length of ${nameOf(part)}`, host: home(part), property: 'length' }),
  );
  if (lengths.some(one => one === undefined)) return undefined;
  return stackLength(lengths.map(one => one!));
}

function faceOf(line: ShaftLine, needs: Needs): Value<'length'> | undefined {
  const prime = line.engine ?? line.motor;
  if (!prime) return undefined;
  return needs.fact(prime.faceAt, {
    what: `place of the output face of ${nameOf(prime)} in ${line.path}`,
    host: prime.origin,
    property: 'output face at',
  });
}

function shaftsOf(line: ShaftLine, needs: Needs): Value<'length'> | undefined {
  const lengths = line.shafts.map(shaft =>
    needs.fact(shaft.length, {
      what: `length of the shaft in ${line.path}`,
      host: shaft.origin,
      property: 'length',
    }),
  );
  if (lengths.some(one => one === undefined)) return undefined;
  return stackLength(lengths.map(one => one!));
}
