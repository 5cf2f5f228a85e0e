import { RATED_AT } from './engine.js';
import { AHEAD_CLUTCH } from './gear.js';
import { between, type Row, ratio, row, word } from './kinds.js';
import { PROPELLER } from './shafting.js';
import { SIDES } from './words.js';

const SIDE: Row<'side', 'side'> = {
  field: 'side',
  words: 'side',
  kind: word(...SIDES),
  doc: 'Side of the vessel, looking forward.',
  example: 'side port',
};

/** Facts that the grammar itself knows: they stand in the header of a part, or by themselves in a line. */
export const HEADER_ROWS = {
  at: RATED_AT,
  ratio: row('ratioUsed', 'ratio', ratio, 'The ratio that is fitted, by its nominal name.', 'ratio 2.04:1', {
    range: between('0.1:1', '30:1'),
    absent: 'the only ratio that the gear offers',
    because: 'a gear that is offered with one ratio has that one',
  }),
  ahead: AHEAD_CLUTCH,
  hand: PROPELLER.rows.find(one => one.field === 'hand')! as Row<'hand', 'hand'>,
  side: SIDE,
};

const BY_FIELD = new Map<string, Row>(Object.values(HEADER_ROWS).map(row => [row.field, row]));

/** The header row that fills this field of the model. */
export function headerRow(field: string): Row | undefined {
  return BY_FIELD.get(field);
}
