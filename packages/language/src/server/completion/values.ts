import {
  type Dimension,
  findUnit,
  formatValue,
  given,
  measures,
  toSI,
  type Unit,
} from '@tailshaft/mechanics';
import {
  asSpelling,
  DUTY_MEANINGS,
  EVIDENCE_KINDS,
  type Joining,
  LAYOUTS,
  MESH_KINDS,
  OUTPUT_SENSES,
  PILOT_KINDS,
  ROTATIONS,
  type RotationWord,
  type Row,
  SEEN,
  SHAFT_FORMULAS,
  UNKNOWN,
  USUAL_WORDS,
  unitsRead,
  VALUE_MEANINGS,
  VIEWS,
} from '@tailshaft/vocabulary';
import { CompletionItemKind } from 'vscode-languageserver';
import { numberOf } from '../../reading/forms/number.js';
import type { Token } from '../../text/scan.js';
import { keyword, type NextInValue, type Offer, value } from './items.js';
import { nextInRanking, nextInVariation, ruleOffers } from './study.js';

/** Names that a value may be, which only the surroundings know. */
export interface KnownNames {
  readonly duties: readonly string[];
  readonly clutches: readonly string[];
  /** Shaft lines of the vessel. */
  readonly lines: readonly string[];
  /** Ways of running of those lines. */
  readonly modes: readonly string[];
  readonly materials: () => readonly Offer[];
  /** Standard sizes of the property. */
  readonly sizes: (row: Row) => readonly Offer[];
  readonly today: string;
}

const OPEN_VALUE = keyword(UNKNOWN);

export function nextInValue(
  row: Row,
  typed: readonly Token[],
  partial: Token,
  known: KnownNames,
): NextInValue {
  const words = typed.map(token => token.text);
  const kind = row.kind;
  switch (kind.form) {
    case 'quantity':
      return withSizes(quantity(kind.dimension, typed, partial), known.sizes(row), typed, partial);
    case 'span':
      return span(kind.dimension, typed, partial);
    case 'point':
      return point(kind.of, kind.at, typed, partial);
    case 'per year':
      if (typed.length === 0) return open([OPEN_VALUE]);
      if (words.at(-1) === 'year') return { offers: [], done: true };
      return {
        offers: [keyword(words.at(-1) === 'per' ? 'year' : 'per year')],
        done: isOpen(words),
      };
    case 'ratio':
      return typed.length === 0 ? open([...known.sizes(row), OPEN_VALUE]) : { offers: [], done: true };
    case 'word':
      return listed(kind.words, words);
    case 'any word':
      return typed.length > 0
        ? { offers: [], done: true }
        : open([
            ...known.sizes(row),
            ...freeWords(kind.what, known).map(word =>
              value(word, undefined, kind.what === 'duty class' ? DUTY_MEANINGS[word] : undefined),
            ),
            ...(kind.what === 'shaft line' ? [] : [OPEN_VALUE]),
          ]);
    case 'name':
      if (typed.length > 0) return { offers: [], done: true };
      return open([
        ...(kind.of === 'clutch' ? known.clutches.map(name => value(name, 'clutch')) : known.materials()),
        OPEN_VALUE,
      ]);
    case 'source':
      if (typed.length === 0) return open([OPEN_VALUE]);
      if (asSpelling(words.at(-1)) === 'dated') return open([value(known.today, 'today'), OPEN_VALUE]);
      return { offers: typed.length === 1 ? [keyword('dated')] : [], done: true };
    case 'rotation':
      return rotation(words);
    case 'output sense':
      if ((words.at(-1) as Joining) === 'from') return open([value('aft'), OPEN_VALUE]);
      return listed(OUTPUT_SENSES, words, [`seen ${SEEN[0]}`, SEEN[1]]);
    case 'layout':
      if (typed.length === 0) return open([...LAYOUTS.map(word => value(word)), OPEN_VALUE]);
      return typed.length === 1
        ? { offers: [OPEN_VALUE], done: true }
        : quantity('angle', typed.slice(1), partial);
    case 'bolts':
      if (words.includes('x')) return quantity('length', typed.slice(words.indexOf('x') + 1), partial);
      return typed.length === 0 ? open([OPEN_VALUE]) : { offers: [keyword('x')], done: isOpen(words) };
    case 'pilot': {
      const size = quantity('length', typed, partial);
      const ends = typed.length > 1 && (size.done || typed.at(-1)!.kind === 'word');
      if (!ends && !isOpen(words)) return size;
      return { offers: [...PILOT_KINDS.map(one => value(one)), OPEN_VALUE], done: true };
    }
    case 'mesh':
      return mesh(words);
    case 'lock':
      if (typed.length === 0 || words.at(-1) === 'with') return open([OPEN_VALUE]);
      return words.includes('with')
        ? { offers: [], done: true }
        : { offers: [keyword('with')], done: isOpen(words) };
    case 'date':
      return typed.length === 0
        ? open([value(known.today, 'today'), OPEN_VALUE])
        : { offers: [], done: true };
    case 'shaft criterion':
      if (words.at(-1) === 'factor') return open([OPEN_VALUE]);
      if (words.includes('factor')) return { offers: [OPEN_VALUE], done: true };
      return listed(
        SHAFT_FORMULAS.map(([formula]) => formula),
        words,
        ['factor'],
      );
    case 'text':
      return { offers: typed.length === 0 ? [OPEN_VALUE] : [], done: typed.length > 0 };
    case 'variation':
      return nextInVariation(words);
    case 'rule name':
      return ruleOffers(words);
    case 'ranking':
      return nextInRanking(words);
  }
}

