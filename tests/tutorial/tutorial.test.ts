import { execFileSync } from 'node:child_process';
import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { folders, tailshaft } from '../cli/run.js';
import { examplesFolder } from '../support/examples.js';
import { added, type Block, blocksOf, patched, shown, wordsOf } from './lesson.js';

/** The lesson is done in a copy of the examples, line by line; `npm run docs` writes anew what its commands print. */
const page = join(examplesFolder, 'tutorial/README.md');
const update = process.env.UPDATE_DOCS !== undefined;
const lesson = readFileSync(page, 'utf8');
/** The day on which the lesson is done; sheets and acceptances age. */
const TODAY = '2026-02-20';
const DATED = new Set(['check', 'study', 'sheet']);

const folder = folders()();
cpSync(join(examplesFolder, 'catalogue'), join(folder, 'catalogue'), { recursive: true });

execFileSync('git', ['init', '-q'], { cwd: folder });

const read = (file: string) => readFileSync(join(folder, file), 'utf8');

function write({ kind, words: [file, add], text }: Block): void {
  const now = kind === 'diff' ? patched(read(file!), text) : add ? added(read(file!), text) : text;
  writeFileSync(join(folder, file!), now);
}

function run(command: string): string {
  const [program, ...words] = wordsOf(command);
  if (program === 'git')
    return execFileSync('git', ['-c', 'user.name=a', '-c', 'user.email=a@example.invalid', ...words], {
      cwd: folder,
      encoding: 'utf8',
    });
  expect(program).toBe('tailshaft');
  const day = DATED.has(words[0]!) ? ` --today ${TODAY}` : '';
  const { stdout, stderr } = tailshaft(words.join(' ') + day, { cwd: folder });
  return stderr + stdout;
}

interface Finding {
  readonly code: string;
  readonly severity: string;
}

function failing(): string[] {
  const { stdout } = tailshaft(`check lapwater.shaft --json --today ${TODAY}`, { cwd: folder });
  const { files } = JSON.parse(stdout) as { files: readonly { readonly findings: readonly Finding[] }[] };
  const grave = files.flatMap(file => file.findings).filter(one => /error|warning/.test(one.severity));
  return [...new Set(grave.map(one => one.code))].sort();
}

it('does as its lesson says, and prints what the lesson prints', () => {
  let told = '';
  let end = 0;
  for (const block of blocksOf(lesson)) {
    let { text } = block;
    if (block.kind === 'console') {
      const commands = text.split('\n').filter(line => line.startsWith('$ '));
      const answers = commands.map(line => shown(run(line.slice(2)), block.words));
      text = commands.map((line, at) => `${line}\n${answers[at] === '' ? '' : `${answers[at]}\n`}`).join('');
    } else write(block);
    told += lesson.slice(end, block.from) + text;
    end = block.to;
    if (block.fails) expect(failing(), `behind\n${text}`).toEqual([...block.fails].sort());
  }
  told += lesson.slice(end);
  if (update) writeFileSync(page, told);
  else expect(told, 'run npm run docs').toBe(lesson);
});

it.each(['lapwater.shaft', 'parts.shaft'])('ends with %s as it lies beside it', file => {
  const beside = join(examplesFolder, 'tutorial', file);
  // There the catalogue is one folder up.
  const text = read(file).replace('import "catalogue"', 'import "../catalogue"');
  if (update) writeFileSync(beside, text);
  else expect(text, 'run npm run docs').toBe(readFileSync(beside, 'utf8'));
});

it('ends with a spec that is laid out and holds every step of the work', () => {
  expect(run('tailshaft format --check lapwater.shaft parts.shaft')).toMatch(/ 0 files would/);
  for (const word of ['arrangement proposed', 'study', 'require', 'revision', 'trial'])
    expect(read('lapwater.shaft')).toContain(word);
});
