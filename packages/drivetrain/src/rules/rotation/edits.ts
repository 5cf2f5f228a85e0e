import { type Hand, otherHand, otherTurn, type Sense, type Turn, turnFromAft } from '@tailshaft/mechanics';
import {
  asStated,
  type NewBlock,
  type NewFact,
  type NewValue,
  named,
  newWord,
  OPEN,
} from '@tailshaft/vocabulary';
import { isConvertible } from '../../analysis/hand.js';
import { isPair } from '../../analysis/pair.js';
import type { ModelEdit, Route } from '../../judge/route.js';
import type { Missing } from '../../judge/verdict.js';
import type { Gear } from '../../model/gear.js';
import { type Part, statementOf } from '../../model/part.js';
import type { Propeller } from '../../model/shafting.js';
import type { ShaftLine } from '../../model/vessel.js';

/** Writes a fact of a part at its place in the line; a part that is only retained becomes a modified one. */
export function writeInPlace(part: Part, property: string, value: NewValue): ModelEdit {
  return statementOf(part) === 'retained'
    ? modified(part, [{ property, value }])
    : { do: 'set', host: part.origin, property, value };
}

/** Adds a block to a part at its place in the line. */
export function addBlock(part: Part, block: NewBlock): ModelEdit {
  return statementOf(part) === 'retained' ? modified(part, [block]) : { do: 'add', host: part.origin, block };
}

/** A part that stays, with what is modified of it. */
export function modified(part: Part, facts: readonly NewFact[]): ModelEdit {
  return { do: 'state', at: part.origin, statement: { action: 'modify', role: part.role, facts } };
}

/** Engages another clutch for ahead. */
export function useClutch(gear: Gear, clutch: string): ModelEdit {
  if (statementOf(gear) !== 'retained' && gear.aheadClutch) {
    return { do: 'replace', at: gear.aheadClutch.origin, value: named(clutch) };
  }
  return writeInPlace(gear, 'ahead clutch', named(clutch));
}

/** Gives the propeller the other hand: set anew where it can be, otherwise another one of the same size. */
export function fitHand(propeller: Propeller, hand: Hand): ModelEdit[] {
  const asked = { property: 'hand', value: newWord(hand) };
  const set = { property: 'set for hand', value: newWord(hand) };
  if (isConvertible(propeller)) {
    if (statementOf(propeller) === 'retained') {
      return [modified(propeller, [asked, set])];
    }
    const written = propeller.hand ? [writeInPlace(propeller, 'hand', newWord(hand))] : [];
    return [...written, writeInPlace(propeller, 'set for hand', newWord(hand))];
  }
  if (statementOf(propeller) === 'retained') {
    const facts = [asked, ...sameSize(propeller)];
    return [
      { do: 'state', at: propeller.origin, statement: { action: 'replace', role: 'propeller', facts } },
    ];
  }
  const after = isPair(propeller) ? [writeInPlace(propeller, 'after hand', newWord(otherHand(hand)))] : [];
  return [writeInPlace(propeller, 'hand', newWord(hand)), ...after];
}

/** What is being done to the propeller, for a title. */
export function handWords(line: ShaftLine, hand: Hand): string {
  const { propeller } = line;
  if (propeller && isConvertible(propeller)) return `Assemble the propeller of ${line.name} for ${hand} hand`;
  return propeller && statementOf(propeller) === 'retained'
    ? `Replace the propeller of ${line.name} by a ${hand}-hand one of the same size`
    : `Make the propeller of ${line.name} ${hand}-hand`;
}

/** Exchanges two parts between their lines, each taking its name, ratio and clutch along; none where one only stays. */
export function exchange(one: Part, other: Part): ModelEdit[] {
  if (statementOf(one) === 'retained' || statementOf(other) === 'retained') return [];
  if (!one.nameOrigin || !other.nameOrigin) return [{ do: 'swap', one: one.origin, other: other.origin }];
  const edits: ModelEdit[] = [{ do: 'swap', one: one.nameOrigin, other: other.nameOrigin }];
  if (one.role !== 'gear' || other.role !== 'gear') return edits;
  const [a, b] = [one as Gear, other as Gear];
  for (const field of ['ratioUsed', 'aheadClutch'] as const) {
    const [here, there] = [a[field], b[field]];
    if (!here !== !there) return [{ do: 'swap', one: one.origin, other: other.origin }];
    if (here && there) edits.push({ do: 'swap', one: here.origin, other: there.origin });
  }
  return edits;
}

/** Offers to write each gap as an open question where nothing is written yet. */
export function stubRoutes(missing: readonly Missing[]): Route[] {
  return missing
    .filter(gap => !gap.at && !BLOCKS.test(gap.property))
    .map(gap => ({
      title: `Write "${gap.property} unknown": the sheet then lists ${gap.what} as an open question`,
      edits: [{ do: 'set', host: gap.host, property: gap.property, value: OPEN } as const],
      stub: true,
    }));
}

/** What is missing is a whole part or block, which no single word can stand for. */
const BLOCKS = /^(engine|clutch|mesh|excitation|helm|station|dock|drill)\b/;

/** `clockwise` for a sense seen from aft. */
export function turnWords(sense: Sense): Turn {
  return turnFromAft(sense);
}

/** `standard` for counter-clockwise at the flywheel end (SAE J824). */
export function engineWord(atFlywheel: Turn): 'standard' | 'opposite' {
  return atFlywheel === 'clockwise' ? 'opposite' : 'standard';
}

/** The rotation of an engine as SAE J824 words it. */
export function engineRotation(atFlywheel: Turn): NewValue {
  return { is: 'rotation', rotation: { word: engineWord(atFlywheel), viewedFrom: 'flywheel' } };
}

/** What a pump is set for that goes with an engine turning this way. */
export function pumpFor(atFlywheel: Turn): NewValue {
  return { is: 'rotation', rotation: { word: engineWord(atFlywheel) } };
}

/** The rotation word for the engine that turns the other way. */
export function otherEngineWord(atFlywheel: Turn): 'standard' | 'opposite' {
  return engineWord(otherTurn(atFlywheel));
}

function sameSize(propeller: Propeller): NewFact[] {
  const facts = [
    ['kind', propeller.kind],
    ['blades', propeller.blades],
    ['diameter', propeller.diameter],
    ['pitch', propeller.pitch],
    ['area ratio', propeller.areaRatio],
  ] as const;
  return facts.flatMap(([property, fact]) =>
    fact?.value === undefined ? [] : [{ property, value: asStated(fact) }],
  );
}
