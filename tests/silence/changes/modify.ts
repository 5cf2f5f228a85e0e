import type { Change } from '../change.js';
import type { Judged } from '../rejudge.js';
import { edited } from '../written.js';

/** What of a kept part no rule about that part as it is kept rests on, with the rules that read just that. */
const NEUTRAL: Readonly<Record<string, readonly (readonly [fact: string, touches: readonly string[]])[]>> = {
  engine: [['serial "as stamped"', []]],
  motor: [['source "Plate" dated 2026-02-01', []]],
  gear: [['source "Plate" dated 2026-02-01', []]],
  transfer: [['source "Plate" dated 2026-02-01', []]],
  coupling: [['mass 21 kg', ['interface/weight-change']]],
  shaft: [
    ['seal lip seal', ['shafting/bearing-water']],
    ['examined 2026-02-11', ['shafting/tailshaft-exam']],
  ],
  propeller: [
    ['tolerance class S', ['propeller/tolerance-class']],
    ['material manganese bronze', ['propeller/material-pair', 'propeller/blade-area']],
    ['rudder clearance 200 mm', ['propeller/other-clearances']],
    ['cup none', ['propeller/cup']],
  ],
};

/** (d) Each kept part modified in something that the rules about it do not rest on. */
export function* modify({ text, check }: Judged): Generator<Change> {
  for (const { reading } of check.vessels) {
    for (const arrangement of reading.arrangements) {
      for (const line of arrangement.lines) {
        for (const part of line.parts) {
          if (part.action !== 'retain' || part.facts.facts.length > 0) continue;
          for (const [fact, touches] of NEUTRAL[part.role] ?? []) {
            const { start, end } = part.whole;
            yield {
              letter: 'd',
              what: `modify ${part.role} { ${fact} } in ${arrangement.name}.${line.name}`,
              about: `${part.role} ${fact}`,
              text: edited(text, {
                start,
                end,
                text: `${text.slice(start, end).replace(/^retain/, 'modify')} { ${fact} }`,
              }),
              touches,
            };
          }
        }
      }
    }
  }
}
