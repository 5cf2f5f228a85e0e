import { lastDigit, type Origin, torqueOfShare, type Value } from '@tailshaft/mechanics';
import { amount, ratioTo1 } from '@tailshaft/vocabulary';
import { sharesOf } from '../../analysis/clutch-torque.js';
import { clutchesOf } from '../../analysis/gear-data.js';
import { ratioWords } from '../../analysis/telling.js';
import { trainOf, waitsForClutch } from '../../analysis/train-of-clutch.js';
import { signedTrainRatio } from '../../analysis/train-ratio.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Quantity } from '../../model/fact.js';
import type { Clutch, Train } from '../../model/gear.js';
import { home, nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import type { ShaftLine } from '../../model/vessel.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';

const WITH_TEETH = changed(SINGLE_LINE, [
  'clutch B output opposite ahead continuous\n',
  'clutch B output opposite ahead continuous {\n      train { mesh A 23 with B 47 }\n    }\n',
]);

const INFO: RuleInfo = {
  id: 'ratio/train',
  title: 'The exact ratio agrees with the tooth counts',
  mistakes: [],
  severity: 'error',
  criterion: 'declared exact ratio against that of the declared tooth counts, to its last printed digit',
  source: {
    author: 'R. Willis',
    title: 'Principles of Mechanism',
    clause: 'speeds relative to the arm; for fixed shafts the quotient of driven and driving teeth',
    confidence: 'published',
  },
  manual:
    'A gear entry that gives its tooth counts states its ratio twice. The ratio of the train, driven teeth over ' +
    'driving teeth for fixed shafts and by the Willis equation for planetary sets, must agree with the declared ' +
    'exact ratio to the last printed digit. A planetary ratio gives its train once; each clutch then names the ' +
    'member it holds or the two it locks, and its ratio and torque follow. Where the two disagree, one of them ' +
    'belongs to another gear or clutch, or is misread. Count teeth, or turn the input by hand and count turns, ' +
    'before correcting either.',
  caution: 'Turning by hand needs the engine locked against starting, and two people.',
  limitOf: 'the last printed digit of the sheet',
  noFigure: 'two statements of one thing, either of which may be true',
  curesRecord: true,
  standsWithout: ['peak torque', 'at'],
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(WITH_TEETH, ['mesh A 23 with B 47', 'mesh A 45 with B 92']),
    passing: WITH_TEETH,
    cannotTell: changed(WITH_TEETH, [
      'mesh A 23 with B 47',
      'sun teeth 46  ring teeth 48  input sun  output carrier',
    ]),
  })),
};

export const trainAgrees: Rule = { ...INFO, scope: 'line', check };

interface Declared {
  readonly name: string;
  /** None where the gear leaves open what this clutch does in the train of its ratio. */
  readonly train: Train | undefined;
  readonly exact: Quantity<'ratio'> | undefined;
  readonly host: Origin;
  readonly clutch?: Clutch;
}

function check(context: LineContext): Apart<Verdict> {
  return each(trainsOf(context.line), one => judge(context, one));
}

/** Every train in the line, in each clutch that it stands for, with the exact ratio that is declared beside it. */
function trainsOf(line: ShaftLine): Declared[] {
  const found: Declared[] = [];
  const { gear } = line;
  const variant = gear?.variant;
  const byClutch = gear !== undefined && waitsForClutch(gear);
  if (gear && variant?.train && !byClutch)
    found.push({ name: nameOf(gear), train: variant.train, exact: variant.exact, host: variant.origin });
  for (const clutch of gear ? clutchesOf(gear, variant) : []) {
    if (!clutch.train && !byClutch) continue;
    const name = `${nameOf(gear!)}, clutch ${clutch.name}`;
    const exact = clutch.exact ?? variant?.exact;
    found.push({ name, train: trainOf(gear!, clutch), exact, host: clutch.origin, clutch });
  }
  for (const transfer of line.transfers) {
    if (transfer.train)
      found.push({
        name: nameOf(transfer),
        train: transfer.train,
        exact: transfer.exact,
        host: home(transfer),
      });
  }
  return found;
}

