import type { ValueKind } from '@tailshaft/vocabulary';
import { unitsOfKind } from '@tailshaft/vocabulary';

/**
 * A value of this form with `unknown` in the place of the whole, of each of its parts, and of all of them. What is not made
 * of parts can only be unknown as a whole; a ratio is one token.
 */
export function withUnknown(kind: ValueKind): readonly string[] {
  const unit = unitsOfKind(kind).find(one => one.symbol !== '1')?.symbol ?? '';
  const spaced = unit && ` ${unit}`;
  switch (kind.form) {
    case 'quantity':
      return unit ? ['unknown', `unknown ${unit}`] : ['unknown'];
    case 'span':
      return [
        'unknown',
        ...alternatives(['4', `4${spaced}`], '..', [`6${spaced}`]),
        `4 .. unknown${spaced}`,
        `unknown .. unknown${spaced}`,
      ];
    case 'point': {
      const [of, at] = [kind.of, kind.at].map(
        dimension => unitsOfKind({ form: 'quantity', dimension })[0]!.symbol,
      );
      return [
        'unknown',
        ...alternatives([`4 ${of}`], 'at', [`6 ${at}`]),
        `unknown ${of} at 6 ${at}`,
        `unknown ${of} at unknown ${at}`,
      ];
    }
    case 'per year':
      return ['unknown', 'unknown per year', 'unknown h per year'];
    case 'ratio':
      return kind.slope ? ['unknown', 'unknown in/ft'] : ['unknown'];
    case 'rotation':
      return ['unknown', ...alternatives(['standard'], 'viewed from', ['aft'])];
    case 'output sense':
      return [
        'unknown',
        ...alternatives(['opposite'], 'seen from', ['aft']),
        'unknown each seen at its own end',
      ];
    case 'layout':
      return ['unknown', 'down-angle unknown', 'unknown 8 deg', 'unknown unknown', 'down-angle unknown deg'];
    case 'bolts':
      return ['unknown', ...alternatives(['4'], 'x', ['1/2 in']), '4 x unknown in'];
    case 'pilot':
      return ['unknown', 'unknown female', 'unknown mm female', '63.5 mm unknown', 'unknown unknown'];
    case 'mesh':
      return [
        'unknown',
        'A unknown with B 47',
        'A 23 with B unknown',
        'unknown 23 with B 47',
        'A 23 with unknown 47',
        'unknown unknown with unknown unknown',
        'sun 30 with planet 20 on unknown',
        'sun unknown with planet 20 internal on unknown',
      ];
    case 'lock':
      return ['unknown', ...alternatives(['sun'], 'with', ['carrier'])];
    case 'shaft criterion':
      return [
        'unknown',
        'class formula factor unknown',
        'unknown factor 5.0',
        'unknown factor unknown',
        'small-craft formula factor unknown "reason"',
        'small-craft formula factor 5.0 unknown',
      ];
    case 'source':
      return ['unknown', '"title" dated unknown', 'unknown dated 2025-02-10', 'unknown dated unknown'];
    case 'word':
    case 'any word':
    case 'name':
    case 'text':
    case 'date':
    case 'variation':
    case 'rule name':
    case 'ranking':
      return ['unknown'];
  }
}

function alternatives(lefts: readonly string[], joined: string, rights: readonly string[]): string[] {
  return [
    ...lefts.map(left => `${left} ${joined} unknown`),
    ...rights.map(right => `unknown ${joined} ${right}`),
    `unknown ${joined} unknown`,
  ];
}
