/** A finding about the text: something that cannot be read as meant, or a revision that leaves a part open. */
export interface TextFinding {
  readonly code: string;
  readonly severity: 'error' | 'warning' | 'note';
  /** A statement that is true when the text is right. */
  readonly title: string;
  readonly manual: string;
  /** Gives this finding and no other; none where no text brings it about. */
  readonly failing?: string;
  /** Gives no finding. */
  readonly passing?: string;
}

const steel = (facts: string) => `shaft material marine-bar "stainless bar" {\n${facts}\n}\n`;
const SOURCE = '  source "Mill certificate 88" dated 2024-02-02';
const bar = (...lines: string[]) => steel([SOURCE, ...lines.map(line => `  ${line}`)].join('\n'));
const BAR = bar('torsional yield 70000 psi');
const transfer = (fact: string) =>
  `transfer Elm-2 "V-drive box" {\n  source "V-box sheet" dated 2024-05-02\n  ${fact}\n}\n`;
const vessel = (...lines: string[]) =>
  `vessel Ternhaven "harbour pilot cutter" {\n${lines.map(line => `  ${line}`).join('\n')}\n}\n`;
const DUTY = 'duty medium { hours 1500 per year  passengers none }';
const VESSEL = vessel(DUTY);
const revised = (...parts: string[]) =>
  vessel(
    'arrangement existing {',
    '  shaftline Centre {',
    '    coupling { kind rigid }',
    '  }',
    '}',
    'arrangement proposed revises existing {',
    '  shaftline Centre {',
    ...parts.map(part => `    ${part}`),
    '  }',
    '}',
  );

const lined = (...parts: string[]) =>
  vessel(
    DUTY,
    'arrangement proposed {',
    '  shaftline Centre {',
    ...parts.map(part => `    ${part}`),
    '  }',
    '}',
  );

