import { describe, expect, it } from 'vitest';
import { list, paragraph, section, table } from '../src/document/blocks.js';
import { element, escapeMarkup, joined } from '../src/document/markup.js';
import { code, lineBreak, quiet, separated, strong, verdict } from '../src/document/text.js';
import { blocksHtml } from '../src/document/to-html.js';
import { blocksMarkdown, escapeMarkdown, textMarkdown } from '../src/document/to-markdown.js';

describe('markup', () => {
  it.each([
    ['<b>&"\'', '&lt;b&gt;&amp;&quot;&#39;'],
    ['a\u0000b', 'a\ufffdb'],
    ['lone \ud800 half', 'lone \ufffd half'],
    ['whole \u{1f6a2}', 'whole \u{1f6a2}'],
  ])('%j is written %j', (text, written) => {
    expect(escapeMarkup(text)).toBe(written);
  });

  it('escapes attributes and children, and leaves elements alone', () => {
    expect(element('p', { title: '"x"', hidden: undefined }, '<', element('br'), ['&', 1.23456]).source).toBe(
      '<p title="&quot;x&quot;">&lt;<br>&amp;1.23</p>',
    );
    expect(joined(undefined, 'a').source).toBe('a');
  });
});

describe('Markdown', () => {
  it.each([
    ['a | b', 'a \\| b'],
    ['*x* _y_ `z`', '\\*x\\* \\_y\\_ \\`z\\`'],
    ['<br> & [a](b)', '&lt;br\\> &amp; \\[a\\](b)'],
    ['two\nlines', 'two lines'],
    ['- item', '\\- item'],
    ['3. item', '\\3. item'],
  ])('%j is written %j', (text, written) => {
    expect(escapeMarkdown(text)).toBe(written);
  });

  it('keeps marks', () => {
    expect(textMarkdown([strong('a'), ' ', code('b_c'), ' ', quiet('d'), ' ', verdict('fails')])).toBe(
      '**a** b\\_c d ✕ fails',
    );
  });

  it('prints a table with its groups', () => {
    const block = table(
      'Cap',
      [{ title: 'A' }, { title: 'B', numeric: true }],
      [['x', separated(lineBreak, '1', '2')]],
    );
    expect(blocksMarkdown([section('s', 'T', [block, list(['i'], 'boxes')])], 2)).toBe(
      '## T\n\n*Cap*\n\n| A | B |\n| --- | ---: |\n| x | 1<br>2 |\n\n- [ ] i',
    );
  });
});

it('nests sections by heading level', () => {
  const html = blocksHtml([section('a b', 'One', [section('c', 'Two', [paragraph('x')])])], {
    level: 2,
  }).source;
  expect(html).toContain('<section id="a-b" aria-labelledby="a-b-title"><h2 id="a-b-title">One</h2>');
  expect(html).toContain('<h3 id="c-title">Two</h3><p>x</p>');
});
