// Runs in the editor's worker. It serves the test's files from memory under the scheme that virtual
// workspaces use, so the extension under test meets a workspace without a disk.
const vscode = require('vscode');

const scheme = 'vscode-vfs';
const root = '/repower';

exports.activate = async context => {
  const given = await (
    await fetch(vscode.Uri.joinPath(context.extensionUri, 'files.json').toString(true))
  ).json();
  const folder = new MemoryFolder(given);
  context.subscriptions.push(
    vscode.workspace.registerFileSystemProvider(scheme, folder, { isCaseSensitive: true }),
  );
  registerCommands(context);
};

exports.registerCommands = registerCommands;

/** Paths are relative to the workspace folder, wherever that lies. */
function registerCommands(context) {
  const register = vscode.commands.registerCommand;
  context.subscriptions.push(
    register('test.open', async path => void (await open(path))),
    register('test.placeCursor', (path, offset, length) => placeCursor(path, offset, length)),
    register('test.text', path => openedText(path)),
    register('test.saved', async path =>
      new TextDecoder().decode(await vscode.workspace.fs.readFile(uriOf(path))),
    ),
    register('test.diagnostics', path => diagnostics(path)),
    register('test.tools', () =>
      vscode.lm.tools.map(one => one.name).filter(name => name.startsWith('tailshaft')),
    ),
    register('test.tool', async (name, input) => {
      const result = await vscode.lm.invokeTool(name, { input, toolInvocationToken: undefined });
      return result.content.map(part => part.value).join('\n');
    }),
    register('test.judged', () => judged()),
    register(
      'test.languageOf',
      async path => (await vscode.workspace.openTextDocument(uriOf(path))).languageId,
    ),
    register('test.set', (name, value) =>
      vscode.workspace.getConfiguration().update(name, value, vscode.ConfigurationTarget.Global),
    ),
    register('test.openTexts', () => openTexts()),
    register('test.selected', () => selectedText()),
    register('test.cursor', () => cursor()),
    register('test.activate', id => timed(() => vscode.extensions.getExtension(id).activate())),
    register('test.untilFindings', path => timed(() => untilFindings(path))),
    register('test.keys', (path, offset, words, count) => keys(path, offset, words, count)),
    register('test.extension', id => vscode.extensions.getExtension(id)?.isActive),
  );
}

const uriOf = path => vscode.Uri.joinPath(vscode.workspace.workspaceFolders[0].uri, path);

async function open(path) {
  return vscode.window.showTextDocument(uriOf(path), { preview: false, viewColumn: columnOf(uriOf(path)) });
}

/** The column that shows the text. The active one may be the sheet's, and the text would lie over the sheet. */
function columnOf(uri) {
  const shown = vscode.window.visibleTextEditors.find(one => one.document.uri.toString() === uri.toString());
  return shown?.viewColumn;
}

async function placeCursor(path, offset, length) {
  const editor = await open(path);
  const start = editor.document.positionAt(offset);
  const end = editor.document.positionAt(offset + length);
  editor.selection = new vscode.Selection(start, end);
  editor.revealRange(editor.selection, vscode.TextEditorRevealType.InCenterIfOutsideViewport);
}

async function openedText(path) {
  return (await vscode.workspace.openTextDocument(uriOf(path))).getText();
}

function openTexts() {
  return vscode.workspace.textDocuments.map(one => ({
    address: one.uri.toString(),
    language: one.languageId,
    text: one.getText(),
  }));
}

function selectedText() {
  const editor = vscode.window.activeTextEditor;
  return editor ? editor.document.getText(editor.selection) : '';
}

function cursor() {
  const editor = vscode.window.activeTextEditor;
  return { offset: editor?.document.offsetAt(editor.selection.start) ?? -1, selected: selectedText() };
}

/** Milliseconds until it is done. */
async function timed(action) {
  const start = performance.now();
  await action();
  return performance.now() - start;
}

async function untilFindings(path) {
  await vscode.workspace.openTextDocument(uriOf(path));
  await findingsAre(path, number => number > 0);
}

/** Puts one word in the place of another and back, and waits each time until the number of findings is another. */
async function keys(path, offset, words, count) {
  const editor = await open(path);
  const { document } = editor;
  const times = [];
  for (let key = 0; key < count; key++) {
    const [before, after] = key % 2 === 0 ? words : [words[1], words[0]];
    const range = new vscode.Range(document.positionAt(offset), document.positionAt(offset + before.length));
    const had = vscode.languages.getDiagnostics(document.uri).length;
    const changed = timed(() => findingsAre(path, number => number !== had));
    await editor.edit(edit => edit.replace(range, after));
    times.push(await changed);
    // As long as a fast writer takes for the next one.
    await new Promise(resolve => setTimeout(resolve, 100));
  }
  return times;
}

