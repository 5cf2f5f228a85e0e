import { damagesOf, damageWords } from '../model/damage.js';
import { nameOf } from '../model/part.js';
import type { Vessel } from '../model/vessel.js';
import type { DerivedChange, PartChange, SilentChange, SpecChange, StalePaper } from './change.js';

/**
 * Papers that were made for what has now changed. Common practice, no source, except where a row says otherwise; what a
 * class society, a flag or a maker wants to see again is theirs to say.
 */
export function stalePapers(vessel: string, changes: readonly SpecChange[]): StalePaper[] {
  const parts = changes.filter((one): one is PartChange => one.kind === 'part' && one.fate !== 'kept');
  const derived = changes.filter((one): one is DerivedChange => one.kind === 'derived');
  const touched = new Set<string>(parts.map(one => one.role));
  const moved = (what: RegExp) => derived.some(one => what.test(one.what));
  return PAPERS.filter(
    one => one.roles.some(role => touched.has(role)) || (one.figures && moved(one.figures)),
  ).map(one => ({ kind: 'paper', subject: vessel, weight: 72, words: one.words }));
}

/** What was found since, of parts as they stood: class and flag ask to be told, where the vessel has them. */
export function damageNotices(before: Vessel, after: Vessel): StalePaper[] {
  const known = new Set(foundIn(before).map(one => `${one.role} ${one.found}`));
  const fresh = foundIn(after).filter(one => !known.has(`${one.role} ${one.found}`));
  const words = new Map(fresh.map(one => [`${one.role} ${one.found}`, `${one.name}, found ${one.found}`]));
  return [...words.values()].map(found => ({
    kind: 'paper',
    subject: after.name,
    weight: 72,
    words: `notice of ${found} to class and flag, where the vessel has them, and to the insurer: a casualty to machinery is reported before it is repaired`,
  }));
}

/** Records of damage that are there no more: what they withheld may hold again, and nobody has said that it was put right. */
export function damageUntold(before: Vessel, after: Vessel): SilentChange[] {
  const still = new Set(foundIn(after).map(one => `${one.role} ${one.found}`));
  const gone = foundIn(before).filter(one => !still.has(`${one.role} ${one.found}`));
  return [...new Set(gone.map(one => `${one.name}, found ${one.found}`))].map(found => ({
    kind: 'silent',
    what: 'damage',
    subject: after.name,
    weight: 27.5,
    words: `the record of ${found} was taken out: what it withheld is judged again as of a sound part`,
  }));
}

function foundIn({ arrangements }: Vessel) {
  return arrangements.flatMap(({ lines }) =>
    lines.flatMap(line =>
      line.chain.flatMap(part =>
        damagesOf(part).map(one => ({
          role: `${line.name} ${part.role}`,
          name: `${nameOf(part)} of ${line.name}`,
          found: damageWords(one),
        })),
      ),
    ),
  );
}

const PAPERS: readonly { roles: readonly string[]; figures?: RegExp; words: string }[] = [
  {
    roles: ['engine', 'motor', 'gear', 'transfer', 'coupling', 'shaft', 'propeller'],
    words:
      'torsional and lateral vibration calculations: class asks for them again when engine, gear, coupling, shaft or propeller changes',
  },
  {
    roles: ['engine', 'motor', 'gear', 'transfer', 'shaft'],
    words:
      'machinery and shaft drawings at class or flag: anything but a repair in kind needs approval before the work',
  },
  {
    roles: ['engine', 'motor', 'gear', 'transfer', 'coupling', 'propeller'],
    words: 'weight, trim and stability record: the mass at each place may have changed',
  },
  {
    roles: ['propeller', 'shaft'],
    figures: /hand|sense/,
    words:
      'spares on board and propeller orders: a spare of the old hand, bore, pitch or diameter no longer fits',
  },
  {
    roles: ['engine', 'motor', 'gear'],
    figures: /sense|clutch|ratio|speed/,
    words: 'trial sheet and operating notes: direction at the dock, idle speed, rated speed',
  },
  { roles: ['engine', 'motor'], words: 'emission, licence and certificate data that name engine and power' },
];
