/** A lesson in Markdown: its blocks of text to write and of commands to run, in their order. */

export interface Block {
  /** `shaft`, `diff` or `console`. */
  readonly kind: string;
  /** The words after it, such as the file that it writes. */
  readonly words: readonly string[];
  readonly text: string;
  /** Where its text begins and ends in the lesson. */
  readonly from: number;
  readonly to: number;
  /** Rules that a remark behind the block says fail now; undefined where it says nothing. */
  readonly fails?: readonly string[];
}

const FENCE = /^```(shaft|diff|console)(?: (.*))?\n([\s\S]*?)^```$/gm;
const REMARK = /\n<!-- fails (.*?) -->/y;

export function blocksOf(lesson: string): readonly Block[] {
  return [...lesson.matchAll(FENCE)].map(match => {
    const [whole, kind, words, text] = match as unknown as [string, string, string | undefined, string];
    const to = match.index + whole.length - '```'.length;
    REMARK.lastIndex = match.index + whole.length;
    const said = REMARK.exec(lesson)?.[1];
    const fails = said === 'nothing' ? [] : said?.split(', ');
    return { kind, words: wordsOf(words ?? ''), text, from: to - text.length, to, ...(fails && { fails }) };
  });
}

/** Words as a shell takes them, with quotes around what holds blanks. */
export function wordsOf(line: string): string[] {
  return [...line.matchAll(/([^\s"]*)"([^"]*)"|\S+/g)].map(([all, before, quoted]) =>
    quoted === undefined ? all : `${before}${quoted}`,
  );
}

/** A text with a change of a `diff` block in it: kept and removed lines are found as they are, once. */
export function patched(text: string, change: string): string {
  const lines = change.split('\n').slice(0, -1);
  const side = (mark: string) =>
    lines.filter(line => line[0] === ' ' || line[0] === mark).map(line => `${line.slice(1)}\n`);
  const old = side('-').join('');
  const parts = text.split(old);
  if (parts.length !== 2) throw new Error(`found ${parts.length - 1} times, not once:\n${old}`);
  return parts.join(side('+').join(''));
}

/** A text with more before its last closing brace. */
export function added(text: string, more: string): string {
  const end = text.lastIndexOf('}');
  return text.slice(0, end) + more + text.slice(end);
}

const ELSEWHERE = '...';

/** The lines of an answer that a block asks for: `first=3`, `from=words` with `lines=5`, or all. */
export function shown(answer: string, words: readonly string[]): string {
  const asked = new Map(words.map(word => word.split(/=(.*)/s) as [string, string]));
  const lines = answer.replace(/\n+$/, '').split('\n');
  const from = asked.get('from');
  const start = from === undefined ? 0 : lines.findIndex(line => line.startsWith(from));
  if (start < 0) throw new Error(`no line begins with "${from}" in\n${answer}`);
  const count = Number(asked.get('first') ?? asked.get('lines') ?? lines.length);
  const part = lines.slice(start, start + count);
  while (part.at(-1) === '') part.pop();
  const rest = lines.slice(start + count).some(line => line !== '');
  return [...(start > 0 ? [ELSEWHERE] : []), ...part, ...(rest ? [ELSEWHERE] : [])].join('\n');
}
