export * from './analysis/barred-range.js';
export * from './analysis/criticals.js';
export * from './analysis/derived.js';
export * from './analysis/engine-points.js';
export { hullFigures, lineFigures } from './analysis/figures.js';
export { fuelWords } from './analysis/fuel-words.js';
export { gearsThatTurn, withGear } from './analysis/gear-choice.js';
export * from './analysis/gear-data.js';
export * from './analysis/line.js';
export * from './analysis/loads.js';
export * from './analysis/operating-points.js';
export * from './analysis/propeller-law.js';
export { type PredictedPoint, predictedPoints } from './analysis/propulsion/points.js';
export type {
  FullThrottle,
  Propulsion,
  PropulsionResult,
  RatedRun,
} from './analysis/propulsion/propulsion.js';
export { type Estimated, propellerMass } from './analysis/propulsion/weight.js';
export { type ProfileRun, type RunningProfile, runningProfile } from './analysis/running-profile.js';
export { spanWhirls } from './analysis/shaft-supports.js';
export * from './analysis/shafting.js';
export * from './analysis/speeds.js';
export { limitValues, type StressSection } from './analysis/torsional-limits.js';
export {
  type StressPoint,
  stressValue,
  type TorsionalStress,
  torsionalStressOf,
} from './analysis/torsional-stress.js';
export * from './analysis/trial.js';
export { type BackSpan, spansOf, type WorkedBack, workedBack } from './analysis/trial-back.js';
export { balanceChange, heavyChanges, massChange } from './analysis/weights.js';
export * from './compare/index.js';
export type { Judgement } from './cure/judgement.js';
export { otherParts } from './cure/other-part.js';
export { otherSizes } from './cure/other-size.js';
export { suitedParts } from './cure/suited.js';
export { wantedParts } from './cure/wanted-part.js';
export * from './judge/acceptance-policy.js';
export { judgeBeside } from './judge/beside.js';
export * from './judge/context.js';
export * from './judge/counts.js';
export * from './judge/gravity.js';
export { BROKE_OFF } from './judge/isolate.js';
export * from './judge/judge.js';
export { type Judgement as KeptJudgement, judgeAgain } from './judge/judge-again.js';
export * from './judge/left-open.js';
export * from './judge/missing-data.js';
export type { Balance, Needed } from './judge/needed.js';
export * from './judge/needs.js';
export * from './judge/route.js';
export * from './judge/rule-words.js';
export * from './judge/say.js';
export * from './judge/verdict.js';
export * from './model/as-found.js';
export * from './model/catalogue.js';
export * from './model/damage.js';
export * from './model/declared-fact.js';
export * from './model/engine.js';
export * from './model/fact.js';
export * from './model/gear.js';
export { asWritten } from './model/gear-in-mode.js';
export * from './model/hull.js';
export { meaningOf } from './model/meaning.js';
export * from './model/part.js';
export * from './model/propeller.js';
export * from './model/reads.js';
export { inFirstMode, runningLines } from './model/running.js';
export * from './model/shafting.js';
export * from './model/strength.js';
export * from './model/torsion.js';
export * from './model/trial.js';
export * from './model/vessel.js';
export type { Examples } from './rules/examples.js';
export * from './rules/index.js';
export * from './rules/mistakes.js';
export * from './rules/rule.js';
export { type SilentTopic, silentTopics } from './rules/silent-topics.js';
export {
  NAMED_QUANTITIES,
  type NamedQuantity,
  type Verification,
  verificationOf,
} from './rules/trace/index.js';
export { differenceWords, isOfLine, type PlacedRun, possibleModes, runsOf } from './rules/trial/index.js';
export * from './study/index.js';
export { type Suiting, type SuitingRatio, suiting } from './suits/index.js';
