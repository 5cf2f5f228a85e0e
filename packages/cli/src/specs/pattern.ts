/**
 * Patterns of paths, understood by the program itself: a shell that does not, or a command in quotes, gives the same
 * files everywhere. `*` and `?` stay within a name, `**` goes through folders, `{a,b}` is a choice, `[a-z]` one sign.
 */
export function isPattern(word: string): boolean {
  return /[*?[{]/.test(word);
}

/** The folder in front of the first sign of a pattern. */
export function patternBase(word: string): string {
  const base = split(word).base.join('/');
  return base === '' ? (slashed(word).startsWith('/') ? '/' : '.') : base;
}

/** Whether a path with slashes, below the base of a pattern, is what it names. */
export function matcherOf(pattern: string): (path: string) => boolean {
  const names = split(pattern).rest;
  if (names.at(-1) === '**') names.push('*');
  const matches = new RegExp(`^${names.map(nameOf).join('').replace(/\/$/, '')}$`, 'u');
  return path => matches.test(path);
}

function split(word: string): { base: string[]; rest: string[] } {
  const names = slashed(word).split('/');
  const first = names.findIndex(isPattern);
  const at = first < 0 ? names.length - 1 : first;
  return { base: names.slice(0, at), rest: names.slice(at) };
}

/** One name between slashes, with the slash behind it. */
function nameOf(name: string): string {
  if (name === '**') return '(?:[^/]+/)*';
  const signs: string[] = [];
  let depth = 0;
  for (let at = 0; at < name.length; at += 1) {
    const sign = name[at]!;
    const group = sign === '[' ? /^\[(!?)([^\]]+)\]/.exec(name.slice(at)) : null;
    if (group) {
      signs.push(`[${group[1] ? '^/' : ''}${group[2]!.replace(/[\\^[]/g, '\\$&')}]`);
      at += group[0].length - 1;
    } else if (sign === '*') signs.push('[^/]*');
    else if (sign === '?') signs.push('[^/]');
    else if (sign === '{' && name.includes('}', at)) {
      signs.push('(?:');
      depth += 1;
    } else if (sign === '}' && depth > 0) {
      signs.push(')');
      depth -= 1;
    } else if (sign === ',' && depth > 0) signs.push('|');
    else signs.push(sign.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&'));
  }
  return `${signs.join('')}/`;
}

/** A backslash is a separator where paths have it, and a sign of a name elsewhere. */
function slashed(word: string): string {
  return process.platform === 'win32' ? word.replaceAll('\\', '/') : word;
}
