export type SignalWord = "DANGER" | "WARNING" | "CAUTION" | "NOTICE";

export type CautionId =
  | "carbon-monoxide"
  | "petrol-vapour"
  | "smell-before-start"
  | "never-pump-fuel"
  | "refuel-stopped-and-cool"
  | "opened-wrapping"
  | "electric-shock"
  | "unguarded-flywheel"
  | "rotating-parts"
  | "spark-at-open-cylinder"
  | "free-surface"
  | "no-stable-lie"
  | "no-one-below-alone"
  | "load-overhead"
  | "crushing-load"
  | "hydraulic-injection"
  | "diesel-fuel"
  | "turns-by-key"
  | "starter-battery"
  | "hot-surfaces"
  | "hot-exhaust"
  | "noise"
  | "heavy-lift"
  | "pressurised-hose"
  | "strainer-suction"
  | "recoil-kick"
  | "slippery-deck"
  | "line-pulls"
  | "batteries-under-water"
  | "under-tow"
  | "pinch-points"
  | "cleaning-agents"
  | "never-run-dry"
  | "foul-water-exposure"
  | "estimate"
  | "unit-manual-first";

/** A hazard in three sentences: what it is, what it does, how to avoid it. */
export interface Caution {
  readonly id: CautionId;
  readonly signal: SignalWord;
  /** A few words naming the hazard, for a heading. */
  readonly hazard: string;
  /** What the hazard is. */
  readonly what: string;
  /** What happens if it is not avoided. */
  readonly consequence: string;
  /** What to do, as instructions. */
  readonly avoid: string;
}
