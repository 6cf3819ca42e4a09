import type { Change, PlacedOpening, PlacedPump, Vessel } from "../hull/vessel.ts";

/** A flooding to be worked out. Times in seconds from its start. */
export interface FloodCase {
  readonly vessel: Vessel;
  readonly openings: readonly PlacedOpening[];
  readonly pumps: readonly PlacedPump[];
  readonly changes?: readonly Change[];
  /** [s] */
  readonly duration: number;
  /** Between samples of the series [s]. Default: a sixtieth of the duration. */
  readonly step?: number;
  /** Levels whose passing is to be noted as an event. */
  readonly marks?: readonly LevelMark[];
  readonly accuracy?: Accuracy;
}

export interface LevelMark {
  readonly compartment: string;
  /** Above the keel, in the middle of the compartment [m]. */
  readonly level: number;
}

export interface Accuracy {
  /** Per step, relative. Default 1e-6. */
  readonly relative?: number;
  /** Per step [m³]. Default 1e-8. */
  readonly absolute?: number;
  /** Head below which √h is taken as linear [m]. Default: `LINEAR_BELOW`. */
  readonly linearBelow?: number;
}

export type FloodEventKind =
  | "hole-submerged"
  | "hole-clear"
  | "hole-covered"
  | "hole-uncovered"
  | "downflooding"
  | "sill-reached"
  | "suction-dry"
  | "suction-wet"
  | "deck-edge"
  | "full"
  | "mark"
  | "pump-started"
  | "pump-stopped"
  | "pump-failed"
  | "refuel"
  | "opening-opened"
  | "opening-patched"
  | "change"
  | "lost";

export interface FloodEvent {
  readonly kind: FloodEventKind;
  /** [s] */
  readonly at: number;
  /** Opening, pump or compartment it happens to. */
  readonly name: string;
}

export interface FloodSample {
  readonly at: number;
  /** Level above the keel in the middle of each compartment [m]; its floor when empty. */
  readonly levels: Readonly<Record<string, number>>;
  /** Water in each compartment [m³]. */
  readonly water: Readonly<Record<string, number>>;
  /** Through the hull, inward positive, and out by all pumps [m³/s]. */
  readonly inflow: number;
  readonly pumped: number;
  /** Of a floating vessel. */
  readonly attitude?: {
    readonly draught: number;
    /** To starboard [rad]. */
    readonly heel: number;
    /** By the stern [m]. */
    readonly trim: number;
    /** Least height of deck edge above water [m]. */
    readonly freeboard: number;
    /** Righting stiffness: displaced volume × GM with the floodwater free to move [m⁴]. */
    readonly stiffness: number;
    /** The same over the displaced volume [m]. */
    readonly gm: number;
  };
}

export type FloodOutcome =
  | { readonly kind: "gaining"; readonly because: string }
  | { readonly kind: "holding"; readonly because: string }
  | { readonly kind: "losing"; readonly because: string }
  | { readonly kind: "dry"; readonly because: string; readonly at: number }
  | { readonly kind: "lost"; readonly because: string; readonly at: number }
  | { readonly kind: "gave-up"; readonly because: string; readonly at: number };

export interface FloodRun {
  readonly series: readonly FloodSample[];
  readonly events: readonly FloodEvent[];
  readonly outcome: FloodOutcome;
  /** Water at the end less water at the start, sea's inflow and pumps' outflow [m³]: rounding only. */
  readonly volumeError: number;
  readonly counters: {
    readonly steps: number;
    readonly rates: number;
    /** Stretches between events and changes, and how many of them the closed form carried. */
    readonly phases: number;
    readonly exact: number;
    /** How often the boat was settled to see how she lies. */
    readonly looks: number;
  };
}
