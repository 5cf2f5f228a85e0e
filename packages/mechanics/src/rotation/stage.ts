import { cannotTell, type Sense, type Told, told } from './sense.js';

/** Output against input, as a data sheet states it. */
export type OutputSense = 'same' | 'opposite';

/**
 * From where a data sheet compares output with input. `seen from aft`: both ends from one place.
 * `each at its own end`: each shaft by an observer downstream of it, looking back along the power,
 * as an engine is seen at its flywheel and a propeller from astern.
 */
export type OutputCompared = 'seen from aft' | 'each at its own end';

/** A part of the drivetrain that passes rotation on. */
export type RotationStage =
  | { readonly kind: 'coupling' | 'joint' | 'shaft'; readonly name: string }
  | {
      /** A gear or transfer box that states its output sense. */
      readonly kind: 'declared';
      readonly name: string;
      readonly output: OutputSense | undefined;
      readonly compared?: OutputCompared | undefined;
      /** Output leaves towards the end where the input came in, as in a V-drive. Undefined: not stated. */
      readonly turnsBack?: boolean | undefined;
    }
  | { readonly kind: 'meshes'; readonly name: string; readonly external: number; readonly internal?: number }
  | {
      readonly kind: 'train';
      readonly name: string /** Signed speed ratio in ÷ out. */;
      readonly ratio: number;
    }
  | { readonly kind: 'belt'; readonly name: string; readonly crossed?: boolean }
  | { readonly kind: 'chain'; readonly name: string }
  | { readonly kind: 'bevel'; readonly name: string };

/** What a stage does to the sense seen from aft: +1 keeps it, -1 reverses it. */
export function stageFactor(stage: RotationStage): Told<Sense> {
  switch (stage.kind) {
    case 'coupling':
    case 'joint':
    case 'shaft':
      return told(1, `a ${stage.kind} keeps the sense`);
    case 'chain':
      return told(1, 'a chain turns both wheels the same way');
    case 'belt':
      return stage.crossed
        ? told(-1, 'a crossed belt reverses')
        : told(1, 'an open belt turns both pulleys the same way');
    case 'meshes':
      return meshFactor(stage.external, stage.internal ?? 0);
    case 'train':
      if (!Number.isFinite(stage.ratio) || stage.ratio === 0) {
        return cannotTell(`ratio of ${stage.name}`, 'the train has no finite ratio');
      }
      return stage.ratio > 0
        ? told(1, 'the train’s ratio is positive: it keeps the sense')
        : told(-1, 'the train’s ratio is negative: it reverses');
    case 'bevel':
      return cannotTell(
        `output sense of ${stage.name}`,
        'meshes of a bevel train cannot be counted: its shafts are not parallel, so the output sense must be stated',
      );
    case 'declared':
      return declaredFactor(stage);
  }
}

/** Sense factor of a train of parallel shafts: every external mesh reverses, an internal one does not. */
export function meshFactor(external: number, internal = 0): Told<Sense> {
  if (![external, internal].every(count => Number.isInteger(count) && count >= 0)) {
    return cannotTell('number of meshes', 'the number of meshes must be a whole number');
  }
  const inside = internal > 0 ? `, ${internal} internal (no effect)` : '';
  return external % 2 === 1
    ? told(-1, `${external} external ${external === 1 ? 'mesh reverses' : 'meshes reverse'}${inside}`)
    : told(1, `${external} external meshes keep the sense${inside}`);
}

function declaredFactor(stage: Extract<RotationStage, { kind: 'declared' }>): Told<Sense> {
  const { name, output, compared, turnsBack } = stage;
  if (!output)
    return cannotTell(
      `output sense of ${name}`,
      `${name} does not say whether its output turns with its input`,
    );
  const word: Sense = output === 'same' ? 1 : -1;
  if (compared === 'seen from aft')
    return told(word, `output ${output} ${output === 'same' ? 'as' : 'to'} input, seen from aft`);
  if (turnsBack === undefined && compared === undefined) {
    return cannotTell(
      `layout of ${name}, or from where its output sense is seen`,
      `output ${output} can be taken at its word only where the line runs straight on; where it turns back, the word depends on who looks`,
    );
  }
  if (turnsBack === undefined) {
    return cannotTell(
      `layout of ${name}`,
      'a comparison of each end at its own flange needs to know whether the line turns back',
    );
  }
  if (!turnsBack)
    return told(word, `output ${output} ${output === 'same' ? 'as' : 'to'} input; the line runs straight on`);
  if (!compared) {
    return cannotTell(
      `from where the output sense of ${name} is seen`,
      `the line turns back in ${name}: say "seen from aft" or "each seen at its own end", which give opposite words`,
    );
  }
  const factor: Sense = word === 1 ? -1 : 1;
  return told(
    factor,
    `output ${output} with each end seen at its own flange; the line turns back, so seen from aft it is ${factor === 1 ? 'the same' : 'opposite'}`,
  );
}
