import type { Fact, RatioVariant, Variation } from '@tailshaft/drivetrain';
import { listed } from '@tailshaft/mechanics';
import { asSpelling, type EntryKind, HEADER_ROWS, type Role, type Row } from '@tailshaft/vocabulary';
import type { Tell } from '../elaborate/ask.js';
import type { EntryTable } from '../elaborate/catalogue.js';
import type { ArrangementReading } from '../reading/arrangement.js';
import { variedRow } from '../reading/forms/varied.js';
import { nearest } from '../reading/misspelt.js';
import { readOption } from '../reading/option.js';
import { type FactReading, type Place, placeOf } from '../reading/place.js';
import type { StudyReading, VesselReading } from '../reading/vessel.js';
import { type OptionPlace, placesOf } from './places.js';

/** What one option writes at one place: a property, or the name of the part. */
export type Writing =
  | { readonly place: OptionPlace; readonly found: FactReading; readonly text: string }
  | { readonly place: OptionPlace & { readonly at: 'part' }; readonly name: string };

/** One option of a dimension, with all that it writes. */
export interface Option {
  readonly text: string;
  readonly writings: readonly Writing[];
  /** The gear that it fits and its ratio: the clutches follow from them. */
  readonly gear?: { readonly name: string; readonly ratio: string };
}

export interface ReadDimension {
  readonly words: string;
  /** How many choices there are: whoever only wants to know that need not have them made. */
  readonly many: number;
  readonly choices: readonly Option[];
}

/** Where the dimensions of a study are read. */
export interface Around {
  readonly vessel: VesselReading;
  readonly arrangement: ArrangementReading;
  readonly table: EntryTable;
  readonly tell: Tell;
}

/** The dimensions of a study; what cannot be varied is told. A gear and its ratio are one dimension: not every gear has every ratio. */
export function dimensionsOf(study: StudyReading, { tell, ...rest }: Around): ReadDimension[] {
  // What is wrong with a part is wrong for everything of it that varies: it is told at the first.
  const said = new Set<string>();
  const around: Around = {
    ...rest,
    tell: one => {
      if (!said.has(one.message)) tell(one);
      said.add(one.message);
    },
  };
  const facts = variationsOf(study, around);
  const gears = facts.filter(({ value }) => isGear(value!));
  const made = facts.flatMap(fact => {
    if (!gears.includes(fact)) return dimensionOf(fact, around) ?? [];
    return fact === gears[0] ? (gearDimension(gears, around) ?? []) : [];
  });
  return made;
}

function variationsOf(study: StudyReading, { tell }: Around): Fact<Variation>[] {
  const all = ((study.facts.fields.vary ?? []) as Fact<Variation>[]).filter(one => one.value);
  return all.filter((fact, at) => {
    const twice = all.slice(0, at).some(other => wordsOf(other.value!) === wordsOf(fact.value!));
    if (twice)
      problem(
        tell,
        fact,
        'text/twice',
        `"${wordsOf(fact.value!)}" is varied twice in this study: put all its values on one line.`,
      );
    return !twice;
  });
}

export function wordsOf({ of, property }: Variation): string {
  return property ? `${of} ${property}` : of;
}

function isGear({ of, property }: Variation): boolean {
  return asSpelling(of) === 'gear' && (property === undefined || asSpelling(property) === 'ratio');
}

function dimensionOf(fact: Fact<Variation>, around: Around): ReadDimension | undefined {
  const variation = fact.value!;
  const { of, property } = variation;
  const places = usablePlaces(fact, around);
  if (!places) return undefined;
  const words = wordsOf(variation);
  if (property === undefined) {
    const names = namesFor(fact, places, around);
    return (
      names && {
        words,
        many: names.length,
        choices: names.map(name => ({ text: name, writings: named(places, name) })),
      }
    );
  }
  const row = variedRow(of, property)!;
  const texts = variation.values === 'any' ? anyOf(fact, row, places, around) : variation.values;
  if (!texts) return undefined;
  const choices = texts.map(text => ({ text, writings: written(fact, row, text, places, around) }));
  if (choices.some(one => one.writings === undefined)) return undefined;
  if (isMaterial(row) && !areNames(fact, texts, MATERIAL, around)) return undefined;
  return { words, many: choices.length, choices: choices as Option[] };
}

const MATERIAL: EntryKind = 'shaft material';

function isMaterial({ kind }: Row): boolean {
  return kind.form === 'name' && kind.of === MATERIAL;
}

