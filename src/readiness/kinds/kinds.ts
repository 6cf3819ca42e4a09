import type { Effect, Met } from "#kit";
import type { CasualtyBodies } from "./casualty-kinds.ts";
import type { DrillBodies } from "./drill-kinds.ts";
import type { PracticeBodies, QualificationBodies, SecondBodies } from "./people-kinds.ts";
import type { FromSheet, ToldBodies } from "./sheet-kinds.ts";
import type { Drawn, ItemRobbed, Shelf, StockBodies } from "./stock-kinds.ts";
import type { TimeBodies, WorkBodies } from "./work-kinds.ts";

/**
 * What an entry about a kit may say. Kind names and bodies are the log's lasting form: add fields, never change
 * or reuse them. Each has a zod schema of the same shape in `kind-schemas.ts`, which judges what arrives.
 *
 * Dates are "YYYY-MM-DD" or, where only a month is printed, "YYYY-MM". Instants are RFC 3339 with offset.
 * Quantities are SI; `text` keeps what the person typed.
 */
export interface KitBodies extends WorkBodies, SecondBodies, DrillBodies, ToldBodies {
  /** Kit taken on charge at the entry's place. */
  "kit-enrolled": {
    readonly name: string;
    readonly serial: string;
    readonly seal?: string;
    readonly items: readonly Fitted[];
    /** Dates that were read off what is in it when it was taken on charge. */
    readonly read?: readonly DateRead[];
    /** Told by a sheet: nobody saw its dates and its seal, so each date is asked for at the first turnaround. */
    readonly sheet?: FromSheet;
  };
  "kit-renamed": { readonly name: string };
  "kit-rebuilt": { readonly reason: string };
  "kit-moved": { readonly to: string };
  "kit-retired": { readonly reason: string };
  "handed-over": {
    readonly to: string;
    readonly method: "passed" | "hoisted" | "dropped" | "line" | "other";
    readonly sealBroken: boolean;
    /** Id of the casualty whose sheet it was handed over from. */
    readonly casualty?: string;
    readonly note?: string;
    /** By which day it is expected back, where that was said. */
    readonly back?: string;
    /** Who took it there, with their signature as it was drawn; see `station/hand-over/signature.ts`. */
    readonly taken?: { readonly name?: string; readonly strokes?: string };
    /** Whether the pattern's briefing was said and understood; absent where nobody said. */
    readonly briefed?: boolean;
  };
  returned: {
    readonly note?: string;
    readonly exposure: readonly Met[];
    /** RFC 3339, when it last pumped, where somebody knows. */
    readonly stopped?: string;
    /** The pattern's items as they were counted; absent where nobody counted. */
    readonly counted?: readonly CountedAs[];
    /** A finding on each item that is missing or damaged: raised with this line, and struck with it. */
    readonly findings?: readonly FoundAtReturn[];
  };
  /** Fresh water went through it after use: first aid, before its turnaround. */
  flushed: { readonly note?: string };
  mustered: { readonly sealSeen: string; readonly containerSound: boolean; readonly note?: string };

  "turnaround-opened": {
    readonly turnaround: string;
    readonly because: "routine" | "returned" | "finding" | "seal" | "lapse";
    readonly sealSeen: string;
    /** The drill that it is part of. */
    readonly drill?: string;
  };
  /** One step answered. A later answer to the same step and check replaces this one; both stay in the log. */
  "step-answered": StepAnswer;
  /** A wait, run, prime or pull count started; wall-clock instant in `at`. */
  "timer-started": { readonly turnaround: string; readonly step: string };
  "timer-stopped": {
    readonly turnaround: string;
    readonly step: string;
    readonly started: string;
    readonly seconds: number;
    readonly reached: boolean;
  };
  "pulls-counted": {
    readonly turnaround: string;
    readonly step: string;
    readonly pulls: number;
    readonly started: boolean;
  };
  "prime-timed": {
    readonly turnaround: string;
    readonly step: string;
    readonly seconds: number;
    readonly strokes?: number;
    readonly primed: boolean;
    /** Suction lift at the time [m]. */
    readonly lift?: number;
  };
  "delivery-measured": DeliveryMeasured;
  "item-fitted": Fitted & {
    readonly turnaround?: string;
    readonly step?: string;
    /** The shelf it was taken off; absent where it came from no shelf of the station. */
    readonly drawn?: Drawn;
    /** Id of the kit it was taken from. */
    readonly robbed?: string;
  };
  "item-robbed": ItemRobbed;
  /** A date looked for on an item that is in the kit: at a line of a turnaround, or outside one. */
  "date-read": DateRead & { readonly turnaround?: string; readonly step?: string };
  "finding-raised": {
    readonly finding: string;
    readonly item: string;
    /** Mode id of the pattern, or "other" with `effect` given by the person. */
    readonly mode: string;
    readonly effect: Effect;
    readonly limit?: string;
    readonly note?: string;
    readonly turnaround?: string;
    readonly step?: string;
    readonly check?: string;
    readonly photos: readonly PhotoRef[];
  };
  "remedy-made": Remedy;
  /** The checks that find the mode, repeated after the remedy. Closes the finding only if every one was seen right. */
  "finding-proved": {
    readonly finding: string;
    readonly checks: readonly { readonly check: string; readonly answer: Answer; readonly value?: Value }[];
    readonly turnaround?: string;
  };
  sealed: { readonly turnaround: string; readonly seal: string; readonly note?: string; readonly witness?: string };
  "closed-grounded": { readonly turnaround: string; readonly reason: string; readonly seal?: string };
  /** A difference between two devices looked at and decided; names the entry that stands. */
  settled: { readonly entries: readonly string[]; readonly stands: string; readonly reason: string };
}

