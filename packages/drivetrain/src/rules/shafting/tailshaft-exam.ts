import { newWord } from '@tailshaft/vocabulary';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { type Apart, each } from '../../model/reads.js';
import { changed, REPOWER } from '../example-specs.js';
import { examples } from '../examples.js';
import { writeInPlace } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER, PRACTICE } from './sources.js';

const WITH_EXAM = changed(REPOWER, [
  'diameter 65 mm [drawing] }',
  'diameter 65 mm [drawing]  examined 2023-09-10  examination due 2028-09-10 }',
]);

const INFO: RuleInfo = {
  id: 'shafting/tailshaft-exam',
  title: 'A retained shaft that falls due is examined in this work',
  mistakes: ['L23'],
  severity: 'note',
  criterion: 'date of the next tailshaft examination against the year ahead',
  source: PRACTICE,
  manual:
    'With engine and gear out, the shaft is half drawn already. A shaft due for examination within the year is ' +
    'cheaper to draw now than at the next haul-out, and pits, keyway cracks and a bad taper are found before ' +
    'they carry the new torque. Write "examination in this work yes" and put it into the scope, or accept the ' +
    'date.',
  caution:
    `${DEFER} Intervals depend on the number of shafts, material, and design of keyway and taper; the ` +
    'certificate states the date.',
  noFigure: 'a record or its dates',
  examples: examples(() => ({
    failing: changed(WITH_EXAM, ['examination due 2028-09-10', 'examination due 2026-05-10']),
    passing: WITH_EXAM,
    cannotTell: changed(WITH_EXAM, ['examination due 2028-09-10', 'examination due unknown']),
  })),
};

export const tailshaftExam: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> | undefined {
  const { line, today } = context;
  if (!line.before) return undefined;
  return each(line.shafts, shaft => {
    const kept = shaft.change === 'retained' || shaft.change === 'modified';
    if (!kept || !(shaft.examDue || shaft.examined)) return undefined;
    const say = sayFor(INFO, line.path);
    const needs = new Needs();
    const place = shaft.examDue?.origin ?? shaft.origin;
    const due = needs.fact(shaft.examDue, {
      what: 'date of the next examination of the shaft',
      host: shaft.origin,
      property: 'examination due',
    });
    if (!due) return waits(say, needs, place, `${line.name}: whether the shaft falls due`);
    const soon = due <= inAYear(today);
    if (!soon) return say.holds({ place, message: `${line.name}: the shaft is next due on ${due}.` });
    if (shaft.examInScope?.value === 'yes') {
      return say.holds({
        place,
        message: `${line.name}: the shaft is due on ${due}, and this work examines it.`,
      });
    }
    return say.fails({
      place,
      message: `${line.name}: the shaft that stays is due for examination on ${due}. Draw it now, while engine and gear are out.`,
      routes: () => [
        {
          title: 'Put drawing and examining the shaft into this work',
          edits: [writeInPlace(shaft, 'examination in this work', newWord('yes'))],
        },
      ],
    });
  });
}

function inAYear(day: string): string {
  return `${Number(day.slice(0, 4)) + 1}${day.slice(4)}`;
}