/** The places that state what varies; a problem where there are none, or where the part there is a kept one. */
function usablePlaces(fact: Fact<Variation>, around: Around): readonly OptionPlace[] | undefined {
  const { of, property } = fact.value!;
  const { vessel, arrangement, tell } = around;
  const places = placesOf(vessel, arrangement, of, property);
  const kept = places.find(one => one.at === 'part' && one.part.action === 'retain');
  if (kept?.at === 'part')
    return problem(
      tell,
      fact,
      'text/value',
      `${kept.line.name} of ${arrangement.name} retains its ${of}, so nothing in it can vary: write "replace ${of}" or "modify ${of}" there first.`,
    );
  const nameless = property === undefined && places.some(one => one.at === 'part' && !one.part.namePlace);
  if (nameless)
    return problem(
      tell,
      fact,
      'text/value',
      `The ${of} of ${arrangement.name} has no name there: name a catalogue entry in its line first, so that others can take its place.`,
    );
  if (places.length > 0) return places;
  return problem(
    tell,
    fact,
    'text/unknown-name',
    asSpelling(of) === 'hull'
      ? 'This vessel states no hull.'
      : `No line of ${arrangement.name} states a ${of}.`,
  );
}

function named(places: readonly OptionPlace[], name: string): Writing[] {
  return places.flatMap(place => (place.at === 'part' ? [{ place, name }] : []));
}

function written(
  fact: Fact<Variation>,
  row: Row,
  text: string,
  places: readonly OptionPlace[],
  { tell }: Pick<Around, 'tell'>,
): Writing[] | undefined {
  const at = placeOf(fact.origin);
  const made = places.map(place => ({ place, text, ...readOption(row, text, place.facts.host, at) }));
  const wrong = made.flatMap(one => one.problems)[0];
  if (wrong) {
    tell(wrong);
    return undefined;
  }
  if (made.some(one => one.fact?.value === undefined))
    return problem(tell, fact, 'text/value', `"${text}" cannot be read as "${row.words}".`);
  return made.map(({ place, found }) => ({ place, found, text }));
}

/** Names of the catalogue, or the listed ones where all of them are there. */
function namesFor(
  fact: Fact<Variation>,
  places: readonly OptionPlace[],
  around: Around,
): readonly string[] | undefined {
  const { of, values } = fact.value!;
  const kind = of as Role;
  if (values !== 'any') return areNames(fact, values, kind, around) ? values : undefined;
  if (asSpelling(of) !== 'engine') return orNone(around.table.names(kind), fact, around);
  // Another engine is used at the rating that the line names.
  const duties = new Set(places.map(one => (one.facts.fields.ratedAt as Fact<string> | undefined)?.value));
  const duty = duties.size === 1 ? [...duties][0] : undefined;
  const names = around.table
    .entries(kind)
    .filter(entry => {
      const ratings = entry.facts.fields.ratings as readonly { readonly duty?: string }[] | undefined;
      return duty === undefined || ratings?.some(one => one.duty === duty);
    })
    .map(entry => entry.name);
  return orNone(names, fact, around);
}

function orNone(
  names: readonly string[],
  fact: Fact<Variation>,
  { tell }: Around,
): readonly string[] | undefined {
  if (names.length > 0) return names;
  return problem(tell, fact, 'text/value', `No ${fact.value!.of} is declared or imported here.`);
}

function areNames(
  fact: Fact<Variation>,
  names: readonly string[],
  kind: EntryKind | Role,
  around: Around,
): boolean {
  const unknown = names.find(name => !around.table.find(kind, name));
  if (unknown === undefined) return true;
  const meant = nearest(unknown, around.table.names(kind));
  problem(
    around.tell,
    fact,
    'text/unknown-name',
    `No ${kind} is called ${unknown}.${meant ? ` Did you mean ${meant}?` : ''}`,
  );
  return false;
}

/** Everything that the catalogue, or the form of the property, offers. */
function anyOf(
  fact: Fact<Variation>,
  row: Row,
  places: readonly OptionPlace[],
  around: Around,
): readonly string[] | undefined {
  const { kind } = row;
  if (kind.form === 'word') return kind.words;
  if (isMaterial(row)) return around.table.names(MATERIAL);
  const entries = places.flatMap(place => {
    const name = place.at === 'part' ? place.part.name : undefined;
    return name === undefined ? [] : (around.table.find(fact.value!.of as Role, name) ?? []);
  });
  const heads = entries.flatMap(({ facts: { fields } }) =>
    asSpelling(row.words) === 'at'
      ? ((fields.ratings as readonly { duty?: string }[]) ?? []).map(one => one.duty)
      : asSpelling(row.words) === 'ahead clutch'
        ? [
            ...((fields.clutches as readonly { name?: string }[]) ?? []),
            ...((fields.ratios as readonly RatioVariant[]) ?? []).flatMap(one => one.clutches),
          ].map(one => one.name)
        : [],
  );
  const found = [...new Set(heads.filter(one => one !== undefined))];
  return found.length > 0
    ? found
    : problem(
        around.tell,
        fact,
        'text/value',
        `"any" has no values for "${wordsOf(fact.value!)}": list its values, or give a range with its step.`,
      );
}

