import { type AnyBlock, PLACE_VOCABULARY, type Row } from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { checkText } from '../support/check.js';

/** Every block that a part may hold, with two properties of it that do not tell it from others of its kind. */
const BLOCKS = Object.entries(PLACE_VOCABULARY).flatMap(([role, { blocks }]) =>
  (blocks as readonly AnyBlock[]).flatMap(block => {
    if (block.again === 'freely' || block.whole) return [];
    const apart: readonly string[] = block.again ?? [];
    const rows = block.block.rows.filter(row => !row.many && !apart.includes(row.words)) as Row[];
    const [first, second] = rows;
    return first && second ? [[`${role}: ${block.words}`, role, block, first, second] as const] : [];
  }),
);

/** `bearing strut`: its words and head, as the example of the block has them. */
function headOf({ words, head, example }: AnyBlock): string {
  return head
    ? example
        .split(' ')
        .slice(0, words.split(' ').length + 1)
        .join(' ')
    : words;
}

async function partsOf(role: string, facts: string, change: string): Promise<Record<string, unknown>[]> {
  const { check } = await checkText(`vessel Testcraft {
  arrangement existing { shaftline Centre { ${role} { ${facts} } } }
  arrangement proposed revises existing { shaftline Centre { modify ${role} { ${change} } } }
}`);
  const { arrangements } = check.vessels[0]!.vessel;
  return arrangements.map(one => one.lines[0]!.chain[0] as unknown as Record<string, unknown>);
}

describe.each(BLOCKS)('%s', (_, role, block, first, second) => {
  const head = headOf(block);
  const rowsOf = (fields: unknown) =>
    [first, second].map(
      row => (fields as Record<string, { written: string } | undefined>)[row.field]?.written,
    );

  it('is changed, not doubled, where a step says one property of it again', async () => {
    const [had, has] = await partsOf(
      role,
      `${head} { ${first.example} ${second.example} }`,
      `${head} { ${first.example} }`,
    );
    const [before, after] = [had![block.field], has![block.field]];
    expect(rowsOf(block.many ? (before as unknown[])[0] : before)).not.toContain(undefined);
    if (block.many) expect((after as unknown[]).length).toBe(1);
    expect(rowsOf(block.many ? (after as unknown[])[0] : after)).toEqual(
      rowsOf(block.many ? (before as unknown[])[0] : before),
    );
  });
});

it('covers what a part may hold', () => {
  expect(BLOCKS.length).toBeGreaterThan(12);
});

const MOVED = `shaft material bar { metal stainless steel  torsional yield 300 MPa  elastic modulus 200 GPa  density 7800 kg/m3 }
vessel Testcraft {
  arrangement existing {
    shaftline Centre {
      engine { flywheel aft  high idle 700 rpm  rating medium { power 60 kW at 650 rpm  measured at crankshaft } }
      shaft {
        material bar
        diameter 55 mm
        bearing tube { kind stern tube  at 2.4 m }
        bearing strut { kind strut  at 4.4 m }
      }
      propeller { hand right }
    }
  }
  arrangement proposed revises existing {
    shaftline Centre {
      retain engine
      modify shaft { bearing strut { at 5.3 m } }
      retain propeller
    }
  }
}`;

it('judges the span to a bearing that was moved, and not one to where it stood', async () => {
  const { check } = await checkText(MOVED);
  const spans = check.vessels[0]!.verdicts.filter(
    one => one.rule === 'shafting/bearing-span' && one.subject === 'proposed.Centre',
  );
  // L = 2.9 m: 3.21 D sqrt(E/w) / L² in the units of the formula, 2.165 in, 29.0e6 psi, 0.2818 lb/in³, 9.514 ft.
  expect(spans.find(one => one.message.includes('bearing tube to bearing strut'))?.message).toMatch(
    /78\d(\.\d)? rpm/,
  );
  expect(spans.some(one => one.message.includes('bearing strut to bearing strut'))).toBe(false);
});

const GEAR = `gear Alder {
  ratio 2:1 {
    exact 2:1
    clutch A { output same  ahead continuous }
    clutch B { output opposite  ahead continuous }
    rated medium { torque ENTRY  for diesel  from 600 .. 3000 rpm }
  }
}
vessel Testcraft {
  duty medium { hours 1000 per year }
  arrangement proposed {
    shaftline Centre {
      engine { fuel diesel  flywheel aft  rotation standard viewed from flywheel  peak torque 400 N.m at 1500 rpm  rating medium { power 60 kW at 1800 rpm  measured at crankshaft } }
      gear Alder ratio 2:1 ahead clutch A { ratio 2:1 { rated medium { torque PLACE } } }
      propeller { hand right }
    }
  }
}`;

it('keeps what the entry says of a ratio whose rating is said again, and notes that it differs', async () => {
  const checked = await checkText(GEAR.replace('ENTRY', '300 N.m').replace('PLACE', '600 N.m'));
  const verdict = (rule: string) => checked.check.vessels[0]!.verdicts.find(one => one.rule === rule);
  expect(verdict('rotation/ahead-clutch')?.outcome ?? verdict('rotation/clutch-permission')?.outcome).toBe(
    'holds',
  );
  expect(verdict('capacity/gear-input-torque')?.outcome).toBe('holds');
  const note = checked.findings.find(one => one.code === 'paper/place-against-entry');
  expect(note?.message).toContain('600 N.m, against 300 N.m');
});

it('judges by the rating that the place says again, though that of the entry tells more apart', async () => {
  const checked = await checkText(GEAR.replace('ENTRY', '600 N.m').replace('PLACE', '300 N.m'));
  const { verdicts } = checked.check.vessels[0]!;
  expect(verdicts.find(one => one.rule === 'capacity/gear-input-torque')?.outcome).toBe('fails');
});
