#!/usr/bin/env node
/*
 * How long the menu of quick fixes takes, at every finding of a large spec: node tests/bench/code-actions.mjs
 * The first time that somebody asks at a place, and when it is asked again there; by the clock, and by the time that the
 * server was at work, which a busy machine does not lengthen. Nothing here passes or fails.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { catalogueFiles, specText, writeFiles } from './fleet.mjs';
import { Session } from './session.mjs';

const rows = [];
for (const [lines, parts] of [
  [100, 20],
  [1000, 200],
]) {
  const folder = mkdtempSync(join(tmpdir(), 'tailshaft-bench-'));
  const text = broken(specText(lines));
  writeFiles(folder, { 'fleet.shaft': text, ...catalogueFiles(parts) });
  const session = new Session(folder);
  try {
    await session.initialize();
    const uri = pathToFileURL(join(folder, 'fleet.shaft')).href;
    session.open(uri, text);
    const diagnostics = await session.diagnosticsOf(uri, 1);
    await session.quiet(1500);
    const places = diagnostics.filter(one => one.severity <= 2).slice(0, 6);
    const ask = async ({ range }) => {
      const before = session.atWork();
      const started = performance.now();
      const offers = await session.connection.sendRequest('textDocument/codeAction', {
        textDocument: { uri },
        range,
        context: { diagnostics: [], only: ['quickfix'] },
      });
      const time = performance.now() - started;
      return [time, offers?.length ?? 0, session.atWork() - before];
    };
    const first = [];
    const worked = [];
    const again = [];
    let offers = 0;
    for (const one of places) {
      const [time, many, work] = await ask(one);
      first.push(time);
      worked.push(work);
      offers += many;
      again.push((await ask(one))[0]);
    }
    rows.push({
      lines: text.split('\n').length,
      'catalogue parts': parts,
      places: places.length,
      offers,
      ...spread('first', first),
      ...spread('first at work', worked),
      ...spread('again', again),
    });
  } finally {
    await session.end();
    rmSync(folder, { recursive: true, force: true });
  }
}
console.table(rows);

/** A duty that no rating of the example covers, and hands the wrong way round. */
function broken(text) {
  return text.replaceAll('duty medium', 'duty continuous').replaceAll('hand left', 'hand right');
}

function spread(name, times) {
  const sorted = [...times].sort((a, b) => a - b);
  const at = share => Math.round(sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0);
  return { [`${name} p50 ms`]: at(0.5), [`${name} p95 ms`]: at(0.95), [`${name} max ms`]: at(1) };
}
