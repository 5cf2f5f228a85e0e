import { percent } from '@tailshaft/mechanics';
import { hasTorsionalData, torsionalSystem } from '../../analysis/torsional.js';
import { firingClearance } from '../../analysis/torsional-clearance.js';
import { torsionalStressOf } from '../../analysis/torsional-stress.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER } from './sources.js';
import { softerRoutes } from './torsional-routes.js';
import { WITH_INERTIAS } from './torsional-specs.js';

const INFO: RuleInfo = {
  id: 'interface/torsional-critical',
  title: 'No torsional critical of the firing order lies in the running range',
  mistakes: [],
  severity: 'warning',
  criterion:
    'first firing order against the natural frequencies of the line (engine, couplings, gear, shafts, ' +
    'propeller); blade rate is shown',
  source: {
    title: 'inertias joined by torsion springs and rigid gears, shafts cut into pieces; orders by definition',
    confidence: 'derived',
  },
  manual:
    'Where inertias and stiffnesses are declared, the line is solved as a torsional system: engine, couplings and joints, both sides of the gear, ' +
    'shafts with their own inertia, and the propeller with its entrained water. Only a rigid coupling is ' +
    'taken as stiff. The firing order meets the natural ' +
    'frequencies at certain speeds; one in the running range must be calculated with its damping, or barred. ' +
    'Where the spec declares the stresses or the excitation, the damped response is calculated and the ' +
    'stress judged by its own rule. Criticals of blade rate are shown too: their torque is smaller, and they ' +
    'can seldom be avoided. A softer damper usually moves the first critical below idle. Missing data are ' +
    'named; nothing is guessed.',
  caution:
    `${DEFER} Undamped, without stresses: a critical in the range does not prove damage, and none in the range ` +
    'does not prove safety. Minor orders are left out.',
  limitOf: 'places of criticals, with their own room to either side',
  noFigure: 'a system of masses and springs, calculated anew for each way out',
  examples: examples(() => ({
    failing: changed(WITH_INERTIAS, [
      'torsional stiffness 8200 N.m/rad',
      'torsional stiffness 60000 N.m/rad',
    ]),
    passing: WITH_INERTIAS,
    cannotTell: changed(WITH_INERTIAS, ['  inertia 1.1 kg.m2', '']),
  })),
};

export const torsionalCritical: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis } = context;
  const prime = line.engine ?? line.motor;
  if (!prime || !hasTorsionalData(line) || !line.propeller) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const system = torsionalSystem(analysis, needs);
  const place = prime.nameOrigin ?? prime.origin;
  if (!system) {
    return needs.any
      ? waits(say, needs, place, `${line.name}: whether a torsional critical lies in the running range`)
      : undefined;
  }
  const { solution, criticals } = system;
  const modes = solution.modes.map(mode => `${mode.frequency.si.toFixed(1)} Hz`).join(', ');
  const [firing, blades] = [
    criticals.filter(one => one.order.kind === 'engine firing'),
    criticals.filter(one => one.order.kind === 'propeller blade' && one.place?.position === 'inside'),
  ];
  const inside = firing.filter(one => one.place?.position === 'inside');
  const said = {
    place,
    workings: [...solution.modes.map(mode => mode.frequency), ...inside.map(one => one.speed)],
  };
  const list = (some: typeof criticals) =>
    some.map(one => `${one.order.label} excites mode ${one.mode} at ${analysis.tell(one.speed)}`).join('; ');
  const rate = blades.length > 0 ? ` Blade rate in the running range: ${list(blades)}.` : '';
  if (inside.length === 0) {
    return say.holds({
      ...said,
      message: `${line.name}: torsional frequencies ${modes}; the firing order excites none in the running range (${list(firing)}).${rate}`,
    });
  }
  const calculated = torsionalStressOf(analysis).value;
  if (calculated && calculated.open.length === 0) {
    return say.holds({
      ...said,
      message: `${line.name}: torsional frequencies ${modes}; at engine speed, ${list(inside)}, in the running range, and calculated with damping: interface/torsional-stress judges the stress there.${rate}`,
    });
  }
  return say.fails({
    ...said,
    message: `${line.name}: torsional frequencies ${modes}; at engine speed, ${list(inside)}, in the running range.${rate} Have it calculated with damping, bar the speeds, or fit another damper.`,
    routes: () =>
      softerRoutes(context, after => {
        const margin = firingClearance(after);
        return margin === undefined || margin <= 0
          ? undefined
          : { margin, words: `the firing order then stays ${percent(margin)} clear of the running range` };
      }),
  });
}
