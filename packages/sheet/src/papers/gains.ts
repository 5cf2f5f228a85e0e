import type { Arrangement, LineAnalysis, ShaftLine } from '@tailshaft/drivetrain';
import { formatValue, percent, renamed, signedPercent, type Value } from '@tailshaft/mechanics';
import { inBoth } from '../both-units.js';
import { type Block, type Table, table } from '../document/blocks.js';
import { quiet, separated, type Text } from '../document/text.js';
import type { Sheet } from '../sheet.js';

interface Gain {
  readonly what: string;
  readonly of: (line: ShaftLine, analysis: LineAnalysis) => Value | undefined;
}

const GAINS: readonly Gain[] = [
  { what: 'Speed at full throttle, predicted', of: (_, { propulsion }) => fullSpeed(propulsion) },
  { what: 'Speed in gear at idle, estimated', of: (_, analysis) => analysis.idleVesselSpeed.value },
  { what: 'Rated power of each engine or motor', of: (_, analysis) => analysis.rated.value?.power },
  { what: 'Rated speed of engine or motor', of: (_, analysis) => analysis.rated.value?.speed },
  { what: 'Fuel at rated power, each engine', of: ({ engine }) => engine?.fuelRate?.value },
  { what: 'Ratio ahead', of: (_, analysis) => analysis.overallRatio('ahead').value },
  { what: 'Shaft speed at rated power', of: (_, one) => atRated(one)?.shaft?.speed },
  { what: 'Shaft torque at rated power', of: (_, one) => atRated(one)?.shaft?.torque },
  {
    what: 'Load at rated speed, of the power at the propeller',
    of: (_, one) => one.propulsion?.value?.demand,
  },
];

const atRated = (one: LineAnalysis) => one.rated.value && one.loads(one.rated.value);

function fullSpeed(propulsion: LineAnalysis['propulsion']): Value | undefined {
  const full = propulsion?.value?.full;
  return full?.applies ? renamed(full.vesselSpeed, 'vessel speed', 'V') : undefined;
}

/** What the work gives: each figure before and after where it is known; a row that nobody knows is told as such. */
export function gainsTable(sheet: Sheet, before: Arrangement | undefined, after: Arrangement): Block {
  const rows = GAINS.map(gain => {
    const [was, is] = [before, after].map(one => (one ? sidesOf(sheet, one, gain) : []));
    return [gain.what, said(was!, before), said(is!, after), change(was!, is!)];
  });
  const columns = [
    { title: 'Figure', wide: true },
    { title: before ? `Before: ${before.name}` : 'Before', numeric: true },
    { title: before ? `After: ${after.name}` : after.name, numeric: true },
    { title: 'Change', numeric: true },
  ];
  const shown: Table = table(
    'What it gives, from the declared facts; predictions are for calm, deep water and replace no trial',
    before ? columns : columns.filter((_, index) => index === 0 || index === 2),
    before ? rows : rows.map(row => [row[0]!, row[2]!]),
  );
  return shown;
}

interface SideValue {
  readonly line: string;
  readonly value: Value | undefined;
}

function sidesOf(sheet: Sheet, arrangement: Arrangement, gain: Gain): SideValue[] {
  return arrangement.lines.map(line => ({ line: line.name, value: gain.of(line, sheet.analysis(line)) }));
}

/** One figure where all lines agree, else one for each. */
function said(sides: readonly SideValue[], arrangement: Arrangement | undefined): Text {
  if (!arrangement) return quiet('—');
  const [first] = sides;
  if (!first) return quiet('no line');
  const same = sides.every(one => one.value?.si === first.value?.si);
  return separated(
    '; ',
    ...(same ? [first] : sides).map(
      ({ line, value }): Text =>
        separated(' ', same ? undefined : `${line}`, value ? figure(value) : quiet('not known')),
    ),
  );
}

function figure(value: Value): Text {
  if (value.dimension === 'ratio')
    return /ratio/.test(value.label) ? `${formatValue(value)}:1` : percent(value.si);
  return inBoth(value);
}

function change(was: readonly SideValue[], is: readonly SideValue[]): Text {
  const [a, b] = [was, is].map(sides => {
    const values = sides.map(one => one.value?.si);
    return values.every(one => one !== undefined && one === values[0]) ? values[0] : undefined;
  });
  if (!a || b === undefined) return quiet('—');
  const share = b / a - 1;
  return Math.abs(share) < 5e-4 ? 'none' : signedPercent(share);
}
