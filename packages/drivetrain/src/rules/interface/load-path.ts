import type { Origin } from '@tailshaft/mechanics';
import { uncoveredIn } from '../../analysis/uncovered.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { Context } from '../../judge/context.js';
import { Needs, type Wanted } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import { gapOf } from '../../judge/uncovered.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Role } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import type { Arrangement, ShaftLine } from '../../model/vessel.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { DEFER } from './sources.js';

const MOTOR = `
motor Eider-40 {
  power 40 kW at 3000 rpm
}
`;

const INFO: RuleInfo = {
  id: 'interface/load-path',
  title: 'The line has one mover, one gear and one propeller, or states its modes',
  mistakes: [],
  severity: 'error',
  criterion:
    'number of engines, motors, gears and propellers in the line: one of each, and one mover, or modes that ' +
    'state which movers drive',
  source: {
    title: 'what the checks of this product cover; everything else is withheld',
    confidence: 'derived',
  },
  manual:
    'Every check follows the power from one mover through one gear to one propeller. With two engines, two ' +
    'gears or two propellers in a line, or with an engine and a motor, it would judge by one and ignore the ' +
    'other. Every check that rests on one of them therefore cannot tell, until the line is written with one ' +
    'of each. Where movers drive in turn or together, state the modes of the line, and each mode is judged: ' +
    '"mode harbour { driven by motor }". Give a mover with its own shaft its own shaft line. A line without ' +
    'a mover or propeller, or an arrangement without a line, gives the checks nothing to fail; this finding ' +
    'stays until the missing part is written.',
  caution: `${DEFER} Judge a hybrid line mode by mode: engine alone, motor alone, both together.`,
  noFigure: 'no number is compared',
  noCure: 'The designer must state what drives the line, and through which part.',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, [
      '      gear Alder-63 ratio 2.04:1 ahead clutch B',
      '      engine Kittiwake-9 at medium { flywheel aft }\n      gear Alder-63 ratio 2.04:1 ahead clutch B',
    ]),
    passing: SINGLE_LINE,
    cannotTell: changed(`${MOTOR}${SINGLE_LINE}`, [
      '      gear Alder-63 ratio',
      '      motor Eider-40\n      gear Alder-63 ratio',
    ]),
  })),
};

export const loadPath: Rule = { ...INFO, scope: 'vessel', judgesCover: true, check };

function check({ vessel }: Context): Apart<Verdict> {
  return each(vessel.arrangements, ofArrangement);
}

function ofArrangement(arrangement: Arrangement): Apart<Verdict> | Verdict {
  if (arrangement.lines.length > 0) return each(arrangement.lines, ofLine);
  return absent(arrangement.path, arrangement.nameOrigin, [
    { what: `a shaft line of ${arrangement.name}`, host: arrangement.origin, property: 'shaftline' },
  ]);
}

function ofLine(line: ShaftLine): Apart<Verdict> | Verdict {
  const say = sayFor(INFO, line.path);
  const found = uncoveredIn(line);
  if (found.length === 0) {
    const gaps = ENDS.filter(one => !line.chain.some(part => one.roles.includes(part.role)));
    if (gaps.length > 0)
      return absent(
        line.path,
        line.nameOrigin,
        gaps.map(({ words, roles }) => ({
          what: `${words} of ${line.name}`,
          host: line.origin,
          property: roles[0]!,
        })),
      );
    return say.holds({
      place: line.nameOrigin,
      message: line.mode
        ? `${line.name} says what drives it in each mode.`
        : `${line.name} has one of each part.`,
    });
  }
  return each(found, one => {
    const needs = new Needs();
    needs.take({ value: undefined, missing: [gapOf(one)] });
    const because = `Every check of ${line.name} that depends on ${one.refused ? 'one of them' : 'either'} is withheld`;
    return one.refused
      ? say.fails({
          place: one.at,
          message: `${line.name} has more than one ${one.property}, and the spec does not say ${one.what}. ${because}. ${one.property === 'propeller' ? PAIR : ''}Remove one, or give each its own shaft line.`,
        })
      : say.cannotTell(needs, {
          place: one.at,
          message: `${line.name} has several movers, and the spec does not say ${one.what}. ${because}. State how it runs: mode passage { driven by engine }.`,
        });
  });
}

const PAIR = 'Two that turn against each other on one leg are one propeller of kind counter-rotating pair. ';

/** Where the power of a line comes from and where it goes: without either, most checks have nothing to look at. */
const ENDS: readonly { readonly words: string; readonly roles: readonly Role[] }[] = [
  { words: 'the engine or motor', roles: ['engine', 'motor'] },
  { words: 'the propeller', roles: ['propeller'] },
];

/** What is not there fails nothing, so that its silence would look like soundness. */
function absent(subject: string, place: Origin, gaps: readonly Wanted[]): Verdict {
  const needs = new Needs();
  for (const gap of gaps) needs.miss(gap);
  return sayFor(INFO, subject).cannotTell(needs, {
    place,
    message: `${cannotTellWords(`${subject}: what drives it and what it drives`, gaps)} Checks that need it are withheld.`,
  });
}
