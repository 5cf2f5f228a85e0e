import * as vscode from 'vscode';
import { repositoryOf, textsAt } from '../commands/git-texts.js';
import { rulePage } from '../commands/rule-pages.js';
import type { Session } from '../session.js';
import { specAtWork } from '../spec-in-view.js';
import { type LanguageModels, type Tool, textResult } from './language-models.js';

interface Input {
  readonly path?: string;
  readonly text?: string;
  readonly rule?: string;
  readonly before?: string;
  readonly after?: string;
}

/** Tools for chat and agents, where this editor knows such: they read, and never edit. */
export function registerTools(session: Session): vscode.Disposable {
  const models = (vscode as unknown as { lm?: LanguageModels }).lm;
  if (!models?.registerTool) return new vscode.Disposable(() => {});
  const register = (
    name: string,
    tool: Omit<Tool<Input>, 'invoke'>,
    answer: (input: Input) => Promise<string>,
  ) =>
    models.registerTool(name, {
      ...tool,
      invoke: async ({ input }) => textResult(await answer(input ?? {})),
    } satisfies Tool<Input>);
  const asks = (
    title: string,
    message: (input: Input) => string,
    doing: string,
  ): Omit<Tool<Input>, 'invoke'> => ({
    prepareInvocation: ({ input }) => ({
      invocationMessage: doing,
      confirmationMessages: {
        title,
        message: new vscode.MarkdownString(
          `${message(input ?? {})}\n\n${vscode.l10n.t('Nothing is edited, and nothing leaves this machine but the answer to the model that asked.')}`,
        ),
      },
    }),
  });
  const named = ({ path }: Input) => (path ? `\`${path}\`` : vscode.l10n.t('the spec in the editor'));

  return vscode.Disposable.from(
    register(
      'tailshaft_check',
      asks(
        vscode.l10n.t('Check a drivetrain spec?'),
        input =>
          input.text === undefined
            ? vscode.l10n.t('Judge {0} and return the results of the checks.', named(input))
            : vscode.l10n.t('Judge a spec that the model wrote, and return the results of the checks.'),
        vscode.l10n.t('Checking a drivetrain spec'),
      ),
      input => report(session, input, 'findings'),
    ),
    register(
      'tailshaft_list_open_questions',
      asks(
        vscode.l10n.t('List the open questions of a drivetrain spec?'),
        input => vscode.l10n.t('List the missing data of {0}, and the checks that need them.', named(input)),
        vscode.l10n.t('Listing open questions'),
      ),
      input => report(session, input, 'questions'),
    ),
    register(
      'tailshaft_explain_rule',
      asks(
        vscode.l10n.t('Explain a drivetrain rule?'),
        ({ rule }) => vscode.l10n.t('Return the page of {0}.', `\`${rule ?? ''}\``),
        vscode.l10n.t('Looking up a rule'),
      ),
      ({ rule }) => explain(session, rule),
    ),
    register(
      'tailshaft_compare_revisions',
      asks(
        vscode.l10n.t('Compare two revisions of a drivetrain spec?'),
        input =>
          vscode.l10n.t(
            'Read {0} at {1} and at {2}, and return the changes by consequence.',
            named(input),
            `\`${input.before ?? 'HEAD'}\``,
            input.after ? `\`${input.after}\`` : vscode.l10n.t('its present state'),
          ),
        vscode.l10n.t('Comparing two revisions'),
      ),
      input => compare(session, input),
    ),
  );
}

async function report(session: Session, input: Input, about: 'findings' | 'questions'): Promise<string> {
  if (input.text !== undefined) {
    const uri = (input.path ? specOf(input) : beside()).toString();
    const answer = await session.request('tailshaft/reportOfText', { uri, text: input.text, about });
    return answer?.text ?? NO_ANSWER;
  }
  const answer = await session.request('tailshaft/report', {
    textDocument: { uri: specOf(input).toString() },
    about,
  });
  return answer?.text ?? NO_ANSWER;
}

async function explain(session: Session, rule: string | undefined): Promise<string> {
  const rules = (await session.request('tailshaft/rules')) ?? [];
  if (rule && rules.some(one => one.id === rule)) return rulePage(rule);
  const list = rules.map(one => `- ${one.id}: ${one.title}`).join('\n');
  return rule ? `There is no rule "${rule}". There are:\n${list}` : list;
}

async function compare(session: Session, input: Input): Promise<string> {
  const spec = specOf(input);
  const repository = await repositoryOf(spec);
  if (!repository) return 'This file is not in a git repository that the editor has open.';
  const textDocument = { uri: spec.toString() };
  const revision = input.before ?? 'HEAD';
  const before = await textsAt(session, repository, revision, spec);
  if (!before) return `This file does not exist at ${revision}.`;
  const after = input.after && (await textsAt(session, repository, input.after, spec));
  if (input.after && !after) return `This file does not exist at ${input.after}.`;
  const answer = await session.request('tailshaft/compare', {
    textDocument,
    before,
    ...(after ? { after } : {}),
  });
  return answer ? `${answer.markdown}\n\n${answer.caution}` : NO_ANSWER;
}

const NO_ANSWER =
  'The checks gave no answer: this is not a spec of the open folder, or it could not be read.';

/** A spec of the open folder, or the one that is being worked on; never a file from elsewhere. */
function specOf({ path }: Input): vscode.Uri {
  if (!path) {
    const found = specAtWork();
    if (!found) throw new Error('No drivetrain spec is open: name one of the folder.');
    return found.uri;
  }
  for (const { uri } of vscode.workspace.workspaceFolders ?? []) {
    const inside = path.startsWith(`${uri.path}/`) ? path.slice(uri.path.length + 1) : path;
    const found = vscode.Uri.joinPath(uri, inside);
    if (found.path.startsWith(`${uri.path}/`) && found.path.endsWith('.shaft')) return found;
  }
  throw new Error(`${path} is not a .shaft file of the open folder.`);
}

/** Where a text of the model's own would stand, for what it imports. */
function beside(): vscode.Uri {
  const folder = vscode.workspace.workspaceFolders?.[0]?.uri ?? vscode.Uri.parse('untitled:/');
  return vscode.Uri.joinPath(folder, 'given-text.shaft');
}
