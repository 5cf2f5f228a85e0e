import { RULES } from '@tailshaft/drivetrain';
import { exampleSpecs, joinedExample } from '../support/examples.js';
import { randomSpec } from './random-spec.js';

/** A spec that is said otherwise. */
export interface Base {
  readonly name: string;
  readonly text: string;
}

const RANDOM = 'random ';
let written: Base[] | undefined;

/** The examples, those of every rule (the gallery of mistakes is the failing ones), in this order. */
export function writtenSpecs(): Base[] {
  written ??= specsAsWritten();
  return written;
}

function specsAsWritten(): Base[] {
  const ofRules = RULES.flatMap(({ id, examples }) => {
    const { failing, cannotTell, passing } = examples();
    return Object.entries({ failing, cannotTell, passing }).map(([which, text]) => ({
      name: `${id} ${which}`,
      text,
    }));
  }).filter(one => one.text.includes('{'));
  const seen = new Set<string>();
  return [...exampleSpecs.map(name => ({ name, text: joinedExample(name) })), ...ofRules].filter(one => {
    const fresh = !seen.has(one.text);
    seen.add(one.text);
    return fresh;
  });
}

/** Random combinations of parts; the name tells the seed. */
export function randomSpecs(from: number, many: number): Base[] {
  return Array.from({ length: many }, (_, index) => baseOf(`${RANDOM}${from + index}`));
}

/** A spec by the name that a case of the known list gives. */
export function baseOf(name: string): Base {
  if (name.startsWith(RANDOM)) return { name, text: randomSpec(Number(name.slice(RANDOM.length))) };
  const found = writtenSpecs().find(one => one.name === name);
  if (!found) throw new Error(`no spec is called ${name}`);
  return found;
}
