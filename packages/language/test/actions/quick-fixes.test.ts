import { RULES } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { FRESH } from '../../../../tests/fixes/fresh-vessels.js';
import { share, times } from '../../../../tests/support/share.js';
import { changed, TWIN_LINES } from '../../../drivetrain/src/rules/example-specs.js';
import { questions } from '../../src/actions/quick-fixes.js';
import { touchesShiftCable } from '../../src/actions/shift-cable.js';
import { applyEdits } from '../../src/edit/index.js';
import { findingsOf } from '../../src/index.js';
import { Specs } from '../edit/specs.js';
import { Offers } from './actions.js';

describe('corrections of the text', () => {
  const cases: [what: string, before: string, title: string, after: string][] = [
    ['a misspelt property', 'gear G { mas<|>s2 9 kg }', 'Write mass', 'gear G { mass 9 kg }'],
    ['a misspelt value', 'propeller P { hand ri<|>hgt }', 'Write right', 'propeller P { hand right }'],
    [
      'a mark too many',
      'gear G { mass 9 kg<|>, layout V-drive }',
      'Remove ","',
      'gear G { mass 9 kg layout V-drive }',
    ],
    ['an open quote', 'gear G {\n  source "shee<|>t\n}', 'Close the quote', 'gear G {\n  source "sheet"\n}'],
    ['a ratio without its one', 'gear G { ratio 2.<|>04 }', 'Write 2.04:1', 'gear G { ratio 2.04:1 }'],
  ];
  it.each(cases)('puts right %s', async (_, before, title, after) => {
    expect((await Offers.at(before, 'quickfix')).after(title)).toBe(after);
  });

  it('says of a part what becomes of it, on a line of its own', async () => {
    const before = `vessel V {
  arrangement a { shaftline Port { gear { mass 9 kg }  shaft { length 3 m } } }
  arrangement b revises a {
    shaftline P<|>ort {
      retain gear
    }
  }
}
`;
    const offers = await Offers.at(before.replaceAll('\n', '\r\n'), 'quickfix');
    expect(offers.after('Add retain shaft')).toContain(
      '      retain gear\r\n      retain shaft\r\n    }\r\n',
    );
  });
});

describe('ways out of a finding', () => {
  const wrongHand = changed(TWIN_LINES, ['propeller { hand left', 'propeller { hand ri<|>ght']);

  it('have their consequence in the title, and the author chooses', async () => {
    const offers = await Offers.at(wrongHand, 'quickfix');
    expect(offers.titles).toMatch(/^(\* )?Make the propeller of Port left-hand: the shaft turns/m);
    expect(offers.titles).toMatch(/^(\* )?Run Port ahead on clutch B: the shaft then turns/m);
    expect(offers.after('Make the propeller')).toBe(
      // The drawing showed the other hand; it does not vouch for this one.
      changed(TWIN_LINES, ['hand left [drawing]', 'hand left']),
    );
  });

  it('are tied to the diagnostics they belong to, and to the version of the text', async () => {
    const offers = await Offers.at(wrongHand, 'quickfix');
    const action = offers.actions[0]!;
    expect(action.kind).toBe('quickfix');
    expect(action.edit?.changes).toBeUndefined();
    expect(action.edit?.documentChanges?.[0]).toMatchObject({ textDocument: { version: null } });
  });

  it('ask for what is missing as an open question, also in the catalogue', async () => {
    const files = {
      'ternhaven.shaft': `import "parts"\n${TWIN_LINES.slice(TWIN_LINES.indexOf('vessel'))}`,
      'parts.shaft': changed(TWIN_LINES.slice(0, TWIN_LINES.indexOf('vessel')), [
        '  rotation standard viewed from flywheel\n',
        '',
      ]),
    };
    const offers = await Offers.at(files, 'quickfix');
    const title = 'Add rotation as an open question: rotation of engine Kittiwake-9';
    expect(offers.titles.split('\n').filter(one => one === title).length).toBeGreaterThan(0);
    expect(offers.after(title, 'parts.shaft')).toContain('  housing SAE-3\n  rotation unknown\n}\n');
    expect(offers.after(title)).toBe(files['ternhaven.shaft']);
  });
});

describe('what stands in another file', () => {
  const at = TWIN_LINES.indexOf('vessel');
  const parts = changed(
    TWIN_LINES.slice(0, at),
    ['ratio 2.52:1 exact 2.524:1', 'ratio 2.5:1'],
    ['rated medium 0.18', 'rated medium 0.1'],
  );
  const mistaken = (...changes: readonly (readonly [string, string])[]) => ({
    'ternhaven.shaft': changed(
      `import "parts"\n${TWIN_LINES.slice(at)}`,
      ['gear Alder-63', 'gear Al<|>der-63'],
      ...changes,
    ),
    'parts.shaft': parts,
  });

  it('is not told to get worse where a part to be found is like it', async () => {
    const { titles } = await Offers.at(mistaken(), 'quickfix');
    const like = titles.split('\n').filter(one => /Fit a gear like Alder-63 with rated medium/.test(one));
    expect(like).not.toEqual([]);
    expect(like.join('\n')).not.toContain('Every offered ratio has its exact value');
  });
});

