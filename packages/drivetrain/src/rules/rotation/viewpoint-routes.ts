import { type Hand, turnAtFlywheel } from '@tailshaft/mechanics';
import { type NewValue, spell } from '@tailshaft/vocabulary';
import { acceptsRotation } from '../../analysis/gear-choice.js';
import { rotationOf, statementOf } from '../../analysis/rotation.js';
import type { Route } from '../../judge/route.js';
import type { Fact, Rotation } from '../../model/fact.js';
import type { ShaftLine } from '../../model/vessel.js';
import { engineWord, turnWords } from './edits.js';

/** The readings that a rotation without a usable viewpoint leaves open, each with where it leads on these lines. */
export function readingsOf(fact: Fact<Rotation>, lines: readonly ShaftLine[], role: string): Route[] {
  const word = fact.value?.word;
  if (!word || word.startsWith('either')) return [];
  const turn = word === 'standard' ? 'counter-clockwise' : word === 'opposite' ? 'clockwise' : word;
  const atFlywheel = { word, viewedFrom: 'flywheel' } as Rotation;
  const atFront = { word: turn, viewedFrom: 'front' } as Rotation;
  return [atFlywheel, atFront].map(reading => {
    const value: NewValue = { is: 'rotation', rotation: reading };
    return {
      title: `Write "${spell(value)}": ${leadsTo(reading, fact, lines, role)}`,
      edits: [{ do: 'replace', at: fact.origin, value }],
    };
  });
}

function leadsTo(reading: Rotation, fact: Fact<Rotation>, lines: readonly ShaftLine[], role: string): string {
  const told = turnAtFlywheel(statementOf(reading));
  const engine = told.known ? `${engineWord(told.value)} rotation` : 'that rotation';
  if (role === 'gear') {
    const accepts = lines.map(line => {
      const answer = acceptsRotation({ inputRotation: { ...fact, value: reading } }, rotationOf(line));
      return answer === undefined
        ? ''
        : `, which ${answer ? 'suits' : 'does not suit'} the engine of ${line.path}`;
    });
    return `the gear takes engines of ${engine}${[...new Set(accepts)].join('')}`;
  }
  const hands = lines.flatMap(line => {
    const rotation = rotationOf(withRotation(line, { ...fact, value: reading }));
    const hand: Hand | undefined = rotation.neededHand;
    return hand
      ? [
          `the shaft of ${line.path} turns ${turnWords(rotation.ahead!)} ahead and needs a ${hand}-hand propeller`,
        ]
      : [];
  });
  return [`the engine has ${engine}`, ...hands].join('; ');
}

/** The same line with another statement of its engine's rotation. */
export function withRotation(line: ShaftLine, rotation: Fact<Rotation>): ShaftLine {
  return {
    ...line,
    ...(line.engine ? { engine: { ...line.engine, rotation } } : {}),
    ...(line.motor ? { motor: { ...line.motor, rotation } } : {}),
  };
}
