import type { Value } from '@tailshaft/mechanics';
import { percent } from '@tailshaft/mechanics';
import { aheadClutchOf, clutchesOf } from '../../analysis/gear-data.js';
import { ratioConsequence } from '../../analysis/propeller-law.js';
import { ratioWords } from '../../analysis/telling.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Clutch, Gear } from '../../model/gear.js';
import { nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { ratioTolerance } from '../planned.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { exactAmount } from './exact-amount.js';
import { TOOTH_COUNTS } from './sources.js';

/** One ratio whose two clutches have different tooth counts. */
const UNEQUAL = changed(
  SINGLE_LINE,
  [
    'ratio 2.04:1 exact 2.043:1 {\n    clutch A output same ahead continuous\n    clutch B output opposite ahead continuous',
    'ratio 2.05:1 {\n    clutch A output same ahead continuous exact 2.05:1\n    clutch B output opposite ahead continuous exact 1.96:1',
  ],
  ['gear Alder-63 ratio 2.04:1 ahead clutch B', 'gear Alder-63 ratio 1.96:1 ahead clutch B'],
);

const INFO: RuleInfo = {
  id: 'ratio/clutch-ratio',
  title: 'The ratio in the line is that of the ahead clutch',
  mistakes: ['T02'],
  severity: 'warning',
  criterion: 'ratio written in the line against the exact ratio of the ahead clutch',
  source: TOOTH_COUNTS,
  manual:
    'The two clutches of a reversing gear drive through different wheels, and their ratios often differ by a few ' +
    'per cent. A line that runs ahead on the second clutch has the ratio of the second clutch. Using the other ' +
    'one puts shaft speed out by the difference, and propeller power by about three times as much. Write the ' +
    'ratio of the clutch that runs ahead.',
  caution:
    'Plates that give two ratios do not always say which clutch each belongs to: the output sense tells them ' +
    'apart.',
  limitOf: 'the rounding of the ratio as it is written',
  noFigure: 'two statements of one thing, either of which may be true',
  curesRecord: true,
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(UNEQUAL, ['ratio 1.96:1 ahead', 'ratio 2.05:1 ahead']),
    passing: UNEQUAL,
    cannotTell: changed(UNEQUAL, ['ratio 1.96:1 ahead clutch B', 'ratio 2.05:1 ahead clutch unknown']),
  })),
};

export const clutchRatio: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, vessel } = context;
  const { gear } = line;
  const written = gear?.ratioUsed?.value;
  if (!gear || !written || !gear.ratioUsed) return undefined;
  const own = clutchesOf(gear, gear.variant).filter(one => one.exact?.value);
  if (own.length < 2) return undefined;
  const say = sayFor(INFO, line.path);
  const place = gear.ratioUsed.origin;
  const ahead = aheadClutchOf(gear);
  if (!ahead) {
    const needs = new Needs();
    needs.miss(
      { what: `the clutch that ${nameOf(gear)} runs ahead in`, host: gear.origin, property: 'ahead clutch' },
      gear.aheadClutch?.origin,
    );
    return say.cannotTell(needs, {
      place,
      message: `${line.name}: the clutches of ${nameOf(gear)} have different ratios (${own.map(words).join(', ')}), and the line does not say which runs ahead.`,
      explains: [{ rule: 'ratio/nominal-for-exact', subject: line.path }],
      routes: () => stubRoutes(needs.missing),
    });
  }
  const exact = ahead.exact?.value;
  if (!exact) return undefined;
  const { share, criterion } = ratioTolerance(vessel);
  if (Math.abs(written.si / exact.si - 1) <= share) {
    return say.holds({
      place,
      criterion,
      message: `${line.name}: ahead is clutch ${ahead.name}, and ${ratioWords(written.si)} is its ratio.`,
      workings: [exact],
    });
  }
  const other = ratioSharedByAnotherClutch(gear, written, share);
  if (!other) return undefined;
  const { speed, power } = ratioConsequence(written, exact, vessel);
  const way = speed.si > 0 ? 'faster' : 'slower';
  return say.fails({
    place,
    criterion,
    message:
      `${line.name}: ahead is clutch ${ahead.name}; its ratio is ${ratioWords(exact.si)}, not the ${ratioWords(written.si)} of ` +
      `clutch ${other.name}. The shaft turns ${percent(Math.abs(speed.si))} ${way}, which is about ` +
      `${percent(Math.abs(power.si))} of propeller power.`,
    related: [
      { at: ahead.exact!.origin, message: `ratio of clutch ${ahead.name}` },
      { at: other.exact!.origin, message: `ratio of clutch ${other.name}` },
    ],
    workings: [exact, speed, power],
    explains: [{ rule: 'ratio/nominal-for-exact', subject: line.path }],
    routes: () => [
      {
        title: `Write ${ratioWords(exact.si)}, the ratio of clutch ${ahead.name} that runs ahead`,
        edits: [{ do: 'replace', at: place, value: exactAmount(exact) }],
        preferred: true,
      },
    ],
  });
}

/** A clutch other than the ahead one whose exact ratio is the written one. */
export function ratioSharedByAnotherClutch(
  gear: Gear,
  written: Value<'ratio'>,
  share: number,
): Clutch | undefined {
  const ahead = aheadClutchOf(gear);
  return clutchesOf(gear, gear.variant).find(
    one =>
      ahead &&
      one.name !== ahead.name &&
      one.exact?.value &&
      Math.abs(written.si / one.exact.value.si - 1) <= share,
  );
}

function words(clutch: Clutch): string {
  return `${clutch.name} ${ratioWords(clutch.exact!.value!.si)}`;
}
