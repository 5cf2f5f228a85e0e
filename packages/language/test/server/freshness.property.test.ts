import { afterEach, describe, expect, it } from 'vitest';
import { FileChangeType } from 'vscode-languageserver/node';
import { times } from '../../../../tests/support/share.js';
import { uriOf } from './memory-files.js';
import { randomFrom } from './random.js';
import { CATALOGUE, VESSEL } from './specs.js';
import { Wire } from './wire.js';

/** Texts that a file may have: each says something else of those that import it. */
const PARTS = [
  CATALOGUE,
  CATALOGUE.replace('clutch B output opposite', 'clutch C output opposite'),
  CATALOGUE.replace('rated medium 0.18 kW/rpm', 'rated medium 0.018 kW/rpm'),
  CATALOGUE.replace('Alder-63', 'Birch-9'),
  `import "more"\n${CATALOGUE.replace('engine Kittiwake-9', 'engine Kittiwake-8')}`,
  '',
];
const MORE = [CATALOGUE.slice(0, CATALOGUE.indexOf('gear Alder')), 'gear {', ''];
const SPECS = [
  `import "parts/catalogue"\n${VESSEL}`,
  `import "parts"\n${VESSEL}`,
  `import "link"\n${VESSEL}`,
  VESSEL,
];
const LINKS = ['import "parts/catalogue"\n', 'import "parts/more"\n', 'import "spec-1"\n', ''];
const FILES: Readonly<Record<string, readonly string[]>> = {
  'parts/catalogue.shaft': PARTS,
  'parts/more.shaft': MORE,
  'link.shaft': LINKS,
  ...Object.fromEntries(Array.from({ length: 6 }, (_, at) => [`spec-${at}.shaft`, SPECS])),
};
const PATHS = Object.keys(FILES);

/** `FRESH_SEEDS=200` for a long run, `FRESH_FROM=1001` for others than those that come first; each makes 80 changes. */
const FROM = Number(process.env.FRESH_FROM ?? 1);
const SEEDS = Array.from({ length: Number(process.env.FRESH_SEEDS ?? times(1, 12)) }, (_, at) => FROM + at);

let wires: Wire[] = [];
afterEach(async () => {
  await Promise.all(wires.map(one => one.stop()));
  wires = [];
});

async function begin(texts: Readonly<Record<string, string>>): Promise<Wire> {
  const wire = await Wire.start(texts);
  wires.push(wire);
  return wire;
}

/** What a server shows of each file: the findings last sent, or none where it never sent any. */
function shown(wire: Wire): Record<string, string[]> {
  return Object.fromEntries(
    PATHS.map(path => {
      const last = wire.published.findLast(one => one.uri === uriOf(path));
      const said = last?.diagnostics.map(one => `${one.range.start.line} ${one.code} ${one.message}`);
      return [path, (said ?? []).sort()];
    }),
  );
}

/** The same of a server that has just been started on these files, with the same texts open. */
async function freshly(wire: Wire, open: ReadonlyMap<string, string>): Promise<Record<string, string[]>> {
  const texts = [...wire.files.texts].map(([uri, text]) => [uri.slice(uriOf('').length), text] as const);
  const fresh = await begin(Object.fromEntries(texts));
  for (const [path, text] of open) await fresh.open(path, text);
  await fresh.settle();
  return shown(fresh);
}

describe('every file shows what a fresh server would show of it', () => {
  it('when a catalogue changes twice while those that import it are judged', async () => {
    const specs = Array.from({ length: 30 }, (_, at) => [`spec-${at}.shaft`, SPECS[0]!] as const);
    const wire = await begin({ ...Object.fromEntries(specs), 'parts/catalogue.shaft': PARTS[0]! });
    await wire.settle();
    expect(wire.published).toEqual([]);
    for (const text of [PARTS[2]!, PARTS[1]!]) {
      wire.files.texts.set(uriOf('parts/catalogue.shaft'), text);
      await wire.fileChanged('parts/catalogue.shaft', FileChangeType.Changed);
      await new Promise(done => setTimeout(done, 60));
    }
    await wire.settle();
    const fresh = await begin({ ...Object.fromEntries(specs), 'parts/catalogue.shaft': PARTS[1]! });
    await fresh.settle();
    expect(fresh.codes('spec-0.shaft')).toHaveLength(1);
    for (const [path] of specs) expect(wire.codes(path), path).toEqual(fresh.codes(path));
  });

  it.each(SEEDS)(
    'whatever changes on disk and in editors, when it will (seed %i)',
    { timeout: 60_000 },
    async seed => {
      const random = randomFrom(seed * 7919);
      const one = <T>(of: readonly T[]): T => of[random(of.length)]!;
      const wire = await begin(Object.fromEntries(PATHS.map(path => [path, FILES[path]![0]!])));
      const open = new Map<string, string>();
      for (let round = 0; round < times(3, 8); round++) {
        for (let step = 0; step < 10; step++) {
          const path = random(3) === 0 ? 'parts/catalogue.shaft' : one(PATHS);
          const text = one(FILES[path]!);
          const uri = uriOf(path);
          const had = wire.files.texts.has(uri);
          const act = random(10);
          if (act < 5) {
            wire.files.texts.set(uri, text);
            await wire.fileChanged(path, had ? FileChangeType.Changed : FileChangeType.Created);
          } else if (act === 5 && had) {
            wire.files.texts.delete(uri);
            await wire.fileChanged(path, FileChangeType.Deleted);
          } else if (act < 8) {
            if (open.has(path)) await wire.type(path, text);
            else await wire.open(path, text);
            open.set(path, text);
          } else if (open.delete(path)) await wire.close(path);
          if (random(3) > 0) await new Promise(done => setTimeout(done, random(25)));
        }
        await wire.settle();
        expect(wire.logged).toEqual([]);
        expect(shown(wire), `seed ${seed}, round ${round}`).toEqual(await freshly(wire, open));
      }
    },
  );

  it('when a file can no longer be read', async () => {
    const wire = await begin({ 'spec-0.shaft': SPECS[0]!, 'parts/catalogue.shaft': PARTS[0]! });
    await wire.settle();
    wire.files.closed.add(uriOf('parts/catalogue.shaft'));
    await wire.fileChanged('parts/catalogue.shaft', FileChangeType.Changed);
    await wire.settle();
    expect(wire.codes('spec-0.shaft')).toContain('text/import');
    wire.files.closed.clear();
    await wire.fileChanged('parts/catalogue.shaft', FileChangeType.Changed);
    await wire.settle();
    expect(wire.codes('spec-0.shaft')).toEqual([]);
  });

  it('when a new day begins', async () => {
    const aged = SPECS[0]!;
    const wire = await begin({ 'spec-0.shaft': aged, 'parts/catalogue.shaft': PARTS[0]! });
    await wire.settle();
    expect(wire.codes('spec-0.shaft')).toBeUndefined();
    wire.services.project.today = () => '2040-06-01';
    wire.services.days.look();
    await wire.settle();
    expect(wire.codes('spec-0.shaft') ?? wire.codes('parts/catalogue.shaft')).toContain('paper/source-age');
  });
});
