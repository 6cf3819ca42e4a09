export { findRoot, type RootOptions, type RootOutcome } from "./root.ts";
export { monotoneCubic, straightSegments, type Curve, type TablePoint } from "./interpolate.ts";
export { integrate, type Quadrature, type QuadratureOptions } from "./quadrature.ts";
