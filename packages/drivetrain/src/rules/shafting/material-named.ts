import { named } from '@tailshaft/vocabulary';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import type { Shaft } from '../../model/shafting.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { genericGrades } from './generic-grades.js';
import { editOf } from './shaft-routes.js';
import { DEFER, PRACTICE } from './sources.js';

/** Words that name a family of alloys and no grade. */
const FAMILIES = new Set([
  'stainless',
  'stainless-steel',
  'steel',
  'bronze',
  'brass',
  'nickel-copper',
  'inox',
  'alloy',
]);

const INFO: RuleInfo = {
  id: 'shafting/material-named',
  title: 'The shaft material is a grade, not a family',
  mistakes: ['L03'],
  severity: 'warning',
  criterion: 'a grade named by something better than hearsay, with an entry that gives its properties',
  source: PRACTICE,
  manual:
    'Torsional yield of bars sold as stainless varies by more than 3 to 1, from some 20,000 psi for plain ' +
    'austenitic bar to 70,000 psi for high-strength marine grades. "Stainless" alone is not a specification, and ' +
    'no diameter check can rest on it. Name the grade as an entry "shaft material" with its torsional yield and ' +
    'its document. A retained shaft usually has no mill certificate: then use the weak grade of the family.',
  caution: `${DEFER} A magnet or spark test does not identify a grade; a hardness test or laboratory analysis does.`,
  noFigure: 'no number is compared',
  curesRecord: true,
  noCure: 'Only a certificate or a measurement can establish the grade.',
  examples: examples(() => ({
    failing: changed(
      SINGLE_LINE,
      ['shaft material high-strength-stainless {', 'shaft material stainless {'],
      ['material high-strength-stainless  diameter', 'material stainless  diameter'],
    ),
    passing: SINGLE_LINE,
    cannotTell: changed(SINGLE_LINE, [
      'material high-strength-stainless  diameter',
      'material unknown  diameter',
    ]),
  })),
};

export const materialNamed: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> {
  return each(context.line.shafts, shaft => judge(context, shaft));
}

function judge(context: LineContext, shaft: Shaft): Verdict {
  const { line, catalogue } = context;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const name = needs.fact(shaft.material, {
    what: `material of ${nameOf(shaft)}`,
    host: shaft.origin,
    property: 'material',
  });
  const place = shaft.material?.origin ?? shaft.origin;
  if (name === undefined) return waits(say, needs, place, `${line.name}: what the shaft may carry`);
  if (FAMILIES.has(name.toLowerCase())) {
    return say.fails({
      place,
      message:
        `${line.name}: "${name}" names a family, not a grade: torsional yield within it ranges over more than 3 to 1. ` +
        'Name the grade, with its certificate; where there is none, the weak grade of the family.',
      routes: () => [
        ...catalogue.materials
          .filter(one => !FAMILIES.has(one.name.toLowerCase()))
          .map(one => ({
            title: `Write ${one.name}, if certificate or analysis says so`,
            edits: [editOf(shaft, 'material', shaft.material?.origin, named(one.name))],
          })),
        // Who declared figures under the family's name has a source for them: only its name is wanting.
        ...(shaft.grade ? [] : genericGrades(context, shaft, name)),
      ],
    });
  }
  if (!shaft.grade) {
    const what = `properties of ${name}: no entry "shaft material ${name}" is declared or imported`;
    needs.miss({ what, host: shaft.origin, property: 'material' }, place);
    return waits(say, needs, place, `${line.name}: what the shaft may carry`, {
      routes: () => [...genericGrades(context, shaft, name), ...stubRoutes(needs.missing)],
    });
  }
  return say.holds({
    place,
    message: `${line.name}: the shaft is of ${name}, whose properties are declared.`,
  });
}
