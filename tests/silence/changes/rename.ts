import type { Change } from '../change.js';
import type { Judged } from '../rejudge.js';

/** (h) Each vessel, arrangement, line, entry and shaft material under another name. */
export function* rename({ text, check }: Judged): Generator<Change> {
  for (const { reading } of check.entries)
    yield* under(text, reading.kind, reading.name, `Other-${reading.kind.length}`);
  for (const { reading } of check.vessels) {
    yield* under(text, 'vessel', reading.name, 'Otherness');
    for (const one of reading.arrangements) yield* under(text, 'arrangement', one.name, 'otherwise');
    const names = new Set(reading.arrangements.flatMap(one => one.lines.map(line => line.name)));
    for (const name of names) {
      // The name of a line says its side, so that another name needs the side in words.
      const side = ['port', 'starboard', 'centre'].find(one => one === name.toLowerCase());
      const said = side
        ? text.replaceAll(new RegExp(`(shaftline ${name}\\b[^{]*\\{)(?! side)`, 'g'), `$1 side ${side}\n`)
        : text;
      yield* under(said, 'line', name, 'Otherline');
    }
  }
}

function* under(text: string, kind: string, name: string, other: string): Generator<Change> {
  if (name === '') return;
  const whole = new RegExp(`(?<![\\w-])${name}(?![\\w-])`, 'g');
  const outside = text.split(/("[^"\n]*")/);
  yield {
    letter: 'h',
    what: `${kind} ${name} called ${other}`,
    about: kind,
    text: outside.map((part, index) => (index % 2 === 0 ? part.replace(whole, other) : part)).join(''),
    renamed: subject =>
      subject
        .split(/([.\s])/)
        .map(one => (one === name ? other : one))
        .join(''),
  };
}
