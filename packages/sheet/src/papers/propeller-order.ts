import type { Arrangement, LineAnalysis, Propeller, ShaftLine, Verdict } from '@tailshaft/drivetrain';
import { formatValue, listed, percent, turnFromAft, type Value } from '@tailshaft/mechanics';
import { PLACE_VOCABULARY, type PropellerFacts, type ShaftFacts } from '@tailshaft/vocabulary';
import { customaryText } from '../both-units.js';
import { type Block, paragraph, type Section, section } from '../document/blocks.js';
import { plainText, quiet, separated, strong, type Text, warning } from '../document/text.js';
import { partRows } from '../sections/parts.js';
import type { Sheet } from '../sheet.js';
import { turnWords } from '../words.js';
import { closing, closingInBrief } from './closing.js';
import { factCells, wantedRows } from './fact-table.js';
import { lastArrangements } from './proposals.js';
import { standsSection } from './stands.js';
import { titleBlock } from './title-block.js';

/** For each propeller maker one page, which stands by itself: what to make, what it must fit, what it is to drive. */
export function propellerOrderBlocks(sheet: Sheet): Block[] {
  const orders = lastArrangements(sheet.vessel).flatMap(after =>
    after.lines.flatMap(line => (line.propeller ? [{ after, line, propeller: line.propeller }] : [])),
  );
  const made = orders.filter(one => one.propeller.change !== 'retained');
  const kept = orders.filter(one => one.propeller.change === 'retained');
  if (made.length === 0)
    return [
      standsSection(sheet, 'propeller-order'),
      paragraph(
        orders.length > 0
          ? `No propeller is ordered: ${listed(kept.map(one => one.line.name))} keep theirs.`
          : 'No propeller is ordered: the spec has none.',
      ),
      ...closing(sheet, 'propeller-order', ['Prepared', 'Propeller maker']),
    ];
  return made.flatMap(({ after, line, propeller }, index) => [
    order(
      sheet,
      after,
      line,
      propeller,
      index > 0,
      made.length > 1 ? `, order ${index + 1} of ${made.length}` : '',
    ),
  ]);
}

function order(
  sheet: Sheet,
  after: Arrangement,
  line: ShaftLine,
  propeller: Propeller,
  newPage: boolean,
  which: string,
): Section {
  const inArrangement = (one: Verdict) =>
    [line.path, after.path].includes(one.subject) ||
    one.subject.startsWith(`${line.path}.`) ||
    !one.subject.includes('.');
  const work = propeller.change === 'modified' ? 'Alter the propeller' : 'Make one propeller';
  return section(
    `order-${line.path}`,
    `${work}: ${line.name}${which}`,
    [
      newPage ? titleBlock(sheet.input, `Propeller order, for the propeller maker${which}`) : undefined,
      standsSection(sheet, 'propeller-order', inArrangement, `${line.path}-`),
      handParagraph(sheet.analysis(line), propeller),
      facts(`${line.path}-make`, 'To be made', toMake(propeller)),
      facts(`${line.path}-fits`, 'What it fits', fits(line)),
      facts(
        `${line.path}-runs`,
        'What it runs with at rated power, worked out; speed and thrust at full throttle',
        runs(sheet, line),
      ),
      ...closingInBrief(sheet, 'propeller-order', ['Ordered by', 'Propeller maker'], `${line.path}-`),
    ],
    { newPage },
  );
}

/** The one thing that nobody can put right afterwards. */
function handParagraph({ hand, rotation }: LineAnalysis, propeller: Propeller): Block {
  const declared = propeller.hand?.value;
  const needed = rotation.neededHand;
  const turn = rotation.ahead === undefined ? undefined : turnWords(turnFromAft(rotation.ahead));
  const agree = hand?.state === 'right' || hand?.state === 'either';
  return paragraph(
    separated(
      ' ',
      strong(`Hand: ${declared ? `${declared}-hand` : 'NOT STATED'}.`),
      turn
        ? `The shaft turns ${turn} seen from aft, looking forward, with the lever ahead.`
        : warning('Cannot tell which way the shaft turns ahead.'),
      needed ? `That needs a ${needed}-hand propeller.` : undefined,
      hand?.state === 'wrong'
        ? warning('The two do not agree: do not make it before this is settled.')
        : agree
          ? undefined
          : warning('Whether the two agree is not established.'),
      'A propeller is right-hand when it turns clockwise, seen from aft, to drive ahead.',
    ),
    hand?.state === 'wrong' ? 'loud' : undefined,
  );
}

/** In pairs beside each other, so that an order keeps to its page. */
function facts(id: string, title: string, rows: readonly (readonly Text[])[]): Block {
  return section(id, title, [
    {
      block: 'terms',
      items: rows.map(([label, written, converted, evidence]) => [
        plainText(label!),
        separated(
          ' ',
          written,
          converted ? `(${plainText(converted)})` : undefined,
          evidence && plainText(evidence) !== '—' ? quiet(plainText(evidence)) : undefined,
        ),
      ]),
    },
  ]);
}

const VOCABULARY = PLACE_VOCABULARY.propeller;
const ASK = 'not stated: agree before the order';

const WANTED: readonly (keyof PropellerFacts)[] = [
  'hand',
  'blades',
  'diameter',
  'pitch',
  'areaRatio',
  'cup',
  'material',
  'toleranceClass',
  'boreTaper',
  'boreLargeEnd',
  'keywayWidth',
  'hubLength',
];

function toMake(propeller: Propeller): Text[][] {
  // Where the maker counts the developed area, nobody asks for the expanded one.
  const fields = WANTED.map((one): keyof PropellerFacts =>
    one === 'areaRatio' && !propeller.areaRatio && propeller.developedAreaRatio ? 'developedAreaRatio' : one,
  );
  const wanted = wantedRows(propeller, fields, VOCABULARY, ASK);
  const told = new Set(wanted.map(row => String(row[0]).toLowerCase()));
  const others = partRows(propeller)
    .filter(row => !told.has(row.label.toLowerCase()))
    .map(row => factCells(row));
  return [...wanted, ...others];
}

/** The end of the shaft that carries it. */
function fits(line: ShaftLine): Text[][] {
  const shaft = line.shafts.at(-1);
  if (!shaft) return [['Shaft', warning('no shaft is declared'), '', quiet('—')]];
  return wantedRows(shaft, END, PLACE_VOCABULARY.shaft, 'not stated: measure');
}

const END: readonly (keyof ShaftFacts)[] = [
  'material',
  'diameter',
  'taper',
  'taperLength',
  'taperLargeEnd',
  'keywayWidth',
];

/** What it is to absorb and how fast it turns. */
function runs(sheet: Sheet, line: ShaftLine): Text[][] {
  const analysis = sheet.analysis(line);
  const rated = analysis.rated.value && analysis.loads(analysis.rated.value)?.shaft;
  const run = analysis.propulsion?.value;
  const full = run?.full.applies ? run.full : undefined;
  const rows: (readonly [string, Value | undefined])[] = [
    ['Rated power', analysis.rated.value?.power],
    ['Rated speed', analysis.rated.value?.speed],
    ['Shaft speed', rated?.speed],
    ['Shaft torque', rated?.torque],
    ['Power at the propeller', analysis.propellerPower.value],
    ['Power asked there', run?.demand],
    ['Vessel speed', full?.vesselSpeed],
    ['Thrust', full?.thrust],
  ];
  return rows.map(([what, value]): Text[] =>
    value
      ? [
          what,
          value.dimension === 'ratio' ? percent(value.si) : formatValue(value),
          customaryText(value) ?? '',
        ]
      : [what, warning('not known'), ''],
  );
}
