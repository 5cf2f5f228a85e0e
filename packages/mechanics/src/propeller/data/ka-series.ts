import type { Term } from '../polynomial.js';

/** One number of a table with what is known of how well it was read. */
export interface SourcedTerm {
  /** Power of the advance ratio J, power of the pitch ratio P/D. */
  readonly j: number;
  readonly p: number;
  readonly value: number;
  readonly confidence: 'two digital copies' | 'from memory';
  /** Where another reading of the digit exists. */
  readonly doubt?: string;
}

/** Coefficients of one propeller in its nozzle: thrust of both together, thrust of the nozzle alone, torque. */
export interface DuctedTable {
  readonly blades: number;
  readonly areaRatio: number;
  readonly thrust: readonly SourcedTerm[];
  readonly nozzleThrust: readonly SourcedTerm[];
  readonly torque: readonly SourcedTerm[];
}

type Row = readonly [p: number, j: number, value: number, doubt?: string];

const sourced = (confidence: SourcedTerm['confidence'], rows: readonly Row[]): readonly SourcedTerm[] =>
  rows.map(([p, j, value, doubt]) => ({ p, j, value, confidence, ...(doubt ? { doubt } : {}) }));

/** The rows in the columns of the other series; blades and area are those of the table. */
export function asTerms(rows: readonly SourcedTerm[]): readonly Term[] {
  return rows.map(({ j, p, value }): Term => [value, j, p, 0, 0]);
}

const TWO = 'two digital copies';
const MEMORY = 'from memory';

const KA_3_65: DuctedTable = {
  blades: 3,
  areaRatio: 0.65,
  thrust: sourced(MEMORY, [
    [0, 0, 0.0281],
    [0, 1, -0.14391],
    [0, 3, -0.383783],
    [1, 1, -0.429709],
    [2, 0, 0.671268],
    [2, 2, 0.286926],
    [3, 0, -0.182294],
    [6, 1, -0.017378],
  ]),
  nozzleThrust: sourced(MEMORY, [
    [0, 0, 0.154],
    [0, 1, 0.11556],
    [0, 2, -0.123761],
    [0, 5, -0.74124],
    [0, 6, 0.646894],
    [1, 0, -0.542674],
    [1, 1, -0.749643],
    [1, 6, -0.162202],
    [2, 0, 0.972338, 'remembered as 0.972388; the other two tables give 0.972338'],
    [2, 2, 1.46857],
    [3, 0, -0.317644],
    [3, 2, -1.08498],
    [3, 6, -0.032298],
    [4, 3, 0.199637],
    [5, 1, 0.060168],
  ]),
  torque: sourced(MEMORY, [
    [0, 0, 0.00626],
    [0, 2, -0.017942],
    [0, 4, -0.008089],
    [1, 2, -0.016644],
    [3, 0, 0.040041],
    [6, 0, -0.00346],
    [6, 1, -0.000674],
    [6, 2, 0.001721],
  ]),
};

const KA_4_70: DuctedTable = {
  blades: 4,
  areaRatio: 0.7,
  thrust: sourced(TWO, [
    [0, 0, 0.03055],
    [0, 1, -0.148687],
    [0, 3, -0.391137],
    [1, 1, -0.432612],
    [2, 0, 0.667657],
    [2, 2, 0.285076],
    [3, 0, -0.172529],
    [6, 1, -0.017293, 'one of the two copies has -0.017283: KT differs by 6e-5 at most'],
  ]),
  nozzleThrust: sourced(TWO, [
    [0, 0, 0.076594],
    [0, 1, 0.075223],
    [0, 2, -0.061881],
    [0, 3, -0.138094],
    [0, 5, -0.37062],
    [0, 6, 0.323447],
    [1, 0, -0.271337],
    [1, 1, -0.687921],
    [1, 2, 0.225189],
    [1, 6, -0.081101],
    [2, 0, 0.666028],
    [2, 2, 0.734285],
    [3, 0, -0.202467],
    [3, 2, -0.54249],
    [3, 6, -0.016149],
    [4, 3, 0.099819],
    [5, 1, 0.030084],
    [6, 2, -0.001876],
  ]),
  torque: sourced(TWO, [
    [0, 0, 0.006735],
    [0, 2, -0.016306],
    [0, 4, -0.007244],
    [1, 2, -0.024012],
    [2, 2, 0.005193],
    [3, 0, 0.046605],
    [4, 0, -0.007366],
    [6, 0, -0.00173],
    [6, 1, -0.000337],
    [6, 2, 0.000861],
  ]),
};

const KA_5_75: DuctedTable = {
  blades: 5,
  areaRatio: 0.75,
  thrust: sourced(TWO, [
    [0, 0, 0.033],
    [0, 1, -0.153463],
    [0, 3, -0.398491],
    [1, 1, -0.435515],
    [2, 0, 0.664045],
    [2, 2, 0.283225],
    [3, 0, -0.162764],
    [6, 1, -0.017208],
  ]),
  nozzleThrust: sourced(TWO, [
    [0, 0, -0.000813],
    [0, 1, 0.034885],
    [0, 3, -0.276187],
    [1, 1, -0.626198],
    [1, 2, 0.450379],
    [2, 0, 0.359718],
    [3, 0, -0.087289],
    [6, 2, -0.003751],
  ]),
  torque: sourced(TWO, [
    [0, 0, 0.00721],
    [0, 2, -0.01467],
    [0, 4, -0.006398],
    [1, 2, -0.03138],
    [2, 2, 0.010386],
    [3, 0, 0.053169],
    [4, 0, -0.014731],
  ]),
};

/**
 * Ka propellers in nozzle 19A: K = Σ C (P/D)^x J^y, with KT of propeller and nozzle together. The printed tables were not at
 * hand. Of 4-70 and 5-75 there are two digital copies, which agree in every term but one, marked: hkroeger/insightcae,
 * share/reference_data, and rfdavila/Optimizer-Marinen-Propeller, core/biblioteca_coeficientes.py, which names Birk,
 * Fundamentals of Ship Hydrodynamics (2019), as its print. Of 3-65 there is none, and half the sum of 3-65 and 5-75 gives
 * 4-70 in every term.
 */
export const KA_TABLES: readonly DuctedTable[] = [KA_3_65, KA_4_70, KA_5_75];
