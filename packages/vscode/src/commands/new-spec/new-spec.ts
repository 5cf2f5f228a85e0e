import * as vscode from 'vscode';
import type { CatalogueNote } from '../../requests.js';
import { LANGUAGE, type Session } from '../../session.js';
import { freeName, relativeImport } from './paths.js';
import { catalogueSkeleton, specSkeleton, type Wanted } from './skeleton.js';

/** Asks three things and writes a spec in which everything else is still an open question. */
export function registerNewSpec(session: Session): vscode.Disposable {
  return vscode.commands.registerCommand('tailshaft.newSpec', async () => {
    // The server reads the workspace while the first questions are answered.
    const catalogues = session.request('tailshaft/catalogues').then(found => found ?? []);
    const lines = await ask<Wanted['lines']>(1, vscode.l10n.t('How many shaft lines has the vessel?'), [
      [vscode.l10n.t('Single screw'), vscode.l10n.t('one line, on the centre'), 'single'],
      [vscode.l10n.t('Twin screw'), vscode.l10n.t('a port and a starboard line'), 'twin'],
    ]);
    if (!lines) return;
    const job = await ask<Wanted['job']>(2, vscode.l10n.t('What is planned?'), [
      [
        vscode.l10n.t('Repower'),
        vscode.l10n.t('an arrangement as found, and one proposed that revises it'),
        'repower',
      ],
      [vscode.l10n.t('New vessel'), vscode.l10n.t('one proposed arrangement'), 'new'],
    ]);
    if (!job) return;
    const folder = folderOfWork();
    const where = folder
      ? await askForCatalogue(folder, await catalogues)
      : { kind: 'here' as const, folder: undefined };
    if (where) await write({ lines, job }, where);
  });
}

type Where =
  | { readonly kind: 'here'; readonly folder: vscode.Uri | undefined }
  | { readonly kind: 'new'; readonly folder: vscode.Uri }
  | { readonly kind: 'there'; readonly folder: vscode.Uri; readonly path: string };

function askForCatalogue(folder: vscode.Uri, found: readonly CatalogueNote[]): Promise<Where | undefined> {
  const there = found.map(({ uri, entries }): [string, string, Where] => {
    const path = relativeImport(folder.path, vscode.Uri.parse(uri).path);
    return [
      vscode.l10n.t('Beside the spec: {0}', path),
      vscode.l10n.t('{0} entries, imported', entries),
      { kind: 'there', folder, path },
    ];
  });
  return ask<Where>(3, vscode.l10n.t('Where do the engines and gears stand?'), [
    [vscode.l10n.t('In the same file'), vscode.l10n.t('below the vessel'), { kind: 'here', folder }],
    ...there,
    [
      vscode.l10n.t('Beside the spec, in a new file'),
      vscode.l10n.t('imported, so that other vessels can use them'),
      { kind: 'new', folder },
    ],
  ]);
}

async function ask<T>(
  step: number,
  question: string,
  answers: readonly (readonly [label: string, description: string, answer: T])[],
): Promise<T | undefined> {
  const picked = await vscode.window.showQuickPick(
    answers.map(([label, description, answer]) => ({ label, description, answer })),
    {
      title: vscode.l10n.t('New drivetrain spec, {0} of 3', step),
      placeHolder: question,
      ignoreFocusOut: true,
    },
  );
  return picked?.answer;
}

/** Where a new spec would lie: beside the text that is being worked on, or in the open folder. */
function folderOfWork(): vscode.Uri | undefined {
  const active = vscode.window.activeTextEditor?.document.uri;
  if (active && active.scheme !== 'untitled' && vscode.workspace.getWorkspaceFolder(active))
    return vscode.Uri.joinPath(active, '..');
  return vscode.workspace.workspaceFolders?.[0]?.uri;
}

/** A spec with its catalogue in it is a new text, saved nowhere yet; one that imports must lie somewhere to find it. */
async function write(said: Omit<Wanted, 'catalogue'>, where: Where): Promise<void> {
  if (where.kind === 'here') {
    const document = await vscode.workspace.openTextDocument({ language: LANGUAGE });
    return fillIn(document, specSkeleton({ ...said, catalogue: 'here' }));
  }
  const taken = new Set((await vscode.workspace.fs.readDirectory(where.folder)).map(([name]) => name));
  let path = where.kind === 'there' ? where.path : '';
  if (where.kind === 'new') {
    const name = freeName('catalogue', taken);
    const catalogue = await made(vscode.Uri.joinPath(where.folder, name));
    await fillIn(catalogue, catalogueSkeleton({ ...said, catalogue: 'here' }));
    await catalogue.save();
    path = name.replace(/\.shaft$/, '');
  }
  const spec = await made(vscode.Uri.joinPath(where.folder, freeName('vessel', taken)));
  await fillIn(spec, specSkeleton({ ...said, catalogue: { path, isNew: where.kind === 'new' } }));
}

/** An empty file, in the editor. */
async function made(uri: vscode.Uri): Promise<vscode.TextDocument> {
  await vscode.workspace.fs.writeFile(uri, new Uint8Array());
  return vscode.workspace.openTextDocument(uri);
}

async function fillIn(document: vscode.TextDocument, snippet: string): Promise<void> {
  const editor = await vscode.window.showTextDocument(document, { preview: false });
  await editor.insertSnippet(new vscode.SnippetString(snippet), new vscode.Position(0, 0));
}
