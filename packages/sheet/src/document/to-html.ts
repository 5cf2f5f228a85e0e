import type { Origin } from '@tailshaft/mechanics';
import type { Block, RowGroup, Section, Table } from './blocks.js';
import { type Child, element, joined, type Markup } from './markup.js';
import { type Text, VERDICT_SIGN } from './text.js';

export interface HtmlOptions {
  /** Level of the outermost headings. */
  readonly level: number;
  /** Workings stand open from the start. */
  readonly open?: boolean;
  /** What to put into `data-place` of a place, for a host that follows clicks. */
  readonly placeKey?: ((origin: Origin) => string | undefined) | undefined;
  /** The host does what somebody presses. */
  readonly acts?: boolean;
}

/** Blocks as HTML. */
export function blocksHtml(blocks: readonly Block[], options: HtmlOptions): Markup {
  return joined(...blocks.map(block => blockHtml(block, options)));
}

/** Running text as HTML. */
export function textHtml(text: Text, options: Pick<HtmlOptions, 'placeKey' | 'acts'> = {}): Markup {
  if (typeof text === 'string') return joined(text);
  if (!('as' in text)) return joined(...text.map(one => textHtml(one, options)));
  switch (text.as) {
    case 'strong':
    case 'code':
      return element(text.as, {}, textHtml(text.text, options));
    case 'quiet':
      return element('span', { class: 'quiet' }, textHtml(text.text, options));
    case 'together':
      return element('span', { class: 'nowrap' }, textHtml(text.text, options));
    case 'warning':
      return element('strong', { class: 'warning' }, textHtml(text.text, options));
    case 'verdict':
      return element(
        'span',
        { class: `verdict ${text.outcome.replaceAll(' ', '-')}` },
        element('span', { class: 'sign', 'aria-hidden': 'true' }, VERDICT_SIGN[text.outcome]),
        ` ${text.outcome}`,
      );
    case 'place': {
      const key = options.placeKey?.(text.origin);
      return key === undefined
        ? element('span', { class: 'place' }, text.text)
        : element('button', { type: 'button', class: 'place', 'data-place': key }, text.text);
    }
    case 'reference':
      return element('a', { href: `#${text.to}`, class: 'reference' }, text.text);
    case 'act':
      return options.acts
        ? element('button', { type: 'button', class: 'act', 'data-act': text.act }, text.text)
        : joined(text.text);
    case 'anchor':
      return element('span', { id: text.id, class: 'anchor' }, text.text);
    case 'break':
      return element('br');
  }
}

function blockHtml(block: Block, options: HtmlOptions): Markup {
  switch (block.block) {
    case 'paragraph':
      return element('p', { class: block.tone }, textHtml(block.text, options));
    case 'list':
      return element(
        block.kind === 'numbers' ? 'ol' : 'ul',
        { class: block.kind === 'boxes' ? 'boxes' : undefined },
        block.items.map(item => element('li', {}, textHtml(item, options))),
      );
    case 'terms':
      return element(
        'dl',
        { class: 'terms' },
        block.items.map(([label, value]) =>
          element('div', {}, element('dt', {}, label), element('dd', {}, textHtml(value, options))),
        ),
      );
    case 'table':
      return tableHtml(block, options);
    case 'figure':
      return element('figure', {}, block.svg, element('figcaption', {}, textHtml(block.caption, options)));
    case 'row':
      return element('div', { class: 'row' }, blocksHtml(block.figures, options));
    case 'details':
      return element(
        'details',
        { open: options.open ? '' : undefined },
        element('summary', {}, textHtml(block.summary, options)),
        blocksHtml(block.blocks, options),
      );
    case 'section':
      return sectionHtml(block, options);
  }
}

function sectionHtml(section: Section, options: HtmlOptions): Markup {
  const standing = section.standing ? `standing is-${section.standing.replaceAll(' ', '-')}` : '';
  const classes = [section.loud ? 'loud' : '', section.newPage ? 'new-page' : '', standing]
    .filter(Boolean)
    .join(' ');
  return element(
    'section',
    { id: section.id, class: classes || undefined, 'aria-labelledby': `${section.id}-title` },
    element(`h${Math.min(6, options.level)}`, { id: `${section.id}-title` }, section.title),
    blocksHtml(section.blocks, { ...options, level: options.level + 1 }),
  );
}

function tableHtml(table: Table, options: HtmlOptions): Markup {
  const cellClass = (index: number) =>
    [table.columns[index]?.numeric ? 'number' : '', table.columns[index]?.wide ? 'wide' : '']
      .filter(Boolean)
      .join(' ') || undefined;
  const cell = (text: Text, index: number): Markup =>
    index === 0
      ? element('th', { scope: 'row', class: cellClass(index) }, textHtml(text, options))
      : element('td', { class: cellClass(index) }, textHtml(text, options));
  const group = ({ title, rows }: RowGroup): Markup =>
    element(
      'tbody',
      {},
      title === undefined
        ? undefined
        : element(
            'tr',
            { class: 'group' },
            element('th', { scope: 'rowgroup', colspan: table.columns.length }, textHtml(title, options)),
          ),
      rows.map(row => element('tr', {}, row.map(cell))),
    );
  const head: Child[] = table.columns.map((column, index) =>
    element('th', { scope: 'col', class: cellClass(index) }, column.title),
  );
  return element(
    'div',
    { class: 'scroll', tabindex: 0, role: 'region', 'aria-label': table.caption },
    element(
      'table',
      { class: table.form ? 'form' : undefined },
      element('caption', {}, element('span', {}, table.caption)),
      element('thead', {}, element('tr', {}, head)),
      table.groups.filter(one => one.rows.length > 0 || one.title !== undefined).map(group),
    ),
  );
}
