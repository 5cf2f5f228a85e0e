import {
  type FlywheelFacing,
  type Origin,
  type OutputCompared,
  type RotationStage,
  type Sense,
  stageFactor,
} from '@tailshaft/mechanics';
import { Needs } from '../judge/needs.js';
import type { Fact } from '../model/fact.js';
import { known } from '../model/fact.js';
import type { Clutch, Gear, OutputSense, Train, Transfer } from '../model/gear.js';
import { home, nameOf, type Part } from '../model/part.js';
import type { ShaftLine } from '../model/vessel.js';
import { trainOf } from './train-of-clutch.js';
import { signedTrainRatio } from './train-ratio.js';

/** A stage of the line with the declaration that says what it does. */
export interface PlacedStage {
  readonly stage: RotationStage;
  readonly at: Origin;
  /** Whether the line turns back in it; undefined where nothing says so. */
  readonly turnsBack: boolean | undefined;
}

/** The box nearest to a part on the side that drives it: a belt between engine and gear. */
export function boxBefore({ chain, transfers }: ShaftLine, part: Part): Transfer | undefined {
  const at = chain.indexOf(part);
  return transfers.findLast(one => chain.indexOf(one) < at);
}

/** Everything between prime mover and propeller, in the order that power passes it. */
export function lineStages(
  line: ShaftLine,
  clutch: Clutch | undefined,
  facing: FlywheelFacing | undefined,
  needs: Needs,
): PlacedStage[] {
  const straight =
    facing === 'aft' && !line.transfers.some(turnsBack) && !(line.gear && turnsBack(line.gear));
  const stages: PlacedStage[] = [];
  for (const part of line.chain) {
    if (part.role === 'gear') stages.push(gearStage(line.gear!, clutch, straight, needs));
    else if (part.role === 'transfer') stages.push(transferStage(part as Transfer, straight, needs));
    else if (part.role === 'coupling' || part.role === 'shaft') {
      stages.push({
        stage: { kind: part.role, name: nameOf(part) },
        at: part.origin,
        turnsBack: false,
      });
    }
  }
  return stages;
}

/**
 * Whether the line turns back in a gear or transfer, as far as it says. A box of V-drive kind does unless it says
 * otherwise; another transfer that does not say is taken neither way.
 */
export function turnsBack(part: Gear | Transfer): boolean | undefined {
  if (part.role === 'gear') {
    const word = part.layout?.value?.word;
    return word && (word === 'V-drive' || word === 'U-drive');
  }
  const said = part.turnsBack?.value;
  if (said) return said === 'yes';
  return part.kind?.value?.endsWith('V-drive') ? true : undefined;
}

function gearStage(gear: Gear, clutch: Clutch | undefined, straight: boolean, needs: Needs): PlacedStage {
  const name = clutch ? `${nameOf(gear)}, clutch ${clutch.name}` : nameOf(gear);
  const host = clutch?.origin ?? gear.variant?.origin ?? home(gear);
  const back = straight ? false : turnsBack(gear);
  const declared = {
    name,
    host,
    output: clutch?.output,
    train: trainOf(gear, clutch),
    back,
    wantsLayout: { what: `layout of ${nameOf(gear)}`, host: home(gear), property: 'layout' },
    layoutAt: gear.layout?.origin,
  };
  // A clutch that is not settled is already named as missing: its output sense is not a second gap.
  return stageFrom(declared, clutch || declared.train ? needs : new Needs());
}

function transferStage(transfer: Transfer, straight: boolean, needs: Needs): PlacedStage {
  const host = home(transfer);
  return stageFrom(
    {
      name: nameOf(transfer),
      host,
      output: transfer.output,
      train: transfer.train,
      back: straight ? false : turnsBack(transfer),
      wantsLayout: {
        what: `whether ${nameOf(transfer)} turns the line back`,
        host,
        property: 'turns the line back',
      },
      layoutAt: transfer.turnsBack?.origin,
    },
    needs,
  );
}

interface Declared {
  readonly name: string;
  readonly host: Origin;
  readonly output: Fact<OutputSense> | undefined;
  readonly train: Train | undefined;
  readonly back: boolean | undefined;
  readonly wantsLayout: { what: string; host: Origin; property: string };
  readonly layoutAt: Origin | undefined;
}

/** What is declared, or what the tooth counts give. Where the two disagree neither can be used. */
function stageFrom(one: Declared, needs: Needs): PlacedStage {
  const { name, host, output, train, back } = one;
  const derived = train && senseOfTrain(train);
  const wanted = { what: `output sense of ${name}`, host, property: 'output' };
  if (!output && derived) {
    return { stage: { kind: 'train', name, ratio: derived }, at: train!.origin, turnsBack: back };
  }
  const said = needs.fact(output, wanted);
  const stage = declaredStage(name, said, back);
  const at = output?.origin ?? host;
  if (!said) return { stage, at, turnsBack: back };
  const factor = stageFactor(stage);
  if (!factor.known) {
    if (back === undefined) needs.miss(one.wantsLayout, one.layoutAt);
    else needs.miss({ ...wanted, what: `from where the output sense of ${name} is seen` }, output?.origin);
  } else if (derived && derived !== factor.value) {
    needs.miss({ ...wanted, what: `output sense of ${name} that its tooth counts bear out` }, output?.origin);
    return { stage: declaredStage(name, undefined, back), at, turnsBack: back };
  }
  return { stage, at, turnsBack: back };
}

function declaredStage(
  name: string,
  said: OutputSense | undefined,
  back: boolean | undefined,
): RotationStage {
  return { kind: 'declared', name, output: said?.word, compared: said && comparedIn(said), turnsBack: back };
}

function comparedIn(said: OutputSense): OutputCompared | undefined {
  if (said.seen === 'each seen at its own end') return 'each at its own end';
  return said.seen && 'seen from aft';
}

/** Output against input seen from aft, from the tooth counts; undefined where they do not settle it. */
export function senseOfTrain(train: Train): Sense | undefined {
  const result = signedTrainRatio(train);
  if (!result.known || !(Math.abs(result.ratio.si) > 0)) return undefined;
  return result.ratio.si > 0 ? 1 : -1;
}

/** The sense that one clutch gives between input and output, both seen from aft, as declared; for comparisons. */
export function declaredSense(gear: Gear, clutch: Clutch): Sense | undefined {
  const factor = stageFactor(declaredStage(clutch.name, known(clutch.output), turnsBack(gear) ?? false));
  return factor.known ? factor.value : undefined;
}
