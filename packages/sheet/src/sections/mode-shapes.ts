import type { LineCriticals } from '@tailshaft/drivetrain';
import { capital, minusSign, percent } from '@tailshaft/mechanics';
import { type Block, table } from '../document/blocks.js';
import type { Text } from '../document/text.js';

/** How each part swings in the modes that an order reaches, against the engine, and where nothing moves. */
export function modeShapes(name: string, system: NonNullable<LineCriticals['torsional']>): Block {
  const { solution, train, chart } = system;
  const reached = solution.modes.filter(one => chart.frequencyLines.some(line => line.mode === one.number));
  const places = train.model.inertias
    .filter(one => (one.inertia?.si ?? 0) > 0 && !train.along.has(one.name))
    .map(one => one.name);
  return table(
    `${name}: relative amplitude of each part in each mode, at its own speed`,
    [
      { title: 'Mode' },
      { title: 'Frequency', numeric: true },
      ...places.map(one => ({ title: capital(one), numeric: true })),
      { title: 'Nodes in', wide: true },
    ],
    reached.map(({ number, frequency, amplitudes, nodes }): Text[] => [
      String(number),
      `${frequency.si.toFixed(1)} Hz`,
      ...places.map(one => swing(amplitudes.get(one)!)),
      nodes.length === 0 ? 'no spring' : nodes.map(one => nodeWords(one, train)).join('; '),
    ]),
  );
}

/** Where a node lies in the whole spring, a shaft being cut into equal ones. */
function nodeWords(
  { shaft, fraction }: { readonly shaft: string; readonly fraction: number },
  { springs }: NonNullable<LineCriticals['torsional']>['train'],
): string {
  const pieces = [...springs.values()].find(one => one.includes(shaft)) ?? [shaft];
  const share = (pieces.indexOf(shaft) + fraction) / pieces.length;
  return `${shaft.replace(/, part \d+$/, '')}, at ${percent(share)} of its twist`;
}

function swing(amplitude: number): string {
  return minusSign(String(Number(amplitude.toPrecision(2))));
}
