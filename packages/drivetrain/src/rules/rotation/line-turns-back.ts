import type { FlywheelFacing } from '@tailshaft/mechanics';
import { listed } from '@tailshaft/mechanics';
import { type NewValue, spell } from '@tailshaft/vocabulary';
import { rotationOf } from '../../analysis/rotation.js';
import { turnsBack } from '../../analysis/stages.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Gear, Transfer } from '../../model/gear.js';
import { home, nameOf } from '../../model/part.js';
import type { ShaftLine } from '../../model/vessel.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { stubRoutes } from './edits.js';
import { facingNeeded, facingRoute } from './flywheel-facing.js';
import { ALGEBRA, DOCK_CAUTION } from './sources.js';
import { foldOn } from './uses.js';

const V_DRIVE = changed(
  SINGLE_LINE,
  ['layout down-angle 8 deg', 'layout V-drive'],
  ['clutch B output opposite ahead', 'clutch B output same seen from aft ahead'],
  ['clutch A output same ahead', 'clutch A output opposite seen from aft ahead'],
);

const INFO: RuleInfo = {
  id: 'rotation/line-turns-back',
  title: 'A flywheel that faces forward is matched by a stage that turns the line back',
  mistakes: ['R12'],
  severity: 'error',
  criterion:
    'facing of the flywheel against the stages that turn the line back, and the viewpoint of their output sense',
  source: ALGEBRA,
  manual:
    'With a V-drive or a U-drive the engine is installed the other way round: its flywheel faces forward and ' +
    'the gear brings the line back aft. Seen from aft, the same engine then turns the other way. Each stage ' +
    'that turns the line back needs a flywheel that faces forward, and a flywheel that faces forward needs ' +
    'such a stage, or the propeller would be ahead of the engine. Where the line turns back, makers compare ' +
    'the ends of the gear in two ways that give opposite words, so the output sense must say `seen from aft` ' +
    'or `each seen at its own end`.',
  caution: `${DOCK_CAUTION} Gear-coupled and chain-coupled V-drives differ: take the sense from the sheet of the unit.`,
  noFigure: 'a sense, a hand or a clutch',
  severalMovers: 'each',
  examples: examples(() => ({
    failing: V_DRIVE,
    passing: changed(V_DRIVE, ['flywheel aft', 'flywheel forward'], ['hand right', 'hand right']),
    cannotTell: changed(V_DRIVE, ['{ flywheel aft }', '']),
  })),
};

export const lineTurnsBack: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis } = context;
  const { engine } = line;
  if (!engine) return undefined;
  const boxes: (Gear | Transfer)[] = [...(line.gear ? [line.gear] : []), ...line.transfers];
  const facing = engine.flywheelFaces?.value;
  const backs = boxes.filter(box => turnsBack(box) === true);
  if (backs.length === 0 && facing !== 'forward') return undefined;
  const say = sayFor(INFO, line.path);
  const needs = gapsOf(line, boxes, facing, analysis.rotation.missing);
  const place = engine.flywheelFaces?.origin ?? engine.nameOrigin ?? engine.origin;
  const turning = backs.length > 0 ? listed(backs.map(nameOf)) : undefined;
  if (needs.any) {
    return say.cannotTell(needs, {
      place: needs.missing[0]!.at ?? place,
      message: cannotTellWords(
        `${line.name}: ${turning ? `the line turns back in ${turning}` : 'the flywheel faces forward'}; which way the shaft turns`,
        needs.missing,
      ),
      explains: [{ rule: 'rotation/propeller-hand', subject: line.path }],
      routes: () => [
        ...(facing ? [] : facingRoutes(line, boxes)),
        ...seenRoutes(line, boxes),
        ...stubRoutes(needs.missing),
      ],
    });
  }
  const other = facingNeeded(line);
  if (other === undefined) {
    return say.holds({
      place,
      message: `${line.name}: the flywheel faces ${facing} and ${turning ? `the line turns back in ${turning}` : 'the line runs straight on'}; the power leaves aft.`,
    });
  }
  const why = turning
    ? `the flywheel faces ${facing}, but the line turns back in ${turning}, so the power would leave forward`
    : 'the flywheel faces forward, but nothing turns the line back aft';
  return say.fails({
    place,
    message: `${line.name}: ${why}. With the flywheel ${other} the same engine turns the other way as seen from aft, and the propeller hand follows.`,
    related: backs.map(box => ({ at: box.origin, message: 'the line turns back here' })),
    explains: foldOn([line], 'rotation/propeller-hand', 'rotation/engine-changed'),
    routes: () => [facingRoute(line, other)],
  });
}

function gapsOf(
  line: ShaftLine,
  boxes: readonly (Gear | Transfer)[],
  facing: FlywheelFacing | undefined,
  missing: LineContext['analysis']['rotation']['missing'],
): Needs {
  const needs = new Needs();
  const engine = line.engine!;
  if (!facing) {
    const what = `which way the flywheel of ${nameOf(engine)} faces`;
    needs.fact(engine.flywheelFaces, { what, host: engine.origin, property: 'flywheel' });
  }
  for (const box of boxes) {
    if (turnsBack(box) !== undefined) continue;
    const [property, fact] =
      box.role === 'gear'
        ? (['layout', box.layout] as const)
        : (['turns the line back', box.turnsBack] as const);
    const what = `${property === 'layout' ? 'the layout of' : 'whether the line turns back in'} ${nameOf(box)}`;
    needs.miss({ what, host: home(box), property }, fact?.origin);
  }
  // An output sense that does not say from where it is seen is part of the same question.
  const seen = missing.filter(gap => gap.what.startsWith('from where the output sense'));
  needs.take({ value: undefined, missing: seen });
  return needs;
}

/** The facing that lets the power leave aft; both where a box does not say whether it turns the line back. */
function facingRoutes(line: ShaftLine, boxes: readonly (Gear | Transfer)[]): Route[] {
  const turns = boxes.map(turnsBack);
  const ways = turns.includes(undefined)
    ? (['aft', 'forward'] as const)
    : [turns.filter(Boolean).length % 2 === 0 ? ('aft' as const) : ('forward' as const)];
  return ways.map(way => facingRoute(line, way));
}

/** Both ways of comparing the ends of a box that turns the line back. */
function seenRoutes(line: ShaftLine, boxes: readonly (Gear | Transfer)[]): Route[] {
  return boxes.flatMap(box => {
    if (turnsBack(box) !== true) return [];
    const output = box.role === 'gear' ? rotationOf(line).clutch?.output : box.output;
    if (!output?.value || output.value.seen) return [];
    const { word } = output.value;
    return (['from aft', 'each seen at its own end'] as const).map(seen => {
      const value: NewValue = { is: 'output', output: { word, seen } };
      const keeps = (word === 'same') === (seen === 'from aft');
      return {
        title: `Write "output ${spell(value)}": seen from aft, ${nameOf(box)} then ${keeps ? 'keeps' : 'reverses'} the rotation`,
        edits: [{ do: 'replace', at: output.origin, value } as const],
      };
    });
  });
}
