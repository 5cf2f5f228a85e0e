import type { Fact } from '@tailshaft/drivetrain';
import { type BlockRow, PLACE_VOCABULARY, type Row, type Vocabulary } from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { checkText } from '../../../../tests/support/check.js';

const ROLES = ['engine', 'gear', 'coupling', 'shaft', 'propeller'];

/** Every fact of a part at its place with each of those that it was measured with, where that is a plain fact. */
const CASES = ROLES.flatMap(role =>
  PLACE_VOCABULARY[role]!.rows.flatMap(row =>
    (row.measuredWith ?? []).flatMap(path => {
      const [of, field] = path.includes('.') ? (path.split('.') as [string, string]) : [role, path];
      const other = PLACE_VOCABULARY[of]!.rows.find(one => one.field === field);
      if (of === role && !other) return [];
      return [[`${row.words} of the ${role} with ${path}`, { role, row, of, other }] as const];
    }),
  ),
);

interface Case {
  readonly role: string;
  readonly row: Row;
  readonly of: string;
  readonly other: Row | undefined;
}

/** The line as found, and revised by what stands behind the part that the fact was measured with. */
function spec({ role, row, of, other }: Case, revised: string): string {
  const facts = (one: string) =>
    [...(one === role ? [row.example] : []), ...(one === of && other ? [other.example] : [])].join('  ');
  const kept = (one: string) => (one === of ? revised : `retain ${one}`);
  return `vessel Ternhaven {
  arrangement existing { shaftline Centre { ${ROLES.map(one => `${one} { ${facts(one)} }`).join('\n')} } }
  arrangement proposed revises existing { shaftline Centre { ${ROLES.map(kept).join('\n')} } }
}`;
}

async function now({ role, row, ...rest }: Case, revised: string): Promise<readonly Fact<unknown>[]> {
  const { check } = await checkText(spec({ role, row, ...rest }, revised));
  const line = check.vessels[0]!.vessel.arrangements[1]!.lines[0]!;
  const part = line.chain.find(one => one.role === role) as unknown as Record<string, unknown>;
  return [part[row.field]].flat() as Fact<unknown>[];
}

const written = (facts: readonly Fact<unknown>[]) =>
  facts.map(({ value, lapsed }) => [value !== undefined, lapsed !== undefined]);

interface Nested {
  readonly role: string;
  /** The blocks that the fact stands in, from the outermost. */
  readonly path: readonly BlockRow[];
  readonly row: Row;
  readonly other: Row;
  /** Whether the other stands in the block around that of the fact. */
  readonly out: boolean;
}

function nestedIn(role: string, vocabulary: Vocabulary, path: readonly BlockRow[] = []): Nested[] {
  return vocabulary.blocks.flatMap(one => {
    const own = one.block.rows.flatMap(row =>
      (row.measuredWith ?? []).flatMap((said): Nested[] => {
        const out = said.startsWith('^');
        const from = out ? vocabulary : one.block;
        const other = from.rows.find(each => each.field === said.replace('^', ''));
        return other ? [{ role, path: [...path, one], row, other, out }] : [];
      }),
    );
    return [...own, ...nestedIn(role, one.block, [...path, one])];
  });
}

/** Every fact of a block in a part, with each plain fact that it was measured with. */
const NESTED = ROLES.flatMap(role => nestedIn(role, PLACE_VOCABULARY[role]!)).map(
  one =>
    [
      `${one.row.words} in ${one.path.map(each => each.words).join(', ')} of the ${one.role}, with ${one.other.words}`,
      one,
    ] as const,
);

