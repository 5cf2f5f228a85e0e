import { findUnit, fromSI, given, type Value, writtenUnit } from '@tailshaft/mechanics';
import { amount, inUnit, newWord, spell } from '@tailshaft/vocabulary';
import { bollardThrust } from '../../analysis/thrust.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import type { Fact } from '../../model/fact.js';
import { nameOf, type Part } from '../../model/part.js';
import { addBlock } from '../rotation/edits.js';

/**
 * A thrust bearing in the shaft, rated for the thrust at the bollard: the first shaft behind what cannot carry it. Where it
 * stands is not invented: its place is asked for by the checks that need it.
 */
export function thrustBearingRoutes({ line, analysis }: LineContext, insteadOf: Part): Route[] {
  const from = line.chain.indexOf(insteadOf);
  const shaft = line.shafts.find(one => line.chain.indexOf(one) > from);
  const thrust = bollardThrust(analysis, new Needs());
  if (!shaft || !thrust) return [];
  // In the unit that the author gives thrust in.
  const said = writtenUnit((insteadOf as { thrust?: Fact<Value> }).thrust?.value);
  const unit = said?.dimensions.includes('force') ? said : findUnit('kN')!;
  const value = amount(inUnit('force', roundedUp(fromSI(thrust.si, unit)), unit.symbol));
  const taken = new Set((shaft.bearings ?? []).map(one => one.name));
  const name = ['thrust', 'thrust-block', 'thrust-2'].find(one => !taken.has(one));
  if (name === undefined) return [];
  const words = analysis.tell(given('thrust', 'T', 'force', thrust.si), 3);
  return [
    {
      title: `Add a thrust bearing for ${spell(value)} to the shaft behind ${nameOf(insteadOf)}, on a seat tied to the hull: it carries the ${words} estimated at the bollard; its place and lubrication are still to be written`,
      edits: [
        addBlock(shaft, {
          block: 'bearing',
          name,
          facts: [
            { property: 'kind', value: newWord('thrust') },
            { property: 'thrust at most', value },
          ],
        }),
      ],
    },
  ];
}

/** Two figures, and never less. */
function roundedUp(force: number): number {
  const step = 10 ** (Math.floor(Math.log10(force)) - 1);
  return Number((Math.ceil(force / step - 1e-9) * step).toPrecision(6));
}
