import { listed } from '@tailshaft/mechanics';
import { OPEN } from '@tailshaft/vocabulary';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { HullMaterial } from '../../model/hull.js';
import { home, nameOf } from '../../model/part.js';
import type { PropellerMetal } from '../../model/propeller.js';
import type { ShaftMetal } from '../../model/shafting.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';

const METALS = changed(
  SINGLE_LINE,
  [
    '  arrangement proposed {',
    '  hull planing { material aluminium  corrosion protection "hull and shaft anodes, bonded, drawing E-12" }\n  arrangement proposed {',
  ],
  ['area ratio 0.72 }', 'area ratio 0.72  material nickel-aluminium bronze  tolerance class I }'],
);

const INFO: RuleInfo = {
  id: 'propeller/material-pair',
  title: 'Dissimilar metals in contact have corrosion protection',
  mistakes: ['P15'],
  severity: 'note',
  criterion:
    'metal of the propeller against those of shaft and hull: where they differ, a corrosion protection is stated',
  source: {
    title: 'dissimilar metals joined in sea water corrode the less noble one',
    confidence: 'common practice',
  },
  manual:
    'Dissimilar metals joined in sea water form a galvanic cell: a bronze propeller corrodes an aluminium or ' +
    'steel hull, a stainless shaft consumes its anodes and sometimes its bronze propeller. Joining them is not a ' +
    'fault; leaving out anodes, bonding or insulation is. Once the propeller states its material, it is compared ' +
    'with hull and shaft, and a dissimilar pair needs "corrosion protection" in the hull block, with the drawing ' +
    'that shows it.',
  caution: 'A checklist item: the kind, amount and place of protection are for a corrosion specialist.',
  noFigure: 'no number is compared',
  noCure: 'Corrosion protection is decided for the whole vessel.',
  examples: examples(() => ({
    failing: changed(METALS, ['  corrosion protection "hull and shaft anodes, bonded, drawing E-12"', '']),
    passing: METALS,
    cannotTell: changed(METALS, ['material aluminium', 'material unknown']),
  })),
};

export const materialPair: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, vessel } = context;
  const { propeller } = line;
  if (!propeller?.material) return undefined;
  const say = sayFor(INFO, line.path);
  const place = propeller.material.origin;
  const needs = new Needs();
  const metal = needs.fact(propeller.material, {
    what: `material of ${nameOf(propeller)}`,
    host: home(propeller),
    property: 'material',
  });
  const { hull } = vessel;
  const hullMetal = hull
    ? needs.fact(hull.material, { what: 'material of the hull', host: hull.origin, property: 'material' })
    : needs.miss({ what: `the hull of vessel ${vessel.name}`, host: vessel.origin, property: 'hull' });
  const protection = hull?.corrosionProtection;
  if (protection && protection.value === undefined) {
    needs.miss(
      { what: 'corrosion protection', host: hull!.origin, property: 'corrosion protection' },
      protection.origin,
    );
  }
  if (!metal || !hullMetal || needs.any) {
    return waits(say, needs, place, `${line.name}: whether dissimilar metals are protected`);
  }
  const shaft = line.shafts.at(-1);
  const unlike = unlikePairs(metal, hullMetal, shaft?.grade?.metal?.value);
  if (unlike.length === 0 && shaft && metal !== 'composite' && !shaft.grade?.metal?.value) {
    // Where the hull makes the pair, or the protection is written down, the shaft changes nothing.
    if (protection?.value) {
      return say.holds({
        place,
        message: `${line.name}: whatever the shaft material, protection is stated: ${protection.value}.`,
      });
    }
    if (shaft.grade) {
      const { name, origin, metal: fact } = shaft.grade;
      needs.fact(fact, { what: `metal of shaft material ${name}`, host: origin, property: 'metal' });
    } else
      needs.fact(undefined, {
        what: 'material of the shaft, as an entry',
        host: shaft.origin,
        property: 'material',
      });
    const known = `${metal} with a hull of ${hullMetal}`;
    return waits(say, needs, place, `${line.name}: whether dissimilar metals are protected`, { known });
  }
  if (unlike.length === 0) {
    return say.doesNotApply({
      place,
      message: `${line.name}: ${metal} with a hull of ${hullMetal}: no dissimilar metals are declared.`,
    });
  }
  const pairs = listed(unlike);
  if (protection?.value) {
    return say.holds({
      place,
      related: [{ at: protection.origin, message: 'the protection stated' }],
      message: `${line.name}: ${pairs}, protected: ${protection.value}.`,
    });
  }
  const eats = hullMetal === 'aluminium' && metal !== 'aluminium';
  return say.fails({
    place,
    ...(eats ? { severity: 'warning' as const } : {}),
    related: [{ at: hull!.material!.origin, message: `the hull is of ${hullMetal}` }],
    message: `${line.name}: ${pairs} in contact, and no corrosion protection is stated${eats ? ': the hull is the less noble metal and corrodes first' : ''}. Write what is done: corrosion protection "..." in the hull block.`,
    routes: () => [
      {
        title: 'Write the corrosion protection as an open question: the sheet then lists it',
        edits: [{ do: 'set', host: hull!.origin, property: 'corrosion protection', value: OPEN }],
        stub: true,
      },
    ],
  });
}

/** `a bronze propeller beside a hull of aluminium`. */
function unlikePairs(metal: PropellerMetal, hull: HullMaterial, shaft: ShaftMetal | undefined): string[] {
  if (metal === 'composite') return [];
  const pairs: string[] = [];
  if ((hull === 'steel' || hull === 'aluminium') && metal !== hull) {
    pairs.push(`a ${metal} propeller beside a hull of ${hull}`);
  }
  if (shaft && !SAME_METAL[shaft]?.test(metal)) pairs.push(`a ${metal} propeller on a shaft of ${shaft}`);
  return pairs;
}

/** Metals of propellers that are of one kind with the shaft; of the other kinds of shaft there is none. */
const SAME_METAL: Readonly<Partial<Record<ShaftMetal, RegExp>>> = {
  'stainless steel': /^stainless steel$/,
  bronze: /bronze$/,
  aluminium: /^aluminium$/,
};
