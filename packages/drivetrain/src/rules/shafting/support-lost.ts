import { OPEN } from '@tailshaft/vocabulary';
import { keptOf } from '../../analysis/kept.js';
import { hasSupports } from '../../analysis/shaft-supports.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { changed, REPOWER } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER, PRACTICE } from './sources.js';

const OLD = 'shaft { material high-strength-stainless  diameter 65 mm [drawing]  seal packed gland }';
const BEARINGS = `modify shaft {
        seal face seal
        seal water from own engine
        overhang 60 mm
        bearing tube {
          kind stern tube
          at 1.45 m
          lubrication water
          water from own engine
        }
        bearing strut { kind strut  at 2.95 m  length 260 mm  lubrication water }
      }`;
const ELASTIC: readonly [string, string] = [
  '  torsional yield 70000 psi\n',
  '  torsional yield 70000 psi\n  elastic modulus 193 GPa\n  density 7890 kg/m3\n',
];
const RESEALED = changed(
  REPOWER,
  ['shaft { material high-strength-stainless  diameter 65 mm [drawing] }', OLD],
  ['retain shaft', BEARINGS],
  ELASTIC,
);

const INFO: RuleInfo = {
  id: 'shafting/support-lost',
  title: 'Support lost with the packed gland is made good',
  mistakes: ['L07'],
  severity: 'warning',
  criterion: 'packed gland replaced by a flexible seal: the remaining supports are declared',
  source: PRACTICE,
  manual:
    'A packed gland on a rigid tube supports the shaft like a bearing, intended or not. A lip or face seal and a ' +
    'gland on a hose support nothing. Vessels that ran quietly for years have whipped after the gland was ' +
    'replaced. Declare the remaining bearings with their places, so that the span check can judge them; or add a ' +
    'bearing where the gland was.',
  caution: `${DEFER} Wear seen when the old gland is opened shows whether it carried load.`,
  noFigure: 'no number is compared',
  noCure: 'A support must be chosen and fitted with its seat.',
  examples: examples(() => ({
    failing: changed(
      REPOWER,
      ['shaft { material high-strength-stainless  diameter 65 mm [drawing] }', OLD],
      ['retain shaft', 'modify shaft { seal lip seal  seal water from separate pump }'],
    ),
    passing: RESEALED,
    cannotTell: changed(
      RESEALED,
      ['seal packed gland', 'seal unknown'],
      [BEARINGS, 'modify shaft { seal flexible gland }'],
    ),
  })),
};

export const supportLost: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line } = context;
  const shaft = line.shafts.at(-1);
  const old = shaft && (line.before?.shafts.at(-1) ?? keptOf(shaft, line, context.vessel)?.was);
  if (!shaft?.seal || !old?.seal) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const place = shaft.seal.origin;
  const wanted = (what: string, host: object) => ({ what, host, property: 'seal' });
  const now = needs.fact(shaft.seal, wanted('the seal', shaft.origin));
  const then = needs.fact(old.seal, wanted('the old seal', old.origin));
  if (!now || !then) return waits(say, needs, place, `${line.name}: whether the shaft loses a support`);
  if (then !== 'packed gland' || now === 'packed gland') {
    return say.holds({
      place,
      message: `${line.name}: ${then} before and ${now} now: no support is lost.`,
    });
  }
  if (hasSupports(shaft)) {
    return say.holds({
      place,
      message: `${line.name}: the packed gland is gone; the supports that remain are declared and judged by their spans.`,
    });
  }
  return say.fails({
    place,
    message:
      `${line.name}: the packed gland may have held the shaft; a ${now} does not, and no bearing is declared. ` +
      'Declare the bearings with their places, so that their spans can be judged, or add one where the gland was.',
    related: [{ at: old.seal.origin, message: 'the packed gland before' }],
    routes: () => [
      {
        title: 'Write the bearing span as an open question: the whirling check then needs it',
        edits: [{ do: 'set', host: shaft.origin, property: 'bearing span', value: OPEN }],
        stub: true,
      },
    ],
  });
}
