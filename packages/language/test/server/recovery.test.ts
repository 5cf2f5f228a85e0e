import { describe, expect, it } from 'vitest';
import { SPEC, withChange } from './specs.js';
import { listed, Testbed } from './testbed.js';

/** Findings before and behind the place that is typed at: they must stay, whatever is being typed. */
const BEFORE = 'propeller Tern-3 {\n  source "Tern 3 sheet" dated 2025-03-01\n  diameter 26\n}\n\n';
const BEHIND = '\nvessel Skua {\n  duty light\n  certificate { power 440 }\n}\n';

const STATES: readonly (readonly [name: string, from: string, to: string])[] = [
  ['a value missing', 'low idle 650 rpm', 'low idle'],
  ['a property half typed', '  low idle 650 rpm', '  low idle 650 rpm\n  asp'],
  ['the name of a property half typed in two words', '  low idle 650 rpm', '  low'],
  ['a closing brace missing', '  housing SAE-3\n}', '  housing SAE-3\n'],
  ['a closing brace missing inside', '    rated medium 0.18 kW/rpm\n  }', '    rated medium 0.18 kW/rpm\n'],
  [
    'a closing brace of a line missing',
    'area ratio 0.72 }\n    }\n    shaftline',
    'area ratio 0.72 }\n    shaftline',
  ],
  ['an opening brace missing', 'shaftline Port {', 'shaftline Port'],
  ['an opening brace of an entry missing', 'diesel" {', 'diesel"'],
  ['a string open', '"six-cylinder diesel" {', '"six-cylinder diesel {'],
  ['a string open in a fact', 'source "Rowan 7 sheet" dated', 'source "Rowan 7 sheet dated'],
  ['a unit missing', 'low idle 650 rpm', 'low idle 650'],
  ['a unit half typed', 'low idle 650 rpm', 'low idle 650 rp'],
  ['a keyword misspelt', 'vessel Ternhaven', 'vesel Ternhaven'],
  ['a property misspelt', 'fuel diesel', 'feul diesel'],
  ['a word of a value misspelt', 'fuel diesel', 'fuel disel'],
  ['a statement misspelt', '    shaftline Port {', '    shaftlin Port {'],
  ['a role misspelt', '      gear Alder-63', '      gaer Alder-63'],
  ['a comment open', '  low idle 650 rpm', '  low idle 650 rpm /* see the plate'],
  ['a comment open on a line of its own', '  low idle 650 rpm', '  /* as told\n  low idle 650 rpm'],
  ['a stray mark', 'fuel diesel', 'fuel diesel @'],
  ['a stray mark between statements', 'gear Rowan-7', '@\ngear Rowan-7'],
  ['an extra closing brace', '  housing SAE-3\n}', '  housing SAE-3\n}\n}'],
  ['an extra closing brace inside a vessel', '    shaftline Starboard {', '    }\n    shaftline Starboard {'],
  ['an extra closing brace inside an entry', '  ratio 2.52:1', '  }\n  ratio 2.52:1'],
  ['a name missing', 'gear Rowan-7 "small', 'gear "small'],
  ['a name of a vessel missing', 'vessel Ternhaven', 'vessel'],
  ['a name of a line missing', 'shaftline Port {', 'shaftline {'],
  ['an evidence mark open', 'diameter 65 mm [drawing] }', 'diameter 65 mm [drawing }'],
  ['an evidence mark closed twice', 'diameter 65 mm [drawing] }', 'diameter 65 mm [drawing]] }'],
  ['a closing bracket in a word', 'low idle 650 rpm', 'low idle 650 rpm ]'],
  ['a closing bracket among the parts', '      shaft {', '      ]\n      shaft {'],
  [
    'what becomes of a part, and not of which',
    'area ratio 0.72 }\n    }\n    shaftline',
    'area ratio 0.72 }\n      retain\n    }\n    shaftline',
  ],
  [
    'what becomes of a part half typed',
    'area ratio 0.72 }\n    }\n    shaftline',
    'area ratio 0.72 }\n      retain sha\n    }\n    shaftline',
  ],
  ['a range half typed', '  slip device offered', '  slip device offered\n  oil pressure 20 ..'],
  ['a range of one end', '  slip device offered', '  slip device offered\n  oil pressure 20 bar'],
  ['a number only', '  slip device offered', '  slip device offered\n  12'],
  ['a point half typed', 'power 300 kW at 2300 rpm', 'power 300 kW at'],
  ['a part half typed', '      shaft {', '      gear\n      shaft {'],
  ['a clutch not named', 'ahead clutch A\n', 'ahead clutch\n'],
  [
    'a line outside of an arrangement',
    '  arrangement proposed',
    '  shaftline Centre { }\n  arrangement proposed',
  ],
  [
    'a part outside of a line',
    '  arrangement proposed',
    '  gear Alder-63 ratio 2.04:1\n  arrangement proposed',
  ],
  [
    'a catalogue entry inside a vessel',
    '  arrangement proposed',
    '  gear Tern-5 {\n    mass 9 kg\n  }\n  arrangement proposed',
  ],
  ['a part beside the lines', '    shaftline Starboard', '    retain shaft\n    shaftline Starboard'],
  [
    'a requirement inside a line',
    '      gear Alder-63 ratio 2.04:1 ahead clutch B',
    '      require propellers turn outward\n      gear Alder-63 ratio 2.04:1 ahead clutch B',
  ],
  [
    'criteria inside an arrangement',
    '    shaftline Starboard',
    '    criteria { gear torque margin at least 10 % }\n    shaftline Starboard',
  ],
  ['an import inside a vessel', '  arrangement proposed', '  import "parts"\n  arrangement proposed'],
  ['a statement half typed', '  arrangement proposed', '  require speed at\n  arrangement proposed'],
];

