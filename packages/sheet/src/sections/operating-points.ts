import { type LineAnalysis, lineFigures, type ShaftLine } from '@tailshaft/drivetrain';
import { capital, formatValue, percent, type Value } from '@tailshaft/mechanics';
import { type Block, paragraph, section, table } from '../document/blocks.js';
import { quiet, separated, strong, type Text, warning } from '../document/text.js';
import type { Sheet } from '../sheet.js';

/** Speeds and loads at each operating point, to be held against the trial, and what else follows from the line. */
export function operatingSection(sheet: Sheet, line: ShaftLine): Block {
  const analysis = sheet.analysis(line);
  const points = distinct(analysis.operatingPoints);
  return section(`points-${line.path}`, 'Operating points', [
    keyNumbers(sheet, line, analysis),
    points.length > 0
      ? table(
          `${line.name}: numbers to expect on trial, from the declared facts`,
          [
            { title: 'Point' },
            { title: 'Engine', numeric: true },
            { title: 'Shaft', numeric: true },
            { title: 'Shaft torque', numeric: true },
            { title: 'Shaft power', numeric: true },
            { title: 'Tip speed', numeric: true },
          ],
          points.map(point => {
            const shaft = point.stations.at(-1);
            const tell = (value: Parameters<typeof analysis.tell>[0] | undefined): Text =>
              value
                ? sheet.number(
                    value,
                    line.path,
                    value.dimension === 'ratio' ? `${formatValue(value)}:1` : analysis.tell(value),
                  )
                : quiet('—');
            return [
              point.name,
              sheet.number(point.engineSpeed, line.path),
              shaft && shaft.part === line.chain.at(-1) ? tell(shaft.speed) : warning('? ratio'),
              tell(point.shaftTorque),
              tell(point.shaftPower),
              tell(point.tipSpeed),
            ];
          }),
        )
      : paragraph(
          warning('No operating point is known: the engine declares no rating, idle or governed speed.'),
        ),
  ]);
}

/** Ratio, power at the propeller, and the estimate of speed at idle. */
function keyNumbers(sheet: Sheet, line: ShaftLine, analysis: LineAnalysis): Block {
  const rows: Text[][] = [];
  const add = (what: string, derived: LineAnalysis['idleVesselSpeed' | 'propellerPower'] | RatioDerived) => {
    const { value, missing } = derived;
    rows.push([
      what,
      value
        ? sheet.number(
            value,
            line.path,
            value.dimension === 'ratio' ? `${formatValue(value)}:1` : analysis.tell(value),
          )
        : separated(' ', warning('? cannot tell'), missing.length > 0 ? needs(missing) : undefined),
    ]);
  };
  add('Engine speed over shaft speed, ahead', analysis.overallRatio('ahead'));
  add('Engine speed over shaft speed, astern', analysis.overallRatio('astern'));
  add('Power at the propeller at rated speed', analysis.propellerPower);
  add('Estimated vessel speed in gear at idle', analysis.idleVesselSpeed);
  for (const value of lineFigures(analysis))
    rows.push([capital(value.label), sheet.number(value, line.path, figureWords(value))]);
  return table(
    `${line.name}: what follows from the line`,
    [{ title: '' }, { title: 'Value', wide: true }],
    rows,
  );
}

function figureWords(value: Value): string {
  return value.dimension === 'ratio' ? percent(value.si) : formatValue(value);
}

type RatioDerived = ReturnType<LineAnalysis['overallRatio']>;

function needs(missing: readonly { readonly what: string }[]): Text {
  return [quiet('needs '), strong(missing.map(one => one.what).join('; '))];
}

/** A declared curve point at the speed of a named point says nothing more. */
function distinct(points: LineAnalysis['operatingPoints']): LineAnalysis['operatingPoints'] {
  return points.filter(
    one =>
      one.name !== 'full load' ||
      !points.some(
        other =>
          other.name !== 'full load' &&
          other.direction === one.direction &&
          other.engineSpeed.si === one.engineSpeed.si &&
          Math.abs((other.shaftTorque?.si ?? Number.NaN) - (one.shaftTorque?.si ?? Number.NaN)) < 1e-6,
      ),
  );
}
