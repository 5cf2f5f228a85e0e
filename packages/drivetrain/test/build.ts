import {
  type Dimension,
  figureOf,
  findUnit,
  given,
  type Origin,
  toSI,
  type Value,
} from '@tailshaft/mechanics';
import {
  type Arrangement,
  type Catalogue,
  type CatalogueEntry,
  type Change,
  type CouplingFacts,
  declareFact,
  EMPTY_CATALOGUE,
  type EngineFacts,
  type EvidenceKind,
  type Fact,
  findVariant,
  type GearFacts,
  judgeVessel,
  type MotorFacts,
  type OutputSense,
  type PropellerFacts,
  type RatioVariant,
  type Reason,
  type Role,
  type Rotation,
  type Rule,
  type ShaftFacts,
  type ShaftLine,
  type ShaftMaterial,
  type Side,
  type TransferFacts,
  type Verdict,
  type Vessel,
  type View,
} from '../src/index.js';

/*
 * Model objects for tests, described as plain values: every plain value becomes a fact whose origin is named after its
 * place (`proposed.Port.propeller.hand`, `gear Alder-63.ratio 2.04:1.clutch A`). The same name is the same origin, so a
 * test can ask for `place('proposed.Port.propeller')`.
 *
 *   arrangement('proposed', {
 *     Port: {
 *       engine: { from: engineEntry('Kittiwake-9', { rotation: rotation('standard', 'flywheel') }), flywheelFaces: 'aft' },
 *       gear: { clutches: [{ name: 'A', output: sense('opposite'), ahead: 'continuous' }], ahead: 'A', ratio: '2:1' },
 *       propeller: { hand: evidently('right', 'hearsay'), diameter: quantity('length', '23 in') },
 *     },
 *   })
 */

const places = new Map<string, Origin>();

/** The origin with this name. */
export function place(name: string): Origin {
  const had = places.get(name);
  if (had) return had;
  const made = { name };
  places.set(name, made);
  return made;
}

/** The name of an origin made here. */
export function nameOfPlace(origin: Origin): string {
  return (origin as { name: string }).name;
}

/** `quantity('torque', '640 lbf.ft')`. */
export function quantity<D extends Dimension>(dimension: D, written: string): Value<D> {
  const [number = '', symbol = ''] = written.split(' ');
  const unit = findUnit(symbol);
  if (!unit) throw new Error(`no unit in ${written}`);
  return given(dimension, 'q', dimension, toSI(Number(number), unit), {
    written,
    unit: unit.symbol,
    figure: figureOf(number),
  });
}

/** A count. */
export function count(number: number): Value<'number'> {
  return given('number', 'n', 'number', number, {
    written: String(number),
    figure: figureOf(String(number)),
  });
}

/** `ratio('2.04:1')` or `ratio('97 %')`. */
export function ratio(written: string): Value<'ratio'> {
  const number = Number.parseFloat(written);
  const figure = figureOf(written.replace(/:1$| ?%$/, ''));
  return given('ratio', 'i', 'ratio', written.includes('%') ? number / 100 : number, { written, figure });
}

export function rotation(word: Rotation['word'], viewedFrom?: View): Rotation {
  return viewedFrom ? { word, viewedFrom } : { word };
}

export function sense(word: OutputSense['word'], seen?: OutputSense['seen']): OutputSense {
  return seen ? { word, seen } : { word };
}

/** A fact with evidence. */
export function evidently<T>(value: T, kind: EvidenceKind): Fact<T> {
  return { value, written: wordsFor(value), origin: NOWHERE, evidence: { kind } };
}

/** A fact that the author left open: `unknown`. */
export function open<T>(): Fact<T> {
  return { value: undefined, written: 'unknown', origin: NOWHERE };
}

const NOWHERE = place('nowhere');

/** What a model interface asks for, with plain values where it has facts and without origins. */
export type Plain<F> = {
  -readonly [K in keyof F as K extends 'origin' | 'nominalFact' ? never : K]?:
    | PlainOf<NonNullable<F[K]>>
    | undefined;
};
type PlainOf<X> =
  X extends Fact<infer T>
    ? T | Fact<T>
    : X extends readonly Fact<infer T>[]
      ? readonly (T | Fact<T>)[]
      : X extends readonly (infer B)[]
        ? readonly Plain<B>[]
        : X extends { readonly origin: Origin }
          ? Plain<X>
          : X;

interface Placed<F> {
  readonly from?: CatalogueEntry<F>;
  readonly change?: Change;
}

