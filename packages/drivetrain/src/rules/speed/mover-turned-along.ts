import { renamed, shaftSpeedThroughGear } from '@tailshaft/mechanics';
import { stagesBefore } from '../../analysis/joined.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Motor } from '../../model/engine.js';
import { home, nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import { DEFER } from '../capacity/sources.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { HYBRID } from '../hybrid-specs.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';

const INFO: RuleInfo = {
  id: 'speed/mover-turned-along',
  title: 'A motor driven by the engine stays within its top speed',
  mistakes: [],
  severity: 'error',
  criterion:
    'speed of the shaft at the motor, with the engine at its governed speed, against the top speed of the motor',
  source: { title: 'the top speed that the maker of the motor states', confidence: 'derived' },
  manual:
    'A motor on the line of an engine turns with it, whether it drives or not. Above its top speed the rotor ' +
    'may burst, and well below that a permanent-magnet machine generates a voltage that its controller ' +
    'cannot withstand. Ahead of the gear it turns as fast as the engine at high idle. Choose a motor for ' +
    'that speed, fit it behind the gear, or fit a clutch that disconnects it, and leave the motor out of the ' +
    'line for that mode.',
  caution: `${DEFER} Ask the maker for the speed with the controller off, which may be lower.`,
  limitOf: 'the maker’s limit',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(HYBRID, ['top speed 2950 rpm', 'top speed 2400 rpm']),
    passing: HYBRID,
    cannotTell: changed(HYBRID, ['  top speed 2950 rpm\n', '']),
  })),
};

export const moverTurnedAlong: Rule = { ...INFO, scope: 'line', check };

function check({ line, analysis, vessel }: LineContext): Apart<Verdict> | undefined {
  if (!line.mode || !line.engine) return undefined;
  const motors = line.chain.filter(one => one.role === 'motor') as readonly Motor[];
  const say = sayFor(INFO, line.path);
  return each(motors, motor => {
    const needs = new Needs();
    const name = nameOf(motor);
    const top = needs.fact(motor.topSpeed, {
      what: `top speed of ${name}`,
      host: home(motor),
      property: 'top speed',
    });
    const governed = needs.take(analysis.governedSpeed);
    const before = stagesBefore(line, vessel, motor, needs);
    const place = motor.topSpeed?.origin ?? motor.nameOrigin ?? motor.origin;
    if (!top || !governed || !before || needs.any)
      return waits(
        say,
        needs,
        place,
        `${line.name}: whether ${name} may turn as fast as the engine turns it`,
      );
    const speed = renamed(
      shaftSpeedThroughGear({ engineSpeed: governed, ratio: before.ratio }),
      'speed of the shaft at the motor',
    );
    const turns = `${line.name}: the engine turns ${name} at up to ${analysis.tell(speed)}`;
    return say.compare({
      place,
      capacity: top,
      demand: speed,
      workings: [speed],
      message: `${turns}; its top speed is ${analysis.tell(top)}.`,
      failMessage: `${turns}, and its top speed is ${analysis.tell(top)}. Choose a motor for that speed, fit it behind the gear, or fit a clutch that disconnects it.`,
    });
  });
}
