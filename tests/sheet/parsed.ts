import { type DefaultTreeAdapterTypes, type ParserError, parse } from 'parse5';

type Node = DefaultTreeAdapterTypes.Node;
export type Element = DefaultTreeAdapterTypes.Element;

export interface Parsed {
  readonly errors: readonly string[];
  readonly elements: readonly Element[];
}

/** A page as the HTML standard's own parsing reads it, with every parse error it names. */
export function parsed(html: string): Parsed {
  const errors: string[] = [];
  const onParseError = (error: ParserError) => {
    errors.push(`${error.code} at ${html.slice(Math.max(0, error.startOffset - 40), error.endOffset + 40)}`);
  };
  const document = parse(html, { onParseError });
  return { errors, elements: [...elementsIn(document)] };
}

function* elementsIn(node: Node): Generator<Element> {
  for (const child of 'childNodes' in node ? node.childNodes : []) {
    if ('tagName' in child) yield child;
    yield* elementsIn(child);
  }
}

export function within(element: Element): Element[] {
  return [...elementsIn(element)];
}

/** Words of an element, a space where a line breaks. */
export function wordsOf(node: Node): string {
  if (node.nodeName === '#text') return (node as DefaultTreeAdapterTypes.TextNode).value;
  if (node.nodeName === 'br') return ' ';
  return 'childNodes' in node ? node.childNodes.map(wordsOf).join('') : '';
}

export function attribute(element: Element, name: string): string | undefined {
  return element.attrs.find(one => one.name === name)?.value;
}

export function hasClass(element: Element, name: string): boolean {
  return (attribute(element, 'class') ?? '').split(' ').includes(name);
}

/** Rows of the table with this caption, cells joined by ` | `. */
export function tableRows({ elements }: Parsed, caption: string, inside?: string): string[] {
  const scope = inside ? within(elements.find(one => attribute(one, 'id') === inside)!) : elements;
  const table = scope.find(
    one =>
      one.tagName === 'table' &&
      within(one).some(two => two.tagName === 'caption' && wordsOf(two) === caption),
  );
  if (!table) throw new Error(`no table "${caption}"`);
  return within(table)
    .filter(one => one.tagName === 'tr')
    .map(row =>
      row.childNodes
        .map(wordsOf)
        .map(text => text.trim())
        .join(' | '),
    );
}