export interface PlainLine {
  readonly side?: Side;
  readonly mirrors?: string;
  readonly engine?: Plain<EngineFacts> & Placed<EngineFacts> & { at?: string };
  readonly motor?: Plain<MotorFacts> & Placed<MotorFacts>;
  readonly gear?: Plain<GearFacts> & Placed<GearFacts> & { ratio?: string; ahead?: string };
  readonly couplings?: readonly (Plain<CouplingFacts> & Placed<CouplingFacts>)[];
  readonly transfers?: readonly (Plain<TransferFacts> & Placed<TransferFacts> & { ratio?: string })[];
  readonly shafts?: readonly (Plain<ShaftFacts> & { grade?: ShaftMaterial; change?: Change })[];
  readonly propeller?: Plain<PropellerFacts> & Placed<PropellerFacts>;
}

function entryOf<F>(kind: string, name: string, facts: object): CatalogueEntry<F> {
  const tag = `${kind} ${name}`;
  return { name, origin: place(tag), nameOrigin: place(`${tag}.name`), facts: fill(tag, facts) as F };
}

export const engineEntry = (name: string, facts: Plain<EngineFacts>) =>
  entryOf<EngineFacts>('engine', name, { ratings: [], accessories: [], ...CURVES, ...facts });
export const motorEntry = (name: string, facts: Plain<MotorFacts>) =>
  entryOf<MotorFacts>('motor', name, facts);
export const gearEntry = (name: string, facts: Plain<GearFacts>) =>
  entryOf<GearFacts>('gear', name, { ...GEAR_LISTS, ...facts });
export const transferEntry = (name: string, facts: Plain<TransferFacts>) =>
  entryOf<TransferFacts>('transfer', name, facts);
export const propellerEntry = (name: string, facts: Plain<PropellerFacts>) =>
  entryOf<PropellerFacts>('propeller', name, facts);

const CURVES = { powerCurve: [], torqueCurve: [] };
const GEAR_LISTS = { ratios: [], clutches: [], ratings: [] };

/** One arrangement from the description of its lines. */
export function arrangement(
  name: string,
  lines: Readonly<Record<string, PlainLine>>,
  more: { before?: Arrangement; reasons?: Partial<Record<Reason['about'], string>> } = {},
): Arrangement {
  const { before, reasons = {} } = more;
  return {
    name,
    path: name,
    origin: place(name),
    nameOrigin: place(`${name}.name`),
    ...(before ? { revises: before.name, before } : {}),
    lines: Object.entries(lines).map(([key, plain]) =>
      lineOf(
        name,
        key,
        plain,
        before?.lines.find(one => one.name === key),
        before !== undefined,
      ),
    ),
    reasons: Object.entries(reasons).map(([about, text]) => ({
      about: about as Reason['about'],
      text,
      origin: place(`${name}.reason ${about}`),
    })),
  };
}

const SIDES: Readonly<Record<string, Side>> = { Port: 'port', Starboard: 'starboard', Centre: 'centre' };

function lineOf(
  arrangementName: string,
  name: string,
  plain: PlainLine,
  before: ShaftLine | undefined,
  revises: boolean,
): ShaftLine {
  const path = `${arrangementName}.${name}`;
  const part = (role: Role, described: object, suffix = '') =>
    partOf(role, `${path}.${role}${suffix}`, described, revises);
  const engine =
    plain.engine && withRating(part('engine', { ratings: [], accessories: [], ...CURVES, ...plain.engine }));
  const motor = plain.motor && part('motor', plain.motor);
  const gear = plain.gear && withVariant(part('gear', { ...GEAR_LISTS, ...plain.gear }));
  const numbered = (role: Role, list: readonly object[] = []) =>
    list.map((one, index) => part(role, one, index ? String(index + 1) : ''));
  const couplings = numbered('coupling', plain.couplings);
  const transfers = numbered('transfer', plain.transfers);
  const shafts = numbered('shaft', plain.shafts);
  const propeller = plain.propeller && part('propeller', plain.propeller);
  const side = plain.side ?? SIDES[name];
  return {
    name,
    path,
    arrangement: arrangementName,
    origin: place(path),
    nameOrigin: place(`${path}.name`),
    ...(side ? { side: wrap(side, `${path}.side`) } : {}),
    ...(plain.mirrors ? { mirrors: plain.mirrors } : {}),
    ...(engine ? { engine } : {}),
    ...(motor ? { motor } : {}),
    ...(gear ? { gear } : {}),
    couplings,
    transfers,
    shafts,
    ...(propeller ? { propeller } : {}),
    chain: [engine, motor, ...couplings, gear, ...transfers, ...shafts, propeller].filter(Boolean),
    ...(before ? { before } : {}),
  } as unknown as ShaftLine;
}

type Loose = Record<string, unknown>;

