/** Formulas that nothing reaches from a spec, by why they are kept. What a rule, hover or sheet comes to use leaves its row. */
export const UNREACHED: Readonly<Record<string, readonly string[]>> = {
  'holds another formula to account in the tests': words(`
    jointLowestSpeed jointSpeedRatio residualAngleOutOfPhase gearPairRatio sunToCarrierRatio ringToCarrierRatio
    sunToRingRatio doublePlanetRatio ringTorque carrierTorque shaftPolarInertia dunkerleyPair cantileverEndDeflection
    pinnedSpanDeflection fixedSpanDeflection uniformSpanSag frequencyFromDeflection frequencyFromUniformSag
    overhungPanagopulos uniformSpanFrequency oneInertiaFrequency twoInertiaFrequency twoInertiaNode
    propellerDampingSquareLaw equivalentLength referredInertia referredStiffness hullReynoldsNumber
    ittcFrictionCoefficient bladeChord bladeReynoldsNumber froudeNumber taperAngle motorBaseSpeed
    liningPressureUniformWear liningPressureMean clampFromPressureUniformWear clampFromPressureUniform`),
  'turns a formula in use round: what a part would have to be, for ways out that say so': words(`
    dynamicRatingNeeded collarFrictionRadius collarOutsideDiameter clampForTorqueUniformWear
    clampForTorqueUniformPressure clutchFacesNeeded bestInnerRadius boltDiameterInShear keyLengthForWholeShaft
    diameterForTorsion shaftDiameterFromPropeller shaftPowerMargin ratioForSpeed couplingDesignTorque
    couplingTorqueMargin wallInTube`),
  'a figure for the sheet or a hover that has no place there yet': words(`
    apparentSlip realSlip expectedSlip speedLengthRatio hullSpeed displacementLengthRatio displacementSpeedLength
    greatestSpeedLength admiraltyCoefficient powerByAdmiralty hullEfficiency horizontalThrust thrustLift axialInflow
    lightRunningDemand trialPointSeaMarginOnTrial trialPointMarginsInTurn bollardUpperBound handbookBollardThrust
    thrustFromEfficiency taylorDelta taylorPowerVariable thrustLoading projectedBladeArea standardAirPressure
    nominalBearingPressure collarFrictionPower slipPower engagementEnergy modifiedRatingLife dutyCycleLoad`),
  'another published method beside the one that a rule goes by': words(`
    lineShaftSpan classSpanSlow classSpanFast handbookBearingSpan whirlingBearingSpan couplingBoreClearance
    couplingFaceTolerance couplingFaceAngle holtropWakeOpenStern handbookWakeSingle handbookWakeTwin
    handbookProjectedAreaFactor discAreaRatioFromMeanWidth clearanceFactor handbookDiameter handbookLeastDiameter
    smallCraftClassDiameter asmeShaftDiameter fatigueShaftDiameter torsionalYieldTwoThirds
    torsionalYieldCopperAlloy`),
};

function words(text: string): string[] {
  return text.trim().split(/\s+/);
}
