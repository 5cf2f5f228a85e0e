import type { Engine, EngineFacts, Part, Role, ShaftLine, ShaftMaterial } from '@tailshaft/drivetrain';
import { given } from '@tailshaft/mechanics';
import type { EntryKind } from '@tailshaft/vocabulary';
import { catalogueEntry, materialOf } from '../../elaborate/catalogue.js';
import type { EntryReading } from '../../reading/document.js';
import type { JudgedLine } from '../lines.js';
import { type Fit, fitOf, MOST_TRIALS, tryLine } from './line-trial.js';

/** Rules that judge a bar by its diameter and strength. */
const OF_SHAFTS = /^(shafting\/diameter|capacity\/retained-shaft)/;

/** Rules that a part of each role can break where it stands. Gears are tried in each clutch, by a list of their own. */
const ASKED: Readonly<Partial<Record<EntryKind | Role, RegExp>>> = {
  engine: /^(rotation|capacity|interface)\//,
  motor: /^(rotation|capacity)\//,
  transfer: /^(rotation\/|capacity\/transfer|speed\/transfer)/,
  coupling: /^(capacity\/coupling|interface\/damper|shafting\/(coupling|joint|flexible|soft))/,
  propeller: /^(rotation\/(propeller-hand|convertible)|propeller\/|capacity\/retained-propeller)/,
  'shaft material': OF_SHAFTS,
};

/** To try a propeller is to work out the speed of the vessel: three times the work of any other part. */
const MOST_PROPELLERS = 40;

/** Puts each entry in the place of the line's own part, keeps what is said of the place, and lets the rules judge it. */
export function judgeEntries(
  role: EntryKind | Role,
  line: JudgedLine,
  entries: readonly EntryReading[],
): ReadonlyMap<string, Fit> {
  const fits = new Map<string, Fit>();
  const wanted = ASKED[role];
  if (!wanted || entries.length > (role === 'propeller' ? MOST_PROPELLERS : MOST_TRIALS)) return fits;
  for (const entry of entries) {
    const tried =
      role === 'shaft material' ? ofGrade(line.line, entry) : withPart(line.line, role as Role, entry);
    const fit = tried && fitOf(tryLine(line, tried, wanted), dutyOf(tried, role));
    if (fit) fits.set(entry.name, fit);
  }
  return fits;
}

function withPart(line: ShaftLine, role: Role, entry: EntryReading): ShaftLine | undefined {
  const { name, origin, facts } = catalogueEntry<Record<string, unknown>>(entry);
  const old = line.chain.find(part => part.role === role);
  const made = {
    ...(old ? inPlace(old) : {}),
    ...facts,
    role,
    path: old?.path ?? `${line.path}.${role}`,
    change: old?.change ?? 'new',
    entry: { name, origin },
    origin: old?.origin ?? line.origin,
  } as unknown as Part;
  const part = role === 'engine' ? rated(made as Engine) : made;
  const chain = old ? line.chain.map(one => (one === old ? part : one)) : [...line.chain, part];
  const all = chain.filter(one => one.role === role);
  if (role === 'coupling') return { ...line, chain, couplings: all as ShaftLine['couplings'] };
  if (role === 'transfer') return { ...line, chain, transfers: all as unknown as ShaftLine['transfers'] };
  return { ...line, chain, [role]: part };
}

/** What the line itself says of a part: facts that do not come from its catalogue entry. */
function inPlace(old: Part): Record<string, unknown> {
  const block = old.entry?.origin as { uri: string; block?: { start: number; end: number } } | undefined;
  if (!block?.block) return { ...old };
  const { start, end } = block.block;
  const ofEntry = (value: unknown): boolean => {
    if (Array.isArray(value)) return value.some(ofEntry);
    const at = (value as { origin?: { uri?: string; start?: number } } | undefined)?.origin;
    return at?.uri === block.uri && at.start !== undefined && at.start >= start && at.start <= end;
  };
  return Object.fromEntries(Object.entries(old).filter(([, value]) => !ofEntry(value)));
}

/** At the duty that the line asks for, or the only one there is. */
function rated(engine: Engine & EngineFacts): Engine {
  const duty = engine.ratedAt?.value;
  const ratings = engine.ratings ?? [];
  const rating =
    duty === undefined && ratings.length === 1 ? ratings[0] : ratings.find(one => one.duty === duty);
  const { rating: _old, ...rest } = engine as Engine & { rating?: unknown };
  return (rating ? { ...rest, rating } : rest) as Engine;
}

function ofGrade(line: ShaftLine, entry: EntryReading): ShaftLine | undefined {
  if (line.shafts.length === 0) return undefined;
  const grade: ShaftMaterial = materialOf(entry);
  const remade = new Map(
    line.shafts.map(shaft => {
      const material = {
        value: grade.name,
        written: grade.name,
        origin: shaft.material?.origin ?? shaft.origin,
      };
      return [shaft as Part, { ...shaft, material, grade }];
    }),
  );
  return {
    ...line,
    shafts: [...remade.values()],
    chain: line.chain.map(part => remade.get(part) ?? part),
  };
}

/** How the shaft of a line would fare at another diameter; nothing where the line has not just one shaft. */
export function diameterFit(line: JudgedLine, metres: number, written: string): Fit | undefined {
  const [shaft, ...more] = line.line.shafts;
  if (!shaft || more.length > 0) return undefined;
  const origin = shaft.diameter?.origin ?? shaft.origin;
  const value = given('shaft diameter', 'd', 'length', metres, { written, origin });
  const made = { ...shaft, diameter: { value, written, origin } };
  const tried = {
    ...line.line,
    shafts: [made],
    chain: line.line.chain.map(part => (part === shaft ? made : part)),
  };
  return fitOf(tryLine(line, tried, OF_SHAFTS));
}

function dutyOf(line: ShaftLine, role: EntryKind | Role): string {
  const duty = role === 'engine' ? line.engine?.ratedAt?.value : undefined;
  return duty ? `at ${duty}` : '';
}