/** The part with the fact and the other, or with a statement in the place of both. */
function around({ role, path, row, other, out }: Nested, said?: string): string {
  const inner = said ?? [row.example, ...(out ? [] : [other.example])].join('  ');
  const blocks = path.map(one => one.example.split(/ ?[{]/)[0]!);
  // The other stands in the last block but one, or in the part itself.
  return `${role} { ${blocks
    .slice(0, -1)
    .map(one => `${one} { `)
    .join('')}${
    out ? `${said ?? other.example}  ` : ''
  }${out && said ? '' : `${blocks.at(-1)} { ${inner} }`}${' }'.repeat(path.length - 1)} }`;
}

async function nested(one: Nested, revised: string): Promise<Fact<unknown>> {
  const { check } = await checkText(`vessel Ternhaven {
  arrangement existing { shaftline Centre { ${around(one)} } }
  arrangement proposed revises existing { shaftline Centre { ${revised} } }
}`);
  const line = check.vessels[0]!.vessel.arrangements[1]!.lines[0]!;
  let here = line.chain.find(part => part.role === one.role) as unknown as Record<string, unknown>;
  for (const { field } of one.path) here = [here[field]].flat()[0] as Record<string, unknown>;
  return [here[one.row.field]].flat()[0] as Fact<unknown>;
}

describe('a fact of a block in a part, measured with something that is another now', () => {
  it.each(NESTED)('%s', async (_, one) => {
    expect(written([await nested(one, `retain ${one.role}`)])).toEqual([[true, false]]);
    const changes = `modify ${around(one, `${one.other.words} unknown`)}`;
    expect(written([await nested(one, changes)])).toEqual([[false, true]]);
  });

  it('is there in parts', () =>
    expect(NESTED.map(([title]) => title)).toEqual(
      expect.arrayContaining([
        'at in bearing of the shaft, with length',
        'deflection in mounts of the engine, with mass',
      ]),
    ));
});

describe('what was measured with something that is another now', () => {
  it('is every such fact of a part', () => expect(CASES.length).toBeGreaterThan(40));

  it.each(CASES)('%s', async (_, one) => {
    expect(written(await now(one, `retain ${one.of}`))).toEqual([[true, false]]);
    const changes =
      one.of === one.role
        ? `modify ${one.of} { ${one.other!.words} unknown }`
        : `replace ${one.of} { source "Order 7" }`;
    expect(written(await now(one, changes))).toEqual([[false, true]]);
  });

  it('makes room for what is said anew, of which there may be several points', async () => {
    const shaft = PLACE_VOCABULARY.shaft!.rows;
    const row = shaft.find(one => one.field === 'vibratoryStresses')!;
    const one: Case = {
      role: 'shaft',
      row,
      of: 'shaft',
      other: shaft.find(other => other.field === 'diameter'),
    };
    const points = 'vibratory stress 9 MPa at 265 rpm  vibratory stress 11 MPa at 300 rpm';
    // Without a change they are added to those that there are.
    expect(written(await now(one, `modify shaft { ${points} }`))).toHaveLength(3);
    expect(written(await now(one, `modify shaft { diameter 80 mm  ${points} }`))).toEqual([
      [true, false],
      [true, false],
    ]);
    const later = `${spec(one, 'modify shaft { diameter 80 mm }').trimEnd().slice(0, -1)}
  arrangement later revises proposed { shaftline Centre { retain engine  retain gear  retain coupling
    modify shaft { ${points} }  retain propeller } }
}`;
    const { check } = await checkText(later);
    const found = check.vessels[0]!.vessel.arrangements[2]!.lines[0]!.shafts[0]!.vibratoryStresses!;
    expect(written(found)).toEqual([
      [true, false],
      [true, false],
    ]);
  });

  it('is what another catalogue entry says, where that says it', async () => {
    const { check } =
      await checkText(`engine Old { fuel rate 61 L/h  rating medium { power 250 kW at 2300 rpm } }
engine New { fuel rate 70 L/h  rating medium { power 300 kW at 2300 rpm } }
vessel Ternhaven {
  arrangement existing { shaftline Centre { engine Old at medium } }
  arrangement proposed revises existing { shaftline Centre { modify engine New at medium } }
}`);
    expect(check.vessels[0]!.vessel.arrangements[1]!.lines[0]!.engine!.fuelRate?.written).toBe('70 L/h');
  });
});