/** Looks by itself: the editor tells of findings only a good while after they are there. */
async function findingsAre(path, wanted) {
  const uri = uriOf(path);
  while (!wanted(vscode.languages.getDiagnostics(uri).length))
    await new Promise(resolve => setTimeout(resolve, 1));
}

function diagnostics(path) {
  return vscode.languages.getDiagnostics(uriOf(path)).map(found => ({
    severity: ['error', 'warning', 'information', 'hint'][found.severity],
    message: typeof found.message === 'string' ? found.message : found.message.value,
    code: String(typeof found.code === 'object' ? found.code.value : (found.code ?? '')),
    source: found.source ?? '',
    line: found.range.start.line,
    from: found.range.start.character,
    to: found.range.end.character,
  }));
}

/** How many findings each text has, by address; texts without any are left out. */
function judged() {
  return vscode.languages
    .getDiagnostics()
    .filter(([, found]) => found.length > 0)
    .map(([uri, found]) => ({ address: uri.toString(true), findings: found.length }));
}

/** Files and folders by path. Everything a workbench asks of a disk, and nothing that a disk cannot do. */
class MemoryFolder {
  constructor(files) {
    this.entries = new Map([['/', { type: vscode.FileType.Directory, mtime: 1 }]]);
    this.changed = new vscode.EventEmitter();
    this.onDidChangeFile = this.changed.event;
    for (const [path, text] of Object.entries(files)) {
      this.makeParents(`${root}/${path}`);
      this.put(`${root}/${path}`, new TextEncoder().encode(text));
    }
  }

  watch() {
    return new vscode.Disposable(() => {});
  }

  stat(uri) {
    const entry = this.entry(uri);
    return { type: entry.type, ctime: 1, mtime: entry.mtime, size: entry.content?.length ?? 0 };
  }

  readDirectory(uri) {
    this.entry(uri);
    const prefix = uri.path.endsWith('/') ? uri.path : `${uri.path}/`;
    return [...this.entries]
      .filter(([path]) => path !== '/' && path.startsWith(prefix) && !path.slice(prefix.length).includes('/'))
      .map(([path, entry]) => [path.slice(prefix.length), entry.type]);
  }

  readFile(uri) {
    const { content } = this.entry(uri);
    if (!content) throw vscode.FileSystemError.FileIsADirectory(uri);
    return content;
  }

  writeFile(uri, content, options) {
    const existed = this.entries.has(uri.path);
    if (!existed && options && !options.create) throw vscode.FileSystemError.FileNotFound(uri);
    if (existed && options && !options.overwrite) throw vscode.FileSystemError.FileExists(uri);
    this.put(uri.path, content);
    this.tell(existed ? vscode.FileChangeType.Changed : vscode.FileChangeType.Created, uri);
  }

  createDirectory(uri) {
    this.entries.set(uri.path, { type: vscode.FileType.Directory, mtime: Date.now() });
    this.tell(vscode.FileChangeType.Created, uri);
  }

  delete(uri) {
    this.entry(uri);
    for (const path of [...this.entries.keys()])
      if (path === uri.path || path.startsWith(`${uri.path}/`)) this.entries.delete(path);
    this.tell(vscode.FileChangeType.Deleted, uri);
  }

  rename(from, to, options) {
    this.entry(from);
    if (this.entries.has(to.path) && !options.overwrite) throw vscode.FileSystemError.FileExists(to);
    for (const [path, entry] of [...this.entries])
      if (path === from.path || path.startsWith(`${from.path}/`)) {
        this.entries.delete(path);
        this.entries.set(to.path + path.slice(from.path.length), entry);
      }
    this.tell(vscode.FileChangeType.Deleted, from);
    this.tell(vscode.FileChangeType.Created, to);
  }

  entry(uri) {
    const found = this.entries.get(uri.path === '' ? '/' : uri.path);
    if (!found) throw vscode.FileSystemError.FileNotFound(uri);
    return found;
  }

  put(path, content) {
    this.entries.set(path, { type: vscode.FileType.File, mtime: Date.now(), content });
  }

  makeParents(path) {
    const parts = path.split('/').slice(1, -1);
    parts.forEach((_, index) => {
      this.entries.set(`/${parts.slice(0, index + 1).join('/')}`, {
        type: vscode.FileType.Directory,
        mtime: 1,
      });
    });
  }

  tell(type, uri) {
    this.changed.fire([{ type, uri }]);
  }
}
