import { meaningOf } from '@tailshaft/drivetrain';
import type { BlockRow, Vocabulary } from '@tailshaft/vocabulary';

type Fields = Readonly<Record<string, unknown>>;

/**
 * Facts laid over those beneath. A block that is said again changes what it says and leaves the rest of it: its place tells
 * which of several with a head is meant, so that a bearing that is moved is not a second one. Of other lists the upper rows
 * come first.
 */
export function overlay(beneath: Record<string, unknown>, upper: Fields, vocabulary: Vocabulary): void {
  lay(beneath, upper, vocabulary, (value, old) =>
    value.length === 0 ? old : whole.has(value) ? value : [...value, ...old.filter(one => !isLapsed(one))],
  );
}

const whole = new WeakSet<readonly unknown[]>();

/** A list that stands in the place of what is beneath it, and not before it. */
export function instead<T>(list: readonly T[]): readonly T[] {
  const copy = [...list];
  whole.add(copy);
  return copy;
}

/** What only says that it is not known any longer makes room for whatever is said anew. */
function isLapsed(one: unknown): boolean {
  return (one as { readonly lapsed?: string } | undefined)?.lapsed !== undefined;
}

type Join = (value: readonly unknown[], old: readonly unknown[]) => readonly unknown[];

function lay(beneath: Record<string, unknown>, upper: Fields, { blocks }: Vocabulary, rows: Join): void {
  for (const [field, value] of Object.entries(upper)) {
    const block = blocks.find(one => one.field === field);
    const old = beneath[field];
    if (Array.isArray(value)) {
      const had = Array.isArray(old) ? (old as readonly unknown[]) : [];
      beneath[field] = whole.has(value)
        ? value
        : block
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
    const at = placeOf(block, one, rest);
    return at < 0 ? one : merged(block, one, rest.splice(at, 1)[0]);
  });
  return [...said, ...rest];
}

/** Which one is said again: the same, or the only one that agrees in all that is said of what several differ by. */
function placeOf(block: BlockRow, one: Fields, beneath: readonly Fields[]): number {
  const same = beneath.findIndex(other => isSameBlock(block, one, other));
  if (same >= 0) return same;
  const unsaid = (block.again as readonly string[] | undefined)?.filter(
    words => saidOf(one, fieldOf(block, words)) === '',
  );
  if (!unsaid || unsaid.length === 0) return -1;
  const rest = {
    ...block,
    again: (block.again as readonly string[]).filter(words => !unsaid.includes(words)),
  };
  const alike = beneath.filter(other => isSameBlock(rest, one, other));
  return alike.length === 1 ? beneath.indexOf(alike[0]!) : -1;
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
  const { again } = row;
  const differing = again === undefined || again === 'freely' ? [] : again;
  const fields = differing.map(words => fieldOf(row, words));
  return isSameHead(row, one, other) && fields.every(field => saidOf(one, field) === saidOf(other, field));
}

function fieldOf({ block }: BlockRow, words: string): string {
  return block.rows.find(one => one.words === words)!.field;
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
