import type { Hazard } from "../hazard.ts";

/** Signs by which people tell that a kit does not do what it should. */
export const TROUBLE_SIGNS = [
  "will-not-pull",
  "will-not-crank",
  "no-spark",
  "will-not-start",
  "starts-and-dies",
  "no-prime",
  "loses-prime",
  "no-water",
  "weak-delivery",
  "overheats",
  "leaks-oil",
  "leaks-fuel",
] as const;

export type TroubleSign = (typeof TROUBLE_SIGNS)[number];

/** Of a cold engine only: it explains nothing on one that just ran. */
export const CAUSE_ENGINES = ["cold"] as const;
export type CauseEngine = (typeof CAUSE_ENGINES)[number];

/** `cold`: a way to start a cold engine, of no use on one that just ran; `cool`: waits until the engine has cooled. */
export const TRY_ENGINES = ["cold", "cool"] as const;
export type TryEngine = (typeof TRY_ENGINES)[number];

/** What may be behind a sign. */
export interface TroubleCause {
  readonly id: string;
  /** In the person's words. */
  readonly says: string;
  /** Mode of the pattern that a finding of it names; none where nothing on the kit is broken. */
  readonly mode?: string;
  /** How often it is this, beside the others of the sign: judgement, counted as so many findings. */
  readonly weight: number;
  /** The engine of which it holds; left out: of any. */
  readonly engine?: CauseEngine;
}

/** One thing to do about it, after which the kit is tried again. */
export interface TroubleTry {
  readonly id: string;
  readonly does: string;
  /** With trying it again [min]. */
  readonly minutes: number;
  /** What it does that can hurt; the cautions that go with these stand before it. */
  readonly hazards: readonly Hazard[];
  /** The engine that it wants; left out: any. */
  readonly engine?: TryEngine;
  /** By cause: chance that the trouble is over, where that is the cause [1]. */
  readonly ends: Readonly<Record<string, number>>;
}

/** A way in which a kit fails at work, with what may be behind it and what to do. */
export interface Trouble {
  readonly sign: TroubleSign;
  /** How to see that it is so, and what that does that can hurt. */
  readonly look?: { readonly does: string; readonly hazards: readonly Hazard[] };
  /** As a person would say it: "Will not start". */
  readonly name: string;
  /** To leave it and put the next pump to work instead [min]. */
  readonly nextPump: number;
  readonly causes: readonly TroubleCause[];
  readonly tries: readonly TroubleTry[];
}
