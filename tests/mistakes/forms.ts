import type { Arrangement, Entry, Facts, Line, Part, Spec } from './spec-model.js';

const MOVERS = ['engine', 'motor', 'gear'];

/** The parts of the vessel as found: what moves and gears it goes by another name and is sound. */
function asFound(sound: Spec, mistaken: Spec, keeps: boolean): { lines: Line[]; entries: Entry[] } {
  const entries: Entry[] = [];
  const lines = (keeps ? mistaken : sound).arrangements[0]!.lines.map(line => {
    const was = sound.arrangements[0]!.lines.find(one => one.name === line.name)!;
    const parts = line.parts.map(part => {
      if (!keeps || !MOVERS.includes(part.kind)) return structuredClone(part);
      return structuredClone(was.parts.find(one => one.kind === part.kind) ?? part);
    });
    return { ...structuredClone(line), parts };
  });
  for (const line of lines) {
    for (const part of line.parts) {
      if (!part.entry || !MOVERS.includes(part.kind)) continue;
      const entry = sound.catalogue.find(one => one.name === part.entry);
      if (!entry) continue;
      part.entry = `Old-${entry.name}`;
      if (!entries.some(one => one.name === part.entry))
        entries.push({ ...structuredClone(entry), name: part.entry });
    }
  }
  return { lines, entries };
}

const retained = (part: Part): Part => ({
  kind: part.kind,
  verb: 'retain',
  ...(part.entry ? { entry: part.entry } : {}),
  facts: {},
});

function named(part: Part, among: readonly Part[]): Part {
  const several = among.filter(one => one.kind === part.kind).length > 1;
  return several ? retained(part) : { kind: part.kind, verb: 'retain', facts: {} };
}

/** Everything that the arrangement before has, kept. */
function allKept(name: string, before: Arrangement): Arrangement {
  return {
    name,
    revises: before.name,
    says: [],
    lines: before.lines.map(line => ({
      name: line.name,
      ...(line.mirrors ? { mirrors: line.mirrors } : {}),
      parts: line.mirrors
        ? []
        : line.parts.filter(one => one.verb !== 'remove').map(one => named(one, line.parts)),
    })),
  };
}

/** Everything replaced, couplings excepted. */
function repower(sound: Spec, mistaken: Spec): Spec {
  const spec = structuredClone(mistaken);
  const found = asFound(sound, mistaken, false);
  const proposed = spec.arrangements[0]!;
  proposed.revises = 'existing';
  for (const line of proposed.lines) {
    if (line.mirrors) continue;
    line.parts = line.parts.map(part => {
      if (part.kind === 'coupling') return named(part, line.parts);
      return { ...part, verb: 'replace' };
    });
  }
  spec.arrangements.unshift({ name: 'existing', lines: found.lines, says: [] });
  spec.catalogue.push(...found.entries);
  return spec;
}

/** Engine and gear replaced, the rest kept as it was found. */
function kept(sound: Spec, mistaken: Spec): Spec {
  const spec = structuredClone(mistaken);
  const found = asFound(sound, mistaken, true);
  const proposed = spec.arrangements[0]!;
  proposed.revises = 'existing';
  for (const line of proposed.lines) {
    if (line.mirrors) {
      line.parts = line.parts.filter(one => MOVERS.includes(one.kind));
      continue;
    }
    line.parts = line.parts.map(part =>
      MOVERS.includes(part.kind) ? { ...part, verb: 'replace' } : named(part, line.parts),
    );
  }
  spec.arrangements.unshift({ name: 'existing', lines: found.lines, says: [] });
  spec.catalogue.push(...found.entries);
  return spec;
}

function changedFacts(before: Facts, after: Facts): Facts {
  const out: Facts = {};
  for (const [words, value] of Object.entries(after)) {
    if (value === null || JSON.stringify(value) === JSON.stringify(before[words])) continue;
    out[words] = structuredClone(value);
  }
  return out;
}

/** The mistake by a modification of a vessel that was sound as found. */
function modified(sound: Spec, mistaken: Spec): Spec | undefined {
  const spec = structuredClone(mistaken);
  const existing: Arrangement = { ...structuredClone(sound.arrangements[0]!), name: 'existing' };
  const proposed: Arrangement = allKept('proposed', existing);
  spec.catalogue = structuredClone(sound.catalogue);
  let any = false;
  mistaken.arrangements[0]!.lines.forEach((line, at) => {
    const was = sound.arrangements[0]!.lines[at]!;
    for (const part of line.parts) {
      const before = was.parts.find(
        one => one.kind === part.kind && (!part.entry || one.entry === part.entry),
      );
      if (!before) continue;
      const facts = changedFacts(before.facts, part.facts);
      if (part.entry) {
        const entry = mistaken.catalogue.find(one => one.name === part.entry);
        const own = sound.catalogue.find(one => one.name === part.entry);
        if (entry && own) Object.assign(facts, changedFacts(own.facts, entry.facts));
      }
      const header = part.header !== before.header ? part.header : undefined;
      if (Object.keys(facts).length === 0 && !header) continue;
      any = true;
      const line2 = proposed.lines[at]!;
      const index = line2.parts.findIndex(
        one => one.kind === part.kind && (!one.entry || one.entry === part.entry),
      );
      const change: Part = {
        kind: part.kind,
        verb: 'modify',
        ...(index >= 0 && line2.parts[index]!.entry ? { entry: line2.parts[index]!.entry! } : {}),
        ...(header ? { header } : {}),
        facts,
      };
      if (index >= 0) line2.parts[index] = change;
      else line2.parts.push({ ...change, verb: '' });
    }
  });
  if (!any) return undefined;
  spec.arrangements = [existing, proposed];
  return spec;
}

/** The catalogue says what is sound; the mistake is written over it in the line. */
function overridden(sound: Spec, mistaken: Spec): Spec | undefined {
  const spec = structuredClone(mistaken);
  spec.catalogue = structuredClone(sound.catalogue);
  let any = false;
  for (const line of spec.arrangements[0]!.lines) {
    for (const part of line.parts) {
      const entry = part.entry && mistaken.catalogue.find(one => one.name === part.entry);
      const own = part.entry && sound.catalogue.find(one => one.name === part.entry);
      if (!entry || !own) continue;
      const facts = changedFacts(own.facts, entry.facts);
      if (Object.keys(facts).length === 0) continue;
      any = true;
      Object.assign(part.facts, facts);
    }
  }
  return any ? spec : undefined;
}

/** What is said twice, in the line above the last step, is told of the step too. */
function stepped(sound: Spec, mistaken: Spec): Spec {
  const spec = repower(sound, mistaken);
  spec.arrangements.push(allKept('final', spec.arrangements[1]!));
  return spec;
}

/** Ways of saying one vessel; each makes a spec of the sound and the mistaken one, or says that it cannot. */
export const FORMS: Readonly<Record<string, (sound: Spec, mistaken: Spec) => Spec | undefined>> = {
  new: (_, mistaken) => structuredClone(mistaken),
  repower,
  kept,
  stepped,
  modified,
  overridden,
};
