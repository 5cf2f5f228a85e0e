import { meaningOf } from '@tailshaft/drivetrain';
import type { BlockRow, Vocabulary } from '@tailshaft/vocabulary';

type Fields = Readonly<Record<string, unknown>>;

/**
 * Facts laid over those beneath. A block that is said again changes what it says and leaves the rest of it: its place tells
 * which of several with a head is meant, so that a bearing that is moved is not a second one. Of other lists the upper rows
 * come first.
 */
export function overlay(beneath: Record<string, unknown>, upper: Fields, vocabulary: Vocabulary): void {
  lay(beneath, upper, vocabulary, (value, old) => (value.length === 0 ? old : [...value, ...old]));
}

type Join = (value: readonly unknown[], old: readonly unknown[]) => readonly unknown[];

function lay(beneath: Record<string, unknown>, upper: Fields, { blocks }: Vocabulary, rows: Join): void {
  for (const [field, value] of Object.entries(upper)) {
    const block = blocks.find(one => one.field === field);
    const old = beneath[field];
    if (Array.isArray(value)) {
      const had = Array.isArray(old) ? (old as readonly unknown[]) : [];
      beneath[field] = block
        ? joined(block, value as readonly Fields[], had as readonly Fields[])
        : rows(value, had);
    } else if (value !== undefined) beneath[field] = block ? merged(block, value as Fields, old) : value;
  }
}

function joined(block: BlockRow, upper: readonly Fields[], beneath: readonly Fields[]): readonly Fields[] {
  if (block.again === 'freely') return [...upper, ...beneath];
  // Ratings of one duty hold between them for all that they tell apart: one that is said again outweighs them all.
  if (block.whole)
    return [...upper, ...beneath.filter(other => !upper.some(one => isSameHead(block, one, other)))];
  const rest = [...beneath];
  const said = upper.map(one => {
    const at = rest.findIndex(other => isSameBlock(block, one, other));
    return at < 0 ? one : merged(block, one, rest.splice(at, 1)[0]);
  });
  return [...said, ...rest];
}

/** One block over another; what is a list in it is said whole. */
function merged(block: BlockRow, upper: Fields, beneath: unknown): Fields {
  if (block.whole || typeof beneath !== 'object' || beneath === null) return upper;
  const fields: Record<string, unknown> = { ...beneath };
  lay(fields, upper, block.block, (value, old) => (value.length === 0 ? old : value));
  return Object.setPrototypeOf(fields, Object.getPrototypeOf(upper)) as Fields;
}

/** Whether two blocks of one list say the same thing: by their head, and what several with one head differ by. */
export function isSameBlock(row: BlockRow, one: Fields, other: Fields): boolean {
  const { block, again } = row;
  const differing = again === undefined || again === 'freely' ? [] : again;
  const fields = differing.map(words => block.rows.find(row => row.words === words)!.field);
  return isSameHead(row, one, other) && fields.every(field => saidOf(one, field) === saidOf(other, field));
}

export function isSameHead({ head }: BlockRow, one: Fields, other: Fields): boolean {
  const [said, had] = head ? [one[head.field], other[head.field]] : [];
  return said !== undefined && had !== undefined && meaningOf(said) === meaningOf(had);
}

/** What is said of a field; to look at an absent one would note that it is looked for. */
function saidOf(fields: Fields, field: string): string {
  if (!Object.hasOwn(fields, field)) return '';
  const { value, written } = fields[field] as { value?: unknown; written?: string };
  return meaningOf(value ?? written);
}
