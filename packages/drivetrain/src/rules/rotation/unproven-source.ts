import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { type Fact, isWeak } from '../../model/fact.js';
import { nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import type { ShaftLine } from '../../model/vessel.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { pairFolds } from './pair-folds.js';
import { DOCK_CAUTION, PRACTICE } from './sources.js';
import { foldOn, type Use, usesOf } from './uses.js';

const INFO: RuleInfo = {
  id: 'rotation/unproven-source',
  title: 'Every fact that decides rotation rests on more than hearsay',
  mistakes: ['R17'],
  severity: 'note',
  criterion: 'evidence of every fact that decides which way a shaft turns',
  source: PRACTICE,
  manual:
    'A rotation, output sense or hand quoted from recollection is a reason to look, not proof: no check holds on ' +
    'it, and a check that fails on it still fails. Read the plate or the manual, bar the engine over with its ' +
    'start isolated, or look at the propeller out of the water. Then write the evidence: `[plate]`, `[measured ' +
    '2026-01-14]`, `[drawing "S-201"]`.',
  caution: `${DOCK_CAUTION} Turning an engine over by hand needs its start isolated and two people.`,
  noFigure: 'a sense, a hand or a clutch',
  judgesEvidence: true,
  standsWithout: 'anything',
  curesRecord: true,
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, ['hand right [drawing]', 'hand right [hearsay]']),
    passing: SINGLE_LINE,
    cannotTell: 'The rule reads the evidence that is written beside a fact; it can always tell.',
  })),
};

export const unprovenSource: Rule = { ...INFO, scope: 'vessel', check };

interface Stated {
  readonly what: string;
  readonly fact: Fact<unknown>;
}

function check(context: Context): Verdict | Apart<Verdict> {
  const uses = usesOf(context.vessel, line => factsOf(context, line));
  const findings = each(uses, judge);
  if (findings.length > 0 || uses.length === 0) return findings;
  const { name, nameOrigin } = context.vessel;
  return sayFor(INFO, name).holds({
    place: nameOrigin,
    message: 'No fact that decides a rotation is hearsay or assumed.',
  });
}

/** The facts that decide how this line turns. The permission of a clutch has a rule of its own. */
function factsOf(context: Context, line: ShaftLine) {
  const { engine, motor, gear, propeller } = line;
  const clutch = context.analysisOf(line).aheadClutch.value;
  const all: [string, Fact<unknown> | undefined][] = [
    [`rotation of ${engine ? nameOf(engine) : ''}`, engine?.rotation],
    ['way the flywheel faces', engine?.flywheelFaces],
    [`rotation of ${motor ? nameOf(motor) : ''}`, motor?.rotation],
    ['clutch engaged for ahead', gear?.aheadClutch],
    [`layout of ${gear ? nameOf(gear) : ''}`, gear?.layout],
    [`input rotation of ${gear ? nameOf(gear) : ''}`, gear?.inputRotation],
    ['pump setting', gear?.pumpIndex],
    [`output sense of clutch ${clutch?.name}`, clutch?.output],
    ...line.transfers.flatMap((transfer): [string, Fact<unknown> | undefined][] => [
      [`output sense of ${nameOf(transfer)}`, transfer.output],
      [`turning back of ${nameOf(transfer)}`, transfer.turnsBack],
    ]),
    ['hand of the propeller', propeller?.hand],
    ['hand that the propeller is set for', propeller?.handSetting],
  ];
  return all.flatMap(([what, fact]) =>
    fact?.value !== undefined ? [{ of: { what, fact }, at: fact.origin }] : [],
  );
}

function judge({ of, line, lines }: Use<Stated>): Verdict | undefined {
  const { what, fact } = of;
  if (!isWeak(fact)) return undefined;
  const say = sayFor(INFO, line.path);
  const unusable = new Needs();
  unusable.miss(
    { what: `${what} by more than ${fact.evidence?.kind}`, host: line.origin, property: what },
    fact.origin,
  );
  return say.fails(
    {
      place: fact.origin,
      message:
        `The ${what} (${fact.written}) on ${lines.map(one => one.path).join(', ')} is only ${fact.evidence?.kind}, so no rotation check can pass on it. ` +
        'Add a plate, manual or measurement, and list it for proof at the dock trial.',
      explains: [...foldOn(lines, ...WAITING), ...lines.flatMap(one => pairFolds(one.arrangement))],
    },
    unusable.missing,
  );
}

/** Rules that wait for better evidence. */
const WAITING = [
  'rotation/propeller-hand',
  'rotation/input-accepted',
  'rotation/pump-index',
  'rotation/accessory',
  'rotation/line-turns-back',
];
