import { McpServer } from '@modelcontextprotocol/sdk/server/mcp.js';
import * as z from 'zod';
import { VERSION } from '../version.js';
import { confined, OutOfReach } from './confined.js';
import { type Printed, runQuietly } from './run-quietly.js';

const READ_ONLY = { readOnlyHint: true, destructiveHint: false, idempotentHint: true, openWorldHint: false };

const INSTRUCTIONS =
  'Judges specs of vessel drivetrains (.shaft files): rotation, ratio, torque, shafting, propeller. A verdict is one of ' +
  'holds, fails, cannot tell, accepted, does not apply; only "holds" is a pass, and it screens, it does not certify. Give the ' +
  'verdicts and the cautions unchanged. Nothing here edits a file, swaps a shift cable or decides for an engineer.';

const path = (what: string) =>
  z
    .string()
    .min(1)
    .max(1000)
    .describe(`${what}, relative to the workspace folder. Nothing outside of it is read.`);
const revision = (what: string) =>
  z
    .string()
    .regex(/^[\w][\w./@{}^~-]{0,199}$/, 'a branch, a tag or a commit')
    .describe(what);

/** The server of the tools for one folder. Each tool answers with what the command of that name prints there. */
export function toolServer(root: string): McpServer {
  const server = new McpServer({ name: 'tailshaft', version: VERSION }, { instructions: INSTRUCTIONS });
  const answer = async (args: () => readonly string[], input = '') => {
    try {
      return said(await runQuietly(args(), root, input));
    } catch (error) {
      if (!(error instanceof OutOfReach)) throw error;
      return { content: [{ type: 'text' as const, text: error.message }], isError: true };
    }
  };

  server.registerTool(
    'check',
    {
      title: 'Check drivetrain specs',
      description:
        'Judges a spec, all specs of a folder, or an unsaved text. Returns findings, the gravest first, what ' +
        'cannot tell for lack of data, and the cautions. Missing data never passes.',
      inputSchema: {
        path: path('A .shaft file or a folder; the whole workspace when absent').optional(),
        text: z
          .string()
          .max(2_000_000)
          .describe('A spec to judge instead of what stands at the path; its imports are found from there.')
          .optional(),
        form: z
          .enum(['text', 'json'])
          .describe('For reading, or as data by the published schema.')
          .optional(),
      },
      annotations: READ_ONLY,
    },
    ({ path, text, form }) =>
      answer(() => {
        const where = confined(root, path ?? '.');
        const how = form === 'json' ? ['--json'] : [];
        return text === undefined
          ? ['check', where, ...how, '--root', root]
          : [
              'check',
              '--stdin',
              '--stdin-name',
              where === '.' ? 'spec.shaft' : where,
              ...how,
              '--root',
              root,
            ];
      }, text),
  );

  server.registerTool(
    'explain_rule',
    {
      title: 'Explain a rule',
      description:
        'Tells what a rule compares, by which source, why it matters, its caution, and a spec that fails, one that holds and one ' +
        'that cannot tell. Without a rule it lists all.',
      inputSchema: { rule: z.string().max(100).describe('Such as rotation/propeller-hand.').optional() },
      annotations: READ_ONLY,
    },
    ({ rule }) => answer(() => ['explain', ...(rule === undefined ? [] : [plainWord(rule)])]),
  );

  server.registerTool(
    'list_open_questions',
    {
      title: 'List open questions',
      description:
        'Lists missing data, by datum: where to write it and which checks need it. A check that ' +
        'waits has neither passed nor failed.',
      inputSchema: { path: path('A .shaft file or a folder; the whole workspace when absent').optional() },
      annotations: READ_ONLY,
    },
    async ({ path }) => {
      const found = await answer(() => ['check', confined(root, path ?? '.'), '--json', '--root', root]);
      return found.isError
        ? found
        : { content: [{ type: 'text' as const, text: questionsOf(found.content[0]!.text) }] };
    },
  );

  server.registerTool(
    'compare_revisions',
    {
      title: 'Compare two revisions',
      description:
        'Compares specs by consequence with a git revision, or two revisions with each other: verdicts and margins that moved, what ' +
        'newly fails, quantities before and after. With one revision, the files as they are now are the later side.',
      inputSchema: {
        path: path('A .shaft file or a folder; the whole workspace when absent').optional(),
        before: revision('The earlier revision, such as HEAD~1'),
        after: revision('The later revision; the files as they are now when absent').optional(),
      },
      annotations: READ_ONLY,
    },
    ({ path, before, after }) =>
      answer(() => [
        'compare',
        confined(root, path ?? '.'),
        '--markdown',
        '--root',
        root,
        '--git',
        after === undefined ? before : `${before}..${after}`,
      ]),
  );
  return server;
}

/** Status 2 says that it could not be done; what fails in a spec is an answer like any other. */
function said({ status, out, complaints }: Printed) {
  const text = [out.trim(), complaints.trim()].filter(Boolean).join('\n\n') || 'Nothing to report.';
  return { content: [{ type: 'text' as const, text }], isError: status === 2 };
}

/** A word that is no option of the command line. */
function plainWord(word: string): string {
  if (word.startsWith('-')) throw new OutOfReach(`there is no rule "${word}"`);
  return word;
}

/** The questions of `check --json`, with its caution. */
function questionsOf(json: string): string {
  const { openQuestions, caution } = JSON.parse(json) as Record<string, unknown>;
  return JSON.stringify({ openQuestions, caution }, null, 2);
}
