import { MISTAKES } from '@tailshaft/drivetrain';
import type { Finding } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { checkText } from '../support/check.js';
import { share } from '../support/share.js';
import { FORMS } from './forms.js';
import { KINDS } from './kinds.js';
import { MADE } from './made/index.js';
import type { Gravity, Mistake } from './made/mistake.js';
import { type Places, print, type Spec } from './spec-model.js';

/*
 * Every mistake of the catalogue, made in vessels of several kinds that are sound without it: built new, repowered, with
 * most parts kept, in a second step that keeps all, by a modification, and over a catalogue entry. It is told by a rule
 * that names it, as gravely as the catalogue has it, and at a part that a person would change.
 */

const RANK: Readonly<Record<string, number>> = { error: 3, warning: 2, note: 1 };
const LEAST: Readonly<Record<Gravity, number>> = { error: 3, warning: 2, note: 1, open: 0 };

interface Case {
  readonly name: string;
  readonly mistake: Mistake;
  readonly spec: () => Spec;
}

const CASES: readonly Case[] = Object.entries(KINDS).flatMap(([kind, make]) =>
  Object.entries(FORMS).flatMap(([form, say]) =>
    MADE.flatMap((mistake): Case[] => {
      if (mistake.kinds && !mistake.kinds.includes(kind)) return [];
      if (mistake.forms && !mistake.forms.includes(form)) return [];
      const mistaken = make();
      if (mistake.make(mistaken) === false) return [];
      const spec = () => say(make(), mistaken)!;
      if (!spec()) return [];
      const way = mistake.way ? `, ${mistake.way}` : '';
      return [{ name: `${kind}, ${form}: ${mistake.number}${way}`, mistake, spec }];
    }),
  ),
);

const SOUND = Object.entries(KINDS).flatMap(([kind, make]) =>
  Object.entries(FORMS).flatMap(([form, say]) => {
    const spec = say(make(), make());
    return spec ? [{ name: `${kind}, ${form}`, spec: () => spec }] : [];
  }),
);

const lineOf = (text: string, { start }: Finding['place']) => text.slice(0, start).split('\n').length;

/** Whether a line of the text belongs to a part, or to the entry of one, that the mistake may be told at. */
function isAt(line: number, places: Places, wanted: readonly string[]): boolean {
  return [...places].some(([name, [from, to]]) => {
    if (line < from || line > to || name.startsWith('existing.')) return false;
    const last = name.split('.').at(-1)!.replace(/\d+$/, '');
    return wanted.includes(last) || wanted.some(one => name.startsWith(`${one} `));
  });
}

describe.each(share(CASES, 45, 600))('$name', ({ mistake, spec }) => {
  it('is told', async () => {
    const { text, places } = print(spec());
    const { findings } = await checkText(text);
    const told = findings.filter(one => mistake.told.rules.includes(one.code) && !one.verdict?.asFound);
    const graveEnough = told.filter(
      ({ verdict }) =>
        (verdict?.outcome === 'fails' ? RANK[verdict.severity]! : 0) >= LEAST[mistake.told.gravity],
    );
    expect(
      graveEnough.map(one => one.code),
      findings.map(one => `${one.code}: ${one.message}`).join('\n'),
    ).not.toEqual([]);
    const { at } = mistake.told;
    if (at) expect(graveEnough.map(one => isAt(lineOf(text, one.place), places, at))).toContain(true);
  });
});

describe.each(share(SOUND, 6))('$name', ({ spec }) => {
  it('has no error and no warning as long as it is sound', async () => {
    const { findings } = await checkText(print(spec()).text);
    const loud = findings.filter(
      ({ verdict }) =>
        !verdict || (verdict.outcome === 'fails' && verdict.severity !== 'note' && !verdict.asFound),
    );
    expect(loud.map(one => `${one.code}: ${one.message}`)).toEqual([]);
  });
});

it('makes every mistake of the catalogue but those that a spec cannot show by itself', () => {
  const made = new Set(MADE.map(one => one.number));
  // Lost support and a delivered part have specs of their own: see the examples of their rules and the checklist.
  expect(MISTAKES.map(one => one.number).filter(one => !made.has(one))).toEqual(['L07', 'U10']);
  expect(CASES.length).toBeGreaterThan(2000);
});
