import { lengthLeftOver } from '@tailshaft/mechanics';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER, PRACTICE } from './sources.js';

const WITH_BEDS = changed(
  SINGLE_LINE,
  ['  housing SAE-3\n', '  housing SAE-3\n  mount centres 24 in\n'],
  ['{ flywheel aft }', '{ flywheel aft  bed centres 24 in }'],
);

const INFO: RuleInfo = {
  id: 'interface/bed-centres',
  title: 'Engine mounts line up with the beds',
  mistakes: ['I08'],
  severity: 'warning',
  estimate: USUAL_ESTIMATE,
  criterion: 'distance across between the mounts against that between the beds, within 10 mm',
  source: PRACTICE,
  manual:
    'Beds are built for the engine they carried. Mounts that do not stand over them need brackets, which carry ' +
    'thrust and torque reaction out of line, or the beds must be changed. "mount centres" of the engine are ' +
    'compared with "bed centres" at its place. Put brackets or beds into the scope of the work.',
  caution: `${DEFER} The 10 mm is common practice: slots in mounts take it up.`,
  noCure: 'The designer alters the beds or chooses other mounts; the spec cannot.',
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(WITH_BEDS, ['mount centres 24 in', 'mount centres 22.5 in']),
    passing: WITH_BEDS,
    cannotTell: changed(WITH_BEDS, ['  mount centres 24 in\n', '']),
  })),
};

export const bedCentres: Rule = { ...INFO, scope: 'line', check };

const SLOT = 10e-3;

function check(context: LineContext): Verdict | undefined {
  const { line, analysis } = context;
  const { engine } = line;
  if (!engine?.bedCentres) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const place = engine.bedCentres.origin;
  const beds = needs.fact(engine.bedCentres, {
    what: 'bed centres of the vessel',
    host: engine.origin,
    property: 'bed centres',
  });
  const mounts = needs.fact(engine.mountCentres, {
    what: `mount centres of ${nameOf(engine)}`,
    host: home(engine),
    property: 'mount centres',
  });
  if (!beds || !mounts)
    return waits(say, needs, place, `${line.name}: whether the engine mounts line up with the beds`);
  const apart = lengthLeftOver({ stack: mounts, room: beds });
  const numbers = `mount centres are ${mounts.written ?? analysis.tell(mounts)}, bed centres ${beds.written ?? analysis.tell(beds)}`;
  return say.within({
    place,
    difference: apart.si,
    differs: apart,
    allowed: SLOT,
    workings: [apart],
    related: [{ at: engine.mountCentres!.origin, message: 'mount centres' }],
    message: `${line.name}: ${numbers}.`,
    failMessage: `${line.name}: ${numbers}: ${analysis.tell({ ...apart, si: Math.abs(apart.si) }, 3)} apart. Fit brackets that carry thrust and torque reaction, or new beds.`,
  });
}
