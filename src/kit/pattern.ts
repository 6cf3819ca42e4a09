import type { Span } from "#base";
import type { AfterUse, Met } from "./after-use/after-use.ts";
import type { Hazard } from "./hazard.ts";
import type { StrangerCard } from "./card/card.ts";
import type { Pictures } from "./pictures/pictures.ts";
import type { Trending } from "./trends.ts";
import type { Trouble } from "./trouble/trouble.ts";
import type { Work } from "./work/work.ts";

export type { Span } from "#base";
export type { Hazard } from "./hazard.ts";

/**
 * A pattern as the rest of the program sees it: loaded, checked and in SI.
 * In the YAML file every quantity is text with a unit; here every quantity is a bare SI number
 * (m, m², m³, m³/s, Pa, kg, K, s, W) and every span of calendar time a {@link Span}.
 */
export interface Pattern {
  readonly id: string;
  /** 1, 2, 3 ...; a kit is built to one version. */
  readonly version: number;
  readonly name: string;
  readonly summary: string;
  readonly container: Container;
  readonly policy: Policy;
  readonly items: readonly Item[];
  readonly modes: readonly Mode[];
  readonly checks: readonly Check[];
  readonly stages: readonly Stage[];
  readonly hydraulics?: PatternHydraulics;
  readonly engine?: Engine;
  /** What is done with a kit that comes back from use. */
  readonly afterUse?: AfterUse;
  /** What to do when it fails at work, sign by sign. */
  readonly troubles?: readonly Trouble[];
  /** What is said to whoever takes the kit, line by line, eight at most. */
  readonly briefing?: readonly string[];
  /** The card for people who have never seen the kit. */
  readonly stranger?: StrangerCard;
  /** What the kit looks like, and what each line is about; from a file beside the pattern's, so no part of its version. */
  readonly pictures?: Pictures;
}

export interface Container {
  readonly name: string;
  /** Gross mass [kg]. */
  readonly mass: number;
  /** How many people lift it; where a machine does, how many are at the lift. */
  readonly lifters: number;
  /** Davits, cranes and hoists that lift it, or a part of it; absent where it is lifted by hand. */
  readonly machines?: readonly LiftingMachine[];
  /** Places inside and on the container where items live, in stowing order. */
  readonly places: readonly { readonly id: string; readonly name: string }[];
  readonly markings: readonly string[];
}

/** A machine that lifts: its hook, and what it may bear. */
export interface LiftingMachine {
  readonly id: string;
  readonly name: string;
  /** Safe working load [kg], as marked on it. */
  readonly safeWorkingLoad: number;
}

/** How long things last where no item says otherwise; a station may shorten it. */
export interface Policy {
  readonly proofRun?: Span;
  readonly muster?: Span;
  readonly turnaround?: Span;
}

export type Effect = "grounds" | "limits" | "notes";

export interface Item {
  readonly id: string;
  readonly name: string;
  /** Id of a container place; a part's own or that of the item it is fixed to. */
  readonly place: string;
  /** Id of the item this one is fixed to, and stowed with. */
  readonly partOf?: string;
  readonly quantity: number;
  readonly life: Life;
  /** What a lapsed life does to the kit. */
  readonly lapse: Effect;
  /** The stated limit when `lapse` is "limits". */
  readonly lapseLimit?: string;
  /** What a date that cannot be read does to the kit; as `lapse` where absent. */
  readonly unread?: Effect;
  /** The stated limit when `unread` is "limits". */
  readonly unreadLimit?: string;
  /** Class of life: may an inspection extend it (true) or never (false). */
  readonly extendable: boolean;
  /** Part to draw from stock when it is replaced, in the station's words. */
  readonly part?: string;
  readonly description?: string;
}

export type Life =
  | { readonly kind: "none" }
  /** The maker's printed date, read off the item; a printed month means its last day. */
  | { readonly kind: "printed" }
  | { readonly kind: "fitted"; readonly span: Span }
  /** Used up by opening the kit: a new one at each restow. */
  | { readonly kind: "single-use" };

export interface Mode {
  readonly id: string;
  /** Item id. */
  readonly item: string;
  readonly name: string;
  readonly effect: Effect;
  /** The stated limit when `effect` is "limits". */
  readonly limit?: string;
  /** What to do about it first. */
  readonly remedy?: string;
  /** Work that waits while it is found and grounds; where absent, what the hazards of its steps tell. */
  readonly forbids?: readonly Work[];
  /** Checks that prove it gone beside those that find it, such as a run under fuel. */
  readonly provedBy?: readonly string[];
  /** True where it says that the item is not there: lost or taken, which says nothing of its wear. */
  readonly loss?: boolean;
}

interface CheckBase {
  readonly id: string;
  readonly item: string;
  /** What to look at or do, as an instruction. */
  readonly ask: string;
  /** What right looks like. */
  readonly expect: string;
  /** Modes this check can find. */
  readonly finds: readonly string[];
}

