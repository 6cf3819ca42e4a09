import type { LifeLaw } from "./life-law.ts";

/** A thing that lies ready and is tested on a fixed clock. Every time in one unit. */
export interface StandbyCase {
  readonly life: LifeLaw;
  /** From the beginning of one test to that of the next. */
  readonly interval: number;
  /** Out of service for every test. */
  readonly testTime: number;
  /** Out of service after a test that found a fault, from the end of the test. */
  readonly repairTime: number;
  /** Chance of failing when asked, whatever its age [1]. */
  readonly demandFailure: number;
  /** Chance that a test, or what is done at one, leaves a hidden fault behind; the next test sees it [1]. */
  readonly harm?: number;
  /** Chance that a test overlooks a hidden fault, below 1; the next one looks afresh. Not with an overhaul or a pair [1]. */
  readonly missed?: number;
  /** Tests see a share of the hidden faults; the rest lies hidden until the overhaul, which sees all. */
  readonly coverage?: { readonly share: number; readonly overhaul: number };
  /** Two alike, either is enough. */
  readonly pair?: { readonly tested: "together" | "staggered"; readonly shared: number };
}

/** How unready a thing is, on average over time, and what by. */
export interface Standby {
  /** Chance that it is not there when asked [1]. */
  readonly unavailability: number;
  /** The textbook sum for rare failures, which may exceed 1 [1]. */
  readonly firstOrder: number;
  /** Chance that a test finds a fault [1]. */
  readonly faultFound: number;
  /** Shares of the unavailability; they add up to it [1]. */
  readonly parts: StandbyParts;
}

export interface StandbyParts {
  readonly hidden: number;
  readonly testing: number;
  readonly repair: number;
  readonly demand: number;
}
