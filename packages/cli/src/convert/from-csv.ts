import {
  COMMENTS,
  type Column,
  columnOf,
  commentLines,
  formatText,
  LEAD,
  type Problem,
  rowText,
} from '@tailshaft/language';
import { findUnit } from '@tailshaft/mechanics';
import { isEntryKind, VESSEL_VOCABULARY } from '@tailshaft/vocabulary';
import type { CsvTable } from './csv.js';

const RUN = VESSEL_VOCABULARY.trial!.blocks.find(one => one.field === 'runs')!.words;

/** A row that says nothing of a spec, and why: told by its line and its column. */
export interface Refusal {
  readonly line: number;
  readonly column?: string;
  readonly why: string;
}

export interface Converted {
  readonly text: string;
  readonly taken: number;
  readonly refused: readonly Refusal[];
}

/** What reads a text as a spec and tells what is wrong with it: problems by their place in the text. */
export type ReadProblems = (
  text: string,
) => Promise<readonly Pick<Problem, 'start' | 'end' | 'severity' | 'message'>[]>;

interface Row {
  readonly line: number;
  readonly head: string;
  readonly cells: readonly string[];
}

/** A table of parts as catalogue entries. A row that cannot be read whole is refused whole, and the others are taken. */
export async function entriesFrom(table: CsvTable, problemsOf: ReadProblems): Promise<Converted> {
  const refused: Refusal[] = [];
  const at = [...LEAD, COMMENTS].map(name => table.head.indexOf(name));
  const [kindAt, nameAt, titleAt, remarkAt, commentsAt] = at as [number, number, number, number, number];
  const known = new Set<string>();
  const rows = table.rows.flatMap(({ line, cells }): Row[] => {
    const cell = (index: number) => (index < 0 ? '' : (cells[index] ?? '').trim());
    const [kind, name, title, remark, comments] = [kindAt, nameAt, titleAt, remarkAt, commentsAt].map(
      cell,
    ) as [string, string, string, string, string];
    const refuse = (column: string, why: string) => {
      refused.push({ line, column, why });
      return [];
    };
    if (!isEntryKind(kind))
      return refuse(
        'kind',
        kind === '' ? 'no kind of part is named' : `"${kind}" is no kind of catalogue entry`,
      );
    if (!/^[\p{L}\d][\p{L}\d_.-]*$/u.test(name))
      return refuse(
        'name',
        name === ''
          ? 'the entry has no name'
          : `"${name}" is no name: one word, of letters, digits and hyphens`,
      );
    if (title.includes('"') || /[\r\n]/.test(title))
      return refuse('title', 'a title is one line without quotation marks');
    if (known.has(`${kind} ${name}`)) return refuse('name', `${kind} ${name} stands in the table already`);
    known.add(`${kind} ${name}`);
    const doc = remark
      .split(/\r?\n/)
      .flatMap(one => (remark === '' ? [] : [`/// ${one}`.trimEnd(), '\n']))
      .join('');
    return [
      { line, head: `${commentLines(comments)}${doc}${kind} ${name}${title ? ` "${title}"` : ''}`, cells },
    ];
  });
  return converted(table, new Set(at.filter(one => one >= 0)), rows, refused, problemsOf, body => ({
    text: body,
    shift: 0,
  }));
}

export interface TrialHead {
  readonly name: string;
  readonly of?: string;
  readonly dated?: string;
}

