import {
  given,
  type HullForm,
  type HullNumbers,
  holtropHull,
  holtropRelativeRotativeSingle,
  holtropRelativeRotativeTwin,
  holtropThrustDeductionSingle1982,
  holtropThrustDeductionSingle1984,
  holtropThrustDeductionTwin,
  holtropWakeSingle1982,
  holtropWakeSingle1984,
  holtropWakeTwin,
  type OpenWaterCurve,
  PLANING_TWIN_THRUST_DEDUCTION,
  planingTwinWake,
  renamed,
  taylorWakeSingle,
  taylorWakeTwin,
  type Value,
  viscousCoefficient,
  volumeFroudeNumber,
} from '@tailshaft/mechanics';
import { Needs } from '../../judge/needs.js';
import type { SpeedMethod } from '../../model/hull.js';
import type { Vessel } from '../../model/vessel.js';
import { blockOf, displacementForm, hullFacts, volumeOf } from './hull-forms.js';

/** How the hull changes the flow at its propellers, at one speed. */
export interface HullFlow {
  readonly wakeFraction: Value<'ratio'>;
  /** Absent where only a speed is given, and no resistance that thrust must meet. */
  readonly thrustDeduction?: Value<'ratio'>;
  readonly relativeRotativeEfficiency?: Value<'ratio'>;
}

/** The flow at a propeller of this curve and at this speed of the vessel. */
export type FlowAt = (curve: OpenWaterCurve, vesselSpeed: Value<'speed'>) => HullFlow;

/** The flow at any speed; what the hull declares comes before what a method gives. Undefined where facts are missing. */
export function hullFlow(
  vessel: Vessel,
  method: SpeedMethod,
  screws: number,
  needs: Needs,
): FlowAt | undefined {
  const { hull } = vessel;
  const wake = hull?.wakeFraction?.value && renamed(hull.wakeFraction.value, 'wake fraction', 'w');
  const deduction =
    hull?.thrustDeduction?.value && renamed(hull.thrustDeduction.value, 'thrust deduction', 't');
  const thrust = method === 'given speed' || method === 'Crouch' || method === 'handbook displacement';
  if (wake && (deduction || thrust)) {
    return () => ({ wakeFraction: wake, ...(deduction ? { thrustDeduction: deduction } : {}) });
  }
  const worked = flowOfForm(vessel, method, screws, thrust, needs);
  return worked && ((curve, speed) => own(worked(curve, speed), wake, deduction));
}

function own(
  flow: HullFlow,
  wakeFraction: Value<'ratio'> | undefined,
  thrustDeduction: Value<'ratio'> | undefined,
): HullFlow {
  return {
    ...flow,
    ...(wakeFraction ? { wakeFraction } : {}),
    ...(thrustDeduction ? { thrustDeduction } : {}),
  };
}

function flowOfForm(
  vessel: Vessel,
  method: SpeedMethod,
  screws: number,
  wakeOnly: boolean,
  needs: Needs,
): FlowAt | undefined {
  if (method === 'Holtrop 1982' || method === 'Holtrop 1984') {
    const form = displacementForm(vessel, needs);
    return form && ((curve, speed) => displacementFlow(form, method, curve, screws, speed));
  }
  if (isPlaning(vessel, method) && screws === 2) {
    const volume = volumeOf(vessel, needs);
    return volume && ((_, speed) => planingTwinFlow(volume, speed));
  }
  if (!isPlaning(vessel, method)) {
    const form = displacementForm(vessel, new Needs());
    if (form) return (curve, speed) => displacementFlow(form, 'Holtrop 1984', curve, screws, speed);
    if (wakeOnly || vessel.hull?.thrustDeduction?.value) {
      const block = blockOf(vessel, needs);
      if (!block) return undefined;
      const wake = screws === 1 ? taylorWakeSingle : taylorWakeTwin;
      return () => ({ wakeFraction: wake({ blockCoefficient: block }) });
    }
  }
  const fact = hullFacts(vessel, needs);
  fact(vessel.hull?.wakeFraction, 'wake fraction');
  if (!wakeOnly) fact(vessel.hull?.thrustDeduction, 'thrust deduction');
  return undefined;
}

function isPlaning(vessel: Vessel, method: SpeedMethod): boolean {
  return method === 'Savitsky' || method === 'Crouch' || vessel.hull?.form?.value === 'planing';
}

function planingTwinFlow(displaced: Value<'volume'>, vesselSpeed: Value<'speed'>): HullFlow {
  const { value, source } = PLANING_TWIN_THRUST_DEDUCTION;
  return {
    wakeFraction: planingTwinWake({
      volumeFroudeNumber: volumeFroudeNumber({ vesselSpeed, displacedVolume: displaced }),
    }),
    thrustDeduction: given('thrust deduction', 't', 'ratio', value, {
      assumed: `${value}: ${source.author}, ${source.title}; ${source.clause}`,
      replaceWith: 'thrust deduction',
    }),
  };
}

/** Figures that the displacement method works out of the hull on its way. */
const OF_FORM = 'as the displacement method works it out of the declared hull';

function displacementFlow(
  form: HullForm,
  method: 'Holtrop 1982' | 'Holtrop 1984',
  curve: OpenWaterCurve,
  screws: number,
  vesselSpeed: Value<'speed'>,
): HullFlow {
  const edition = method === 'Holtrop 1982' ? '1982' : '1984';
  const numbers = Object.fromEntries(
    Object.entries(form).map(([key, value]) => [key, value.si]),
  ) as unknown as HullNumbers;
  const { CP, CB } = holtropHull(numbers, edition);
  const { diameter } = curve.geometry;
  const prismaticCoefficient = given('prismatic coefficient', 'CP', 'ratio', CP, { assumed: OF_FORM });
  const { buoyancyForward, beam, draughtAft: draught } = form;
  if (screws === 1) {
    const wake = edition === '1982' ? holtropWakeSingle1982 : holtropWakeSingle1984;
    const deduction =
      edition === '1982' ? holtropThrustDeductionSingle1982 : holtropThrustDeductionSingle1984;
    return {
      wakeFraction: wake({ vesselSpeed, diameter, ...form }),
      thrustDeduction: deduction({ vesselSpeed, diameter, ...form }),
      relativeRotativeEfficiency: holtropRelativeRotativeSingle({
        areaRatio: curve.areaRatio,
        prismaticCoefficient,
        buoyancyForward,
      }),
    };
  }
  const block = given('block coefficient', 'CB', 'ratio', CB, { assumed: OF_FORM });
  const viscous = given(
    'viscous resistance coefficient',
    'CV',
    'ratio',
    viscousCoefficient(numbers, vesselSpeed.si, edition),
    { assumed: OF_FORM },
  );
  return {
    wakeFraction: holtropWakeTwin({
      blockCoefficient: block,
      viscousCoefficient: viscous,
      diameter,
      beam,
      draught,
    }),
    thrustDeduction: holtropThrustDeductionTwin({ blockCoefficient: block, diameter, beam, draught }),
    relativeRotativeEfficiency: holtropRelativeRotativeTwin({
      pitchRatio: curve.pitchRatio,
      prismaticCoefficient,
      buoyancyForward,
    }),
  };
}
