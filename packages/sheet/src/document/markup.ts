/** Finished HTML or SVG. Only `element` and `joined` make it, so that whatever comes from a text is escaped. */
export class Markup {
  constructor(
    readonly source: string,
    /** What it was made of, for files that are no HTML; absent where only the source is there. */
    readonly node?: MarkupNode,
  ) {}
}

/** An element, or children without one where the name is empty. */
export interface MarkupNode {
  readonly name: string;
  readonly attributes: Attributes;
  readonly children: readonly Child[];
}

export type Child = Markup | string | number | undefined | readonly Child[];
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** One element; strings among its children are text. */
export function element(name: string, attributes: Attributes = {}, ...children: readonly Child[]): Markup {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${escapeMarkup(typeof value === 'number' ? short(value) : value!)}"`)
    .join('');
  if (VOID.has(name)) return new Markup(`<${name}${written}>`);
  return new Markup(`<${name}${written}>${joined(...children).source}</${name}>`, {
    name,
    attributes,
    children,
  });
}

/** Children one behind the other. */
export function joined(...children: readonly Child[]): Markup {
  return new Markup(children.map(sourceOf).join(''), { name: '', attributes: {}, children });
}

/** Text that means itself in HTML and SVG, also inside an attribute. */
export function escapeMarkup(text: string): string {
  return text.replace(UNFIT, '\ufffd').replace(/[&<>"']/g, sign => ENTITY[sign]!);
}

function sourceOf(child: Child): string {
  if (child === undefined) return '';
  if (child instanceof Markup) return child.source;
  if (typeof child === 'number') return short(child);
  return typeof child === 'string' ? escapeMarkup(child) : child.map(sourceOf).join('');
}

/** Coordinates to a hundredth are finer than any screen. */
function short(number: number): string {
  return String(Number(number.toFixed(2)));
}

const VOID = new Set(['br', 'col', 'hr', 'img', 'input', 'link', 'meta', 'wbr']);
const ENTITY: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};
/** Control characters, lone surrogates and code points that are no characters: no HTML document may hold them. */
const UNFIT =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones to take out.
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]|\p{Cs}|\p{Noncharacter_Code_Point}/gu;
