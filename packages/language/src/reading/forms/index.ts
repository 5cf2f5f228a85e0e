import type { ValueKind } from '@tailshaft/vocabulary';
import type { Cursor } from '../cursor.js';
import { takePoint, takeSpan } from './compound.js';
import { takeBolts, takeLayout, takeOutputSense, takePilot, takeRotation } from './drivetrain.js';
import { takePerYear, takeQuantity, takeRatio } from './quantity.js';
import { takeShaftCriterion } from './shaft-criterion.js';
import { takeRanking, takeRuleName, takeVariation } from './study.js';
import { takeLock, takeMesh } from './train.js';
import { takeAnyWord, takeDate, takeSource, takeText, takeWord } from './words.js';

/** Reads one value of the given form; what cannot be read leaves a problem or a concern with the cursor. */
export function takeValue(cursor: Cursor, property: string, kind: ValueKind): unknown {
  switch (kind.form) {
    case 'quantity':
      return takeQuantity(cursor, property, kind.dimension, kind.datum);
    case 'span':
      return takeSpan(cursor, property, kind.dimension, kind.datum);
    case 'point':
      return takePoint(cursor, property, kind.of, kind.at);
    case 'ratio':
      return takeRatio(cursor, property, kind.slope);
    case 'per year':
      return takePerYear(cursor, property);
    case 'word':
      return takeWord(cursor, property, kind.words);
    case 'any word':
      return takeAnyWord(cursor, property, kind.what);
    case 'name':
      return takeAnyWord(cursor, property, kind.of === 'clutch' ? 'clutch name' : 'name of a shaft material');
    case 'text':
      return takeText(cursor, property);
    case 'source':
      return takeSource(cursor, property);
    case 'rotation':
      return takeRotation(cursor, property);
    case 'output sense':
      return takeOutputSense(cursor, property);
    case 'layout':
      return takeLayout(cursor, property);
    case 'bolts':
      return takeBolts(cursor, property);
    case 'pilot':
      return takePilot(cursor, property);
    case 'mesh':
      return takeMesh(cursor, property);
    case 'lock':
      return takeLock(cursor, property);
    case 'date':
      return takeDate(cursor, property);
    case 'shaft criterion':
      return takeShaftCriterion(cursor, property);
    case 'variation':
      return takeVariation(cursor);
    case 'rule name':
      return takeRuleName(cursor, property);
    case 'ranking':
      return takeRanking(cursor, property);
  }
}
