export { findRoot, type RootOptions, type RootOutcome } from "./root.ts";
export { monotoneCubic, straightSegments, type Curve, type TablePoint } from "./interpolate.ts";
export { integrate, type Quadrature, type QuadratureOptions } from "./quadrature.ts";
export { solveOde, type OdeOptions, type OdeProblem, type OdeSolution } from "./ode.ts";
export { type Jacobian, type Rate } from "./ode-contract.ts";
export { type Crossing, type OdeEvent } from "./events.ts";
export { factorise, solveFactorised, type Factors } from "./ode-linear.ts";
export { mixBits, repeatableStream, sobolPoints } from "./quasi-random.ts";
export {
  chiSquareTail,
  gammaChance,
  gammaTail,
  logGamma,
  normalChance,
  normalQuantile,
  evenQuantiles,
  weightedQuantiles,
} from "./distributions.ts";
export {
  betaChance,
  betaQuantile,
  digamma,
  gammaQuantile,
  logBeta,
  poissonChances,
  quantileInLogs,
  sumLaw,
} from "./chances/index.ts";
export { leastOf, type Least } from "./least/index.ts";
export { gaussNodes, type Node } from "./gauss/index.ts";
