import { OPEN } from '@tailshaft/vocabulary';
import { moversOf } from '../../analysis/mode-before.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { ShaftLine } from '../../model/vessel.js';
import { changed, REPOWER } from '../example-specs.js';
import { examples } from '../examples.js';
import { writeInPlace } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER, PRACTICE } from './sources.js';

const INFO: RuleInfo = {
  id: 'interface/torsional-statement',
  title: 'A changed drivetrain has a torsional statement',
  mistakes: ['I05'],
  severity: 'warning',
  criterion:
    'after a change of engine, coupling, ratio, shaft or propeller, a torsional calculation or statement is named',
  source: PRACTICE,
  manual:
    'Engine, damper, gear, shaft and propeller form one torsional system: a change of one moves its criticals, ' +
    'perhaps into the running range, where gears hammer and shafts break. Class requires a new calculation; for ' +
    'a small yacht, obtain at least a statement from the supplier of engine and gear together. Name it at the ' +
    'engine: torsional statement "...".',
  caution: `${DEFER} A statement covers the parts and the speeds that it names.`,
  noFigure: 'no number is compared',
  curesRecord: true,
  noCure: 'Only a calculation or the maker’s statement settles it; the fix keeps the question open.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(REPOWER, ['  torsional statement "Kittiwake 9 with Alder 63, calculation 17"', '']),
    passing: REPOWER,
    cannotTell: changed(REPOWER, [
      'torsional statement "Kittiwake 9 with Alder 63, calculation 17"',
      'torsional statement unknown',
    ]),
  })),
};

export const torsionalStatement: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line } = context;
  const prime = line.engine ?? line.motor;
  if (!prime || !line.before) return undefined;
  const changes = changedParts(line, line.before);
  if (changes.length === 0) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const place = prime.nameOrigin ?? prime.origin;
  const statement = prime.torsionalStatement;
  if (statement) {
    const text = needs.fact(statement, {
      what: `torsional statement for ${line.name}`,
      host: prime.origin,
      property: 'torsional statement',
    });
    if (text === undefined) {
      return waits(say, needs, place, `${line.name}: whether the changed system was calculated`);
    }
    return say.holds({
      place,
      message: `${line.name}: ${changes.join(', ')} changed; torsional statement: ${text}.`,
    });
  }
  return say.fails({
    place,
    message: `${line.name}: ${changes.join(', ')} changed, which moves the torsional criticals; no calculation or statement is named. Ask who supplies engine and gear, and class where the vessel has one.`,
    routes: () => [
      {
        title: 'Write the torsional statement as an open question: the sheet then lists it',
        edits: [writeInPlace(prime, 'torsional statement', OPEN)],
        stub: true,
      },
    ],
  });
}

/** What of the vibrating system is not as it was. */
function changedParts(line: ShaftLine, before: ShaftLine): string[] {
  const changed: string[] = [];
  const other = moversOf(line) !== moversOf(before);
  if (other && line.mode && before.mode) changed.push('what drives');
  else if (line.engine?.entry?.name !== before.engine?.entry?.name || line.engine?.change === 'replaced')
    changed.push('engine');
  if (line.motor && line.motor.change !== 'retained') changed.push('motor');
  if (
    line.couplings.some(one => one.change !== 'retained') ||
    line.couplings.length !== before.couplings.length
  ) {
    changed.push('coupling');
  }
  const ratio = (one: ShaftLine) => one.gear?.variant?.nominal.si ?? one.gear?.ratioUsed?.value?.si;
  if (line.gear?.change === 'replaced' || ratio(line) !== ratio(before)) changed.push('gear');
  if (line.shafts.some(one => one.change === 'replaced')) changed.push('shaft');
  if (line.propeller?.change === 'replaced') changed.push('propeller');
  return changed;
}