function partOf(role: Role, path: string, described: object, revises: boolean): Loose {
  const {
    from,
    change,
    at,
    ahead,
    ratio: ratioWritten,
    grade,
    ...own
  } = described as Loose & {
    from?: CatalogueEntry<object>;
  };
  const facts = Object.fromEntries(
    Object.entries(fill(path, own)).filter(
      ([, value]) => !(from && Array.isArray(value) && value.length === 0),
    ),
  );
  return {
    role,
    path,
    change: change ?? (revises ? 'replaced' : 'new'),
    origin: place(path),
    ...(from
      ? { entry: { name: from.name, origin: from.origin }, nameOrigin: place(`${path}.name`), ...from.facts }
      : {}),
    ...facts,
    ...(grade ? { grade } : {}),
    ...(at ? { ratedAt: wrap(at, `${path}.at`) } : {}),
    ...(ahead ? { aheadClutch: wrap(ahead, `${path}.ahead clutch`) } : {}),
    ...(ratioWritten ? { ratioUsed: wrap(ratio(ratioWritten as string), `${path}.ratio`) } : {}),
  };
}

function withRating(engine: Loose): Loose {
  const wanted = (engine.ratedAt as Fact<string> | undefined)?.value;
  const rating = (engine.ratings as { duty: string }[]).find(one => one.duty === wanted);
  return rating ? { ...engine, rating } : engine;
}

function withVariant(gear: Loose): Loose {
  const used = (gear.ratioUsed as Fact<Value<'ratio'>> | undefined)?.value;
  const ratios = gear.ratios as RatioVariant[];
  const only = gear.ratioUsed === undefined && ratios.length === 1 ? ratios[0] : undefined;
  const variant = used ? findVariant(ratios, used) : only;
  return variant ? { ...gear, variant } : gear;
}

/** Blocks in lists, and the name that each goes by. */
const BLOCK_LISTS: Readonly<Record<string, (block: Loose) => string>> = {
  ratios: block => `ratio ${(block.nominal as Value).written}`,
  clutches: block => `clutch ${block.name}`,
  ratings: block => `rated ${block.duty}`,
  accessories: block => `accessory ${block.name}`,
};
const BLOCKS = ['train', 'outputFlange', 'flange'];
const RAW = ['name', 'duty', 'nominal'];

function fill(tag: string, facts: object): Loose {
  const filled: Loose = {};
  for (const [key, value] of Object.entries(facts)) {
    if (value === undefined) continue;
    const named = BLOCK_LISTS[key];
    if (RAW.includes(key)) filled[key] = value;
    else if (named) {
      filled[key] = (value as Loose[]).map(one => {
        const name = `${tag}.${named(one)}`;
        const inner: Loose = { ...fill(name, one), origin: place(name) };
        return key === 'ratios'
          ? { clutches: [], ratings: [], nominalFact: wrap(one.nominal, `${name}.nominal`), ...inner }
          : inner;
      });
    } else if (BLOCKS.includes(key)) {
      const name = `${tag}.${key}`;
      const lists = key === 'train' ? { meshes: [], held: [], locked: [] } : {};
      filled[key] = { ...lists, ...fill(name, value), origin: place(name) };
    } else if (Array.isArray(value)) {
      filled[key] = value.map((one, index) => wrap(one, `${tag}.${key} ${index + 1}`));
    } else filled[key] = wrap(value, `${tag}.${key}`);
  }
  return filled;
}

function wrap(value: unknown, tag: string): Fact<unknown> {
  const origin = place(tag);
  const home = { host: origin, property: tag.split('.').at(-1)! };
  if (!isFact(value)) return declareFact({ value, written: wordsFor(value), origin }, home);
  return value.origin === NOWHERE ? declareFact({ ...value, origin }, home) : value;
}

function isFact(value: unknown): value is Fact<unknown> {
  return (
    typeof value === 'object' && value !== null && 'written' in value && 'origin' in value && 'value' in value
  );
}

function wordsFor(value: unknown): string {
  if (typeof value !== 'object' || value === null) return String(value);
  const { written, word, viewedFrom, seen } = value as Loose;
  if (word)
    return [word, viewedFrom && `viewed from ${viewedFrom}`, seen && `seen ${seen}`]
      .filter(Boolean)
      .join(' ');
  return typeof written === 'string' ? written : JSON.stringify(value);
}

/** A vessel with nothing but what is given. */
export function vessel(given: Partial<Vessel>): Vessel {
  return {
    name: 'Ternhaven',
    origin: place('Ternhaven'),
    nameOrigin: place('Ternhaven.name'),
    arrangements: [],
    assumptions: [],
    requirements: [],
    acceptances: [],
    revisions: [],
    unitConcerns: [],
    quantities: [],
    openQuestions: [],
    ...given,
  };
}

/** The verdicts of these rules (of all rules when none is given) on 2026-03-02. */
export function judged(
  about: Vessel,
  rules?: readonly Rule[],
  catalogue: Partial<Catalogue> = {},
): Verdict[] {
  return judgeVessel(about, { ...EMPTY_CATALOGUE, ...catalogue }, '2026-03-02', rules);
}
