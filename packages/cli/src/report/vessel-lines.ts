import { type Counts, countsOf, countWords, ruleWords, type Vessel } from '@tailshaft/drivetrain';
import type { Finding } from '@tailshaft/language';
import { count, percent } from '@tailshaft/mechanics';
import type { CheckedSpec } from '../specs/specs.js';
import type { Io } from '../terminal/io.js';
import { type Cell, table } from '../terminal/layout.js';
import { visible } from '../terminal/visible.js';
import { severityOf } from './severity.js';

/** How one vessel stands, or the catalogue entries or the text of a file without one. */
export interface Standing {
  readonly name: string;
  /** The file of a vessel. */
  readonly file?: string;
  /** The worst verdict word of it. */
  readonly word: string;
  readonly counts: Counts;
  readonly unread: number;
  readonly errors: number;
  readonly warnings: number;
  readonly least?: string;
}

const WORDS = ['not read whole', 'fails', 'cannot tell', 'holds', 'not assessed'] as const;

export function standingsOf(spec: CheckedSpec): Standing[] {
  const unread = spec.findings.filter(one => one.problem && severityOf(one) === 'error').length;
  const standings = spec.check.vessels.map((judged): Standing => {
    const own = spec.findings.filter(one => one.vessel?.vessel === judged.vessel);
    const least = judged.verdicts
      .filter(one => one.outcome === 'holds' && one.margin !== undefined && !one.asFound)
      .sort((a, b) => a.margin! - b.margin!)[0];
    return {
      ...standing(judged.vessel.name || '(no name)', judged.verdicts, own, unread, isBare(judged.vessel)),
      file: spec.shown,
      ...(least ? { least: `${percent(least.margin!)} (${ruleWords(least.rule)}, ${least.subject})` } : {}),
    };
  });
  const verdicts = spec.check.entries.flatMap(one => one.verdicts);
  const own = spec.findings.filter(one => one.verdict && !one.vessel);
  const speaks = own.length > 0 || (standings.length === 0 && (unread > 0 || verdicts.length > 0));
  if (speaks) standings.push(standing(spec.shown, verdicts, own, unread));
  return standings;
}

/** Nothing of it can be judged, so that what holds of it says nothing. */
const isBare = ({ arrangements }: Vessel) => arrangements.length === 0;

function standing(
  name: string,
  verdicts: Parameters<typeof countsOf>[0],
  findings: readonly Finding[],
  unread: number,
  bare = false,
): Standing {
  const counts = countsOf(verdicts);
  const of = (severity: string) =>
    findings.filter(one => severityOf(one) === severity && !one.verdict?.asFound).length;
  const word =
    unread > 0
      ? 'not read whole'
      : counts.failed > 0
        ? 'fails'
        : counts.unknown > 0
          ? 'cannot tell'
          : counts.held > 0 && !bare
            ? 'holds'
            : 'not assessed';
  return { name, word, counts, unread, errors: of('error'), warnings: of('warning') };
}

export function byWorst(one: Standing, other: Standing): number {
  const rank = ({ word }: Standing) => WORDS.indexOf(word as (typeof WORDS)[number]);
  return (
    rank(one) - rank(other) ||
    other.errors - one.errors ||
    other.warnings - one.warnings ||
    other.counts.failed - one.counts.failed ||
    other.counts.unknown - one.counts.unknown
  );
}

/** `Ternhaven  fails  118 hold, 2 fail, 12 cannot tell`, in the width of a page; with files where there are several. */
export function standingLines(io: Io, standings: readonly Standing[]): string[] {
  if (standings.length === 0) return [];
  const { paint } = io;
  const severalFiles = new Set(standings.map(one => one.file ?? one.name)).size > 1;
  const rows = (more: readonly boolean[]) =>
    standings.map((one, index): Cell[] => [
      { text: visible(one.name), paint: paint.strong },
      { text: one.word, paint: tintOf(io, one) },
      { text: wordsOf(one, more[index] === true) },
      { text: severalFiles && one.file ? one.file : '', paint: paint.quiet },
    ]);
  // The least margin stands where there is room for it.
  const plain = (some: Cell[][]) => table(some.map(row => row.map(({ text }) => ({ text })))).split('\n');
  const all = standings.map(one => one.word === 'holds' && one.least !== undefined);
  const fits = plain(rows(all)).every(line => line.length <= io.width);
  return table(rows(fits ? all : [])).split('\n');
}

function wordsOf(one: Standing, withLeast: boolean): string {
  return [
    one.unread > 0 ? count(one.unread, 'error in the text', 'errors in the text') : '',
    countWords(one.counts),
    withLeast ? `least margin ${one.least}` : '',
  ]
    .filter(Boolean)
    .join('; ');
}

function tintOf({ paint }: Io, one: Standing): (text: string) => string {
  if (one.word === 'not read whole') return paint.error;
  if (one.word === 'fails') return one.errors > 0 ? paint.error : paint.warning;
  return one.word === 'holds' ? paint.good : paint.open;
}