/** One item as it was counted when the kit came back. */
export interface CountedAs {
  readonly item: string;
  readonly as: "there" | "missing" | "damaged";
}

/** What a count at the return found wrong. */
export interface FoundAtReturn {
  readonly finding: string;
  readonly item: string;
  /** Mode id of the pattern, or "other" with `effect` given by the person. */
  readonly mode: string;
  readonly effect: Effect;
  readonly limit?: string;
  readonly note?: string;
}

export type Answer = "seen" | "wrong" | "not-possible";

/** What was read, in SI where it is a quantity, beside the text as entered. */
export type Value =
  | { readonly kind: "quantity"; readonly si: number; readonly dimension: string; readonly text: string }
  | { readonly kind: "count"; readonly count: number }
  | { readonly kind: "match"; readonly first: string; readonly second: string }
  | { readonly kind: "date"; readonly date: string }
  | { readonly kind: "text"; readonly text: string };

export interface StepAnswer {
  readonly turnaround: string;
  readonly step: string;
  /** Check answered; absent for a step with no check. */
  readonly check?: string;
  readonly answer: Answer;
  /** Required with "not-possible". */
  readonly why?: string;
  readonly value?: Value;
  readonly note?: string;
  readonly photos?: readonly PhotoRef[];
  /** True where the answer was typed up from a filled paper card. */
  readonly fromCard?: boolean;
  /** When the card was filled in, as written on it. */
  readonly cardAt?: string;
}

export interface Fitted {
  readonly item: string;
  /** Date fitted or filled. */
  readonly fitted: string;
  /** Date printed on it: a day, or a month that means its last day. */
  readonly printed?: string;
  readonly quantity: number;
  readonly batch?: string;
  readonly note?: string;
}

/** A date read off an item, or that somebody looked and could not read it. */
export interface DateRead {
  readonly item: string;
  /** `printed`: its last good day. `fitted`: when it was fitted or filled. `made`: when it was made. */
  readonly of: "printed" | "fitted" | "made";
  /** A day, or a month that means its last day; absent where it cannot be read. */
  readonly date?: string;
  readonly note?: string;
}

export interface PhotoRef {
  /** Lower-case hex SHA-256 of the bytes. */
  readonly hash: string;
  readonly mime: "image/jpeg" | "image/png" | "image/webp";
  readonly bytes: number;
  readonly width: number;
  readonly height: number;
}

export type Remedy =
  | { readonly finding: string; readonly how: "mended"; readonly note: string }
  | {
      readonly finding: string;
      readonly how: "replaced";
      readonly part: string;
      readonly quantity: number;
      readonly fitted?: Fitted;
      readonly note?: string;
      /** The shelf it was taken off; absent where it came from no shelf of the station. */
      readonly drawn?: Drawn;
    }
  /** Lived with: by a named person, under a stated limit, until a date. */
  | {
      readonly finding: string;
      readonly how: "lived-with";
      readonly name: string;
      readonly limit: string;
      readonly until: string;
    };

export interface DeliveryMeasured {
  readonly turnaround: string;
  readonly step: string;
  readonly method: "timed-fill" | "discharge-pressure" | "suction-vacuum" | "flow-meter";
  /** Suction lift [m]; discharge rise above the pump [m]; throttle as speed ratio. */
  readonly lift: number;
  readonly rise: number;
  readonly throttle: number;
  /** Hose lengths used [m]. */
  readonly suctionLength?: number;
  readonly dischargeLength?: number;
  /** Measured [m³/s] with its own standard uncertainty [m³/s]. */
  readonly flow: number;
  readonly flowUncertainty: number;
  /** Expected [m³/s] and their ratio. */
  readonly expected: number;
  readonly ratio: number;
  readonly verdict: "as-expected" | "noted" | "grounds" | "unclear";
  readonly readings: Readonly<Record<string, Value>>;
}

