import {
  engineSense,
  explainRotation,
  type FlywheelFacing,
  type Hand,
  handThatDrivesAhead,
  lineRotation,
  type Origin,
  otherTurn,
  powerLeavesAft,
  type RotationStage,
  type RotationStatement,
  type Sense,
  type Turn,
  type Turning,
  turnAtFlywheel,
  turnFromAft,
  turning,
} from '@tailshaft/mechanics';
import { Needs } from '../judge/needs.js';
import type { Missing } from '../judge/verdict.js';
import type { Fact, Rotation } from '../model/fact.js';
import { known } from '../model/fact.js';
import type { Clutch } from '../model/gear.js';
import { home, nameOf } from '../model/part.js';
import type { ShaftLine } from '../model/vessel.js';
import { clutchInUse } from './ahead-clutch.js';
import { asternClutchOf } from './gear-data.js';
import { boxBefore, lineStages, type PlacedStage } from './stages.js';

/** The sense at one station of a line, and the declaration that it rests on. */
export interface RotationStep {
  readonly station: string;
  /** As seen from aft looking forward; undefined from the first station that cannot be told. */
  readonly turn: Turn | undefined;
  /** One sentence: `gear Alder-63: output opposite to input … → clockwise seen from aft`. */
  readonly text: string;
  readonly at: Origin;
}

/** How a line turns. */
export interface RotationAnalysis {
  /** Sense of the engine or motor in the vessel. */
  readonly source: Sense | undefined;
  /** The prime mover is a motor that runs either way. */
  readonly either: boolean;
  /** The crankshaft seen at its flywheel end, whichever way it faces. */
  readonly atFlywheel: Turn | undefined;
  /** What lies between the prime mover and the propeller does to the sense, in the ahead clutch. */
  readonly factor: Sense | undefined;
  readonly clutch: Clutch | undefined;
  /** Sense of the propeller shaft with the lever ahead, and astern. */
  readonly ahead: Sense | undefined;
  readonly astern: Sense | undefined;
  readonly steps: readonly RotationStep[];
  readonly asternSteps: readonly RotationStep[];
  readonly neededHand: Hand | undefined;
  /** The turn that enters the gear, as a sheet states it at the flywheel: behind a box between the two it may be another. */
  readonly atGearInput: Turn | undefined;
  /** Why that is not known. */
  readonly missingAtGear: readonly Missing[];
  /** What a pump that must be set for the engine rotation is to be set for. */
  readonly neededPump: 'standard' | 'opposite' | undefined;
  readonly turning: Turning | undefined;
  readonly missing: readonly Missing[];
}

/** Follows the rotation of a line from its engine or motor to its propeller, ahead and astern. */
export function rotationOf(line: ShaftLine): RotationAnalysis {
  const needs = new Needs();
  const mover = moverOf(line, needs);
  const clutch = line.gear && clutchInUse(line.gear, needs);
  const stages = lineStages(line, clutch, mover.facing, needs);
  const ahead = follow(line, mover, stages);
  const other = clutch && line.gear && asternClutchOf(line.gear);
  const astern = other && follow(line, mover, lineStages(line, other, mover.facing, new Needs()));
  const side = known(line.side);
  const sense = needs.any ? undefined : ahead.sense;
  const input = atGearInput(line, mover);
  return {
    source: mover.sense,
    either: mover.either,
    atFlywheel: mover.atFlywheel,
    factor: factorOf(stages),
    clutch,
    ahead: sense,
    astern: astern?.sense,
    steps: ahead.steps,
    asternSteps: astern?.steps ?? [],
    neededHand: sense && handThatDrivesAhead(sense),
    atGearInput: input.turn,
    missingAtGear: input.missing ?? needs.missing.filter(isOfMover),
    neededPump: input.turn && (input.turn === 'clockwise' ? 'opposite' : 'standard'),
    turning: sense && side && turning(side, sense),
    missing: needs.missing,
  };
}

/** What a declared rotation says to the algebra; undefined where it says nothing that can be used. */
export function statementOf(rotation: Rotation | undefined): RotationStatement | undefined {
  if (!rotation || rotation.word === 'either' || rotation.word === 'either by pump index') return undefined;
  return rotation.viewedFrom ? { word: rotation.word, view: rotation.viewedFrom } : undefined;
}

/** The turn at the flywheel end that a declared fact stands for. */
export function turnDeclared(
  fact: Fact<Rotation> | undefined,
  facing?: FlywheelFacing | undefined,
): Turn | undefined {
  const told = turnAtFlywheel(statementOf(fact?.value), facing);
  return told.known ? told.value : undefined;
}

interface Mover {
  readonly name: string;
  readonly at: Origin;
  readonly statement: RotationStatement | undefined;
  readonly facing: FlywheelFacing | undefined;
  readonly sense: Sense | undefined;
  readonly atFlywheel: Turn | undefined;
  readonly either: boolean;
}

const NO_MOVER = {
  statement: undefined,
  facing: undefined,
  sense: undefined,
  atFlywheel: undefined,
  either: false,
};

function moverOf(line: ShaftLine, needs: Needs): Mover {
  if (line.engine) return engineOf(line.engine, needs);
  if (line.motor) return motorOf(line, line.motor, needs);
  needs.miss({ what: `engine or motor of ${line.path}`, host: line.origin, property: 'engine' });
  return { ...NO_MOVER, name: 'engine', at: line.origin };
}

