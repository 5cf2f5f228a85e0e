import { percent } from '@tailshaft/mechanics';
import { gearsThatTurn, withGear } from '../../analysis/gear-choice.js';
import { LineAnalysis } from '../../analysis/line.js';
import type { LineContext } from '../../judge/context.js';
import type { GearChange } from '../gear-edits.js';
import { writtenRatio } from '../ratio/written-ratio.js';

/** Another ratio that the gear of the line is offered with. */
export interface OfferedRatio {
  /** As its sheet writes it. */
  readonly ratio: string;
  /** What it changes of the gear in the line. */
  readonly gear: GearChange;
  /** `the shaft turns 3 % faster` */
  readonly change: string;
  readonly other: LineAnalysis;
}

/**
 * Other ratios of the same gear that turn the shaft the same way in a clutch that may run ahead and that pass a test,
 * the nearest first.
 */
export function findOffered(
  { line, analysis, vessel, catalogue }: LineContext,
  passes: (other: LineAnalysis) => boolean,
): OfferedRatio[] {
  const turning = analysis.rotation.ahead;
  const { gear } = line;
  const now = analysis.overallRatio('ahead').value;
  if (!turning || !gear?.entry || !now) return [];
  const own = catalogue.gears.filter(one => one.name === gear.entry?.name);
  return gearsThatTurn(line, turning, own)
    .filter(one => one.variant.nominal.si !== gear.variant?.nominal.si)
    .flatMap(({ entry, variant, clutch }) => {
      const other = new LineAnalysis(withGear(line, entry, variant, clutch.name), vessel);
      const then = other.overallRatio('ahead').value;
      if (!then || !passes(other)) return [];
      const faster = now.si / then.si - 1;
      return [
        {
          ratio: variant.nominalFact.written,
          gear: { ratio: writtenRatio(variant, clutch, vessel), clutch: clutch.name },
          change: `the shaft turns ${percent(Math.abs(faster))} ${faster > 0 ? 'faster' : 'slower'}`,
          other,
        },
      ];
    });
}
