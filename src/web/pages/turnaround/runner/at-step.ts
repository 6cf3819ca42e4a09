import type { Step } from "#kit";
import type { KitActs } from "#web/act/acts.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";

/** A step of an open kit, and what can be done at it. */
export interface AtStep {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly step: Step;
}
