import { uncoveredIn } from '../../analysis/uncovered.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import { gapOf } from '../../judge/uncovered.js';
import type { Verdict } from '../../judge/verdict.js';
import { type Apart, each } from '../../model/reads.js';
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
  title: 'The line has one mover, one gear and one propeller',
  mistakes: [],
  severity: 'error',
  criterion: 'number of engines, motors, gears and propellers in the line: one of each, and one mover',
  source: {
    title: 'what the checks of this product cover; everything else is withheld',
    confidence: 'derived',
  },
  manual:
    'Every check follows the power from one mover through one gear to one propeller. With two engines, two gears or two ' +
    'propellers in a line, or with an engine and a motor, it would judge by one of them and pass the other over. So every ' +
    'check that rests on one of them cannot tell, until the line is written with one of each. Give each mover its own shaft ' +
    'line where it has its own shaft; take the part that is not driving out and judge each way of running by itself.',
  caution: `${DEFER} A hybrid line needs its ways of running judged one by one: by the engine alone, by the motor alone, and together.`,
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

export const loadPath: Rule = { ...INFO, scope: 'line', judgesCover: true, check };

function check({ line }: LineContext): Verdict | Apart<Verdict> | undefined {
  const say = sayFor(INFO, line.path);
  const found = uncoveredIn(line);
  if (found.length === 0) {
    if (line.chain.length === 0) return undefined;
    return say.holds({ place: line.nameOrigin, message: `${line.name} has one of each part.` });
  }
  return each(found, one => {
    const needs = new Needs();
    needs.take({ value: undefined, missing: [gapOf(one)] });
    const because = `No check of ${line.name} that rests on ${one.refused ? 'one of them' : 'either of them'} is made`;
    return one.refused
      ? say.fails({
          place: one.at,
          message: `${line.name} has more than one ${one.property}, and nothing says ${one.what}. ${because}. Take one of them out, or give each its own shaft line.`,
        })
      : say.cannotTell(needs, {
          place: one.at,
          message: `${line.name} has an engine and a motor: nothing says ${one.what}. ${because}. Write a spec for each way of running.`,
        });
  });
}