/** Every finding of the text that can be given, in the order in which a spec is read. */
export const TEXT_FINDINGS: readonly TextFinding[] = [
  {
    code: 'text/syntax',
    severity: 'error',
    title: 'Every character is allowed in a spec',
    manual:
      'The text holds a character that belongs to no word, number or quoted text, usually an invisible one from copied text. Or a comment or quoted text holds one that makes it look ' +
      'otherwise than it is read, as if the line ended there. Everything around it is still read and checked. Remove the character and write what was meant.',
  },
  {
    code: 'text/brace',
    severity: 'error',
    title: 'Every brace has its counterpart',
    manual:
      'A closing brace without an opening one ends a block too early or not at all, and facts then belong to the wrong part. Remove the brace, or write the opening one that is missing above it.',
    failing: `${BAR}}\n`,
    passing: BAR,
  },
  {
    code: 'text/open-quote',
    severity: 'error',
    title: 'Every quoted text is closed',
    manual:
      'A quoted text ends at the end of its line at the latest, so a missing quote never swallows the lines below. The text is read up to the end of the line. Close the quote.',
    failing: vessel(DUTY, 'hull planing {', '  corrosion protection "anodes, drawing T-140', '}'),
    passing: vessel(DUTY, 'hull planing {', '  corrosion protection "anodes, drawing T-140"', '}'),
  },
  {
    code: 'text/stray',
    severity: 'error',
    title: 'Every statement is known in its block',
    manual:
      'Each block knows its statements: a vessel holds duty, hull, criteria and arrangements, an arrangement holds shaft lines, a shaft line holds parts. An unknown word is not read, nor is the block after it. Use the suggested word, or one from the message.',
    failing: vessel('dutty medium { hours 1500 per year  passengers none }'),
    passing: VESSEL,
  },
  {
    code: 'text/misplaced',
    severity: 'error',
    title: 'Every statement is in its own block',
    manual:
      'The word is a statement of another block: a shaft line belongs inside an arrangement, an arrangement inside a vessel, a catalogue entry at the top of the file. Move it there.',
    failing: `arrangement proposed { }\n${VESSEL}`,
    passing: vessel(DUTY, 'arrangement proposed { }'),
  },
  {
    code: 'text/name-missing',
    severity: 'error',
    title: 'Every entry, vessel, arrangement and line has a name',
    manual:
      'Findings, comparisons and sheets call a part by its name, and a line finds its catalogue entry by it. Write the name after the kind: engine Kittiwake-9, shaftline Port.',
    failing: BAR.replace('marine-bar ', ''),
    passing: BAR,
  },
  {
    code: 'text/block-missing',
    severity: 'error',
    title: 'Every catalogue entry has its facts in braces',
    manual:
      'An entry without its block holds no data: whatever refers to it has none. Write its facts in braces after the name.',
    failing: 'shaft material marine-bar\n',
    passing: BAR,
  },
  {
    code: 'text/import',
    severity: 'error',
    title: 'Every import leads to a spec file',
    manual:
      'An import names a file or a folder relative to the file that it stands in, inside the open workspace, so that a spec means the same on every machine. If nothing is found there, its names stay unknown. Correct the path, or move the catalogue there. A path is written with the large and small letters of the disk, also where the disk would find it under others.',
    failing: `import "no-such-catalogue"\n\n${VESSEL}`,
    passing: VESSEL,
  },
  {
    code: 'text/unknown-name',
    severity: 'error',
    title: 'Every name refers to something that is declared',
    manual:
      'A part, material, clutch, rating, line or rule is called by a name that no visible file declares. Nothing is assumed in its place, and checks that depend on it cannot tell. Correct the name, import the catalogue that holds it, or write the facts in place.',
    failing: vessel(DUTY, 'arrangement proposed revises existng { }', 'arrangement existing { }'),
    passing: vessel(DUTY, 'arrangement existing { }', 'arrangement proposed revises existing { }'),
  },
  {
    code: 'text/cycle',
    severity: 'error',
    title: 'Arrangements revise one another in one direction',
    manual:
      'An arrangement inherits what it does not change from the one that it revises. Two that revise each other have no starting point, so none of their parts is known. Remove "revises" from one of them.',
    failing: vessel(
      DUTY,
      'arrangement existing revises proposed { }',
      'arrangement proposed revises existing { }',
    ),
    passing: vessel(DUTY, 'arrangement existing { }', 'arrangement proposed revises existing { }'),
  },
  {
    code: 'text/unknown-property',
    severity: 'error',
    title: 'Every property is known in its block',
    manual:
      'The words before the value are not a property of this part, often by one letter. The value is not used, and any check that needs it cannot tell. Use the suggested words; completion lists all properties of the block.',
    failing: bar('torsional yeild 70000 psi'),
    passing: BAR,
  },
  {
    code: 'text/mark',
    severity: 'error',
    title: 'A property has words and a value, and no mark between them',
    manual:
      'Properties and values are written without colon, equals sign or comma. Remove the mark; the fix does so.',
    failing: bar('torsional yield 70000 psi,'),
    passing: BAR,
  },
  {
    code: 'text/twice',
    severity: 'error',
    title: 'Every property is given once',
    manual:
      'Two values for one property contradict each other, or will after the next edit. The first is used and the second is marked. Keep the correct one, with its evidence.',
    failing: bar('torsional yield 70000 psi', 'torsional yield 65000 psi'),
    passing: BAR,
  },
  {
    code: 'text/out-of-order',
    severity: 'warning',
    title: 'Every part is written where it stands in the line',
    manual:
      'A line is read from engine to propeller. A shaft that is written ahead of the gear, with none behind it, is taken as the shaft to the propeller: it is then judged with the torque behind the gear. Write the parts in the order of the power flow; where a shaft runs between engine and gear, write the shaft behind the gear as well.',
    failing: lined('shaft { }', 'gear { }'),
    passing: lined('gear { }', 'shaft { }'),
  },
  {
    code: 'text/value-missing',
    severity: 'error',
    title: 'Every property has its value',
    manual:
      'A property without a value is not a fact, and a blank is easily read as a decision. Write the value, or "unknown", which findings and the sheet list as an open question.',
    failing: bar('torsional yield'),
    passing: bar('torsional yield unknown'),
  },
  {
    code: 'text/value',
    severity: 'error',
    title: 'Every value has the form of its property',
    manual:
      'The value is not one of the words that the property takes, or not in its form, such as a number of bolts with their size. The message lists what is allowed.',
    failing:
      'coupling Ash-3 "shaft coupling" {\n  source "Coupling sheet" dated 2024-09-01\n  kind flexibel\n}\n',
    passing:
      'coupling Ash-3 "shaft coupling" {\n  source "Coupling sheet" dated 2024-09-01\n  kind flexible\n}\n',
  },
  {
    code: 'text/number',
    severity: 'error',
    title: 'Every number is finite and has the right sign',
    manual:
      'A number must be finite, and above zero where the quantity cannot be negative, such as diameter, power or mass. Thousands are not set apart (1 750), and a decimal begins with a digit (0.75, not .75), so that no number is misread. Nothing is computed from this value. Write it as measured, or "unknown" until it is known.',
    failing: bar('torsional yield -70000 psi'),
    passing: BAR,
  },
  {
    code: 'text/out-of-range',
    severity: 'error',
    title: 'Every value is within the plausible range of its property',
    manual:
      'The value is outside the plausible range, usually because the unit is wrong: psi written as MPa, or millimetres as inches; or it is a part of what is counted, such as half a blade. Nothing is computed from it. Where the same number in another unit would be plausible, that unit is offered. Read the source again and write the value with its unit.',
    failing: bar('torsional yield 70000 MPa'),
    passing: BAR,
  },
  {
    code: 'text/decimal-comma',
    severity: 'error',
    title: 'Decimals are written with a point',
    manual:
      'A comma is a decimal sign to some readers and a thousands separator to others, so 1,500 is either 1.5 or 1500. No number is read from it. Write a point, or leave the comma out; the fixes offer both where both make sense.',
    failing: bar('torsional yield 70,5 MPa'),
    passing: bar('torsional yield 70.5 MPa'),
  },
  {
    code: 'text/unit',
    severity: 'error',
    title: 'Every unit measures the quantity of its property',
    manual:
      'The value is written as another kind of quantity: an inch mark where no length is meant. Nothing is computed from it. Write the value with a unit of the right kind.',
    failing: transfer('efficiency 1 3/4"'),
    passing: transfer('efficiency 98 %'),
  },
  {
    code: 'text/pressure',
    severity: 'error',
    title: 'Gauge and absolute pressure are not mixed up',
    manual:
      'Gauge pressure is measured from ambient and absolute pressure from vacuum; the two differ by one atmosphere. A stress has no datum. Each property uses one of these. The fix converts the value with a standard atmosphere of 101.325 kPa.',
    failing: bar('torsional yield 70000 psig'),
    passing: BAR,
  },
  {
    code: 'text/range',
    severity: 'error',
    title: 'Every range has both its ends',
    manual:
      'A working range is written with both ends and two dots between them: 20 .. 24 bar. With one end missing, or a hyphen or "to" between them, the range is not used.',
    failing:
      'gear Alder-63 "down-angle reduction gear" {\n  source "Alder 63 technical sheet, issue 4" dated 2025-02-10\n  oil pressure 20 bar\n}\n',
    passing:
      'gear Alder-63 "down-angle reduction gear" {\n  source "Alder 63 technical sheet, issue 4" dated 2025-02-10\n  oil pressure 20 .. 24 bar\n}\n',
  },
  {
    code: 'text/ratio',
    severity: 'error',
    title: 'Every ratio is written as input to output',
    manual:
      'A ratio is input speed to output speed, both above zero: 2.04:1. A bare number leaves the direction open, and some papers state it the other way round. Write it with a colon: 2.04:1, or 1:12 for a taper.',
    failing: 'transfer Elm-2 "V-drive box" {\n  source "V-box sheet" dated 2024-05-02\n  exact 1.214\n}\n',
    passing: 'transfer Elm-2 "V-drive box" {\n  source "V-box sheet" dated 2024-05-02\n  exact 1.214:1\n}\n',
  },
  {
    code: 'text/date',
    severity: 'error',
    title: 'Every date is a day of the calendar',
    manual:
      'Dates are written year-month-day, so that no reader takes the month for the day. An impossible date gives no age of a document.',
    failing: BAR.replace('2024-02-02', '2024-02-31'),
    passing: BAR,
  },
  {
    code: 'text/evidence',
    severity: 'error',
    title: 'Evidence states how a value is known',
    manual:
      'Brackets after a value hold its evidence: one of the known kinds, with a date or document where there is one: [measured 2026-01-14], [drawing "S-201"]. Anything else is not read as evidence, and the value counts as undocumented.',
    failing: bar('torsional yield 70000 psi [certificate]'),
    passing: bar('torsional yield 70000 psi [sheet "Mill certificate 88"]'),
  },
  {
    code: 'text/sentence',
    severity: 'error',
    title: 'Every requirement and assumption states its quantity and value',
    manual:
      'A requirement is a quantity with its bound, an assumption a quantity with its value and a reason. Otherwise there is nothing to compare the vessel with, and the requirement may be taken as checked.',
    failing: vessel(DUTY, 'require speed 22 kn'),
    passing: VESSEL,
  },
  {
    code: 'repower/action-missing',
    severity: 'error',
    title: 'Every part of a revised line states its action',
    manual:
      'The earlier line already has this part. Without an action it is unclear whether the new one replaces it or is fitted beside it, and the old one might be ordered again or left in. Write replace, retain, modify or remove.',
    failing: revised('coupling { kind rigid }'),
    passing: revised('replace coupling { kind rigid }'),
  },
  {
    code: 'repower/line-not-mentioned',
    severity: 'error',
    title: 'A revised arrangement mentions every shaft line that it had',
    manual:
      'A shaft line that the revision does not mention is neither kept nor removed, and no check can rely on it. Describe the line with the parts it retains, or remove it.',
    failing: vessel(
      'arrangement existing {',
      '  shaftline Centre {',
      '    coupling { kind rigid }',
      '  }',
      '}',
      'arrangement proposed revises existing { }',
    ),
    passing: revised('retain coupling'),
  },
  {
    code: 'repower/part-not-mentioned',
    severity: 'error',
    title: 'A revised line mentions every part that it had',
    manual:
      'A part that the revision does not mention is neither kept nor removed, and no check can rely on it. Write retain, modify, replace or remove for each.',
    failing: revised(),
    passing: revised('retain coupling'),
  },
  {
    code: 'repower/nothing-to-keep',
    severity: 'error',
    title: 'Only parts of the earlier line are retained or modified',
    manual:
      'The earlier line has no such part, so nothing can be retained, modified or removed. Write what is fitted with replace, or add the part to the arrangement that is revised.',
    failing: revised('retain coupling', 'retain shaft'),
    passing: revised('retain coupling'),
  },
  {
    code: 'text/too-large',
    severity: 'error',
    title: 'Every file is small enough to be read',
    manual:
      'A file beyond the size limit is not read, so that one file cannot stop the editor: nothing in it is checked. Split it, and import the parts.',
  },
  {
    code: 'text/too-many',
    severity: 'error',
    title: 'All findings of a file are shown',
    manual:
      'A file with very many findings shows only the most serious; the rest are counted. Correct these first, and the rest appear.',
  },
  {
    code: 'internal/check-failed',
    severity: 'error',
    title: 'The checks of this file ran to completion',
    manual:
      'The checks stopped because of a fault in Tailshaft, so no result exists for this file; it is never shown as clean. The log of the language server shows where. Report the fault with the text that causes it.',
  },
];
