import { chmodSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../../packages/drivetrain/src/rules/example-specs.js';
import { folders, TRACE, tailshaft } from './run.js';

const folder = folders();

const five = Buffer.alloc(5 * 1024 * 1024, '// a long comment\n');
const cwd = folder({
  'right.shaft': SINGLE_LINE,
  'empty.shaft': '',
  'binary.shaft': Buffer.from([0x76, 0x00, 0x01, 0xff]),
  'latin.shaft': Buffer.from('vessel Fl\xf8y { }', 'latin1'),
  'sixteen.shaft': Buffer.from('\ufeffvessel A { }', 'utf16le'),
  'marked.shaft': `\ufeff${SINGLE_LINE}`,
  'dos.shaft': SINGLE_LINE.replaceAll('\n', '\r\n'),
  'huge.shaft': five,
  'bare/readme.txt': 'nothing here',
  'lost.shaft': 'import "nowhere"\n',
  'bare.shaft': 'import "bare"\n',
  'away.shaft': 'import "../../../etc/passwd"\n',
  'wide.shaft': 'import "huge.shaft"\n',
  'blob.shaft': 'import "binary"\n',
  'one.shaft': `import "other"\n${SINGLE_LINE}`,
  'other.shaft': 'import "one"\n',
  'deep.shaft': `vessel A { ${'arrangement a { '.repeat(10_000)}`,
  'hostile.shaft': 'vessel \u001b[2J { }\n',
  'long.shaft': `vessel A { ${'x'.repeat(100_000)} }\n`,
});
symlinkSync('loop.shaft', join(cwd, 'loop.shaft'));

const told = [
  // words, status, stream that says it, what it says
  ['check missing.shaft', 2, 'stderr', 'missing.shaft cannot be read: there is no such file or folder'],
  ['check bare', 2, 'stderr', 'the folder bare holds no .shaft file'],
  ['check binary.shaft', 2, 'stderr', 'binary.shaft is not text: it holds zero bytes'],
  ['check latin.shaft', 2, 'stderr', 'latin.shaft is not UTF-8 text: save it as UTF-8'],
  ['check sixteen.shaft', 2, 'stderr', 'sixteen.shaft is written in UTF-16: save it as UTF-8'],
  ['check huge.shaft', 2, 'stderr', 'huge.shaft is 5 MB, and a spec of more than 4 MB is not read'],
  ['check loop.shaft', 2, 'stderr', 'its links lead in a circle'],
  ['check lost.shaft', 1, 'stdout', 'There is no file or folder "nowhere" beside this file.'],
  ['check bare.shaft', 1, 'stdout', 'The folder "bare" holds no .shaft file.'],
  ['check away.shaft', 1, 'stdout', 'is outside the workspace, where nothing is read'],
  ['check wide.shaft', 1, 'stdout', 'could not be read as text'],
  ['check blob.shaft', 1, 'stdout', 'could not be read as text'],
  ['check deep.shaft', 1, 'stdout', 'Blocks are nested 24 deep here, which is the limit'],
  ['check empty.shaft', 0, 'stdout', '1 file, 0 vessels: no error'],
  ['check one.shaft', 0, 'stdout', '1 file, 1 vessel: no error'],
  ['check marked.shaft', 0, 'stdout', '1 file, 1 vessel: no error'],
  ['check dos.shaft', 0, 'stdout', '1 file, 1 vessel: no error'],
  ['check long.shaft', 1, 'stdout', 'long.shaft:1:'],
  [
    'check --severity mild right.shaft',
    2,
    'stderr',
    '--severity is one of error, warning, note, information, not "mild"',
  ],
  ['check --today tomorrow right.shaft', 2, 'stderr', '--today is a date such as 2026-03-02, not "tomorrow"'],
  ['check --today 2026-13-40 right.shaft', 2, 'stderr', '--today is a date'],
  ['check --loud right.shaft', 2, 'stderr', "Unknown option '--loud'"],
  ['check --json --sarif right.shaft', 2, 'stderr', 'choose one'],
  ['chekc right.shaft', 2, 'stderr', 'there is no command "chekc"'],
  ['compare right.shaft', 2, 'stderr', 'compare takes two sides'],
  ['compare right.shaft missing.shaft', 2, 'stderr', 'missing.shaft cannot be read'],
  ['compare right.shaft --git HEAD', 2, 'stderr', 'is not in a git repository'],
  [
    'compare right.shaft --arrangements proposed nothing',
    2,
    'stderr',
    'has no arrangement "nothing": there are proposed',
  ],
  ['compare empty.shaft --arrangements a b', 2, 'stderr', 'holds no vessel'],
  ['sheet missing.shaft', 2, 'stderr', 'missing.shaft cannot be read'],
  ['sheet empty.shaft', 2, 'stderr', 'empty.shaft holds no vessel'],
  ['sheet right.shaft --vessel Nobody', 2, 'stderr', 'no vessel called Nobody: there are Ternhaven'],
  [
    'sheet right.shaft --out nowhere/sheet.html',
    2,
    'stderr',
    'cannot be written: there is no such file or folder',
  ],
  ['sheet right.shaft --out right.shaft', 2, 'stderr', 'is the spec itself'],
  ['format missing.shaft', 2, 'stderr', 'missing.shaft cannot be read'],
  ['format binary.shaft', 2, 'stderr', 'is not text'],
  ['explain rotation/propeler-hand', 2, 'stderr', 'Did you mean rotation/propeller-hand?'],
  ['explain something/else', 2, 'stderr', 'there is no rule "something/else"'],
  ['explain text/brase', 2, 'stderr', 'there is no rule "text/brase"'],
  ['serve right.shaft', 2, 'stderr', 'serve takes no paths'],
] as const;

describe('input that cannot be used ends in a sentence and the promised status', () => {
  it.each(told)('%s → %i', (words, status, stream, text) => {
    const answer = tailshaft(words, { cwd });
    expect(answer[stream].replace(/\s+/g, ' '), answer.stdout + answer.stderr).toContain(text);
    expect(answer.status).toBe(status);
    expect(answer.stdout + answer.stderr).not.toMatch(TRACE);
    expect(answer.stdout + answer.stderr).not.toContain(cwd);
  });

  it('names the place of a missing import', () => {
    expect(tailshaft('check lost.shaft', { cwd }).stdout).toContain('lost.shaft:1:8');
  });

  it('lets no control character of a file reach the terminal', () => {
    const answer = tailshaft('check hostile.shaft', { cwd });
    expect(answer.status).toBe(1);
    expect(answer.stdout + answer.stderr).not.toContain('\u001b');
  });

  it.runIf(process.getuid?.() !== 0)('tells of a file that may not be read', () => {
    const closed = folder({ 'closed.shaft': SINGLE_LINE });
    chmodSync(join(closed, 'closed.shaft'), 0o000);
    const answer = tailshaft('check closed.shaft', { cwd: closed });
    expect(answer.stderr).toContain('closed.shaft cannot be read: this user may not read or write it');
    expect(answer.status).toBe(2);
  });
});
