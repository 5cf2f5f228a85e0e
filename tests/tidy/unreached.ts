/** Formulas that nothing reaches from a spec, by why they are kept. What a rule, hover or sheet comes to use leaves its row. */
export const UNREACHED: Readonly<Record<string, readonly string[]>> = {
  'holds another formula to account in the tests': words(`
    jointLowestSpeed gearPairRatio sunToCarrierRatio ringToCarrierRatio sunToRingRatio doublePlanetRatio dunkerleyPair
    cantileverEndDeflection pinnedSpanDeflection fixedSpanDeflection uniformSpanSag frequencyFromDeflection
    frequencyFromUniformSag overhungPanagopulos uniformSpanFrequency oneInertiaFrequency twoInertiaFrequency
    twoInertiaNode ittcFrictionCoefficient clampFromPressureUniformWear clutchFacesNeeded bestInnerRadius
    jointSpeedRatio standardAirPressure`),
  'torsion with the inertia of shaft and water, and torque that comes in beside the engine': words(`
    shaftPolarInertia equivalentLength referredInertia referredStiffness ringTorque carrierTorque 
    entrainedWaterInertia wetInertia`),
  'sizes a part: the ratio, shaft, tube or propeller that would suit': words(`
    diameterForTorsion handbookLeastDiameter`),
  'load lines, and a trial as it calibrates the hull': words(`
    lightRunningDemand trialPointSeaMarginOnTrial trialPointMarginsInTurn`),
  'bollard pull, to which a nozzle is held': words(
    'thrustFromEfficiency',
  ),
  'a criterion to choose: span guide, shaft diameter, reliability and duty cycle of a bearing': words(`
    lineShaftSpan handbookBearingSpan smallCraftClassDiameter
    asmeShaftDiameter fatigueShaftDiameter modifiedRatingLife dutyCycleLoad`),
};

function words(text: string): string[] {
  return text.trim().split(/\s+/);
}
