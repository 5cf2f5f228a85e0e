import * as vscode from 'vscode';
import type { PanelWords } from './messages.js';

/** The page that a panel starts with: nothing of it comes from elsewhere, and nothing runs but our own script. */
export function panelPage(webview: vscode.Webview, extension: vscode.Uri): string {
  const nonce = randomWord();
  const at = (path: string) => webview.asWebviewUri(vscode.Uri.joinPath(extension, path)).toString();
  const policy = [
    "default-src 'none'",
    `style-src ${webview.cspSource}`,
    `script-src 'nonce-${nonce}'`,
    'img-src data:',
  ].join('; ');
  const title = vscode.l10n.t('Drivetrain sheet');
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${escaped(policy)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<link rel="stylesheet" href="${escaped(at('dist/panel.css'))}">
</head>
<body data-words="${escaped(JSON.stringify(words()))}">
<div id="controls"></div>
<div id="sheet" aria-busy="true"><p class="waiting">${escaped(vscode.l10n.t('Computing the sheet …'))}</p></div>
<div id="studies" aria-live="polite"></div>
<script nonce="${nonce}" src="${escaped(at('dist/panel.js'))}"></script>
</body>
</html>`;
}

function words(): PanelWords {
  return {
    vessel: vscode.l10n.t('Vessel'),
    arrangement: vscode.l10n.t('Arrangement'),
    beside: vscode.l10n.t('Beside it'),
    nothingBeside: vscode.l10n.t('nothing'),
    line: vscode.l10n.t('Line'),
    allLines: vscode.l10n.t('all lines'),
    point: vscode.l10n.t('Operating point'),
    lever: vscode.l10n.t('Lever'),
    ahead: vscode.l10n.t('ahead'),
    astern: vscode.l10n.t('astern'),
    keep: vscode.l10n.t('Copy or save …'),
    controls: vscode.l10n.t('Contents of the sheet'),
  };
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, sign => `&#${sign.charCodeAt(0)};`);
}

function randomWord(): string {
  const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789';
  const bytes = globalThis.crypto.getRandomValues(new Uint8Array(32));
  return [...bytes].map(byte => letters[byte % letters.length]).join('');
}
