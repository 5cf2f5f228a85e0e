import { type Hand, otherTurn, type Sense, type Turn, turnFromAft } from '@tailshaft/mechanics';
import { isConvertible } from '../../analysis/hand.js';
import type { ModelEdit, Route } from '../../judge/route.js';
import type { Missing } from '../../judge/verdict.js';
import type { Gear } from '../../model/gear.js';
import { type Part, statementOf } from '../../model/part.js';
import type { Propeller } from '../../model/shafting.js';
import type { ShaftLine } from '../../model/vessel.js';

/** Writes a fact of a part at its place in the line; a part that is only retained becomes a modified one. */
export function writeInPlace(part: Part, property: string, text: string): ModelEdit {
  return statementOf(part) === 'retained'
    ? { do: 'replace', at: part.origin, text: `modify ${part.role} { ${property} ${text} }` }
    : { do: 'set', host: part.origin, property, text };
}

/** Engages another clutch for ahead. */
export function useClutch(gear: Gear, clutch: string): ModelEdit {
  if (statementOf(gear) !== 'retained' && gear.aheadClutch) {
    return { do: 'replace', at: gear.aheadClutch.origin, text: clutch };
  }
  return writeInPlace(gear, 'ahead clutch', clutch);
}

/** Gives the propeller the other hand: set anew where it can be, otherwise another one of the same size. */
export function fitHand(propeller: Propeller, hand: Hand): ModelEdit[] {
  if (isConvertible(propeller)) {
    if (statementOf(propeller) === 'retained') {
      return [
        {
          do: 'replace',
          at: propeller.origin,
          text: `modify propeller { hand ${hand}  set for hand ${hand} }`,
        },
      ];
    }
    const written = propeller.hand ? [writeInPlace(propeller, 'hand', hand)] : [];
    return [...written, writeInPlace(propeller, 'set for hand', hand)];
  }
  if (statementOf(propeller) === 'retained') {
    return [
      { do: 'replace', at: propeller.origin, text: `replace propeller { ${sameSize(propeller, hand)} }` },
    ];
  }
  return [writeInPlace(propeller, 'hand', hand)];
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
      title: `Write "${gap.property} unknown": ${gap.what} then stands on the sheet as an open question`,
      edits: [{ do: 'set', host: gap.host, property: gap.property, text: 'unknown' } as const],
      stub: true,
    }));
}

/** What is missing is a whole part or block, which no single word can stand for. */
const BLOCKS = /^(engine|clutch|mesh|excitation)\b/;

/** `clockwise` for a sense seen from aft. */
export function turnWords(sense: Sense): Turn {
  return turnFromAft(sense);
}

/** `standard` for counter-clockwise at the flywheel end (SAE J824). */
export function engineWord(atFlywheel: Turn): 'standard' | 'opposite' {
  return atFlywheel === 'clockwise' ? 'opposite' : 'standard';
}

/** The rotation word for the engine that turns the other way. */
export function otherEngineWord(atFlywheel: Turn): 'standard' | 'opposite' {
  return engineWord(otherTurn(atFlywheel));
}

function sameSize(propeller: Propeller, hand: Hand): string {
  const facts = [
    ['kind', propeller.kind],
    ['blades', propeller.blades],
    ['diameter', propeller.diameter],
    ['pitch', propeller.pitch],
    ['area ratio', propeller.areaRatio],
  ] as const;
  const said = facts.flatMap(([words, fact]) =>
    fact?.value === undefined ? [] : [`${words} ${fact.written}`],
  );
  return [`hand ${hand}`, ...said].join('  ');
}
