import type { LineAnalysis } from '../analysis/line.js';
import { LineAnalysis as Analysis } from '../analysis/line.js';
import type { Verdict } from '../judge/verdict.js';
import type { Fact } from '../model/fact.js';
import type { Part } from '../model/part.js';
import type { Shaft } from '../model/shafting.js';
import type { Trial } from '../model/trial.js';
import type { Arrangement, ShaftLine, Study, Vessel, Weight } from '../model/vessel.js';
import type { Judged } from './side.js';

/** What goes by another name than before. Names are the later ones' by the earlier ones'. */
export interface Renames {
  readonly vessel?: string;
  readonly arrangements: ReadonlyMap<string, string>;
  /** By earlier arrangement, then by earlier name. */
  readonly lines: ReadonlyMap<string, ReadonlyMap<string, string>>;
  /** By kind and earlier name: `gear Alder-63`. */
  readonly entries: ReadonlyMap<string, string>;
}

/** The earlier vessel as it would have been written with the later names: whatever differs then is more than a name. */
export function renamed(judged: Judged, names: Renames): Judged {
  const { vessel, verdicts } = judged;
  const changed =
    names.arrangements.size + names.lines.size > 0 ||
    (names.vessel !== undefined && names.vessel !== vessel.name) ||
    usesAny(vessel, names.entries);
  if (!changed) return judged;
  const words = new Words(vessel, names);
  const originals = new Map<ShaftLine, ShaftLine>();
  const arrangements = vessel.arrangements.map(one => arrangementOf(one, words, originals));
  const analysisOf = judged.analysisOf ?? (line => new Analysis(line, vessel));
  const name = names.vessel ?? vessel.name;
  return {
    ...judged,
    ...(judged.key ? { key: judged.key } : {}),
    vessel: {
      ...vessel,
      name,
      arrangements,
      ...(vessel.hull?.weights
        ? { hull: { ...vessel.hull, weights: vessel.hull.weights.map(one => weightOf(one, words)) } }
        : {}),
      ...(vessel.trials ? { trials: vessel.trials.map(one => trialOf(one, words)) } : {}),
      ...(vessel.studies ? { studies: vessel.studies.map(one => studyOf(one, words)) } : {}),
      acceptances: vessel.acceptances.map(one => ({ ...one, on: words.path(one.on) })),
    },
    verdicts: verdicts.map(one => verdictOf(one, words)),
    analysisOf: (line: ShaftLine): LineAnalysis => analysisOf(originals.get(line) ?? line),
  };
}

function usesAny(vessel: Vessel, entries: Renames['entries']): boolean {
  if (entries.size === 0) return false;
  return vessel.arrangements.some(one =>
    one.lines.some(line =>
      line.chain.some(
        part =>
          entries.has(`${part.role} ${part.entry?.name}`) ||
          gradesOf(part).some(name => entries.has(`shaft material ${name}`)),
      ),
    ),
  );
}

/** The grades that a part names: a shaft its own, and those of its keys. */
function gradesOf(part: Part): readonly (string | undefined)[] {
  const { grade, keys = [] } = part as Shaft;
  return [grade?.name, ...keys.map(key => key.material?.value)];
}

function arrangementOf(one: Arrangement, words: Words, originals: Map<ShaftLine, ShaftLine>): Arrangement {
  const name = words.arrangement(one.name);
  return {
    ...one,
    name,
    path: name,
    ...(one.revises ? { revises: words.arrangement(one.revises) } : {}),
    lines: one.lines.map(line => lineOf(line, words, originals)),
  };
}

function weightOf(weight: Weight, words: Words): Weight {
  const { arrangement } = weight;
  if (arrangement?.value === undefined) return weight;
  const name = words.arrangement(arrangement.value);
  return name === arrangement.value
    ? weight
    : { ...weight, arrangement: { ...arrangement, value: name, written: name } };
}

/** A trial names its arrangement, and the lines that were run. */
function trialOf(trial: Trial, words: Words): Trial {
  const { of, runs, docks } = trial;
  const line = (name: string) => (of === undefined ? words.path(name) : words.line(of, name));
  return {
    ...trial,
    ...(of === undefined ? {} : { of: words.arrangement(of) }),
    runs: runs.map(one => ({ ...one, line: line(one.line) })),
    ...(docks ? { docks: docks.map(one => ({ ...one, line: line(one.line) })) } : {}),
  };
}

function studyOf(study: Study, words: Words): Study {
  const { studied } = study;
  return studied === undefined ? study : { ...study, studied: words.arrangement(studied) };
}

