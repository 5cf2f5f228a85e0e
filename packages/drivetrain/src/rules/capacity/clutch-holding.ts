import { clutchServiceFactor, USUAL_SERVICE_FACTOR } from '@tailshaft/mechanics';
import { hasPlates, holdingTorque } from '../../analysis/clutch-holding.js';
import { torqueAtClutch } from '../../analysis/clutch-torque.js';
import { aheadClutchOf, asternClutchOf } from '../../analysis/gear-data.js';
import type { Direction } from '../../analysis/speeds.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Criterion, Verdict } from '../../judge/verdict.js';
import type { Quantity } from '../../model/fact.js';
import type { Clutch, Gear } from '../../model/gear.js';
import { nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { judgeKnown } from '../known-half.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { atLeast, greatestKnownPoint } from './greatest-torque.js';
import { DEFER } from './sources.js';

const WITH_PLATES = changed(SINGLE_LINE, [
  'clutch B output opposite ahead continuous\n',
  `clutch B output opposite ahead continuous {
      faces 16
      outer diameter 160 mm
      inner diameter 110 mm
      piston outer diameter 155 mm
      piston inner diameter 90 mm
      oil pressure 20 bar
      spring force 900 N
      friction 0.1
    }
`,
]);

const INFO: RuleInfo = {
  id: 'capacity/clutch-holding',
  title: 'Each clutch holds the torque it is engaged for',
  mistakes: [],
  severity: 'error',
  estimate: USUAL_ESTIMATE,
  criterion:
    'holding torque by uniform wear over the greatest torque at that clutch, at least the service factor',
  source: {
    author: 'R. S. Khurmi, J. K. Gupta',
    title: 'Theory of Machines',
    clause: 'chapter 10, friction clutches; uniform wear',
    confidence: 'published',
  },
  manual:
    'Where an entry gives the plates of a clutch, its holding torque is computed: faces × friction × clamp ' +
    'force × mean radius, the clamp force being oil pressure on the piston less its return springs. Uniform ' +
    'wear is assumed, which is cautious and describes a worn-in clutch; uniform pressure is shown beside it. ' +
    'The result is compared with the greatest engine torque at that clutch, ahead and astern separately. Where the gear gives its train and states what the clutch holds or ' +
    'locks, that torque follows from the balance of the members: a brake on a ring carries more than ' +
    'engine torque. The service factor covers ' +
    'shifts and torque peaks: 1.5 unless the criteria set another. A published rating takes precedence.',
  caution:
    `${DEFER} Oil head from rotation, grooves, heat of engagement and wear limits are not included. The default ` +
    'factor is from memory.',
  severalMovers: 'each',
  oneInput: true,
  examples: examples(() => ({
    failing: changed(WITH_PLATES, ['faces 16', 'faces 8']),
    passing: WITH_PLATES,
    cannotTell: changed(WITH_PLATES, ['      friction 0.1\n', '']),
  })),
};

export const clutchHolding: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> | undefined {
  const { gear, engine, motor } = context.line;
  if (!gear || !(engine || motor)) return undefined;
  const used = [
    ['ahead', aheadClutchOf(gear)],
    ['astern', asternClutchOf(gear)],
  ] as const;
  return each(used, ([direction, clutch]) =>
    clutch && hasPlates(clutch) ? judge(context, gear, clutch, direction) : undefined,
  );
}

function judge(context: LineContext, gear: Gear, clutch: Clutch, direction: Direction): Verdict {
  const { line, analysis } = context;
  const say = sayFor(INFO, line.path);
  const name = `clutch ${clutch.name} of ${nameOf(gear)}`;
  const place = clutch.origin;
  const needs = new Needs();
  const holding = holdingTorque(clutch, () => leastPressure(gear), name, needs);
  const peak = greatestKnownPoint(analysis, needs);
  const input = peak && analysis.loads(peak, direction).entering.get(gear)?.torque;
  const torque = torqueAtClutch(gear, clutch, input, needs);
  const { factor, criterion } = wantedFactor(context);
  const what = `${line.name}: what ${name} holds against the torque ${direction}`;
  if (!holding || !peak || !torque) {
    const known = torque
      ? `it sees ${atLeast(analysis)}${analysis.tell(torque)}`
      : holding && `it holds ${analysis.tell(holding.uniformWear)}`;
    return waits(say, needs, place, what, { criterion, ...(known ? { known } : {}) });
  }
  const { uniformWear, uniformPressure } = holding;
  const held = asNew(context) ? uniformPressure : uniformWear;
  const reached = clutchServiceFactor({ holdingTorque: held, engineTorque: torque });
  const numbers =
    `${name} holds ${analysis.tell(uniformWear)} worn in (${analysis.tell(uniformPressure)} new) against ${atLeast(analysis)}${analysis.tell(torque)} ` +
    `${direction} at ${peak.name}: service factor ${reached.si.toFixed(2)}`;
  return judgeKnown(say, needs, {
    place,
    criterion,
    capacity: held,
    demand: torque,
    wanted: factor - 1,
    workings: [reached, uniformWear, uniformPressure],
    severity: direction === 'astern' ? 'warning' : 'error',
    what,
    numbers: `${numbers}, ${factor} required`,
    remedy:
      '. It would slip and burn on a shift or a torque peak. Fit more faces or a larger gear, ' +
      'or raise the oil pressure within what the maker allows.',
    related: [{ at: peak.torque.origin ?? line.origin, message: 'peak torque of the engine' }],
  });
}

/** The lower end of the gear's working oil pressure, for a clutch that states none of its own. */
function leastPressure(gear: Gear): Quantity<'pressure'> | undefined {
  const fact = gear.oilPressure;
  return fact && { value: fact.value?.low, written: fact.written, origin: fact.origin };
}

/** Whether the criteria count a clutch as new, its pressure even over the faces. */
function asNew({ vessel }: LineContext): boolean {
  return vessel.criteria?.clutchPressure?.value === 'uniform pressure';
}

function wantedFactor(context: LineContext): { factor: number; criterion: Criterion } {
  const { vessel } = context;
  const own = vessel.criteria?.clutchServiceFactor?.value;
  const model = vessel.criteria?.clutchPressure;
  const factor = own?.si ?? USUAL_SERVICE_FACTOR.from;
  return {
    factor,
    criterion: {
      said: `${asNew(context) ? INFO.criterion.replace('uniform wear', 'uniform pressure') : INFO.criterion} ${factor}${own ? '' : ` (${USUAL_SERVICE_FACTOR.source.confidence})`}`,
      chosenBy: own || model ? 'author' : 'default',
    },
  };
}
