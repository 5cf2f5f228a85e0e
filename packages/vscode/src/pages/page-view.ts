import * as vscode from 'vscode';
import type { Session } from '../session.js';
import { withPageLinks } from './page-links.js';
import { PAGE_VIEW } from './show-page.js';

/** Takes the id of a rule, or the path of a page. */
const OPEN = 'tailshaft.explainRule';

/** Specs, and the lines of one that change. */
const FENCE = /^```(?:tailshaft|diff)\n([\s\S]*?)^```/gm;
const DRAWN =
  /<pre[^>]*>\s*<code[^>]*class="[^"]*language-(?:tailshaft|diff)[^"]*"[^>]*>[\s\S]*?<\/code>\s*<\/pre>/g;

/** Shows pages of rules and comparisons, which are Markdown, as pages: with specs coloured, and tables that fit. */
export function registerPages(
  { extensionUri }: vscode.ExtensionContext,
  session: Session,
): vscode.Disposable {
  const media = vscode.Uri.joinPath(extensionUri, 'media');
  const show = async (document: vscode.TextDocument, { webview }: vscode.WebviewPanel) => {
    const style = webview.asWebviewUri(vscode.Uri.joinPath(media, 'page.css')).toString();
    const policy = `default-src 'none'; style-src ${webview.cspSource}`;
    // A spec of the gallery is a page too.
    const text = document.getText();
    const isSpec = document.uri.path.endsWith('.shaft');
    const html = await drawn(isSpec ? `\`\`\`tailshaft\n${text.trimEnd()}\n\`\`\`\n` : text, session);
    webview.html = `<!doctype html>
<html lang="en"><head><meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="stylesheet" href="${style}"></head>
<body><main>${withPageLinks(html, document.uri.path, OPEN)}</main></body></html>`;
  };
  return vscode.window.registerCustomEditorProvider(
    PAGE_VIEW,
    {
      async resolveCustomTextEditor(document, panel) {
        panel.webview.options = {
          enableScripts: false,
          enableCommandUris: [OPEN],
          localResourceRoots: [media],
        };
        await show(document, panel);
        const changes = vscode.workspace.onDidChangeTextDocument(change => {
          if (change.document === document) void show(document, panel);
        });
        panel.onDidDispose(() => changes.dispose());
      },
    },
    { webviewOptions: { enableFindWidget: true } },
  );
}

async function drawn(markdown: string, session: Session): Promise<string> {
  const specs = [...markdown.matchAll(FENCE)].map(one => one[1]!);
  const [html, coloured] = await Promise.all([
    vscode.commands.executeCommand<string>('markdown.api.render', markdown).then(
      found => found,
      () => `<pre>${escaped(markdown)}</pre>`,
    ),
    session.request('tailshaft/coloured', { texts: specs }),
  ]);
  let turn = 0;
  return html
    .replace(DRAWN, plain => {
      const spec = coloured?.[turn];
      turn += 1;
      return spec === undefined ? plain : `<pre><code>${spec}</code></pre>`;
    })
    .replace(/<table/g, '<div class="wide"><table')
    .replace(/<\/table>/g, '</table></div>');
}

const escaped = (text: string): string => text.replace(/[&<>"]/g, sign => `&#${sign.charCodeAt(0)};`);
