import type { CautionId } from "#base";
import type { Hazard } from "./hazard.ts";

/** What a step that does this must show before its text. Common practice. */
export const CAUTIONS_FOR: Readonly<Record<Hazard, readonly CautionId[]>> = {
  "enters-wrapping": ["opened-wrapping"],
  "lifts-container": ["heavy-lift"],
  "closes-clamp": ["pinch-points"],
  "opens-fuel": ["petrol-vapour"],
  "fills-fuel": ["petrol-vapour", "refuel-stopped-and-cool"],
  "opens-cylinder": ["spark-at-open-cylinder"],
  "pulls-cord": ["recoil-kick", "slippery-deck"],
  "turns-by-hand": ["rotating-parts"],
  "runs-engine": ["carbon-monoxide", "noise"],
  "hot-exhaust": ["hot-exhaust"],
  "unguarded-rotation": ["unguarded-flywheel"],
  "pumps-water": ["never-pump-fuel"],
  "moves-strainer": ["never-run-dry"],
  "hand-at-strainer": ["strainer-suction"],
  "pressurised-hose": ["pressurised-hose"],
  "electric-in-water": ["electric-shock"],
  "uses-cleaner": ["cleaning-agents"],
  "lifts-by-machine": ["load-overhead", "crushing-load"],
  "opens-diesel": ["diesel-fuel"],
  "turns-key": ["turns-by-key"],
  "hands-at-drive": ["turns-by-key"],
  "works-on-battery": ["starter-battery"],
  "oil-under-pressure": ["hydraulic-injection"],
  "opens-hydraulics": ["hydraulic-injection", "hot-surfaces"],
  "hot-surfaces": ["hot-surfaces"],
};

/** Every hazard a step can name. */
export const HAZARDS = Object.keys(CAUTIONS_FOR) as [Hazard, ...Hazard[]];
