import { type Arrangement, balanceChange, heavyChanges, massChange, Needs } from '@tailshaft/drivetrain';
import { formatValue, momentOfMass, type Value } from '@tailshaft/mechanics';
import { customaryText } from '../both-units.js';
import { type Block, paragraph, section, table } from '../document/blocks.js';
import { quiet, strong, type Text, warning } from '../document/text.js';
import { verdictSection } from '../sections/verdict-table.js';
import { workingsSection } from '../sections/workings.js';
import type { Sheet } from '../sheet.js';
import { belongsTo } from './belongs.js';
import { closing } from './closing.js';
import { arrangementWords, lastArrangements } from './proposals.js';
import { standsSection } from './stands.js';

/** For the stability reviewer: what comes aboard, what goes, where it stood, and what that does to the balance. */
export function weightsBlocks(sheet: Sheet): Block[] {
  return [
    standsSection(sheet, 'weights'),
    ...lastArrangements(sheet.vessel).flatMap(after => [
      section(`weights-${after.path}`, `Arrangement ${arrangementWords(after)}`, [
        after.before
          ? changes(sheet, after)
          : paragraph('Nothing comes or goes: the spec has no earlier arrangement to compare with.'),
        after.before ? outcome(sheet, after) : undefined,
        checks(sheet, after),
      ]),
    ]),
    ...closing(sheet, 'weights', ['Prepared', 'Checked', 'Stability reviewer']),
    workingsSection(sheet),
  ];
}

const COLUMNS = [
  { title: 'Line' },
  { title: 'Part', wide: true },
  { title: 'What is done' },
  { title: 'Mass, SI', numeric: true },
  { title: 'Mass, US', numeric: true },
  { title: 'Position, SI', numeric: true },
  { title: 'Position, US', numeric: true },
  { title: 'Moment, SI', numeric: true },
  { title: 'Moment, US', numeric: true },
];

/** What comes or goes; masses that go count negative. Shafts and propellers are not in it. */
function changes(sheet: Sheet, after: Arrangement): Block {
  const rows = heavyChanges(after, sheet.vessel).map(({ name, line, sign, ...part }): Text[] => {
    const mass = part.mass?.value;
    const position = part.position?.value;
    const signed = mass && sign && { ...mass, si: mass.si * sign };
    const moment = signed && position && momentOfMass({ mass: signed, lever: position });
    return [
      line?.name ?? quiet('—'),
      name,
      sign === undefined ? warning('not declared') : sign > 0 ? 'comes aboard' : 'goes ashore',
      signed
        ? formatValue(signed)
        : warning(mass ? `${formatValue(mass)}, aboard or ashore not known` : 'not declared'),
      signed ? (customaryText(signed) ?? '') : '',
      position ? formatValue(position) : warning('not declared'),
      position ? (customaryText(position) ?? '') : '',
      moment ? formatValue(moment) : quiet('—'),
      moment ? (customaryText(moment) ?? '') : '',
    ];
  });
  if (rows.length === 0) return paragraph('No engine, motor, gear, transfer or stated weight comes or goes.');
  return table(
    'Engines, motors, gears, transfers and stated weights that come or go; positions from the declared reference, forward positive',
    COLUMNS,
    rows,
  );
}

function outcome(sheet: Sheet, after: Arrangement): Block {
  const needs = new Needs();
  const change = massChange(after, sheet.vessel, needs);
  const balance = balanceChange(after, sheet.vessel, needs);
  const { hull } = sheet.vessel;
  const rows: (readonly [string, Value | undefined])[] = [
    ['Lightship before', hull?.lightship?.value],
    ['Displacement before', hull?.displacement?.value],
    ['Change of mass', change],
    ['Centre of gravity before, along the vessel', balance?.before ?? hull?.centreOfGravity?.value],
    ['Centre of gravity after, along the vessel', balance?.after],
    [
      'Shift of the centre of gravity',
      balance && { ...balance.after, si: balance.after.si - balance.before.si },
    ],
  ];
  const shown = table(
    'Before and after',
    [
      { title: 'Figure', wide: true },
      { title: 'SI', numeric: true },
      { title: 'US customary', numeric: true },
    ],
    rows.map(([what, value]): Text[] => [
      strong(what),
      value ? formatValue(value) : warning('not known'),
      value ? (customaryText(value) ?? '') : '',
    ]),
  );
  const missing = needs.missing.map(one => one.what);
  return section(`outcome-${after.path}`, 'What it comes to', [
    shown,
    missing.length > 0 ? paragraph([warning('Missing: '), missing.join('; '), '.']) : undefined,
    paragraph(
      'Shafts, propellers, couplings and mounts are not counted, nor are tanks, oil, exhaust and cabling that no weight of the hull states, nor heights: trim and stability are not judged here.',
    ),
  ]);
}

function checks(sheet: Sheet, after: Arrangement): Block | undefined {
  const own = [...sheet.ofArrangement(after), ...after.lines.flatMap(line => sheet.ofLine(line))].filter(
    one => belongsTo('weights', one),
  );
  return own.length > 0 ? verdictSection(sheet, `weight-checks-${after.path}`, after.name, own) : undefined;
}
