import { formatValue, percent, type Source } from '@tailshaft/mechanics';
import { amount, inUnit, spell } from '@tailshaft/vocabulary';
import type { EntryContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';

const SMALL_CRAFT: Source = {
  title: 'Propeller shafting systems, small-craft standard P-6',
  author: 'American Boat and Yacht Council',
  year: 2002,
  clause: 'torsional yield of steel and nickel alloys as 2/3 of the 0.2 % tensile yield',
  confidence: 'published',
};

/** Shear yield over tensile yield: 0.577 by distortion energy, 2/3 by the small-craft standard; well above is a mix-up. */
const MOST = 0.72;

const material = (facts: string) => `shaft material marine-bar "stainless bar" {
  source "Mill certificate 88" dated 2024-02-02
  ${facts}
}
`;

const INFO: RuleInfo = {
  id: 'units/torsional-yield',
  title: 'Torsional yield is not taken from the tensile yield',
  mistakes: ['U07'],
  severity: 'error',
  criterion: 'torsional yield over tensile yield at most 0.72; the small-craft standard takes 2/3',
  source: SMALL_CRAFT,
  manual:
    'Shaft formulas use the yield stress in torsion. A mill certificate gives the tensile yield, which is about ' +
    'half as much again: entered as torsional yield it makes a shaft look 50 % stronger than it is. The ' +
    'small-craft standard takes two thirds of the tensile yield for steels and nickel alloys; distortion energy ' +
    'gives 0.577. Where both are written they are compared; where only the tensile yield is known, write the ' +
    'torsional yield with the rule it follows.',
  caution:
    'Copper alloys are usually taken at half the tensile yield; larger bars are weaker than small ones.',
  noFigure: 'a property of a grade: it is looked up, and the message says what is usual',
  standsWithout: 'anything',
  curesRecord: true,
  examples: examples(() => ({
    failing: material('torsional yield 105000 psi\n  tensile yield 105000 psi'),
    passing: material('torsional yield 70000 psi\n  tensile yield 105000 psi'),
    cannotTell: material('tensile yield 105000 psi'),
  })),
};

export const torsionalYield: Rule = { ...INFO, scope: 'entry', check };

function check({ entry: one }: EntryContext): Verdict | undefined {
  if (one.kind !== 'shaft material') return undefined;
  const { facts, name, origin } = one.entry;
  const tensile = facts.tensileYield?.value;
  if (!facts.tensileYield || !tensile) return undefined;
  const say = sayFor(INFO, name);
  const share = amount(inUnit('pressure', Number(((tensile.si * 2) / 3 / 1e6).toPrecision(4)), 'MPa'));
  const twoThirds = spell(share);
  const needs = new Needs();
  const torsional = needs.fact(facts.torsionalYield, {
    what: `torsional yield of ${name}`,
    host: origin,
    property: 'torsional yield',
  });
  if (!torsional) {
    return say.cannotTell(needs, {
      place: facts.tensileYield.origin,
      message: `${name} gives a tensile yield but no torsional yield, which shaft formulas need. Two thirds of the tensile yield is ${twoThirds} by the small-craft standard, for steels and nickel alloys.`,
      routes: () => [
        {
          title: `Write torsional yield ${twoThirds}: 2/3 of the tensile yield, small-craft standard`,
          edits: [{ do: 'set', host: origin, property: 'torsional yield', value: share }],
        },
      ],
    });
  }
  const part = torsional.si / tensile.si;
  const place = facts.torsionalYield!.origin;
  if (part <= MOST) {
    return say.holds({
      place,
      message: `${name}: torsional yield ${torsional.written} is ${percent(part)} of the tensile yield ${tensile.written}.`,
    });
  }
  return say.fails({
    place,
    message:
      `${name}: torsional yield ${torsional.written} is ${percent(part)} of the tensile yield ${tensile.written}; in torsion steel yields ` +
      `at about two thirds of that, ${twoThirds}. With the tensile value every shaft of it looks half as strong again as it is.`,
    related: [{ at: facts.tensileYield.origin, message: `tensile yield ${formatValue(tensile)}` }],
    routes: () => [
      {
        title: `Write ${twoThirds}: 2/3 of the tensile yield, small-craft standard`,
        edits: [{ do: 'replace', at: place, value: share }],
      },
    ],
  });
}
