import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { DOCK_CAUTION, MAKER } from './sources.js';

const CABLED = changed(
  SINGLE_LINE,
  ['  slip device offered', '  slip device offered\n  lever push engages clutch B'],
  ['ratio 2.04:1 ahead clutch B', 'ratio 2.04:1 ahead clutch B { shift cable push for ahead }'],
);

const INFO: RuleInfo = {
  id: 'rotation/shift-cable',
  title: 'The shift cable engages the ahead clutch for ahead',
  mistakes: ['R15'],
  severity: 'warning',
  criterion: 'movement of the cable for ahead against the clutch that a push of the gear lever engages',
  source: MAKER,
  manual:
    'Whether the cable pushes or pulls for ahead depends on the gear and on which of its clutches runs ahead, ' +
    'and so on the propeller hand. When the other clutch becomes the ahead clutch, the cable must change with ' +
    'it. Settle first which clutch runs ahead; then set the cable so that the lever engages that clutch.',
  caution:
    `${DOCK_CAUTION} No fix is offered for a cable: crossing it to cure a wrong hand runs the gear ahead in the ` +
    'astern clutch.',
  noFigure: 'a sense, a hand or a clutch',
  noCure: 'Crossing a cable is never offered: it hides which clutch is engaged.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(CABLED, ['shift cable push for ahead', 'shift cable pull for ahead']),
    passing: CABLED,
    cannotTell: changed(CABLED, ['\n  lever push engages clutch B', '']),
  })),
};

export const shiftCable: Rule = { ...INFO, scope: 'line', check };

function check({ line, analysis }: LineContext): Verdict | undefined {
  const { gear } = line;
  if (!gear || (!gear.shiftCable && !gear.pushEngages)) return undefined;
  const say = sayFor(INFO, line.path);
  const { clutch, missing } = analysis.rotation;
  const needs = new Needs();
  const cable = needs.fact(gear.shiftCable, {
    what: `what the shift cable of ${line.name} does for ahead`,
    host: gear.origin,
    property: 'shift cable',
  });
  const pushed = needs.fact(gear.pushEngages, {
    what: `which clutch a push of the lever of ${nameOf(gear)} engages`,
    host: home(gear),
    property: 'lever push engages clutch',
  });
  if (!clutch)
    needs.take({ value: undefined, missing: missing.filter(gap => gap.property === 'ahead clutch') });
  const place = gear.shiftCable?.origin ?? gear.origin;
  const wanted = clutch && pushed && (clutch.name === pushed ? 'push for ahead' : 'pull for ahead');
  if (!cable || !pushed || !clutch || !wanted) {
    return say.cannotTell(needs, {
      place,
      message:
        cannotTellWords(`${line.name}: whether the lever engages the right clutch`, needs.missing) +
        (wanted ? ` For clutch ${clutch.name} it must ${wanted}.` : ''),
    });
  }
  const related = [
    { at: gear.aheadClutch?.origin ?? gear.origin, message: `clutch ${clutch.name} runs ahead` },
  ];
  if (cable === wanted) {
    return say.holds({
      place,
      message: `${line.name}: the cable must ${wanted} to engage clutch ${clutch.name}, and it does.`,
    });
  }
  return say.fails({
    place,
    message:
      `${line.name}: on ${nameOf(gear)} the cable must ${wanted} to engage clutch ${clutch.name}, and the spec says ${cable}: the lever would ` +
      'engage the other clutch. First decide which clutch runs ahead and may do so, then have the cable rigged and proven at the dock.',
    related,
  });
}
