/** `Port`, `Port and Starboard`, `Port, Centre and Starboard`. */
export function listed(words: readonly string[], last: 'and' | 'or' = 'and'): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
}

/** `1 check`, `3 checks`; verbs too: `1 holds`, `3 hold`. */
export function count(number: number, one: string, many = `${one}s`): string {
  return `${number} ${plural(number, one, many)}`;
}

/** The word alone, where its number is not said: `lies`, `lie`. */
export function plural(number: number, one: string, many = `${one}s`): string {
  return number === 1 ? one : many;
}

/** `an engine`, `a gear`. */
export function withArticle(words: string): string {
  return `${/^[aeiou]/i.test(words) ? 'an' : 'a'} ${words}`;
}

/** As a sentence begins. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** As it stands within a sentence. */
export function uncapital(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** `gearTorqueMargin` as words: `gear torque margin`. */
export function wordsOfKey(key: string): string {
  return key.replace(
    /([a-z])([A-Z])/g,
    (_, before: string, letter: string) => `${before} ${letter.toLowerCase()}`,
  );
}
