/** Kinds of boat told apart. */
export type CasualtyBoatKind = "open boat" | "motor boat" | "sailing yacht" | "fishing boat";

/** What is known of the boat. Lengths in [m]; what nobody knows is left out. */
export interface CasualtyBoat {
  readonly kind: CasualtyBoatKind;
  readonly length: number;
  readonly beam?: number;
  /** Keel to deck edge. */
  readonly depth?: number;
  /** As she floated dry: of the hull, or of a sailing yacht to the foot of her keel. */
  readonly draught?: number;
}

/** A space water stands in: what is in it, and which part of her length it takes up. */
export interface CasualtySpace {
  readonly id: string;
  readonly name: string;
  readonly sort: "engine-room" | "cabin" | "hold" | "open";
  readonly part: "aft" | "middle" | "forward" | "whole";
}

/** What is known of the hole [m]. */
export interface CasualtyHole {
  readonly diameter?: number;
  /** Below the waterline. */
  readonly depth?: number;
}

/** What her skipper told by radio of the water in her, before anybody of ours was there to sound it. */
export interface CasualtyTold {
  /** RFC 3339, when it was told. */
  readonly at: string;
  /** Over the floor [m]. */
  readonly water?: number;
  /** At one mark [m/s]. */
  readonly rising?: number;
}

/** How a pump is set from now on. */
export interface PumpSetting {
  /** Id of the pump on this casualty; the kit's own where it is a kit. */
  readonly pump: string;
  readonly name: string;
  /** Space it draws from. */
  readonly space: string;
  readonly running: boolean;
  /** What it is taken to move at this setting [m³/s]. */
  readonly flow: number;
  /** Speed ratio. */
  readonly throttle?: number;
  /** From the water to the pump [m]. */
  readonly lift?: number;
  /** On one tank, reserve kept back [s]. */
  readonly runtime?: number;
  readonly kit?: string;
}

/** How it ended, or how it left our hands. */
export type CasualtyOutcome = "afloat" | "towed-in" | "beached" | "lost" | "stood-down";

/** How she comes back from a roll. */
export type Righting = "comes-back" | "slowly" | "stays";

/** What an entry with subject "casualty:..." may say. */
export interface CasualtyBodies {
  "casualty-opened": {
    readonly name: string;
    readonly boat: CasualtyBoat;
    readonly space: CasualtySpace;
    readonly hole?: CasualtyHole;
    readonly told?: CasualtyTold;
    readonly note?: string;
  };
  /** What is better known now; a space of a new id is a further one. */
  "casualty-changed": {
    readonly name?: string;
    readonly boat?: CasualtyBoat;
    readonly space?: CasualtySpace;
    readonly hole?: CasualtyHole;
  };
  /** Level above the lowest point of the space [m]. */
  "sounding-taken": {
    readonly space: string;
    readonly level: number;
    readonly text: string;
    /** RFC 3339, when it was read, where it was written down later; the entry's own time if left out. */
    readonly taken?: string;
  };
  "pump-set": PumpSetting;
  "pump-refuelled": { readonly pump: string };
  /** Share of the hole still open after plugging or patching; 1 where a patch is lost. */
  "hole-patched": { readonly space: string; readonly open: number };
  /** List to starboard [rad], a full roll out and back [s]. */
  "stability-seen": { readonly list?: number; readonly rollPeriod?: number; readonly righting?: Righting };
  /** Fuel smelt or seen in the water: every pump stops. */
  "fuel-smelt": { readonly note?: string };
  /** Somebody in charge has found it clear. */
  "fuel-cleared": { readonly note: string };
  "casualty-noted": { readonly about: "people" | "boat" | "other"; readonly note: string };
  "casualty-closed": { readonly outcome: CasualtyOutcome; readonly note?: string };
}
