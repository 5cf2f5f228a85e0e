import type { TailshaftServices } from '@tailshaft/language/server';
import { URI } from 'langium';

/** Specs as HTML in which each word carries the class of what it means. */
export async function coloured(services: TailshaftServices, texts: readonly string[]): Promise<string[]> {
  const provider = services.lsp.SemanticTokenProvider!;
  const types = Object.entries(provider.tokenTypes);
  const made: string[] = [];
  for (const text of texts) {
    const uri = URI.parse(`tailshaft-page:/${made.length}.shaft`);
    const document = services.shared.workspace.LangiumDocumentFactory.fromString(text, uri);
    const { data } = await provider.semanticHighlight(document, { textDocument: { uri: uri.toString() } });
    let html = '';
    let done = 0;
    let [line, character] = [0, 0];
    for (let at = 0; at < data.length; at += 5) {
      const [lines, characters, length, type] = data.slice(at, at + 4) as [number, number, number, number];
      character = lines > 0 ? characters : character + characters;
      line += lines;
      const start = document.textDocument.offsetAt({ line, character });
      const name = types.find(([, index]) => index === type)?.[0] ?? '';
      html += `${plain(text.slice(done, start))}<span class="${name}">${plain(text.slice(start, start + length))}</span>`;
      done = start + length;
    }
    made.push(html + plain(text.slice(done)));
  }
  return made;
}

/** Comments are in no token: they are told by what begins them. */
function plain(text: string): string {
  return escaped(text).replace(/\/\/.*$/gm, comment => `<span class="comment">${comment}</span>`);
}

const escaped = (text: string): string => text.replace(/[&<>"]/g, sign => `&#${sign.charCodeAt(0)};`);
