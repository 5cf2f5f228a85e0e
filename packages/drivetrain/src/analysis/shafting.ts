import type { Value } from '@tailshaft/mechanics';
import { Kept } from '../model/reads.js';
import { type AngleStack, angleStack } from './angles.js';
import { type Derived, derive } from './derived.js';
import { type PropellerWhirl, propellerWhirl } from './lateral.js';
import type { LineAnalysis } from './line.js';
import { shaftCriteria } from './shaft-criteria.js';
import { ratedShaftLoad, type ShaftStrength, shaftStrength } from './shaft-strength.js';
import { greatestShaftSpeed, hasSupports, type SpanWhirl, spanWhirls } from './shaft-supports.js';
import { bollardThrust, type ThrustPath, thrustPath } from './thrust.js';
import { type TorsionalSystem, torsionalSystem } from './torsional.js';

/** What follows for the shaft line from the facts of one line, for sheet, hover and comparison. */
export interface ShaftingAnalysis {
  /** The aftmost shaft by each criterion that judges it. */
  readonly strengths: Derived<readonly ShaftStrength[]>;
  /** First whirling speed of every span of every shaft. */
  readonly spans: Derived<readonly SpanWhirl[]>;
  readonly greatestSpeed: Derived<Value<'rotational speed'>>;
  readonly propellerWhirl: Derived<PropellerWhirl>;
  readonly torsional: Derived<TorsionalSystem>;
  readonly angles: Derived<AngleStack>;
  readonly bollardThrust: Derived<Value<'force'>>;
  readonly thrustPath: ThrustPath;
}

const made = new WeakMap<LineAnalysis, ShaftingAnalysis>();

/** The shafting side of a line, each part worked out when first asked for. */
export function shaftingOf(analysis: LineAnalysis): ShaftingAnalysis {
  const had = made.get(analysis);
  if (had) return had;
  const kept = new Kept();
  const once = <T>(key: string, make: () => T): T => kept.once(key, make);
  const { line } = analysis;
  const last = line.shafts.at(-1);
  const shafting: ShaftingAnalysis = {
    get strengths() {
      return once('strengths', () => strengthsOf(analysis));
    },
    get spans() {
      return once('spans', () => spansOfLine(analysis));
    },
    get greatestSpeed() {
      return once('speed', () => derive(needs => last && greatestShaftSpeed(analysis, last, needs)));
    },
    get propellerWhirl() {
      return once('propeller whirl', () => derive(needs => propellerWhirl(line, needs)));
    },
    get torsional() {
      return once('torsional', () => derive(needs => torsionalSystem(analysis, needs)));
    },
    get angles() {
      return once('angles', () => derive(needs => angleStack(line, needs)));
    },
    get bollardThrust() {
      return once('bollard', () => derive(needs => bollardThrust(analysis, needs)));
    },
    get thrustPath() {
      return once('thrust path', () => thrustPath(line));
    },
  };
  made.set(analysis, shafting);
  return shafting;
}

function strengthsOf(analysis: LineAnalysis): Derived<readonly ShaftStrength[]> {
  return derive(needs => {
    const shaft = analysis.line.shafts.at(-1);
    if (!shaft) return undefined;
    const criteria = shaftCriteria(analysis.vessel, needs);
    const load = ratedShaftLoad(analysis, shaft, needs);
    const strengths = load && criteria.flatMap(one => shaftStrength(shaft, load, one, true, needs) ?? []);
    return needs.any ? undefined : strengths;
  });
}

function spansOfLine({ line }: LineAnalysis): Derived<readonly SpanWhirl[]> {
  return derive(needs => {
    const whirls = line.shafts.flatMap((shaft, index) =>
      hasSupports(shaft) ? spanWhirls(shaft, line.shafts[index - 1], needs) : [],
    );
    return needs.any || whirls.length === 0 ? undefined : whirls;
  });
}
