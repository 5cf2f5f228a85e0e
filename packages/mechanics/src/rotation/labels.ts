import type { Source } from '../core/source.js';
import { type FlywheelFacing, otherTurn, type Turn, type ViewPoint } from './sense.js';

/** One crankshaft's rotation in the words of one convention. */
export interface RotationLabel {
  readonly convention: string;
  readonly view: ViewPoint;
  readonly label: string;
  readonly source: Source;
}

/**
 * The same rotation in every convention a data sheet may use. `atFlywheel` is the turn seen at the flywheel end;
 * give the facing too to get it as seen in the vessel.
 */
export function relabel(atFlywheel: Turn, facing?: FlywheelFacing): RotationLabel[] {
  const counter = atFlywheel === 'counter-clockwise';
  const front = otherTurn(atFlywheel);
  const labels: RotationLabel[] = [
    {
      convention: 'SAE J824',
      view: 'flywheel',
      label: `${counter ? 'standard' : 'opposite'} (${atFlywheel})`,
      source: { title: 'SAE J824, Engine Rotation and Cylinder Numbering', confidence: 'published' },
    },
    {
      convention: 'US inboard trade',
      view: 'flywheel',
      label: counter ? 'LH, standard' : 'RH, opposite, reverse',
      source: { title: 'US inboard trade usage', confidence: 'common practice' },
    },
    {
      convention: 'ISO 1204',
      view: 'flywheel',
      label: `${atFlywheel} (${counter ? 'left' : 'right'})`,
      source: {
        title:
          'ISO 1204, Reciprocating internal combustion engines: designation of the direction of rotation',
        year: 1990,
        confidence: 'published',
      },
    },
    {
      convention: 'DIN 73021',
      view: 'front',
      label: front === 'clockwise' ? 'right (clockwise)' : 'left (counter-clockwise)',
      source: {
        title: 'DIN 73021, Bezeichnung der Drehrichtung von Kraftfahrzeugmotoren',
        confidence: 'published',
      },
    },
    {
      convention: 'front end of the engine',
      view: 'front',
      label: front,
      source: { title: 'the other end of the same shaft', confidence: 'derived' },
    },
  ];
  if (facing) {
    labels.push({
      convention: 'in the vessel, from aft looking forward',
      view: 'aft',
      label: facing === 'aft' ? atFlywheel : front,
      source: { title: 'the viewing point and the mounting', confidence: 'derived' },
    });
  }
  return labels;
}