/** A table of trial readings, one run a row: `run`, then its readings with their units. */
export async function trialFrom(
  table: CsvTable,
  trial: TrialHead,
  problemsOf: ReadProblems,
): Promise<Converted> {
  const refused: Refusal[] = [];
  const lineAt = table.head.findIndex(one => one === RUN || one === 'line');
  const rows = table.rows.flatMap(({ line, cells }): Row[] => {
    const name = lineAt < 0 ? '' : (cells[lineAt] ?? '').trim();
    if (!/^[\p{L}\d][\p{L}\d_.-]*$/u.test(name)) {
      refused.push({
        line,
        column: RUN,
        why: name === '' ? 'no shaft line is named' : `"${name}" is no name of a shaft line`,
      });
      return [];
    }
    return [{ line, head: `${RUN} ${name}`, cells }];
  });
  const of = trial.of ?? 'tried';
  const header = `trial "${trial.name.replaceAll('"', "'")}" of ${of}${trial.dated ? ` dated ${trial.dated}` : ''} {\n`;
  const before = `vessel Tried { arrangement ${of} { } ${header}`;
  const made = await converted(
    table,
    new Set(lineAt >= 0 ? [lineAt] : []),
    rows,
    refused,
    problemsOf,
    body => ({
      text: `${before}${body}} }\n`,
      shift: before.length,
    }),
    /^arrangement|no shaft line|has no line|no arrangement/,
  );
  return { ...made, text: `${header}${made.text.replace(/^(?=.)/gm, '  ')}}\n` };
}

/** A unit that stands in a header as spreadsheets often have it: where it belongs. */
function unitAside(header = ''): string {
  const said = /^([^[\]]*[^[\]\s,])(?:\s*\(([^()]+)\)|\s*,\s*(\S+)|\s+(\S+))\s*$/.exec(header);
  const unit = said?.slice(2).find(one => one !== undefined);
  if (!said || !unit || !findUnit(unit)) return '';
  return ` The unit of a column stands in square brackets: "${said[1]} [${unit}]".`;
}

async function converted(
  table: CsvTable,
  lead: ReadonlySet<number>,
  rows: readonly Row[],
  early: readonly Refusal[],
  problemsOf: ReadProblems,
  within: (body: string) => { readonly text: string; readonly shift: number },
  aside = /(?!)/,
): Promise<Converted> {
  const refused = [...early];
  const columns = table.head.map(columnOf);
  const own = columns.flatMap((column, index) =>
    lead.has(index) || column.path === '' ? [] : [{ column, index }],
  );
  const ownColumns: readonly Column[] = own.map(one => one.column);
  const doubled = ownColumns.find(
    (one, index) => ownColumns.findIndex(other => other.path === one.path) !== index,
  );
  const made = rows.flatMap(row => {
    const cells = own.map(({ index }) => row.cells[index] ?? '');
    const text = rowText(row.head, ownColumns, cells);
    const extra = row.cells.slice(table.head.length).some(one => one.trim() !== '');
    const nameless = row.cells.some((one, index) => one.trim() !== '' && columns[index]?.path === '');
    const why = doubled
      ? { column: doubled.path, why: 'two columns of the table are of one property' }
      : extra || nameless
        ? { why: 'it has a cell without a header' }
        : text.refused.map(one => ({ column: table.head[own[one.column]!.index]!, why: one.why }))[0];
    if (why) {
      refused.push({ line: row.line, ...why });
      return [];
    }
    return [{ row, text }];
  });
  let body = '';
  const placed = made.map(({ row, text }) => {
    const start = body.length;
    body += `${text.text}\n`;
    return { row, text, start, end: body.length };
  });
  const whole = within(body);
  const bad = new Map<number, Refusal>();
  for (const problem of await problemsOf(whole.text)) {
    if (problem.severity !== 'error' || aside.test(problem.message)) continue;
    const at = problem.start - whole.shift;
    const one = placed.find(each => at >= each.start && at < each.end) ?? placed.at(-1);
    if (!one || bad.has(one.row.line)) continue;
    const cell = one.text.places.find(each => at - one.start >= each.start && at - one.start < each.end);
    const column = cell && table.head[own[cell.column]!.index];
    bad.set(one.row.line, {
      line: one.row.line,
      ...(column ? { column } : {}),
      why: `${problem.message}${unitAside(column)}`,
    });
  }
  const kept = placed.filter(one => !bad.has(one.row.line));
  refused.push(...bad.values());
  return {
    text: formatText(kept.map(one => one.text.text).join('\n')),
    taken: kept.length,
    refused: refused.sort((one, other) => one.line - other.line),
  };
}
