import type { Dimension } from '@tailshaft/mechanics';
import { between, type Range } from './kinds.js';

/** A computed quantity that `require` can be about: its words, where it is worked out, and what its bound may lie between. */
export interface Requirable {
  readonly words: string;
  readonly doc: string;
  readonly example: string;
  /** Kinds of quantity that it may be bounded in, each with what such a bound may lie between. */
  readonly ranges: Partial<Readonly<Record<Dimension, Range>>>;
  /** What may stand behind `at`; the first is meant where nothing does. None: it takes no condition. */
  readonly conditions: readonly string[];
}

const TABLE = [
  {
    words: 'speed',
    doc: 'Speed of the vessel, by the speed method; in gear at idle by pitch and slip.',
    example: 'require speed at least 22 kn at full power',
    ranges: { speed: between('0.3 kn', '120 kn') },
    conditions: ['full power', 'full throttle', 'rated power', 'idle ahead', 'idle'],
  },
  {
    words: 'shaft speed',
    doc: 'Speed of the propeller shaft.',
    example: 'require shaft speed at most 1200 rpm at rated power',
    ranges: { 'rotational speed': between('10 rpm', '8000 rpm') },
    conditions: ['rated power', 'full power', 'idle ahead', 'full throttle'],
  },
  {
    words: 'shaft torque',
    doc: 'Torque in the propeller shaft, the whole output of the engine carried through the stages.',
    example: 'require shaft torque at most 2600 N.m at full power',
    ranges: { torque: between('1 N.m', '10 MN.m') },
    conditions: ['full power', 'rated power', 'peak torque'],
  },
  {
    words: 'tip speed',
    doc: 'Speed of the blade tips by turning alone, at rated shaft speed.',
    example: 'require tip speed at most 40 m/s',
    ranges: { speed: between('2 m/s', '120 m/s') },
    conditions: ['rated power', 'full power'],
  },
  {
    words: 'tip clearance',
    doc: 'Room between blade tip and hull, as a length or as a share of the diameter.',
    example: 'require tip clearance at least 17 %',
    ranges: { length: between('2 mm', '5 m'), ratio: between('1 %', '150 %') },
    conditions: [],
  },
  {
    words: 'bollard thrust',
    doc: 'Thrust of all propellers together with the vessel held, by the B-series and the torque of the engine.',
    example: 'require bollard thrust at least 12 kN',
    ranges: { force: between('50 N', '10 MN') },
    conditions: ['full ahead', 'full astern'],
  },
  {
    words: 'propeller demand',
    doc: 'Power that the propeller absorbs at rated speed over the power that reaches it.',
    example: 'require propeller demand at most 95 %',
    ranges: { ratio: between('20 %', '200 %') },
    conditions: ['rated power'],
  },
  {
    words: 'gear torque margin',
    doc: 'Rating of the gear over the torque that enters it, less one: the least over rated power and peak torque.',
    example: 'require gear torque margin at least 10 %',
    ranges: { ratio: between('0 %', '300 %') },
    conditions: [],
  },
  {
    words: 'trolling speed',
    doc: 'The slowest speed in gear, with a slip device where the gear has one.',
    example: 'require trolling speed at most 2 kn',
    ranges: { speed: between('0.2 kn', '15 kn') },
    conditions: [],
  },
] as const satisfies readonly Requirable[];

export type RequirableWords = (typeof TABLE)[number]['words'];

/** What `require` can be about, in the order of completion. */
export const REQUIRABLE: readonly (Requirable & { readonly words: RequirableWords })[] = TABLE;

export function requirable(words: RequirableWords): Requirable {
  return REQUIRABLE.find(one => one.words === words)!;
}
