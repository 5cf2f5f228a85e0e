/**
 * Markdown in which nothing is live: no link, image, address or HTML, whoever wrote the words. What we write ourselves
 * uses none of these, so all that goes to a client passes here last, and no place that forgets to escape an author's
 * words can open anything. Code stays as it is; a backtick that closes nothing on its line is one that opens nothing.
 */
export function disarmed(markdown: string): string {
  let fence: RegExp | undefined;
  const lines = markdown.replace(CONTROLS, '\u{fffd}').split('\n');
  return lines
    .map(line => {
      if (fence) {
        if (fence.test(line)) fence = undefined;
        return line;
      }
      // In the first column it stands in no list, which could end and leave the code open.
      const opened = /^(`{3,})[^`]*$/.exec(line)?.[1];
      if (opened === undefined) return disarmedLine(line);
      fence = new RegExp(`^ {0,3}\`{${opened.length},}[ \\t]*$`);
      return line;
    })
    .join('\n');
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is replaced
const CONTROLS = /[\x00-\x08\x0b-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069]/g;

/** An escaped sign, a run of backticks, or what may come to life. */
const LOOK = /\\[!-/:-@[-`{-~]|`+|[<[\]&]|:(?=\/\/)|\bwww(?=\.)/gi;

function disarmedLine(line: string): string {
  let out = '';
  let from = 0;
  LOOK.lastIndex = 0;
  for (let match = LOOK.exec(line); match; match = LOOK.exec(line)) {
    const [found] = match;
    let end = match.index + found.length;
    let by = found;
    if (found.startsWith('`')) {
      const close = closing(line, end, found.length);
      // A table would cut the code at its bars, and what stands between them would live.
      const cut =
        close !== undefined && /\|/.test(line.slice(end, close)) && ALIVE.test(line.slice(end, close));
      if (close === undefined || cut) by = found.replaceAll('`', '\\`');
      else {
        end = close;
        by = line.slice(match.index, end);
      }
    } else if (!found.startsWith('\\')) by = INERT[found.toLowerCase()] ?? `\\${found}`;
    out += line.slice(from, match.index) + by;
    from = end;
    LOOK.lastIndex = end;
  }
  return out + line.slice(from);
}

const ALIVE = /[<[\]]|:\/\/|www\./i;

/** An address is broken by a sign that joins words and takes no room: a client must not make a link of it by itself. */
const INERT: Readonly<Record<string, string>> = {
  '&': '&amp;',
  ':': ':\u{2060}',
  www: 'www\u{2060}',
};

/** The end of the run of exactly so many backticks behind a place. */
function closing(line: string, from: number, length: number): number | undefined {
  for (const match of line.slice(from).matchAll(/`+/g))
    if (match[0].length === length) return from + match.index + length;
  return undefined;
}
