import { CannotRun, reasonOf } from './cannot-run.js';
import { helpOf, type Listed, parse } from './command.js';
import type { Io } from './terminal/io.js';
import { VERSION } from './version.js';

const COMMANDS: readonly Listed[] = [
  {
    name: 'check',
    summary: 'Judge specs: what fails, what holds and by how much, and what was not checked',
    load: async () => (await import('./commands/check.js')).check,
  },
  {
    name: 'compare',
    summary: 'Compare two specs, git revisions or arrangements by consequence',
    load: async () => (await import('./commands/compare.js')).compare,
  },
  {
    name: 'study',
    summary: 'Search the candidates of a study: the best, what limits each, what rules the others out',
    load: async () => (await import('./commands/study.js')).study,
  },
  {
    name: 'describe',
    summary: 'Print what a spec means, one fact a line, for tools that compare lines',
    load: async () => (await import('./commands/describe.js')).describe,
  },
  {
    name: 'sheet',
    summary: 'Write the sheet of a vessel or one of its papers: HTML, PDF, Markdown, drawings, tables',
    load: async () => (await import('./commands/sheet.js')).sheet,
  },
  {
    name: 'explain',
    summary: 'Print the manual page of a rule',
    load: async () => (await import('./commands/explain.js')).explain,
  },
  {
    name: 'format',
    summary: 'Format specs',
    load: async () => (await import('./commands/format.js')).format,
  },
  {
    name: 'convert',
    summary: 'Turn a table into catalogue entries and back, and trial readings into runs',
    load: async () => (await import('./commands/convert.js')).convert,
  },
  {
    name: 'serve',
    summary: 'Run the language server over stdio, for an editor',
    load: async () => (await import('./commands/serve.js')).serve,
  },
  {
    name: 'tools',
    summary: 'Offer checks to agents over the Model Context Protocol, read-only',
    load: async () => (await import('./commands/tools.js')).tools,
  },
  {
    name: 'completion',
    summary: 'Print a script that completes commands and options in a shell',
    load: async () => (await import('./commands/completion.js')).completionOf(COMMANDS),
  },
];

/** Runs the command that the arguments name. Whatever happens ends in a sentence and a status, never in a trace. */
export async function runProgram(args: readonly string[], io: Io): Promise<number> {
  try {
    return await dispatch(io, args);
  } catch (error) {
    io.complain(error instanceof CannotRun ? error.message : `this should not happen: ${reasonOf(error)}`);
    if (!(error instanceof CannotRun) && process.env.TAILSHAFT_TRACE)
      io.complain(error instanceof Error ? (error.stack ?? error.message) : String(error));
    return 2;
  }
}

async function dispatch(io: Io, args: readonly string[]): Promise<number> {
  const [name, ...rest] = args;
  if (name === '--version' || name === 'version') {
    io.out(`tailshaft ${VERSION}`);
    return 0;
  }
  if (name === undefined || name === '--help' || name === '-h') {
    io.out(overview());
    return name === undefined ? 2 : 0;
  }
  if (name === 'help') return rest[0] ? dispatch(io, [rest[0], '--help']) : dispatch(io, ['--help']);
  const listed = COMMANDS.find(one => one.name === name);
  if (!listed) {
    const known = COMMANDS.map(one => one.name).join(', ');
    throw new CannotRun(`there is no command "${name}". There are: ${known}. See: tailshaft --help`);
  }
  const command = await listed.load();
  const { given, words } = parse(name, command, rest);
  if (given.help) {
    io.out(helpOf(command, io.width));
    return 0;
  }
  return command.run(io, given, words);
}

function overview(): string {
  const lines = COMMANDS.map(one => `  ${one.name.padEnd(12)}${one.summary}`);
  return `Usage: tailshaft <command> [options]

Reads .shaft files: specs of vessel drivetrains.

${lines.join('\n')}

  tailshaft <command> --help   options of a command
  tailshaft --version          the version of this program

Status: 0 done; 1 check found an error (or the level that --severity names), format --check a file that
would change, compare --exit-code something worse (its help lists the statuses); 2 it could not do what was asked.
Needs no network.
Honours NO_COLOR and FORCE_COLOR.
`;
}
