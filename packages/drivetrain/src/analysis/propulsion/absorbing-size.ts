/**
 * The size at which the propeller absorbs all the power that reaches it, by secants of demand against size. A try that no
 * method covers is drawn back half way to the last that one does. Where the methods end before, it is the size nearest to it.
 */
export function absorbingSize(
  run: (si: number) => { readonly demand: { readonly si: number } } | undefined,
  from: { readonly si: number; readonly demand: number },
  first = from.si / Math.cbrt(from.demand),
): number {
  let before = from;
  let best = from;
  let si = Math.min(Math.max(first, from.si / FURTHEST), from.si * FURTHEST);
  for (let turn = 0; turn < TURNS; turn++) {
    const demand = run(si)?.demand.si;
    if (demand === undefined || !(demand > 0)) {
      si = (si + before.si) / 2;
      if (Math.abs(si / before.si - 1) < 1e-3) break;
      continue;
    }
    if (away(demand) < away(best.demand)) best = { si, demand };
    if (away(demand) < 5e-4) break;
    const slope = Math.log(demand / before.demand) / Math.log(si / before.si);
    const step = Math.log(1 / demand) / (Number.isFinite(slope) ? Math.max(slope, LEAST_SLOPE) : LEAST_SLOPE);
    before = { si, demand };
    si *= Math.exp(Math.min(Math.max(step, -STRIDE), STRIDE));
  }
  return best.si;
}

function away(demand: number): number {
  return Math.abs(Math.log(demand));
}

const TURNS = 16;
const FURTHEST = 1.6;
/** Sizes are changed by no more than so much at once, as a logarithm. */
const STRIDE = 0.25;
/** Demand grows with pitch and diameter at least as this power of them. */
const LEAST_SLOPE = 0.3;
