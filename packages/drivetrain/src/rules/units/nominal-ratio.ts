import type { Origin, Value } from '@tailshaft/mechanics';
import { OPEN } from '@tailshaft/vocabulary';
import type { EntryContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { type Apart, each } from '../../model/reads.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { TOOTH_COUNTS } from '../ratio/sources.js';
import type { Rule, RuleInfo } from '../rule.js';

const INFO: RuleInfo = {
  id: 'units/nominal-ratio',
  title: 'Every offered ratio has its exact value',
  mistakes: ['U08'],
  severity: 'note',
  criterion: 'each offered ratio gives its exact value, itself, by clutch or by tooth counts',
  source: TOOTH_COUNTS,
  manual:
    'A gear offered as "2:1" rarely has teeth that make exactly two: the real ratio may be 1.96 or 2.05, several ' +
    'per cent of shaft speed and three times as much of propeller power. Write the exact ratio beside the ' +
    'nominal one, for each clutch where they differ, or the tooth counts.',
  caution: 'If the teeth do make the nominal ratio, write it as exact: it is then a fact and not a label.',
  noFigure: 'how a figure is written, and not how large it is',
  standsWithout: 'anything',
  curesRecord: true,
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, ['ratio 2.52:1 exact 2.524:1', 'ratio 2.5:1']),
    passing: SINGLE_LINE,
    cannotTell: changed(SINGLE_LINE, ['ratio 2.52:1 exact 2.524:1', 'ratio 2.52:1']),
  })),
};

export const nominalRatio: Rule = { ...INFO, scope: 'entry', check };

function check({ entry: one }: EntryContext): Apart<Verdict> | undefined {
  if (one.kind !== 'gear') return undefined;
  const say = sayFor(INFO, one.entry.name);
  return each(one.entry.facts.ratios ?? [], variant => {
    const place = variant.nominalFact.origin;
    const clutches = variant.clutches.length > 0 ? variant.clutches : one.entry.facts.clutches;
    const byClutch = clutches.length > 0 && clutches.every(clutch => clutch.exact?.value || clutch.train);
    if (variant.exact?.value || variant.train || byClutch) {
      return say.holds({
        place,
        message: `${one.entry.name}: ratio ${variant.nominal.written} has its exact value.`,
      });
    }
    const message = `${one.entry.name} is offered as ${variant.nominal.written}: is that exact? Write its tooth-count ratio as "exact ..."; plate or sheet gives it.`;
    if (isRound(variant.nominal) && !variant.exact)
      return say.fails({ place, message, routes: () => stub(variant.origin) });
    const needs = new Needs();
    needs.miss(
      {
        what: `exact ratio of ${one.entry.name} ${variant.nominal.written}`,
        host: variant.origin,
        property: 'exact',
      },
      variant.exact?.origin,
    );
    return say.cannotTell(needs, { place, message });
  });
}

/** At most one decimal: a label rather than a number. */
function isRound({ figure }: Value): boolean {
  return figure?.to === 1 && (figure.decimals ?? 0) <= 1;
}

function stub(host: Origin): Route[] {
  return [
    {
      title: 'Add "exact" as an open question',
      stub: true,
      edits: [{ do: 'set', host, property: 'exact', value: OPEN }],
    },
  ];
}
