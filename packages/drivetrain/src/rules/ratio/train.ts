import type { Origin } from '@tailshaft/mechanics';
import { clutchesOf } from '../../analysis/gear-data.js';
import { ratioWords } from '../../analysis/telling.js';
import { signedTrainRatio } from '../../analysis/train-ratio.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Quantity } from '../../model/fact.js';
import type { Train } from '../../model/gear.js';
import { home, nameOf } from '../../model/part.js';
import type { ShaftLine } from '../../model/vessel.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';

const WITH_TEETH = changed(SINGLE_LINE, [
  'clutch B output opposite ahead continuous\n',
  'clutch B output opposite ahead continuous {\n      train { mesh A 23 with B 47 }\n    }\n',
]);

const INFO: RuleInfo = {
  id: 'ratio/train',
  title: 'The exact ratio is what the tooth counts give',
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
    'A gear entry that gives its tooth counts has said its ratio twice. The ratio of the train, driven teeth over driving ' +
    'teeth for fixed shafts and by the Willis equation for planetary sets, must then agree with the declared exact ratio to ' +
    'the last digit that is printed. Where it does not, one of the two is from another gear, another clutch or is misread. ' +
    'Count teeth, or turn the input by hand and count turns, before correcting either.',
  caution: 'Turning by hand needs the engine locked against starting, and two people.',
  examples: {
    failing: changed(WITH_TEETH, ['mesh A 23 with B 47', 'mesh A 45 with B 92']),
    passing: WITH_TEETH,
    cannotTell: changed(WITH_TEETH, [
      'mesh A 23 with B 47',
      'sun teeth 46  ring teeth 48  input sun  output carrier',
    ]),
  },
};

export const trainAgrees: Rule = { ...INFO, scope: 'line', check };

interface Declared {
  readonly name: string;
  readonly train: Train;
  readonly exact: Quantity<'ratio'> | undefined;
  readonly host: Origin;
}

function check({ line }: LineContext): Verdict[] {
  return trainsOf(line).map(one => judge(line, one));
}

/** Every train in the line with the exact ratio that is declared beside it. */
function trainsOf(line: ShaftLine): Declared[] {
  const found: Declared[] = [];
  const { gear } = line;
  const variant = gear?.variant;
  if (gear && variant?.train)
    found.push({ name: nameOf(gear), train: variant.train, exact: variant.exact, host: variant.origin });
  for (const clutch of gear ? clutchesOf(gear, variant) : []) {
    if (!clutch.train) continue;
    const name = `${nameOf(gear!)}, clutch ${clutch.name}`;
    found.push({ name, train: clutch.train, exact: clutch.exact ?? variant?.exact, host: clutch.origin });
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

function judge(line: ShaftLine, { name, train, exact, host }: Declared): Verdict {
  const say = sayFor(INFO, line.path);
  const result = signedTrainRatio(train);
  if (!result.known) {
    const needs = new Needs();
    const open = train.meshes.find(mesh => mesh.value === undefined);
    needs.miss({ what: `the whole train of ${name}`, host: train.origin, property: 'mesh' }, open?.origin);
    return say.cannotTell(needs, {
      place: open?.origin ?? train.origin,
      message: `${line.name}: the tooth counts of ${name} give no ratio: ${result.problem}.`,
      routes: () => [],
    });
  }
  const size = Math.abs(result.ratio.si);
  const derived = ratioWords(size, 4);
  const declared = exact?.value;
  if (!exact || !declared) {
    if (exact) {
      const needs = new Needs();
      needs.miss({ what: `exact ratio of ${name}`, host, property: 'exact' }, exact.origin);
      return say.cannotTell(needs, {
        place: exact.origin,
        message: `${line.name}: the exact ratio of ${name} is left open; its tooth counts give ${derived}.`,
        workings: [result.ratio],
        routes: () => stubRoutes(needs.missing),
      });
    }
    return say.holds({
      place: train.origin,
      message: `${line.name}: the tooth counts of ${name} give ${derived}, which is used as its exact ratio.`,
      workings: [result.ratio],
    });
  }
  const workings = [result.ratio, declared];
  if (Math.abs(size - declared.si) <= lastDigit(declared.written) + 1e-9) {
    return say.holds({
      place: exact.origin,
      message: `${line.name}: the tooth counts of ${name} give ${derived}, which is the declared ${ratioWords(declared.si)}.`,
      workings,
    });
  }
  const places = Math.max(3, decimalsOf(declared.written));
  return say.fails({
    place: exact.origin,
    message:
      `${line.name}: the tooth counts of ${name} give ${derived}, but ${ratioWords(declared.si)} is declared. ` +
      'One of the two is not of this gear and clutch; every speed and torque here rests on it.',
    related: [{ at: train.origin, message: `tooth counts: ${derived}` }],
    workings,
    routes: () => [
      {
        title: `Write ${ratioWords(size, places)}, as the tooth counts give it`,
        edits: [{ do: 'replace', at: exact.origin, text: ratioWords(size, places) }],
      },
    ],
  });
}

/** One unit of the last digit written: sheets round as often as they cut off. */
function lastDigit(written: string | undefined): number {
  return 10 ** -decimalsOf(written);
}

function decimalsOf(written: string | undefined): number {
  return /\.(\d+)/.exec(written ?? '')?.[1]?.length ?? 0;
}