const bed = new Testbed();

async function findings(text: string): Promise<string[]> {
  const document = await bed.open(text);
  return listed(document.diagnostics).split('\n').filter(Boolean);
}

describe('half-typed text', () => {
  it.each(STATES)('%s: one diagnostic, and all else keeps its findings', async (_name, from, to) => {
    const found = await findings(BEFORE + withChange(from, to) + BEHIND);
    const elsewhere = found.filter(one => /"(?:diameter|power) \d+" has no unit/.test(one));
    expect(elsewhere).toHaveLength(2);
    const own = found.filter(one => !elsewhere.includes(one));
    expect(own, own.join('\n')).toHaveLength(1);
  });

  it('has no more to say of the sound spec', async () => {
    expect(await findings(SPEC)).toEqual([]);
    expect(await findings(BEFORE + SPEC + BEHIND)).toHaveLength(2);
  });

  it('says each mistake in words that help', async () => {
    const said: Record<string, string> = {};
    for (const [name, from, to] of STATES) said[name] = (await findings(withChange(from, to))).join('\n');
    expect(said).toMatchInlineSnapshot(`
      {
        "a catalogue entry inside a vessel": "61:3 error text/misplaced: "gear" does not belong in a vessel: a part goes in its line, arrangement proposed { shaftline Port { gear ... } }, and a catalogue entry goes outside every vessel.",
        "a closing brace missing": "2:42 error text/syntax: This block is not closed: a closing brace } is missing. It is assumed where the block seems to end.",
        "a closing brace missing inside": "28:30 error text/syntax: This block is not closed: a closing brace } is missing. It is assumed where the block seems to end.",
        "a closing brace of a line missing": "62:20 error text/syntax: This block is not closed: a closing brace } is missing. It is assumed where the block seems to end.",
        "a closing bracket among the parts": "65:7 error text/syntax: This ] closes nothing and is ignored.",
        "a closing bracket in a word": "14:20 error text/syntax: This ] closes nothing and is ignored.",
        "a clutch not named": "64:34 error text/value-missing: "ahead clutch" has no value yet: for example "ahead clutch A".",
        "a comment open": "14:20 error text/syntax: This comment is not closed: */ is missing. Reading continues after this line.",
        "a comment open on a line of its own": "14:3 error text/syntax: This comment is not closed: */ is missing. Reading continues after this line.",
        "a keyword misspelt": "59:1 error text/stray: Unknown statement "vesel". Did you mean "vessel"?",
        "a line outside of an arrangement": "61:3 error text/misplaced: "shaftline" does not belong in a vessel: write it beside the other lines, arrangement proposed { shaftline Port { ... } }.",
        "a name missing": "40:1 error text/name-missing: A catalogue gear needs a name: gear My-gear { ... }.",
        "a name of a line missing": "62:5 error text/name-missing: A shaft line needs a name: shaftline Port { ... }.",
        "a name of a vessel missing": "59:1 error text/name-missing: A vessel needs a name: vessel Name { ... }.",
        "a number only": "28:3 error text/unknown-property: "12" is not a property of a gear.",
        "a part beside the lines": "68:5 error text/misplaced: "retain" does not belong in an arrangement: write it in its line, arrangement proposed { shaftline Port { ... } }.",
        "a part half typed": "65:7 error text/value-missing: State which gear: the name of a catalogue entry, or its facts in braces: gear { ... }.",
        "a part outside of a line": "61:3 error text/misplaced: "gear" does not belong in a vessel: a part goes in its line, arrangement proposed { shaftline Port { gear ... } }, and a catalogue entry goes outside every vessel.",
        "a point half typed": "9:18 error text/value-missing: "power, at" needs a rotational speed: for example "power ... at 100 rpm", or "unknown" until it is known.",
        "a property half typed": "15:3 error text/unknown-property: "asp" is not a property of an engine. Did you mean "aspiration"?",
        "a property misspelt": "5:3 error text/unknown-property: "feul" is not a property of an engine. Did you mean "fuel"?",
        "a range half typed": "28:19 error text/value-missing: "oil pressure" needs a pressure: for example "oil pressure 100 MPa", or "unknown" until it is known.",
        "a range of one end": "28:16 error text/range: "oil pressure" is a range: write both ends with two dots between, as in "20 .. 24 bar".",
        "a requirement inside a line": "70:7 error text/misplaced: "require" does not belong in a shaft line: write it in the vessel, outside of its arrangements.",
        "a role misspelt": "64:7 error text/stray: Unknown statement "gaer". Did you mean "gear"?",
        "a statement half typed": "61:3 error text/sentence: Write a requirement as a quantity and its bound: require speed at least 22 kn at full power, or require propellers turn outward.",
        "a statement misspelt": "62:5 error text/stray: Unknown statement "shaftlin". Did you mean "shaftline"?",
        "a stray mark": "5:15 error text/unknown-property: "@" is not a property of an engine.",
        "a stray mark between statements": "40:1 error text/stray: Unknown statement "@". A file may contain: import, engine, motor, gear, transfer, coupling, shaft material, propeller, practice, vessel.",
        "a string open": "2:20 error text/syntax: The closing quote is missing, and with it the rest of this line. The block is assumed to open here.",
        "a string open in a fact": "41:10 error text/open-quote: The closing quote is missing: the text is read up to the end of the line.",
        "a unit half typed": "14:12 error units/unit-needed: "rp" in "low idle 650 rp" is not a known unit. Nothing is computed with it until its unit is there.",
        "a unit missing": "14:12 error units/unit-needed: "low idle 650" has no unit. Nothing is computed with it until its unit is there.",
        "a value missing": "14:7 error text/value-missing: "low idle" needs a rotational speed: for example "low idle 100 rpm", or "unknown" until it is known.",
        "a word of a value misspelt": "5:8 error text/value: "fuel" cannot be "disel": it is petrol, diesel or gas.",
        "an evidence mark closed twice": "65:73 error text/syntax: This ] closes nothing and is ignored.",
        "an evidence mark open": "65:64 error text/syntax: This evidence is not closed: a ] is missing, as in [measured 2026-01-14].",
        "an extra closing brace": "19:1 error text/brace: This closing brace has no opening brace: remove it, or add the opening one above.",
        "an extra closing brace inside a vessel": "68:5 error text/syntax: This closing brace is one too many and is ignored.",
        "an extra closing brace inside an entry": "33:3 error text/syntax: This closing brace is one too many and is ignored.",
        "an import inside a vessel": "61:3 error text/misplaced: "import" does not belong in a vessel: imports go at the beginning of the file.",
        "an opening brace missing": "62:5 error text/syntax: An opening brace { is missing at the end of this line. It is assumed there.",
        "an opening brace of an entry missing": "2:1 error text/syntax: An opening brace { is missing at the end of this line. It is assumed there.",
        "criteria inside an arrangement": "68:5 error text/misplaced: "criteria" does not belong in an arrangement: write it in the vessel, outside of its arrangements.",
        "the name of a property half typed in two words": "14:3 error text/unknown-property: "low" is not a property of an engine. Did you mean "low idle"?",
        "what becomes of a part half typed": "67:14 error text/syntax: State which part to retain: retain gear, for example.",
        "what becomes of a part, and not of which": "68:5 error text/syntax: State which part to retain: retain gear, for example.",
      }
    `);
  });
});
