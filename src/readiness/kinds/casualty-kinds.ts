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

/** Where she is and who else can help, in the words in which it was told. */
export interface CasualtySituation {
  readonly position?: string;
  readonly drift?: string;
  readonly tide?: string;
  /** Kits of other stations, and when they can be there. */
  readonly otherKits?: string;
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

/** Her lowest deck edge against the water outside. */
export type DeckEdge = "clear" | "awash" | "under";

/** What somebody beside a pump sees of it. */
export type PumpSign = "water" | "no-water" | "sucks-air" | "weak" | "wont-start";

/** Of a line that was written down later than what it tells of. */
export interface WrittenLate {
  /** RFC 3339, when it was seen or done; the entry's own time if left out. */
  readonly taken?: string;
}

/** What is seen of her: angles and lengths as far as people can tell them. */
export interface StabilitySeen {
  /** To starboard [rad]. */
  readonly list?: number;
  /** A full roll out and back [s]. */
  readonly rollPeriod?: number;
  readonly righting?: Righting;
  readonly deckEdge?: DeckEdge;
  /** Water comes in over a sill, a coaming or an open hatch. */
  readonly overSill?: boolean;
  /** By the stern, over her length; by the bow below zero [m]. */
  readonly trim?: number;
  /** Her own skipper says to leave her. */
  readonly leaving?: boolean;
}

/** One thing that two sheets of a casualty each have under an id of their own. */
export interface SameOnBoth {
  /** Its id on the other sheet. */
  readonly other: string;
  /** Its id on the sheet that the line is about. */
  readonly own: string;
}

/** What an entry with subject "casualty:..." may say. */
export interface CasualtyBodies {
  "casualty-opened": {
    readonly name: string;
    readonly boat: CasualtyBoat;
    readonly space: CasualtySpace;
    readonly hole?: CasualtyHole;
    readonly told?: CasualtyTold;
    readonly situation?: CasualtySituation;
    readonly note?: string;
  };
  /** What is better known now; a space of a new id is a further one. */
  "casualty-changed": {
    readonly name?: string;
    readonly boat?: CasualtyBoat;
    readonly space?: CasualtySpace;
    readonly hole?: CasualtyHole;
    /** What is named here replaces what stood of it. */
    readonly situation?: CasualtySituation;
  };
  /** Level above the lowest point of the space [m]. */
  "sounding-taken": { readonly space: string; readonly level: number; readonly text: string } & WrittenLate;
  "pump-set": PumpSetting & WrittenLate;
  /** What is seen of a pump: it changes no setting, and says whether to believe one. */
  "pump-seen": { readonly pump: string; readonly sign: PumpSign } & WrittenLate;
  /** What starting and priming a pump took: pulls of the cord, seconds from the first stroke to water. */
  "pump-start-told": { readonly pump: string; readonly pulls?: number; readonly primeSeconds?: number } & WrittenLate;
  "pump-refuelled": { readonly pump: string };
  /** Share of the hole still open after plugging or patching; 1 where a patch is lost. */
  "hole-patched": { readonly space: string; readonly open: number } & WrittenLate;
  "stability-seen": StabilitySeen;
  /** She is taken in tow, or the tow is cast off: way through the water changes what comes in. */
  "tow-set": { readonly under: boolean };
  /** Fuel smelt or seen in the water: every pump stops. */
  "fuel-smelt": { readonly note?: string };
  /** Somebody in charge has found it clear. */
  "fuel-cleared": { readonly note: string };
  /**
   * Another sheet is of this same casualty: both are read as one from here on. Striking this line parts them again. A kit
   * is known by its own id; spaces and other pumps are the same only where they are named here.
   */
  "casualty-joined": {
    readonly with: string;
    readonly spaces?: readonly SameOnBoth[];
    readonly pumps?: readonly SameOnBoth[];
  };
  "casualty-noted": { readonly about: "people" | "boat" | "other"; readonly note: string };
  "casualty-closed": {
    readonly outcome: CasualtyOutcome;
    readonly note?: string;
    /** Pumps of this casualty left running, and kits left aboard: told at the closing. */
    readonly leftRunning?: readonly string[];
    readonly leftAboard?: readonly string[];
    /** Share of its stated flow that the page believed of each pump when the sheet was closed. */
    readonly delivered?: readonly {
      readonly pump: string;
      readonly p05: number;
      readonly p50: number;
      readonly p95: number;
    }[];
  };
  /** What somebody adds afterwards, when the closed sheet is gone through. */
  "review-noted": { readonly about: ReviewAbout; readonly note: string; readonly pump?: string };
  /** The closed sheet was gone through; what had been forecast and what came, kept for the scores. */
  "casualty-reviewed": { readonly forecasts: readonly KeptForecast[]; readonly note?: string };
}

/** What a note of a review is about. */
export type ReviewAbout = "went-well" | "went-badly" | "kit" | "pattern";

/** One forecast and what came of it. */
export interface KeptForecast {
  /** `lower`: the level stands lower at the next sounding. `start`: the kit starts and gives water. */
  readonly of: "lower" | "start";
  /** RFC 3339: when it was made. */
  readonly at: string;
  /** [1] */
  readonly chance: number;
  readonly came: boolean;
  readonly kit?: string;
}
