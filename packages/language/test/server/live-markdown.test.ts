import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { disarmed } from '../../src/server/hover/disarm.js';
import { SPEC } from './specs.js';
import { positionOf, Testbed } from './testbed.js';

interface Renderer {
  readonly linkify: { set(options: object): void };
  validateLink(): boolean;
  parse(text: string, env: object): unknown;
  render(text: string): string;
}
const MarkdownIt = createRequire(import.meta.url)('markdown-it') as new (options: object) => Renderer;

/** As liberal as any client: HTML, addresses that stand by themselves, tables. */
const liberal = new MarkdownIt({ html: true, linkify: true });
liberal.validateLink = () => true;
// Nothing keeps a client from taking any two words with a dot between them for an address.
liberal.linkify.set({ fuzzyLink: false, fuzzyEmail: false });

/** What of a rendered text does something by itself or when it is touched. */
function alive(markdown: string): string[] {
  const found: string[] = [];
  const visit = (tokens: readonly { type: string; content: string; children: unknown }[]) => {
    for (const one of tokens) {
      if (/^(?:link_open|image|html_inline|html_block)$/.test(one.type))
        found.push(`${one.type} ${one.content}`);
      if (Array.isArray(one.children)) visit(one.children);
    }
  };
  visit(liberal.parse(markdown, {}) as never);
  return found;
}

const WORDS = [
  '![x](https://example.org/x.png)',
  '[x](command:do.it)',
  '<img src=https://example.org/x>',
  '<script>',
  '<!--',
  'https://example.org/x',
  'www.example.org',
  '[a]: https://example.org',
  '[a]',
  '`',
  '``',
  '|',
  '\\',
  '&lt;b&gt;',
  '\u001b[2J',
  '\u202e',
  '    ',
  '\n```\n',
  '\n````x\n',
  '\n  ```\n',
  '\n> ',
  '\n1. ',
  '\n',
  '\n\n',
  '- ',
  '| - | - |',
  'plain',
];

describe('Markdown sent to a client', () => {
  it('opens nothing, however its words are put together', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...WORDS), { maxLength: 12 }), words => {
        const made = disarmed(words.join(''));
        expect(alive(made)).toEqual([]);
        // biome-ignore lint/suspicious/noControlCharactersInRegex: they are looked for
        expect(made).not.toMatch(/[\x00-\x08\x0b-\x1f\x7f-\x9f\u202a-\u202e]/);
      }),
      { numRuns: 4000, seed: 11 },
    );
    expect(alive(WORDS.join(' '))).not.toEqual([]);
  });

  it.each([
    'one **two** `a | b` and `x[1]`',
    '```tailshaft\nbore 10 mm [drawing]\n```\n\nand `more`',
    '- a list\n  - `T = P / ω`',
    '| a | b |\n| - | - |\n| 1 | 2 |',
  ])('keeps what is no more than layout: %j', text => {
    expect(liberal.render(disarmed(text))).toBe(liberal.render(text));
  });

  it('shows the words of authors as words, wherever they are hovered or offered', async () => {
    const evil = WORDS.slice(0, 7).join(' ').replaceAll('"', '').replaceAll('\n', ' ');
    const text = SPEC.replaceAll('source "', `source "${evil} `)
      .replaceAll('/// A six', `/// ${evil} A six`)
      .replaceAll('[drawing]', `[drawing "${evil}"]`)
      .replaceAll(/(vessel \S+ )"/g, `$1"${evil} `);
    expect(text).not.toBe(SPEC);
    const bed = new Testbed();
    const document = await bed.open(text);
    const { HoverProvider, CompletionProvider } = bed.services.lsp;
    const at = { textDocument: { uri: document.uri.toString() } };
    let told = 0;
    for (const { index } of text.matchAll(/\b\w/g)) {
      const position = positionOf(document, index);
      const hover = await HoverProvider!.getHoverContent(document, { ...at, position });
      const value = (hover?.contents as { value?: string })?.value ?? '';
      expect(alive(value), value).toEqual([]);
      told += value.includes('example') ? 1 : 0;
    }
    for (const { index } of text.matchAll(/ (?=Kittiwake|Alder|Rowan|high-)/g)) {
      const position = positionOf(document, index + 1);
      const list = await CompletionProvider!.getCompletion(document, { ...at, position });
      for (const { documentation } of list?.items ?? []) {
        const value = (documentation as { value?: string })?.value ?? '';
        expect(alive(value), value).toEqual([]);
        told += value.includes('example') ? 1 : 0;
      }
    }
    expect(told).toBeGreaterThan(3);
  });
});
