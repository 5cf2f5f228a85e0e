import { RULES } from '@tailshaft/drivetrain';
import fc from 'fast-check';
import { EmptyFileSystem, type ParseResult, URI } from 'langium';
import { describe, expect, it } from 'vitest';
import { times } from '../../../../tests/support/share.js';
import { applyEdits } from '../../src/edit/index.js';
import { formatEdits, formatText, sameWords } from '../../src/format/format-text.js';
import { outlineOf } from '../../src/format/outline.js';
import { printText } from '../../src/format/print.js';
import type { Document } from '../../src/generated/ast.js';
import { type DocumentReading, readDocument } from '../../src/reading/document.js';
import { createTailshaftCore } from '../../src/services/module.js';
import { piecesOf } from '../../src/text/tokens.js';

const SAMPLE = `import "parts"
/// A pilot cutter.
vessel Ternhaven "cutter" { // the one at the quay
  duty medium { hours 1500 per year  passengers none }

  /* as built */
  hull planing { waterline length 10.9 m  displacement 11.8 t [drawing "S-1"] }
  arrangement a { shaftline Port { engine E at medium { flywheel aft }  gear G ratio 2:1 ahead clutch A
      propeller hand left [plate] { blades 4 }
      shaft { diameter 1 3/4 in [measured 2026-01-14]
        material steel } // bar
    }
    shaftline Starboard mirrors Port { ahead clutch B  propeller hand right }
    reason for inward turning "tried"
  }
  require speed at most 5.0 kn at idle ahead "note 3"
  accept a/b on Port.shaft because "holds"
    by "surveyor" dated 2026-03-02
  revision B dated 2026-03-02 "ratio"
}
gear G "gear" {
  oil pressure 20 .. 24 bar
  input rotation either by pump index
  ratio 2:1 exact 2.01:1 {
    clutch A output same ahead continuous // ahead
    clutch B output opposite
    rated medium 0.112 kW/rpm from 1000 .. 2600 rpm { for diesel }
    train { mesh A 23 with B 47 }
  }
  output flange { bolts 4 x 1/2 in  pilot 63.5 mm female }
}
`;

const SEEDS = [SAMPLE, ...RULES.map(rule => rule.examples().failing)];
const SCRAPS = [
  '\n',
  '\r\n',
  '  ',
  ' ',
  '{',
  '}',
  '{ }',
  '[',
  ']',
  '"',
  '//',
  '// c\n',
  '/* c */',
  '/*',
  '/// d\n',
  '\n\n\n',
  ',',
  '..',
  '5',
  'kW',
  'hand',
  'clutch B',
  'output',
  'gear X',
  'shaft',
  'unknown',
  '[plate]',
  '2:1',
  '€',
  '\t',
  '/',
  '-',
  'é',
  '\u2028',
];

interface Change {
  readonly at: number;
  readonly length: number;
  readonly put: string;
}

const change: fc.Arbitrary<Change> = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.oneof(fc.constant(0), fc.nat(3), fc.nat(40)),
  put: fc.oneof(fc.constantFrom(...SCRAPS), fc.constant('')),
});

const mutated = fc
  .tuple(fc.constantFrom(...SEEDS), fc.array(change, { maxLength: 4 }), fc.constantFrom('\n', '\r\n'))
  .map(([seed, changes, eol]) =>
    changes
      .reduce((text, one) => {
        const at = Math.floor(one.at * text.length);
        return text.slice(0, at) + one.put + text.slice(at + one.length);
      }, seed)
      .replace(/\r\n|\n/g, eol),
  );

const RUNS = Number(process.env.FUZZ_RUNS ?? times(40, 400));

describe('the formatter, given texts with random damage', () => {
  it('prints the same tokens and comments, and prints them the same again', () => {
    fc.assert(
      fc.property(mutated, text => {
        expect(piecesOf(print(text)).map(piece => piece.text)).toEqual(
          piecesOf(text).map(piece => piece.text),
        );
        const once = formatText(text);
        expect(formatText(once)).toBe(once);
      }),
      { numRuns: RUNS },
    );
  });

  it('changes no meaning and no complaint', () => {
    fc.assert(
      fc.property(mutated, text => {
        expect(meaning(formatText(text))).toEqual(meaning(text));
      }),
      { numRuns: RUNS },
    );
  });

  it('keeps the line ends of the text, and its first and last character', () => {
    fc.assert(
      fc.property(mutated, text => {
        const after = formatText(text);
        if (!/(^|[^\r])\n|\r(?!\n)/.test(text)) expect(after).not.toMatch(/(^|[^\r])\n|\r(?!\n)/);
        if (!text.includes('\r')) expect(after).not.toContain('\r');
        expect(/[\r\n]$/.test(after)).toBe(/[\r\n]\s*$/.test(text) && after !== '');
      }),
      { numRuns: RUNS },
    );
  });

  it('can be said as edits of the space between tokens', () => {
    fc.assert(
      fc.property(mutated, text => {
        const after = formatText(text);
        expect(applyEdits(text, formatEdits(text, after))).toBe(after);
      }),
      { numRuns: RUNS },
    );
  });
});

describe('the tokens that the formatter sees', () => {
  it('are those of the parser', () => {
    fc.assert(
      fc.property(mutated, text => {
        const lexed = core.language.parser.Lexer.tokenize(text);
        const real = lexed.tokens.filter(token => !token.isInsertedInRecovery).map(token => token.image);
        const unknown = lexed.errors.length > 0;
        if (!unknown)
          expect(
            piecesOf(text)
              .filter(piece => !piece.comment)
              .map(piece => piece.text),
          ).toEqual(real);
      }),
      { numRuns: RUNS },
    );
  });

  it('count as the same when only space differs', () => {
    expect(sameWords('a 1  // b \n', 'a\n1 // b')).toBe(true);
    expect(sameWords('a 1', 'a1')).toBe(false);
  });
});

const core = createTailshaftCore(EmptyFileSystem);

function parse(text: string): { parsed: ParseResult; reading: DocumentReading } {
  const uri = URI.parse('memory:/fuzz.shaft');
  const parsed = core.shared.workspace.LangiumDocumentFactory.fromString(text, uri).parseResult;
  return { parsed, reading: readDocument(parsed.value as Document, uri.toString(), text) };
}

/** The formatted text without the last check, which would hide a mistake. */
function print(text: string): string {
  const { parsed, reading } = parse(text);
  return printText(text, outlineOf(parsed, reading), /\r\n|\r|\n/.exec(text)?.[0] ?? '\n');
}

const WHERE = ['origin', 'host', 'place', 'namePlace', 'whole', 'start', 'end', 'line', 'unread', 'on'];

/** Everything that a text says, without where it stands. */
function meaning(text: string) {
  const { parsed, reading } = parse(text);
  const said = JSON.stringify([reading.imports, reading.entries, reading.vessels], (key, value) =>
    WHERE.includes(key) && typeof value !== 'string' ? undefined : value,
  );
  const complaints = [...reading.problems, ...parsed.parserErrors, ...parsed.lexerErrors].map(
    one => one.message,
  );
  return { said, complaints };
}
