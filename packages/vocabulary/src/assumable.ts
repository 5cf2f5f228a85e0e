import type { Dimension } from '@tailshaft/mechanics';
import { between, type Range } from './kinds.js';

/** Something whose default `assume` may replace: its words, what it measures, and what it may lie between. */
export interface Assumable {
  readonly words: string;
  readonly dimension: Dimension;
  readonly doc: string;
  /** As it stands behind `assume`. */
  readonly example: string;
  readonly range: Range;
}

export const ASSUMABLE: readonly Assumable[] = [
  {
    words: 'gear efficiency',
    dimension: 'ratio',
    doc: 'Output power over input power of every gear of the vessel.',
    example: 'gear efficiency 97 %',
    range: between('60 %', '100 %'),
  },
  {
    words: 'transfer efficiency',
    dimension: 'ratio',
    doc: 'Output power over input power of every V-drive box, belt or chain stage.',
    example: 'transfer efficiency 98 %',
    range: between('60 %', '100 %'),
  },
  {
    words: 'slip',
    dimension: 'ratio',
    doc: 'Apparent slip of the propeller at idle.',
    example: 'slip 30 %',
    range: between('0 %', '90 %'),
  },
  {
    words: 'flange friction',
    dimension: 'ratio',
    doc: 'Friction between the faces of a flange that is held together by bolts with clearance.',
    example: 'flange friction 0.15',
    range: between('0.02', '0.8'),
  },
  {
    words: 'propeller exponent',
    dimension: 'ratio',
    doc: 'Exponent of the propeller law: absorbed power against shaft speed.',
    example: 'propeller exponent 2.7',
    range: between('1.5', '4'),
  },
  {
    words: 'resistance correlation',
    dimension: 'ratio',
    doc: 'Resistance of the hull as a trial of this vessel gave it, over that of the method.',
    example: 'resistance correlation 1.08',
    range: between('0.5', '2'),
  },
  {
    words: 'engine speed per inch of pitch',
    dimension: 'rotational speed',
    doc: 'Change of full-throttle engine speed for one inch of pitch.',
    example: 'engine speed per inch of pitch 150 rpm',
    range: between('10 rpm', '1000 rpm'),
  },
];
