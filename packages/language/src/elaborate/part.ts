import type {
  Change,
  EntryNote,
  Fact,
  Gear,
  KeptFrom,
  Part,
  RatioVariant,
  Role,
  Shaft,
} from '@tailshaft/drivetrain';
import { findVariant, isWeak, known } from '@tailshaft/drivetrain';
import { ENTRY_VOCABULARY, PLACE_VOCABULARY } from '@tailshaft/vocabulary';
import { notingAbsence } from '../reading/absent.js';
import type { PartReading } from '../reading/arrangement.js';
import type { EntryReading } from '../reading/document.js';
import type { Host, Place } from '../reading/place.js';
import type { EntryTable } from './catalogue.js';
import { materialOf } from './catalogue.js';
import { overlay } from './overlay.js';
import { ownFacts } from './own-facts.js';
import { restatedAt } from './restated.js';

/** The layers of one part, outermost first, before they are laid over one another. */
export interface PartLayers {
  readonly role: Role;
  readonly change: Change;
  /** What the statement of this arrangement does with it. */
  readonly stated: Change;
  /** What that statement says of it, beside what it had. */
  readonly said: Readonly<Record<string, unknown>>;
  /** What a kept part was in the arrangement before. */
  readonly old?: PartLayers;
  /** Where a kept part was last declared, through any number of arrangements that only keep it. */
  readonly kept?: { readonly arrangement: string; readonly line: string; readonly layers: PartLayers };
  readonly path: string;
  readonly origin: Host;
  readonly name?: string;
  readonly namePlace?: Place;
  readonly entry?: EntryReading;
  /** Facts in place, innermost last. */
  readonly facts: readonly Readonly<Record<string, unknown>>[];
  /** Its place in the chain among the parts of the line. */
  readonly rank: number;
}

/** A part with the facts of its entry and of its place laid over one another. */
export function makePart(layers: PartLayers, table: EntryTable): Part {
  const laid = fieldsOf(layers);
  const hurt = ((laid.damages as readonly unknown[] | undefined) ?? []).length > 0;
  const fields = hurt ? ownFacts(laid) : laid;
  const entry: EntryNote | undefined = layers.entry && {
    name: layers.entry.name,
    ...(layers.entry.title ? { title: layers.entry.title } : {}),
    ...(layers.entry.doc ? { doc: layers.entry.doc } : {}),
    origin: layers.entry.host,
  };
  const part: Part = {
    ...fields,
    role: layers.role,
    path: layers.path,
    change: layers.change,
    ...(layers.stated === layers.change ? {} : { stated: layers.stated }),
    ...(layers.kept ? { keptFrom: keptFrom(layers.kept, table) } : {}),
    ...(entry ? { entry } : {}),
    origin: layers.origin,
    ...(layers.namePlace ? { nameOrigin: layers.namePlace } : {}),
    ...restatedOf(layers),
  };
  const { role } = part;
  return notingAbsence(
    role === 'gear'
      ? withVariant(part as Gear)
      : role === 'engine'
        ? withRating(part)
        : role === 'shaft'
          ? withGrade(part as Shaft, table)
          : part,
    ENTRY_VOCABULARY[role] ?? PLACE_VOCABULARY[role]!,
    PLACE_VOCABULARY[role]!,
  );
}

/** What the place says of the part beside its entry. */
function restatedOf({ role, entry, facts }: PartLayers): Pick<Part, 'restated'> {
  if (!entry) return {};
  const place: Record<string, unknown> = {};
  for (const one of facts) overlay(place, one, PLACE_VOCABULARY[role]!);
  const restated = restatedAt(entry.facts.fields, place, ENTRY_VOCABULARY[role]!);
  return restated.length > 0 ? { restated } : {};
}

/** The facts of entry and place, laid over one another. */
export function fieldsOf(layers: PartLayers): Record<string, unknown> {
  const fields: Record<string, unknown> = {};
  const vocabulary = PLACE_VOCABULARY[layers.role]!;
  if (layers.entry) overlay(fields, layers.entry.facts.fields, vocabulary);
  for (const facts of layers.facts) overlay(fields, facts, vocabulary);
  return fields;
}

function keptFrom(
  { arrangement, line, layers }: NonNullable<PartLayers['kept']>,
  table: EntryTable,
): KeptFrom {
  return { arrangement, line, part: makePart(layers, table) };
}

/** The offered ratio that is fitted: the one named, or the only one there is. */
function withVariant(gear: Gear): Gear {
  const used = known(gear.ratioUsed);
  const variants = gear.ratios ?? [];
  let variant: RatioVariant | undefined;
  if (used) variant = findVariant(variants, used);
  else if (!gear.ratioUsed && variants.length === 1) variant = variants[0];
  if (!variant && used && variants.length === 0 && gear.ratioUsed) {
    variant = {
      nominal: used,
      nominalFact: gear.ratioUsed,
      origin: gear.origin,
      clutches: [],
      ratings: [],
      inputs: [],
    };
  }
  return variant ? chosenBy(gear, 'variant', variant, gear.ratioUsed) : gear;
}

/** What a doubted fact chooses is looked at by way of that fact, so that nothing holds on the choice. */
function chosenBy<P extends object>(
  part: P,
  field: string,
  chosen: object,
  by: Fact<unknown> | undefined,
): P {
  if (!by || !isWeak(by)) return { ...part, [field]: chosen };
  const get = () => (by.value === undefined ? undefined : chosen);
  return Object.defineProperty({ ...part }, field, { get, enumerable: true, configurable: true });
}

function withRating(part: Part): Part {
  const engine = part as import('@tailshaft/drivetrain').Engine;
  const duty = known(engine.ratedAt);
  const ratings = engine.ratings ?? [];
  const rating =
    duty === undefined
      ? !engine.ratedAt && ratings.length === 1
        ? ratings[0]
        : undefined
      : ratings.find(one => one.duty === duty);
  return rating ? chosenBy(engine, 'rating', rating, engine.ratedAt) : part;
}

function withGrade(shaft: Shaft, table: EntryTable): Shaft {
  const name = known(shaft.material);
  const entry = name === undefined ? undefined : table.find('shaft material', name);
  return entry ? { ...shaft, grade: materialOf(entry) } : shaft;
}

/** The facts in place of a part without those that have a hand. */
export function withoutHanded(role: Role, facts: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const kept = { ...facts };
  const { rows, blocks } = PLACE_VOCABULARY[role] ?? { rows: [], blocks: [] };
  for (const one of [...rows, ...blocks]) if (one.handed) delete kept[one.field];
  return kept;
}

export function roleOf(part: PartReading): Role {
  return part.role as Role;
}