function engineOf(engine: NonNullable<ShaftLine['engine']>, needs: Needs): Mover {
  const name = nameOf(engine);
  const whole = { what: `rotation of ${name}`, host: home(engine), property: 'rotation' };
  const rotation = needs.fact(engine.rotation, whole);
  const statement = statementOf(rotation);
  if (rotation && !statement) {
    const what = rotation.word.startsWith('either')
      ? `which way ${name} turns in this line`
      : `from where the rotation of ${name} is seen`;
    needs.miss({ ...whole, what }, engine.rotation?.origin);
  }
  const wantsFacing = {
    what: `which way the flywheel of ${name} faces`,
    host: engine.origin,
    property: 'flywheel',
  };
  const facing = known(engine.flywheelFaces);
  const told = engineSense(statement, facing);
  if (statement && !told.known) {
    if (told.missing === 'flywheel facing') needs.fact(engine.flywheelFaces, wantsFacing);
    else needs.miss({ ...whole, what: `rotation of ${name} in plain words` }, engine.rotation?.origin);
  } else if (!statement) needs.fact(engine.flywheelFaces, wantsFacing);
  const flywheel = turnAtFlywheel(statement, facing);
  return {
    name,
    at: engine.rotation?.origin ?? engine.origin,
    statement,
    facing,
    sense: told.known ? told.value : undefined,
    atFlywheel: flywheel.known ? flywheel.value : undefined,
    either: false,
  };
}

/** A motor's drive end faces aft unless the line turns back behind it: then it faces forward. */
function motorOf(line: ShaftLine, motor: NonNullable<ShaftLine['motor']>, needs: Needs): Mover {
  const name = nameOf(motor);
  const whole = { what: `rotation of ${name}`, host: home(motor), property: 'rotation' };
  const rotation = needs.fact(motor.rotation, whole);
  const either = rotation?.word.startsWith('either') ?? false;
  const statement = statementOf(rotation);
  if (rotation && !either && !statement) {
    needs.miss({ ...whole, what: `from where the rotation of ${name} is seen` }, motor.rotation?.origin);
  }
  const facing = lineStages(line, undefined, undefined, new Needs()).some(one => one.turnsBack)
    ? 'forward'
    : 'aft';
  const told = engineSense(statement, facing);
  if (statement && !told.known) {
    needs.miss({ ...whole, what: `rotation of ${name} in plain words` }, motor.rotation?.origin);
  }
  const flywheel = turnAtFlywheel(statement, facing);
  return {
    name,
    at: motor.rotation?.origin ?? motor.origin,
    statement,
    facing,
    sense: told.known ? told.value : undefined,
    atFlywheel: flywheel.known ? flywheel.value : undefined,
    either,
  };
}

function follow(line: ShaftLine, mover: Mover, placed: readonly PlacedStage[]) {
  const stages: readonly RotationStage[] = placed.map(one => one.stage);
  const followed = lineRotation({ engine: mover.statement, facing: mover.facing, stages });
  const sentences = explainRotation(followed).map((text, index) =>
    index === 0 ? text.replace(/^engine/, mover.name) : text,
  );
  const steps = followed.steps.map((step, index): RotationStep => {
    const here = placed[index - 1];
    return {
      station: index === 0 ? mover.name : step.stage,
      turn: step.senseAfter && turnFromAft(step.senseAfter),
      text: sentences[index]!,
      at: here?.at ?? mover.at,
    };
  });
  if (followed.sense && line.propeller) {
    const turn = turnFromAft(followed.sense);
    steps.push({
      station: 'propeller',
      turn,
      text: `propeller: ${turn} seen from aft drives ahead with a ${handThatDrivesAhead(followed.sense)}-hand one`,
      at: line.propeller.origin,
    });
  }
  return { sense: followed.sense, steps };
}

const isOfMover = ({ property }: Missing) => property === 'rotation' || property === 'engine';

/** Behind a box the turn is that of its output, looked at against the way that the power goes. */
function atGearInput(
  line: ShaftLine,
  mover: Mover,
): { readonly turn: Turn | undefined; readonly missing?: readonly Missing[] } {
  const box = line.gear && boxBefore(line, line.gear);
  if (!box) return { turn: mover.atFlywheel };
  const chain = line.chain.slice(0, line.chain.indexOf(line.gear!));
  const needs = new Needs();
  const own = moverOf(line, needs);
  const placed = lineStages({ ...line, chain }, undefined, own.facing, needs);
  const factor = factorOf(placed);
  const aft = powerLeavesAft({ facing: own.facing, stages: placed.map(one => one.stage) });
  if (own.sense && factor && aft !== undefined && !needs.any) {
    const turn = turnFromAft((own.sense * factor) as Sense);
    return { turn: aft ? turn : otherTurn(turn) };
  }
  if (!needs.any)
    needs.miss({
      what: `which way ${nameOf(box)} sends the line`,
      host: home(box),
      property: 'turns the line back',
    });
  return { turn: undefined, missing: needs.missing };
}

/** What all stages together do to the sense. */
function factorOf(stages: readonly PlacedStage[]): Sense | undefined {
  const from = lineRotation({
    engine: { word: 'clockwise', view: 'aft' },
    facing: undefined,
    stages: stages.map(one => one.stage),
  });
  return from.sense;
}
