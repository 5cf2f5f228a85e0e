/** Control characters of a hostile file, name or error must not reach the terminal; nor those that turn text round. */
export function visible(text: string): string {
  return text.replace(CONTROLS, '\u{fffd}');
}

/** The same of a whole report, in which our own colours stand. */
export function visibleReport(text: string): string {
  return text.replace(COLOUR_OR_CONTROL, (_, colour?: string) => colour ?? '\u{fffd}');
}

/** JSON says such signs by number: the terminal gets none, and whoever reads it loses none. */
export function jsonText(value: unknown): string {
  return JSON.stringify(value, null, 2).replace(
    /[\x7f-\x9f\u202a-\u202e\u2066-\u2069]/g,
    sign => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is replaced
const CONTROLS = /[\x00-\x08\x0b-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069]/g;

/** What `painter` writes, and nothing else that begins so. */
const COLOUR_OR_CONTROL =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is replaced
  /(\x1b\[(?:1;3[136]|22;39|39|32|22|1|2)m)|[\x00-\x08\x0b-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069]/g;