function lineOf(line: ShaftLine, words: Words, originals: Map<ShaftLine, ShaftLine>): ShaftLine {
  const made = new Map(line.chain.map(part => [part, partOf(part, words)]));
  const as = <P extends Part>(part: P) => (made.get(part) ?? part) as P;
  const renamedLine: ShaftLine = {
    ...line,
    path: words.path(line.path),
    name: words.line(line.arrangement, line.name),
    arrangement: words.arrangement(line.arrangement),
    ...(line.mirrors ? { mirrors: words.line(line.arrangement, line.mirrors) } : {}),
    ...(line.engine ? { engine: as(line.engine) } : {}),
    ...(line.motor ? { motor: as(line.motor) } : {}),
    ...(line.gear ? { gear: as(line.gear) } : {}),
    ...(line.propeller ? { propeller: as(line.propeller) } : {}),
    couplings: line.couplings.map(as),
    transfers: line.transfers.map(as),
    shafts: line.shafts.map(as),
    chain: line.chain.map(as),
  };
  originals.set(renamedLine, line);
  return renamedLine;
}

function partOf(part: Part, words: Words): Part {
  const { entry } = part;
  const name = entry && words.entry(part.role, entry.name);
  const made = {
    ...part,
    path: words.path(part.path),
    ...(entry ? { entry: { ...entry, name: name! } } : {}),
  };
  if (part.role !== 'shaft') return made;
  const { material, grade, keys } = part as Shaft;
  const ofGrade = <F extends Fact<string> | undefined>(fact: F): F => {
    const name = fact?.value === undefined ? undefined : words.entry('shaft material', fact.value);
    return fact && name !== fact.value ? { ...fact, value: name, written: name } : fact;
  };
  return {
    ...made,
    ...(material ? { material: ofGrade(material) } : {}),
    ...(grade ? { grade: { ...grade, name: words.entry('shaft material', grade.name) } } : {}),
    ...(keys
      ? { keys: keys.map(key => (key.material ? { ...key, material: ofGrade(key.material) } : key)) }
      : {}),
  } as Part;
}

function verdictOf(verdict: Verdict, words: Words): Verdict {
  return {
    ...verdict,
    subject: words.path(verdict.subject),
    message: words.inText(verdict.message),
    explains: verdict.explains.map(one => ({ ...one, subject: words.path(one.subject) })),
  };
}

/** The later name of whatever has one. */
class Words {
  private readonly pattern: RegExp | undefined;
  private readonly later = new Map<string, string>();

  constructor(
    private readonly vessel: Vessel,
    private readonly names: Renames,
  ) {
    const all: (readonly [string, string])[] = [
      ...(names.vessel ? [[vessel.name, names.vessel] as const] : []),
      ...names.arrangements,
      ...[...names.lines.values()].flatMap(one => [...one]),
      ...[...names.entries].map(([key, to]) => [key.split(' ').at(-1)!, to] as const),
    ];
    for (const [from, to] of all) if (from !== to && from !== '') this.later.set(from, to);
    const escaped = [...this.later.keys()]
      .sort((one, other) => other.length - one.length)
      .map(one => one.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
    if (escaped.length > 0)
      this.pattern = new RegExp(`(?<![\\p{L}\\d-])(${escaped.join('|')})(?![\\p{L}\\d-])`, 'gu');
  }

  arrangement(name: string): string {
    return this.names.arrangements.get(name) ?? name;
  }

  line(arrangement: string, name: string): string {
    return this.names.lines.get(arrangement)?.get(name) ?? name;
  }

  entry(kind: string, name: string): string {
    return this.names.entries.get(`${kind} ${name}`) ?? name;
  }

  /** `proposed.Port.shaft`, `Port.shaft`, the name of the vessel or of an entry. */
  path(path: string): string {
    if (path === this.vessel.name) return this.names.vessel ?? path;
    const [head = '', ...rest] = path.split('.');
    const arrangement = this.vessel.arrangements.find(one => one.name === head);
    if (arrangement) {
      const [line, ...more] = rest;
      return [this.arrangement(head), ...(line === undefined ? [] : [this.line(head, line)]), ...more].join(
        '.',
      );
    }
    const of = this.vessel.arrangements.find(one => one.lines.some(line => line.name === head));
    return [of ? this.line(of.name, head) : head, ...rest].join('.');
  }

  inText(text: string): string {
    return this.pattern ? text.replace(this.pattern, name => this.later.get(name) ?? name) : text;
  }
}
