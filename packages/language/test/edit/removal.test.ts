import { expect, it } from 'vitest';
import { removal } from '../../src/edit/removal.js';

const URI = 'memory:///a.shaft';
const applied = (marked: string): string => {
  const start = marked.indexOf('<');
  const text = marked.replace(/[<>]/g, '');
  const end = marked.indexOf('>') - 1;
  const [edit] = removal({ uri: URI, start, end }, () => text)!;
  return text.slice(0, edit!.start) + edit!.text + text.slice(edit!.end);
};

it.each([
  ['its own line', 'vessel V {\n  <accept a>\n  duty light\n}\n', 'vessel V {\n  duty light\n}\n'],
  [
    'several lines',
    'vessel V {\n  duty light\n  <accept a\n    by "x">\n}\n',
    'vessel V {\n  duty light\n}\n',
  ],
  ['between blank lines', 'vessel V {\n  a\n\n  <accept b>\n\n  c\n}\n', 'vessel V {\n  a\n\n  c\n}\n'],
  ['the first of a block', 'vessel V {\n  <accept b>\n\n  c\n}\n', 'vessel V {\n  c\n}\n'],
  ['line ends of another system', 'a\r\n  <b>\r\nc\r\n', 'a\r\nc\r\n'],
  ['a comment behind it stays', 'a\n  <b> // why\nc\n', 'a\n   // why\nc\n'],
  ['the whole text', '<a>', ''],
])('takes out %s', (_, marked, left) => {
  expect(applied(marked)).toBe(left);
});

it('writes nothing for a place that is not in the text', () => {
  expect(removal({ uri: URI, start: 3, end: 9 }, () => 'short')).toBeUndefined();
});