/** Gears at the ratios that they offer: all of them, or those that are listed. */
function gearDimension(facts: readonly Fact<Variation>[], around: Around): ReadDimension | undefined {
  const first = facts[0]!;
  const ofNames = facts.find(one => one.value!.property === undefined);
  const ofRatios = facts.find(one => asSpelling(one.value!.property) === 'ratio');
  const places = usablePlaces(ofNames ?? first, around);
  if (!places) return undefined;
  const now = new Set(places.flatMap(one => (one.at === 'part' && one.part.name ? [one.part.name] : [])));
  const names = ofNames ? namesFor(ofNames, places, around) : [...now];
  if (!names) return undefined;
  const wanted = ofRatios && ofRatios.value!.values !== 'any' ? ofRatios.value!.values : undefined;
  // Thousands of gears share a few lists of ratios, and what a ratio writes is the same whichever gear offers it.
  const offering = offeringEach(around.table, names);
  const chosen = new Map(
    [...offering.keys()].map(offered => [
      offered,
      wanted ? wanted.filter(one => offered.some(other => isSameRatio(one, other))) : offered,
    ]),
  );
  let many = 0;
  for (const [offered, gears] of offering) many += gears * chosen.get(offered)!.length;
  const ratiosWritten = new Map<string, Writing[]>();
  for (const ratio of new Set([...chosen.values()].flat())) {
    const ratioWritten = written(first, HEADER_ROWS.ratio, ratio, places, around);
    if (!ratioWritten) return undefined;
    ratiosWritten.set(ratio, ratioWritten);
  }
  const make = (): Option[] =>
    names.flatMap(name =>
      chosen.get(offersOf(around.table, name))!.map(ratio => ({
        text: ofNames ? `${name} ${ratio}` : ratio,
        writings: [...(ofNames ? named(places, name) : []), ...ratiosWritten.get(ratio)!],
        gear: { name, ratio },
      })),
    );
  let made: Option[] | undefined;
  if (many > 0)
    return {
      words: ofNames ? 'gear' : 'gear ratio',
      many,
      get choices() {
        made ??= make();
        return made;
      },
    };
  return problem(
    around.tell,
    ofRatios ?? first,
    'text/value',
    `None of these gears offers ${wanted ? `a ratio of ${listed(wanted.map(String), 'or')}` : 'a ratio'}.`,
  );
}

interface Offers {
  readonly ofGear: Map<string, readonly string[]>;
  /** Gears with the same ratios share one list. */
  readonly lists: Map<string, readonly string[]>;
  readonly counts: WeakMap<readonly string[], ReadonlyMap<readonly string[], number>>;
}

const offers = new WeakMap<EntryTable, Offers>();

function offersIn(table: EntryTable): Offers {
  const known = offers.get(table) ?? { ofGear: new Map(), lists: new Map(), counts: new WeakMap() };
  offers.set(table, known);
  return known;
}

/** The ratios of a gear, as its entry writes them. */
function offersOf(table: EntryTable, name: string): readonly string[] {
  const { ofGear, lists } = offersIn(table);
  const had = ofGear.get(name);
  if (had) return had;
  const ratios = (table.find('gear', name)?.facts.fields.ratios ?? []) as readonly RatioVariant[];
  const written = ratios.map(one => one.nominalFact.written);
  const key = written.join();
  const found = lists.get(key) ?? written;
  lists.set(key, found);
  ofGear.set(name, found);
  return found;
}

/** How many of these gears offer each list of ratios: asked with every key that is typed into a vessel with a study. */
function offeringEach(table: EntryTable, names: readonly string[]): ReadonlyMap<readonly string[], number> {
  const { counts } = offersIn(table);
  const had = counts.get(names);
  if (had) return had;
  const made = new Map<readonly string[], number>();
  for (const name of names) {
    const offered = offersOf(table, name);
    made.set(offered, (made.get(offered) ?? 0) + 1);
  }
  counts.set(names, made);
  return made;
}

function isSameRatio(one: string, other: string): boolean {
  const number = (text: string) => {
    const [over, under = '1'] = text.split(':');
    return Number(over) / Number(under);
  };
  return Math.abs(number(one) - number(other)) < 1e-9;
}

function problem(tell: Tell, { origin }: Fact<unknown>, code: string, message: string): undefined {
  const { start, end }: Place = placeOf(origin);
  tell({ code, start, end, severity: 'error', message });
  return undefined;
}