describe('the same way out for each of two lines', () => {
  it('says which line it is for', async () => {
    const weak = changed(TWIN_LINES, [
      'input housing SAE-3\n  slip',
      'input housing SAE-3\n  thrust at most 4 kN\n  slip',
    ]);
    const offers = await Offers.at(
      changed(weak, ['gear Alder-63 ratio', 'gear Al<|>der-63 ratio']),
      'quickfix',
    );
    const bearings = offers.actions.map(one => one.title).filter(one => one.includes('Add a thrust bearing'));
    expect(bearings.map(one => one.split(' for ')[0])).toEqual([
      'Port: Add a thrust bearing',
      'Starboard: Add a thrust bearing',
    ]);
  });
});

describe('a shift cable', () => {
  it('is never touched, whatever is wrong', async () => {
    const cable = (words: string) =>
      changed(TWIN_LINES, ['ahead clutch A', `ahead clutch B { ${words} }`], ['hand right', 'hand left']);
    for (const words of [
      'shift cable psuh for ahead',
      'shift cabel push for ahead',
      'shift cable',
      'shift cable pull for ahead',
    ]) {
      const specs = await Specs.read(cable(words));
      const offers = await Offers.at(cable(words));
      expect(findingsOf(specs.check).length).toBeGreaterThan(0);
      for (const action of offers.actions) {
        const after = offers.after(action.title);
        expect(after.match(/shift cab\w+[^}]*/g), action.title).toEqual([`${words} `]);
      }
    }
  });

  it('is seen where it is written, moved, exchanged or taken away', () => {
    const text = 'gear { shift cable push for ahead  mass 9 kg }';
    const edit = (start: number, end: number, words: string) =>
      touchesShiftCable([{ uri: 'a', start, end, text: words }], () => text);
    expect(edit(7, 12, '')).toBe(true);
    expect(edit(19, 23, 'pull')).toBe(true);
    expect(edit(0, text.length, 'gear')).toBe(true);
    expect(edit(46, 46, '  shift cable pull for ahead')).toBe(true);
    expect(edit(35, 39, 'weight')).toBe(false);
    expect(edit(33, 33, '  layout V-drive')).toBe(false);
  });

  it('is in no offer of any rule', async () => {
    let offered = 0;
    for (const rule of share(RULES, 20)) {
      for (const example of [rule.examples().failing, rule.examples().cannotTell]) {
        if (!example.includes('{')) continue;
        const offers = await Offers.at(example);
        offered += offers.actions.length;
        for (const { title, edit } of offers.actions) {
          expect(title).not.toMatch(/cross|shift cable/i);
          expect(JSON.stringify(edit)).not.toContain('shift cable');
        }
      }
    }
    expect(offered).toBeGreaterThan(times(5, 20));
  });
});

describe('every fix of every rule', () => {
  it('leaves a text that reads well, and asks for nothing twice', async () => {
    for (const rule of share(RULES, 15)) {
      if (!rule.examples().cannotTell.includes('{')) continue;
      const specs = await Specs.read(rule.examples().cannotTell);
      const text = specs.textOf(specs.document.uri.toString());
      for (const finding of findingsOf(specs.check)) {
        const offers = questions(finding, specs.textOf, () => ({
          reads: true,
          settles: () => [],
          mended: 1,
          worse: [],
          ofEntry: () => [],
        }));
        expect(new Set(offers.map(one => one.title)).size, rule.id).toBe(offers.length);
        for (const offer of offers.filter(one => one.title.startsWith('Add '))) {
          const after = await Specs.read(applyEdits(text, offer.edits));
          expect(
            after.check.problems.map(one => one.message),
            `${rule.id}: ${offer.title}`,
          ).toEqual([]);
        }
      }
    }
  });
});

describe('a line that mirrors another', () => {
  it.each([
    ['pitch 27 in', 'pitch <|>32 in', /^\*? ?Change the pitch of Port to 28 1\/2 in: .*; Starboard follows/],
    ['flywheel forward', 'flywheel <|>aft', /^\*? ?Face the flywheel of Port forward: .*; Starboard follows/],
  ])('is put right with it, and by no edit of its own: %s', async (from, to, first) => {
    const { actions, titles } = await Offers.at(FRESH['V-drives'].replace(from, to), 'quickfix');
    expect(actions[0]!.title).toMatch(first);
    expect(titles).not.toMatch(/of Starboard/);
  });
});

describe('a way out that makes something worse', () => {
  it('says so behind what it does, where a menu does not cut it off', async () => {
    const { titles } = await Offers.at(
      FRESH['V-drives'].replace('propeller hand right', 'propeller hand <|>left'),
      'quickfix',
    );
    expect(titles).toMatch(
      /Run Starboard ahead on clutch A; but then "The propellers turn as required" fails\. /,
    );
  });
});