/** What an entry with subject "place:..." or "station" may say. */
export interface PlaceBodies {
  /** `strength`: how many ready kits the place must hold. `zone`: IANA time zone whose calendar day counts. */
  "place-set": { readonly name: string; readonly strength: number; readonly zone: string };
  "place-closed": { readonly reason: string };
  /** Every shelf anew, in the order in which a muster goes round; kits on none of them come last. */
  "shelves-set": { readonly shelves: readonly Shelf[] };
  /** Shortens (never lengthens) what a pattern allows. */
  "policy-set": {
    readonly proofRun?: string;
    readonly muster?: string;
    readonly turnaround?: string;
    readonly fuelAge?: string;
  };
  /**
   * How often the kits of a pattern are opened, as a keeper accepted it for the plan; back to the unit's manual where `every`
   * is absent. Never longer than the manual, and it grounds no kit.
   */
  "opening-interval-set": {
    /** Id of the pattern, without version. */
    readonly pattern: string;
    /** A span such as "9 months". */
    readonly every?: string;
    /** What the proposal rested on when it was accepted; absent where somebody chose it. */
    readonly rests?: {
      /** Openings after lying closed, faults found at them, and the time that kits lay closed before them [s]. */
      readonly looks: number;
      readonly found: number;
      readonly lay: number;
      /** Best interval at the highest, the middle and the lowest rate believed [d]. */
      readonly best: readonly number[];
      /** Hours of work that a failure on the night was said to weigh [h]. */
      readonly nightHours: number;
    };
  };
  "station-named": { readonly name: string };
  /**
   * Lines that the station's database had lost, given back by the device that this line names, which held them. `vouched`:
   * the station once kept them; `word`: nothing shows that, an administrator says so.
   */
  "lines-brought-back": { readonly lines: readonly string[]; readonly by: "vouched" | "word" };
  /**
   * Lines from a file that no store had ever taken, taken in at the station's own terminal. `bringer`: their writer brought
   * them, and is who this line names; `word`: the administrator whom this line names says so. `from`: the devices on which
   * they were written; absent in lines of before 0.3.
   */
  "lines-imported": {
    readonly lines: readonly string[];
    readonly by: "bringer" | "word";
    readonly from?: readonly string[];
  };
  /**
   * Lines of a casualty's sheet that another device wrote and handed, by code or file, to the device that this line names.
   * Nothing shows that their writers wrote them: the administrator that this line names says so.
   */
  "lines-handed-in": { readonly lines: readonly string[] };
}

export type Role = "keeper" | "crew" | "assessor" | "commander" | "administrator";

/** What an entry with subject "person:..." or "device:..." may say; no secret is ever in the log. */
export interface PeopleBodies extends TimeBodies, PracticeBodies {
  "person-joined": { readonly name: string; readonly role: Role; readonly sheet?: FromSheet };
  "person-changed": { readonly name?: string; readonly role?: Role };
  "person-left": { readonly reason?: string };
  "device-joined": { readonly name: string };
  "device-shut-out": { readonly reason: string };
}

/** A rescue boat of the station, as she is counted on before launching. */
export interface BoatSetting {
  readonly name: string;
  /** Place where she lies: kits there can go with her. */
  readonly place: string;
  /** Loaded, in the sea she launches in [m/s]. */
  readonly speed: number;
  /** From the call until she is under way [s]. */
  readonly launch: number;
  /** From alongside until water goes over the casualty's side [s]. */
  readonly setUp: number;
  /** Kits she carries and hands over in one trip. */
  readonly carries: number;
  /** Whether she can feed a mains pump on another boat. */
  readonly mains: boolean;
}

/** What an entry with subject "boat:..." may say. */
export interface BoatBodies {
  /** Every figure anew: what is amended is written whole. */
  "boat-set": BoatSetting;
  "boat-retired": { readonly reason: string };
}

/** What an entry with subject "pattern:..." may say. */
export interface PatternBodies {
  "step-reported": {
    readonly step: string;
    readonly what: "wrong" | "impossible" | "unclear";
    readonly note?: string;
    readonly kit?: string;
  };
  "report-answered": { readonly report: string; readonly answer: string };
}

export type Bodies = KitBodies &
  PlaceBodies &
  PeopleBodies &
  BoatBodies &
  PatternBodies &
  StockBodies &
  QualificationBodies &
  CasualtyBodies & { struck: { readonly entry: string; readonly reason: string } };
export type EntryKind = keyof Bodies;