export type Check =
  | (CheckBase & { readonly kind: "look" })
  | (CheckBase & {
      readonly kind: "measure";
      /** Dimension as in `#base`: "length", "pressure", "mass", "time", "volume", "flow", "temperature", "speed", "voltage", "resistance", "ratio". */
      readonly dimension: string;
      /** Unit the limits were written in; offered to the person. */
      readonly unit: string;
      readonly atLeast?: number;
      readonly atMost?: number;
      /** Measured when the item is new; later turnarounds look that it still is as it was. */
      readonly once?: boolean;
      /** What its readings tell of over the years, a volume: fuel burnt in a run, fuel left of a full tank, or water found in the case. */
      readonly trend?: Trending;
      /** Modes that may be behind readings that get worse. */
      readonly behind?: readonly string[];
    })
  /** Wall-clock seconds from start to finish, within limits [s]. */
  | (CheckBase & { readonly kind: "timed"; readonly atLeast?: number; readonly atMost?: number })
  | (CheckBase & { readonly kind: "prove" })
  | (CheckBase & { readonly kind: "count"; readonly of: string; readonly exactly: number })
  /**
   * Two things that must agree, such as the card and the container. Each is read and entered; where `against` says that
   * the second stands on record, only the first, and the program compares: with the seal, or with what this check read
   * last time on the thing that is still fitted. `reads: quarters` is a gauge: both are shares of a full tank.
   */
  | (CheckBase & {
      readonly kind: "match";
      readonly first: string;
      readonly second: string;
      readonly against?: "recorded-seal" | "recorded-tag" | "recorded-serial";
      readonly reads?: "quarters";
    })
  /** The date printed on the item is read and entered; it must reach the day that `beyond` names, or today. */
  | (CheckBase & { readonly kind: "date"; readonly beyond?: "next-turnaround" });

export type StageId = "open" | "examine" | "rig" | "prime" | "run" | "spare-start" | "dry" | "hang" | "restow" | "seal";

export interface Stage {
  readonly id: StageId;
  readonly name: string;
  readonly steps: readonly Step[];
}

export interface Step {
  readonly id: string;
  /** Line number on screen and paper, counted through the whole pattern: 1, 2, 3 ... */
  readonly line: number;
  readonly text: string;
  readonly why?: string;
  /** Ids of the checks answered at this step, asked one by one. */
  readonly checks: readonly string[];
  /** What is done once all of them are answered; shown at the last. */
  readonly afterwards?: string;
  /** Groups of this step's checks that one look shows together; each group may be answered with one tap. */
  readonly oneLook?: readonly (readonly string[])[];
  /** This line and the next are read together, done in order, and confirmed with one tap; an answer for each. */
  readonly withNext?: boolean;
  /** Item ids put back in their place by this step. */
  readonly stows: readonly string[];
  /** Item ids renewed by this step: a new one is fitted and its date, if it has one, is read. */
  readonly renews: readonly string[];
  readonly hazards: readonly Hazard[];
  /** Work it does that a fault can forbid; where absent, what its hazards tell. */
  readonly does?: readonly Work[];
  /** Caution ids as in `#base`, shown at the step, before its text. */
  readonly cautions: readonly string[];
  /** Wall-clock waits and runs. `wait`: at least [s]. `run`: at least [s]. `pulls`: at most (count). `prime`: at most [s], from first stroke to water. */
  readonly timer?: StepTimer;
  /** Lifted by a machine here; the people at the lift are those the step needs. */
  readonly lift?: StepLift;
  /** Proof-run measurement is offered here. */
  readonly measuresDelivery: boolean;
  readonly needs: { readonly people: number; readonly minutes: number; readonly tools: readonly string[] };
  readonly optional: boolean;
  /** Only in a turnaround after the kit met one of these; in every turnaround where absent. */
  readonly after?: readonly Met[];
}

export interface StepLift {
  /** Id of a machine of the container. */
  readonly by: string;
  /** What hangs on the hook [kg]; the whole kit where absent. */
  readonly mass?: number;
}

export type StepTimer =
  /** `unattended`: hung up or set down and left, for hours or days; nothing of a later stage is done before it is over. */
  | { readonly kind: "wait"; readonly atLeast: number; readonly unattended?: boolean }
  | { readonly kind: "run"; readonly atLeast: number; readonly says?: string }
  | { readonly kind: "pulls"; readonly atMost: number }
  | { readonly kind: "prime"; readonly atMost: number };

export interface PatternHydraulics {
  readonly pump: {
    /** Points at rated speed: flow [m³/s], head [m]. */
    readonly curve: readonly { readonly flow: number; readonly head: number }[];
    readonly npshRequired?: readonly { readonly flow: number; readonly head: number }[];
    /** Greatest suction lift the maker states [m]. */
    readonly greatestLift?: number;
  };
  /** Absent on submersible pumps. */
  readonly suction?: HoseRun;
  readonly discharge: HoseRun;
  readonly primer?: {
    /** Volume per stroke [m³]. */
    readonly stroke: number;
    readonly strokesPerMinute: number;
    /** Air volume in casing and primer beside the hose [m³]. */
    readonly deadVolume: number;
  };
  /** A proof run's measured over expected flow below which the kit is grounded, and below which it is noted. */
  readonly proof: { readonly grounds: number; readonly notes: number };
}

export interface HoseRun {
  /** [m] */
  readonly length: number;
  /** [m] */
  readonly bore: number;
  /** Darcy-Weisbach equivalent roughness [m]; exactly one of this and `hazenWilliams`. */
  readonly roughness?: number;
  readonly hazenWilliams?: number;
  /** Sum of loss coefficients K of the fittings. */
  readonly fittings: number;
}

export type FuelKind = "petrol" | "diesel";

export interface Engine {
  /** [m³] */
  readonly tank: number;
  /** Burn against throttle (speed ratio, 0 to 1): [m³/s]. */
  readonly burn: readonly { readonly throttle: number; readonly burn: number }[];
  readonly fuel: string;
  /** What kind of fuel that is, for its density and its dangers; petrol where absent. */
  readonly fuelKind?: FuelKind;
  /** Id of the item that is the fuel itself, whose age is the fuel's age. */
  readonly fuelItem?: string;
  /** Rated shaft power [W], where the manual gives it. */
  readonly power?: number;
}
