import type { Run } from './runs.js';

/** Letters of one look at their place in a line. */
export interface Piece extends Run {
  readonly x: number;
  readonly width: number;
}

export interface Line {
  readonly pieces: readonly Piece[];
  readonly width: number;
}

export type Measure = (words: string, bold: boolean) => number;

/** Runs broken into lines of at most this width. A word that is wider than a line is broken where the line ends. */
export function linesOf(runs: readonly Run[], width: number, measure: Measure): Line[] {
  const lines: Line[] = [];
  let pieces: Piece[] = [];
  let x = 0;
  const end = () => {
    lines.push({ pieces: joined(pieces, measure), width: x });
    pieces = [];
    x = 0;
  };
  for (const word of wordsOf(runs)) {
    if (word === 'break') {
      end();
      continue;
    }
    const wide = word.parts.reduce((sum, part) => sum + measure(part.words, part.bold), 0);
    const before = pieces.at(-1);
    const space = before && word.spaced ? measure(' ', before.bold) : 0;
    if (pieces.length > 0 && x + space + wide > width) end();
    else if (space > 0) x += space;
    for (const part of wide > width ? word.parts.flatMap(one => broken(one, width, measure)) : word.parts) {
      const own = measure(part.words, part.bold);
      if (x > 0 && x + own > width && wide > width) end();
      pieces.push({ ...part, x, width: own });
      x += own;
    }
  }
  if (pieces.length > 0) end();
  return lines;
}

/** The widest word, and the whole on one line. */
export function extentOf(runs: readonly Run[], measure: Measure): { least: number; most: number } {
  let least = 0;
  let most = 0;
  let line = 0;
  let bold = false;
  for (const word of wordsOf(runs)) {
    if (word === 'break') {
      line = 0;
      continue;
    }
    const wide = word.parts.reduce((sum, part) => sum + measure(part.words, part.bold), 0);
    least = Math.max(least, wide);
    line += wide + (line > 0 && word.spaced ? measure(' ', bold) : 0);
    bold = word.parts.at(-1)?.bold ?? false;
    most = Math.max(most, line);
  }
  return { least, most };
}

interface Word {
  readonly parts: Run[];
  /** Whether something stands before it that it is parted from. */
  readonly spaced: boolean;
}

/** Words, each of as many looks as its runs have; what follows without a space stays with what it follows. */
function wordsOf(runs: readonly Run[]): (Word | 'break')[] {
  const words: (Word | 'break')[] = [];
  let spaced = false;
  let open: Word | undefined;
  for (const run of runs) {
    for (const piece of run.words.split(/(\n|[ \t\r]+)/)) {
      if (piece === '') continue;
      if (piece === '\n') {
        words.push('break');
        open = undefined;
        spaced = false;
      } else if (/^[ \t\r]+$/.test(piece)) {
        open = undefined;
        spaced = true;
      } else if (open) open.parts.push({ ...run, words: piece });
      else {
        open = { parts: [{ ...run, words: piece }], spaced };
        words.push(open);
      }
    }
  }
  return words;
}

/** A word too wide for any line, in pieces that fit: after a stroke or a point where there is one near the end. */
function broken(run: Run, width: number, measure: Measure): Run[] {
  const pieces: Run[] = [];
  let now = '';
  for (const sign of run.words) {
    if (now && measure(now + sign, run.bold) > width) {
      const soft = Math.max(...['/', '.', '-', '_'].map(one => now.lastIndexOf(one)));
      const at = soft > now.length / 2 ? soft + 1 : now.length;
      pieces.push({ ...run, words: now.slice(0, at) });
      now = now.slice(at);
    }
    now += sign;
  }
  return now ? [...pieces, { ...run, words: now }] : pieces;
}

/** Neighbours of one look become one piece. */
function joined(pieces: readonly Piece[], measure: Measure): Piece[] {
  const whole: Piece[] = [];
  for (const piece of pieces) {
    const last = whole.at(-1);
    const same =
      last &&
      last.bold === piece.bold &&
      last.colour === piece.colour &&
      !last.to &&
      !piece.to &&
      !last.id &&
      !piece.id;
    if (!same) {
      whole.push(piece);
      continue;
    }
    const gap = piece.x - last.x - last.width > 0.01 ? ' ' : '';
    const words = `${last.words}${gap}${piece.words}`;
    whole[whole.length - 1] = {
      ...last,
      words,
      width: gap ? piece.x + piece.width - last.x : measure(words, last.bold),
    };
  }
  return whole;
}
