import type { Hand } from '@tailshaft/mechanics';
import type { Missing } from '../judge/verdict.js';
import type { Fact } from '../model/fact.js';
import { home, type Part } from '../model/part.js';
import type { ShaftLine } from '../model/vessel.js';
import { clutchesOf } from './gear-data.js';
import { rotationOf } from './rotation.js';

/** The hand that drives ahead, with one answer to each open question that it hangs on. */
export interface HandByAnswer {
  /** `engine rotation standard`, `flywheel aft`. */
  readonly given: readonly string[];
  readonly hand: Hand;
}

/** More open questions than this make a table that nobody reads. */
const MOST_QUESTIONS = 3;

/** Which answer to what is missing gives which hand; nothing where a question has no few answers. */
export function handByAnswer(line: ShaftLine): HandByAnswer[] {
  return rowsOf(line, []) ?? [];
}

function rowsOf(line: ShaftLine, given: readonly string[]): HandByAnswer[] | undefined {
  const { missing, neededHand } = rotationOf(line);
  const [gap] = missing;
  if (!gap) return neededHand && given.length > 0 ? [{ given, hand: neededHand }] : undefined;
  if (given.length === MOST_QUESTIONS) return undefined;
  const answers = answersTo(gap, line);
  if (answers.length === 0) return undefined;
  const rows = answers.map(({ words, line: answered }) => rowsOf(answered, [...given, words]));
  return rows.every(one => one !== undefined) ? rows.flat() : undefined;
}

interface Answered {
  readonly words: string;
  readonly line: ShaftLine;
}

/** The few things that a missing datum can be. */
function answersTo({ host, property }: Missing, line: ShaftLine): Answered[] {
  const { engine, motor, gear } = line;
  const either = <W extends string>(words: readonly W[], say: string, answered: (word: W) => ShaftLine) =>
    words.map(word => ({ words: `${say} ${word}`, line: answered(word) }));
  if (engine && property === 'rotation' && host === home(engine))
    return either(['standard', 'opposite'], 'engine rotation', word =>
      withPart(line, engine, { rotation: told({ word, viewedFrom: 'flywheel' as const }) }),
    );
  if (engine && property === 'flywheel')
    return either(['aft', 'forward'], 'flywheel', word =>
      withPart(line, engine, { flywheelFaces: told(word) }),
    );
  if (motor && property === 'rotation')
    return either(['clockwise', 'counter-clockwise'], 'motor, seen from aft,', word =>
      withPart(line, motor, { rotation: told({ word, viewedFrom: 'aft' as const }) }),
    );
  if (gear && property === 'ahead clutch')
    return either(
      clutchesOf(gear, gear.variant).map(one => one.name),
      'ahead clutch',
      word => withPart(line, gear, { aheadClutch: told(word) }),
    );
  const clutch = gear && rotationOf(line).clutch;
  if (gear && clutch && property === 'output' && (host === clutch.origin || host === gear.variant?.origin))
    return either(['same', 'opposite'], `clutch ${clutch.name} output`, word => {
      const output = told({ word, seen: 'from aft' as const });
      const others = gear.clutches.filter(one => one.name !== clutch.name);
      const ofRatio = gear.variant?.clutches.filter(one => one.name !== clutch.name) ?? [];
      return withPart(line, gear, {
        clutches: [...others, { ...clutch, output }],
        ...(gear.variant ? { variant: { ...gear.variant, clutches: ofRatio } } : {}),
      });
    });
  const transfer = line.transfers.find(one => home(one) === host);
  if (transfer && property === 'output')
    return either(['same', 'opposite'], `transfer output`, word =>
      withPart(line, transfer, { output: told({ word, seen: 'from aft' as const }) }),
    );
  return [];
}

function told<T>(value: T): Fact<T> {
  return { value, written: '', origin: {} };
}

/** The line with facts of one part answered, wherever the part stands in it. */
function withPart<P extends Part>(line: ShaftLine, part: P, facts: object): ShaftLine {
  const answered = { ...part, ...facts };
  const swap = <Q>(one: Q): Q => ((one as unknown) === part ? (answered as unknown as Q) : one);
  return {
    ...line,
    ...(line.engine ? { engine: swap(line.engine) } : {}),
    ...(line.motor ? { motor: swap(line.motor) } : {}),
    ...(line.gear ? { gear: swap(line.gear) } : {}),
    transfers: line.transfers.map(swap),
    chain: line.chain.map(swap),
  };
}
