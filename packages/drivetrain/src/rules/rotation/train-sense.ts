import { type Sense, WILLIS } from '@tailshaft/mechanics';
import { type NewValue, spell } from '@tailshaft/vocabulary';
import { clutchesOf } from '../../analysis/gear-data.js';
import { declaredSense, senseOfTrain, turnsBack } from '../../analysis/stages.js';
import { trainOf } from '../../analysis/train-of-clutch.js';
import { signedTrainRatio } from '../../analysis/train-ratio.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Clutch, Gear } from '../../model/gear.js';
import { nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { stubRoutes } from './edits.js';
import { DOCK_CAUTION } from './sources.js';
import { foldOn, type Use, usesOf } from './uses.js';

const CLUTCH = 'clutch B output opposite ahead continuous';
const TRAINED = changed(SINGLE_LINE, [CLUTCH, `${CLUTCH} { train { mesh A 23 with B 47 } }`]);

const INFO: RuleInfo = {
  id: 'rotation/train-sense',
  title: 'The declared output sense agrees with the tooth counts',
  mistakes: [],
  severity: 'error',
  criterion: 'declared output sense against the one that the meshes give, both seen from aft',
  source: WILLIS,
  manual:
    'Every external mesh between parallel shafts reverses the rotation, an internal mesh and a chain keep it, ' +
    'and a planetary set keeps or reverses it depending on the member that is held. Where a clutch gives its ' +
    'train and also declares its output sense, the two must agree. If they do not, one of them is wrong, and no ' +
    'rotation can be derived until the sheet has been read again.',
  caution: `${DOCK_CAUTION} Count only the meshes that carry power in this clutch; idlers count too.`,
  limitOf: 'a sense, and no number',
  noFigure: 'a sense, a hand or a clutch',
  curesRecord: true,
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: changed(TRAINED, ['clutch B output opposite', 'clutch B output same']),
    passing: TRAINED,
    cannotTell: changed(TRAINED, ['mesh A 23 with B 47', 'sun teeth 30  ring teeth 60']),
  })),
};

export const trainSense: Rule = { ...INFO, scope: 'vessel', check };

interface Engaged {
  readonly gear: Gear;
  readonly clutch: Clutch;
}

function check(context: Context): Apart<Verdict> {
  const uses = usesOf(context.vessel, ({ gear }) => {
    const clutches = gear ? clutchesOf(gear, gear.variant) : [];
    return clutches
      .filter(one => trainOf(gear!, one) && one.output)
      .map(clutch => ({ of: { gear: gear!, clutch }, at: clutch.output!.origin }));
  });
  return each(uses, judge);
}

function judge({ of, line, lines }: Use<Engaged>): Verdict {
  const { gear, clutch } = of;
  const say = sayFor(INFO, line.path);
  const train = trainOf(gear, clutch)!;
  const name = `clutch ${clutch.name} of ${nameOf(gear)}`;
  const declared = declaredSense(gear, clutch);
  const derived = senseOfTrain(train);
  const place = clutch.output!.origin;
  const result = signedTrainRatio(train);
  const workings = result.known ? [result.ratio] : [];
  if (!declared || !derived) {
    const needs = new Needs();
    if (!derived) {
      const what = `tooth counts that settle the sense of ${name}${result.known ? '' : ` (${result.problem})`}`;
      needs.miss({ what, host: train.origin, property: 'mesh' });
    }
    if (!declared) {
      const what = `${clutch.output!.value ? 'from where the' : 'the'} output sense of ${name}${clutch.output!.value ? ' is seen' : ''}`;
      needs.miss({ what, host: clutch.origin, property: 'output' }, place);
    }
    return say.cannotTell(needs, {
      place: derived ? place : train.origin,
      message: cannotTellWords(`Whether the output sense of ${name} agrees with its train`, needs.missing),
      routes: () => stubRoutes(needs.missing.filter(gap => gap.property !== 'mesh')),
    });
  }
  if (declared === derived) {
    return say.holds({
      place,
      message: `The train of ${name} ${does(derived)} the rotation, as declared.`,
      workings,
    });
  }
  // Seen at their own ends the words flip where the line turns back.
  const flips = turnsBack(gear) && clutch.output!.value!.seen === 'each seen at its own end';
  const word = (derived === 1) !== Boolean(flips) ? 'same' : 'opposite';
  const seen = clutch.output!.value!.seen;
  const value: NewValue = { is: 'output', output: { word, ...(seen ? { seen } : {}) } };
  return say.fails({
    place,
    message: `The output of ${name} is declared ${clutch.output!.written}, but its train ${does(derived)} the rotation. Read the sheet again: one of the two is wrong.`,
    related: [
      { at: train.origin, message: `the tooth counts ${does(derived).replace(/s$/, '')} the rotation` },
    ],
    workings,
    // The teeth give the ratio too, which the sense does not contradict.
    disputes: [clutch.output!],
    explains: foldOn(
      lines.filter(one => one.gear?.aheadClutch === undefined || one.gear.aheadClutch.value === clutch.name),
      'rotation/propeller-hand',
    ),
    routes: () => [
      {
        title: `Declare the output "${spell(value)}", as the tooth counts give`,
        edits: [{ do: 'replace', at: place, value }],
      },
    ],
  });
}

function does(sense: Sense): string {
  return sense === 1 ? 'keeps' : 'reverses';
}
