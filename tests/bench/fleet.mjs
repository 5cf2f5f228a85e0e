import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

/*
 * A made fleet to measure on: the example catalogue and vessel, over and over under other names. Everything in it is
 * read, checked and judged like the real thing.
 */

const examples = resolve(import.meta.dirname, '../../examples');
const read = path => readFileSync(join(examples, path), 'utf8');

/** Catalogue files with so many parts in all: `{ 'catalogue/engines-1.shaft': text }`. */
export function catalogueFiles(parts, perFile = 200) {
  const entries = ['engines', 'gears', 'materials'].flatMap(file =>
    blocksOf(read(`catalogue/${file}.shaft`)).filter(block => !/^(import|vessel)\b/m.test(block.head)),
  );
  const files = {};
  let text = '';
  for (let count = 0; count < parts; count++) {
    const entry = entries[count % entries.length];
    const round = Math.floor(count / entries.length);
    // The first round keeps its names: the vessels use them.
    text += round === 0 ? entry.text : entry.text.replace(entry.name, `${entry.name}-M${round}`);
    if ((count + 1) % perFile === 0 || count === parts - 1) {
      files[`catalogue/part-${String(Math.floor(count / perFile)).padStart(3, '0')}.shaft`] = text;
      text = '';
    }
  }
  return files;
}

/** A spec of at least so many lines, full of vessels that use the catalogue. */
export function specText(lines, from = 1) {
  const [vessel] = blocksOf(read('pilot-cutter/ternhaven.shaft')).filter(block => block.name === 'Ternhaven');
  let text = 'import "catalogue"\n\n';
  for (let count = from; text.split('\n').length <= lines; count++)
    text += `${vessel.text.replace('vessel Ternhaven', `vessel Ternhaven-${count}`)}\n`;
  return text;
}

/** Writes files below a folder. */
export function writeFiles(folder, files) {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(join(folder, path, '..'), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
}

/** The statements of a file, each with the comment above it. */
function blocksOf(text) {
  return text
    .split(/^(?=\/\/\/ |(?:engine|motor|gear|transfer|coupling|propeller|vessel|shaft material) )/m)
    .reduce((blocks, piece) => {
      // A documentation comment of several lines was cut line by line.
      const last = blocks.at(-1);
      if (last && /^\/\/\/[^\n]*\n$/.test(last.slice(last.lastIndexOf('\n', last.length - 2) + 1)))
        blocks[blocks.length - 1] += piece;
      else blocks.push(piece);
      return blocks;
    }, [])
    .flatMap(piece => {
      const head = /^(?:engine|motor|gear|transfer|coupling|propeller|vessel|shaft material) (\S+)/m.exec(
        piece,
      );
      return head ? [{ head: head[0], name: head[1], text: `${piece.trimEnd()}\n\n` }] : [];
    });
}