/** The units for a number, the value in the other units beside each. */
export function unitOffers(dimension: Dimension, number: number, space: boolean, own = false): Offer[] {
  const units = unitsRead(dimension).filter(
    unit => unit.symbol !== '1' && (!own || unit.dimensions[0] === dimension),
  );
  return units.map(unit => ({
    label: unit.symbol,
    kind: CompletionItemKind.Unit,
    detail: meaning(unit, dimension, number),
    doc: `${unit.name}; ${unit.use}`,
    ...(space ? { insert: ` ${unit.symbol}` } : {}),
  }));
}

/** Marks that say how a value is known. */
export function evidenceOffers(inside: readonly Token[], today: string, bracket: boolean): Offer[] {
  const kind = inside.map(token => token.text).join(' ');
  if (kind === '') {
    return EVIDENCE_KINDS.map(one => ({
      ...value(one),
      ...(bracket ? { insert: `[${one}]`, filter: `[${one}` } : {}),
    }));
  }
  if (kind === 'sister') return [value('vessel')];
  return [value(today, 'today')];
}

function quantity(dimension: Dimension, typed: readonly Token[], partial: Token): NextInValue {
  const last = typed.at(-1);
  if (!last && partial.kind === 'number' && partial.text)
    return open(dimension === 'number' ? [] : unitOffers(dimension, numberOf(partial.text), true));
  if (!last) return open([OPEN_VALUE]);
  if (dimension === 'number') return { offers: [], done: true };
  if (last.kind === 'number') {
    const whole = typed.at(-2)?.kind === 'number' ? numberOf(typed.at(-2)!.text) : 0;
    return { offers: unitOffers(dimension, whole + numberOf(last.text), false), done: dimension === 'ratio' };
  }
  return { offers: [], done: true };
}

/** Standard sizes before anything is typed, and those that begin with the number that was. */
function withSizes(
  next: NextInValue,
  sizes: readonly Offer[],
  typed: readonly Token[],
  partial: Token,
): NextInValue {
  if (typed.length > 0) return next;
  const fit = partial.kind === 'number' ? sizes.filter(one => one.label.startsWith(partial.text)) : sizes;
  const whole = fit.map(one => (partial.kind === 'number' ? { ...one, from: partial.start } : one));
  return {
    ...next,
    offers: partial.kind === 'number' ? [...next.offers, ...whole] : [...whole, ...next.offers],
  };
}

