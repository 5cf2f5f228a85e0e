import type { Fact } from '@tailshaft/drivetrain';
import { PLACE_VOCABULARY, type Row } from '@tailshaft/vocabulary';
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
