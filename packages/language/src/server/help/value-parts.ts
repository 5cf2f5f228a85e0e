import { listed } from '@tailshaft/mechanics';
import {
  LAYOUTS,
  OUTPUT_SENSES,
  PILOT_KINDS,
  ROTATIONS,
  SHAFT_FORMULAS,
  type ValueKind,
  VIEWS,
} from '@tailshaft/vocabulary';
import type { Token } from '../../text/scan.js';

/** A value as it is typed: places to fill in, and the words between them. */
export type ValuePart = { readonly fill: string } | { readonly word: string };

const fill = (text: string): ValuePart => ({ fill: text });
const word = (text: string): ValuePart => ({ word: text });

/** What a value of this form consists of, in the order in which it is typed. */
export function valueParts(kind: ValueKind): readonly ValuePart[] {
  switch (kind.form) {
    case 'quantity':
      return [fill(measured(kind.dimension))];
    case 'span':
      return [fill(`lower ${kind.dimension}`), word('..'), fill(`higher ${kind.dimension} with its unit`)];
    case 'point':
      return [fill(measured(kind.of)), word('at'), fill(measured(kind.at))];
    case 'ratio':
      return [fill('ratio, input to output, as 2.04:1')];
    case 'per year':
      return [fill('hours'), word('per year')];
    case 'word':
      return [fill(kind.words.join(', '))];
    case 'any word':
      return [fill(kind.what)];
    case 'name':
      return [fill(`name of a ${kind.of}`)];
    case 'text':
      return [fill('words in quotes')];
    case 'source':
      return [fill('document in quotes'), word('dated'), fill('date')];
    case 'rotation':
      return [
        fill(ROTATIONS.filter(one => !one.includes(' ')).join(', ')),
        word('viewed from'),
        fill(VIEWS.join(', ')),
      ];
    case 'output sense':
      return [fill(listed(OUTPUT_SENSES, 'or')), word('seen'), fill('from aft, or each at its own end')];
    case 'layout':
      return [fill(LAYOUTS.join(', ')), fill('its angle')];
    case 'bolts':
      return [fill('number'), word('x'), fill('size with its unit')];
    case 'pilot':
      return [fill('diameter with its unit'), fill(listed(PILOT_KINDS, 'or'))];
    case 'date':
      return [fill('date, as 2026-05-01')];
    case 'shaft criterion':
      return [
        fill(SHAFT_FORMULAS.map(([words]) => words).join(', ')),
        word('factor'),
        fill('number'),
        fill('why, in quotes'),
      ];
    case 'mesh':
      return [
        fill('driver and its teeth'),
        word('with'),
        fill('driven wheel and its teeth'),
        word('on'),
        fill('member that carries the planet'),
      ];
    case 'lock':
      return [fill('member'), word('with'), fill('member')];
    case 'variation':
      return [fill('part, or part and property'), fill('values with commas, a range with its step, or any')];
    case 'rule name':
      return [fill('name of a check, or every check')];
    case 'ranking':
      return [fill('computed quantity'), word('at'), fill('condition')];
  }
}

/** Which place of a value is being filled in, by the words and values that stand before the cursor. */
export function placeInValue(kind: ValueKind, typed: readonly Token[]): number {
  const parts = valueParts(kind);
  let place = 0;
  let fills = -1;
  for (const part of parts) {
    if ('fill' in part) fills += 1;
    else if (typed.some(token => token.text === part.word.split(' ')[0])) place = fills + 1;
  }
  // Two places with nothing between them: the second begins when the first is complete.
  const complete = COMPLETE[kind.form]?.(typed) ?? false;
  return Math.min(place + (complete ? 1 : 0), fills);
}

const COMPLETE: Readonly<Partial<Record<ValueKind['form'], (typed: readonly Token[]) => boolean>>> = {
  layout: typed => typed.length >= 1,
  pilot: typed => typed.at(-1)?.kind === 'word',
  'shaft criterion': typed => typed.at(-2)?.text === 'factor',
};

function measured(dimension: string): string {
  return dimension === 'number' ? 'a number' : `${dimension} with its unit`;
}