function judge(context: LineContext, { name, train, exact, host, clutch }: Declared): Verdict {
  const { line } = context;
  const say = sayFor(INFO, line.path);
  if (!train) {
    const needs = new Needs();
    needs.miss({ what: `what ${name} holds or locks in the train of its ratio`, host, property: 'holds' });
    return say.cannotTell(needs, {
      place: host,
      message: `${line.name}: the tooth counts give no ratio in ${name}: it does not say which member it holds or locks.`,
      routes: () => stubRoutes(needs.missing),
    });
  }
  const result = signedTrainRatio(train);
  if (!result.known) {
    const needs = new Needs();
    const open = [...train.meshes, ...train.held, ...train.locked].find(one => one.value === undefined);
    needs.miss({ what: `the whole train of ${name}`, host: train.origin, property: 'mesh' }, open?.origin);
    return say.cannotTell(needs, {
      place: open?.origin ?? train.origin,
      message: `${line.name}: the tooth counts of ${name} give no ratio: ${result.problem}.`,
      routes: () => [],
    });
  }
  const carried = clutch ? carriedBy(context, clutch) : { values: [], words: '' };
  const size = Math.abs(result.ratio.si);
  const derived = ratioWords(size, 4);
  const declared = exact?.value;
  if (!exact || !declared) {
    return say.holds({
      place: train.origin,
      message: `${line.name}: the tooth counts of ${name} give ${derived}, which is used as its exact ratio.${carried.words}`,
      workings: [result.ratio, ...carried.values],
    });
  }
  const workings = [result.ratio, declared, ...carried.values];
  if (Math.abs(size - declared.si) <= lastDigit(declared.figure) + 1e-9) {
    return say.holds({
      place: exact.origin,
      message: `${line.name}: the tooth counts of ${name} give ${derived}, which is the declared ${ratioWords(declared.si)}.${carried.words}`,
      workings,
    });
  }
  const places = Math.max(3, declared.figure?.decimals ?? 0);
  return say.fails({
    place: exact.origin,
    message:
      `${line.name}: the tooth counts of ${name} give ${derived}, but ${ratioWords(declared.si)} is declared. ` +
      'One of the two belongs to another gear or clutch; every speed and torque here depends on it.',
    // Senses are read off the train as well, and those the ratio does not contradict.
    disputes: [exact],
    related: [{ at: train.origin, message: `tooth counts: ${derived}` }],
    workings,
    routes: () => [
      {
        title: `Write ${ratioWords(size, places)}, as the tooth counts give it`,
        edits: [{ do: 'replace', at: exact.origin, value: amount(ratioTo1({ si: size }, places)) }],
      },
    ],
  });
}

/** What the clutch or brake carries in its train: at the peak torque of the engine where that is known. */
function carriedBy({ line, analysis }: LineContext, clutch: Clutch): { values: Value[]; words: string } {
  const gear = line.gear!;
  const peak = analysis.peakTorque.value;
  const input = peak && analysis.loads(peak, 'ahead').entering.get(gear)?.torque;
  const all = sharesOf(gear, clutch).map(({ by, members, share }) => {
    const torque = input && torqueOfShare({ share, inputTorque: input });
    const what = by === 'held' ? `holds ${members[0]}` : `locks ${members.join(' with ')}`;
    const size = Number(Math.abs(share.si).toFixed(3));
    const much = size === 1 ? 'the torque that enters' : `${size} times the torque that enters`;
    return {
      value: torque ?? share,
      words: ` Clutch ${clutch.name}, which ${what}, carries ${much}${torque ? `: ${analysis.tell(torque)} at peak torque` : ''}.`,
    };
  });
  return { values: all.map(one => one.value), words: all.map(one => one.words).join('') };
}
