import { applyEdits } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { catalogueEntries } from '../support/examples.js';
import { offeredFor } from './offered.js';

const NAMES = /^\w+ (Kittiwake-9|Hornbeam-90|Sedge-140|Sedge-J60|duplex-stainless|austenitic-stainless)\b/;
const ENTRIES = catalogueEntries()
  .map(one => one.text)
  .filter(text => NAMES.test(text.replace('shaft material', 'material')))
  .join('\n');

/** A damper in front of the gear and a joint behind it, both kept; the joint is bored for another shaft. */
const spec = (proposed: string, end = '') => `${ENTRIES}
vessel Ternhaven {
  arrangement existing {
    shaftline Centre {
      engine Kittiwake-9 at medium { flywheel aft }
      coupling Sedge-140
      gear Hornbeam-90 ratio 3.95:1 ahead clutch A
      coupling Sedge-J60
      shaft { material austenitic-stainless  diameter 80 mm${end} }
      propeller { hand right }
    }
  }
  arrangement proposed revises existing {
    shaftline Centre {
${proposed}
    }
  }
}
`;

const lines = (...all: string[]) => all.map(one => `      ${one}`).join('\n');

async function boredAnew(text: string, which = /Fit a coupling like Sedge-J60/) {
  const offered = await offeredFor(text);
  const own = offered.filter(
    one =>
      one.finding.code === 'shafting/coupling-bore' &&
      one.finding.verdict?.outcome === 'fails' &&
      one.finding.verdict.subject.startsWith('proposed'),
  );
  const cure = own.flatMap(one => one.cures).find(one => which.test(one.title));
  const after = cure && applyEdits(text, cure.edits);
  const line = after && /revises existing \{\n {4}shaftline Centre \{\n([\s\S]*?)\n {4}\}/.exec(after)?.[1];
  return { title: cure?.title, line };
}

describe('another coupling in the place of one that is kept with a second', () => {
  it.each([
    [
      lines('retain engine', 'retain coupling', 'retain gear', 'retain shaft', 'retain propeller'),
      lines(
        'retain engine',
        'retain coupling Sedge-140',
        'retain gear',
        'replace coupling Sedge-J60-wanted',
        'retain shaft',
        'retain propeller',
      ),
    ],
    [
      lines('retain engine', 'retain gear', 'retain coupling', 'retain shaft', 'retain propeller'),
      lines(
        'retain engine',
        'retain gear',
        'retain coupling Sedge-140',
        'replace coupling Sedge-J60-wanted',
        'retain shaft',
        'retain propeller',
      ),
    ],
    [
      lines(
        'retain engine',
        'retain coupling Sedge-140',
        'retain coupling Sedge-J60',
        'retain gear  retain shaft',
        'retain propeller',
      ),
      lines(
        'retain engine',
        'retain coupling Sedge-140',
        'retain gear',
        'replace coupling Sedge-J60-wanted  retain shaft',
        'retain propeller',
      ),
    ],
  ])('is written where that stood, and the other stays kept', async (before, after) => {
    expect((await boredAnew(spec(before))).line).toBe(after);
  });
});

describe('a half-coupling for a shaft whose keyway nobody measured', () => {
  const kept = lines('retain engine', 'retain coupling', 'retain gear', 'retain shaft', 'retain propeller');

  it('is bored for it, and its key stays an open question, as the title says', async () => {
    expect((await boredAnew(spec(kept))).title).toBe(
      'Fit a coupling like Sedge-J60 with bore 80 mm, key width unknown; but then "A changed drivetrain has a torsional statement" fails. To be found, and its data sheet must confirm it; key width of coupling Sedge-J60-wanted and key width of the shaft in its coupling stay open questions (changes the design)',
    );
  });

  it('is keyed as the shaft is where that is known, and nothing stays open', async () => {
    const { title } = await boredAnew(spec(kept, '  coupling key width 20 mm'));
    expect(title).toBe(
      'Fit a coupling like Sedge-J60 with bore 80 mm, key width 20 mm; but then "A changed drivetrain has a torsional statement" fails. To be found, and its data sheet must confirm it (changes the design)',
    );
  });
});