function span(dimension: Dimension, typed: readonly Token[], partial: Token): NextInValue {
  const dots = typed.findIndex(token => token.text === '..');
  if (dots >= 0) return quantity(dimension, typed.slice(dots + 1), partial);
  if (typed.length === 0) return open([OPEN_VALUE]);
  return { offers: [keyword('..')], done: typed[0]!.text === UNKNOWN };
}

function point(of: Dimension, at: Dimension, typed: readonly Token[], partial: Token): NextInValue {
  const joint = typed.findIndex(token => asSpelling(token.text) === 'at');
  if (joint >= 0) {
    return quantity(at, typed.slice(joint + 1), partial);
  }
  const first = quantity(of, typed, partial);
  if (!first.done || typed.length === 0) return first;
  return { offers: [keyword('at')], done: typed[0]!.text === UNKNOWN };
}

const ROTATION_NOTES: Readonly<Partial<Record<RotationWord, string>>> = {
  standard: 'counter-clockwise at the flywheel end (SAE J824)',
  opposite: 'clockwise at the flywheel end (SAE J824)',
  'either by pump index': 'the pump must be set for it',
};

function rotation(words: readonly string[]): NextInValue {
  if (words.length === 0)
    return open([...ROTATIONS.map(word => value(word, ROTATION_NOTES[word])), OPEN_VALUE]);
  if ((words.at(-1) as Joining) === 'from') return open([...VIEWS.map(view => value(view)), OPEN_VALUE]);
  if ((words.at(-1) as Joining) === 'viewed') return open([keyword('from')]);
  if ((words as readonly Joining[]).includes('from') || words[0] === 'either')
    return { offers: [], done: true };
  return { offers: VIEWS.map(view => value(`viewed from ${view}`)), done: true };
}

/** One of some words, of which the first may be typed already, and what may follow. */
function listed(
  choices: readonly string[],
  words: readonly string[],
  then: readonly string[] = [],
): NextInValue {
  if (words.length === 0)
    return open([...choices.map(one => value(one, undefined, VALUE_MEANINGS[one])), OPEN_VALUE]);
  const typed = words.join(' ');
  const rest = choices
    .filter(one => one.startsWith(`${typed} `))
    .map(one => value(one.slice(typed.length + 1)));
  const done = choices.includes(typed) || typed === UNKNOWN;
  return { offers: [...rest, ...(done ? then.map(one => value(one)) : [])], done: done || rest.length === 0 };
}

/** `A 23 with B 47 by chain`, `sun 30 with planet 20 on carrier`. */
function mesh(words: readonly string[]): NextInValue {
  const joined = words.indexOf('with');
  const wheel = words.length - (joined < 0 ? 0 : joined + 1);
  if (asSpelling(words.at(-1)) === 'on') return open([OPEN_VALUE]);
  if (isOpen(words)) return { offers: [OPEN_VALUE], done: true };
  if (wheel < 2) return open([OPEN_VALUE]);
  if (joined < 0) return open([keyword('with')]);
  const kinds = MESH_KINDS.flatMap(([said, kind]) => (kind === 'external' ? [] : [value(said)]));
  return { offers: wheel === 2 ? [...kinds, keyword('on')] : [keyword('on')], done: true };
}

/** Only `unknown` is said, which may be the whole value or the first part of one. */
function isOpen(words: readonly string[]): boolean {
  return words.length === 1 && words[0] === UNKNOWN;
}

const open = (offers: readonly Offer[]): NextInValue => ({ offers, done: false });

function freeWords(what: string, known: KnownNames): readonly string[] {
  if (what === 'shaft line') return known.lines;
  if (asSpelling(what) === 'mode') return known.modes;
  const usual = (USUAL_WORDS as Readonly<Record<string, readonly string[]>>)[what] ?? [];
  return what === 'duty class' ? [...new Set([...known.duties, ...usual])] : usual;
}

function meaning(unit: Unit, dimension: Dimension, number: number): string {
  const si = toSI(number, unit);
  const text = formatValue(given('', '', dimension, si));
  return findUnit(unit.symbol) && measures(unit, dimension) && text !== `${number} ${unit.display}`
    ? `= ${text}`
    : unit.name;
}
