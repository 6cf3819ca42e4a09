import type { PlainDate } from "#base";

/** What a clock's lapse does to its kit. */
export type ClockEffect = "grounds" | "limits" | "notes";

/** A part an opening uses up. */
export interface PartNeed {
  readonly part: string;
  /** How many, a whole number from 1. */
  readonly count: number;
}

/** One thing of a kit that runs out: an item, a proof run, a turnaround. */
export interface StationClock {
  readonly id: string;
  /** Last day on which it is still good. */
  readonly lastGoodDay: PlainDate;
  /** Days from the Monday it is renewed to its new last good day. */
  readonly renewedFor: number;
  readonly effect: ClockEffect;
  readonly parts?: readonly PartNeed[] | undefined;
}

/** A kit, with what an opening of it takes. */
export interface StationKit {
  readonly id: string;
  readonly place: string;
  /** Days from the Monday it is opened on which it is not ready. */
  readonly daysOut: number;
  /** Work of one opening [min]. */
  readonly minutes: number;
  /** People needed at once, such as to lift it; 1 where absent. */
  readonly hands?: number | undefined;
  /** Qualifications that everybody who works on it has, or is seen by somebody there who may see it done. */
  readonly needs?: readonly string[] | undefined;
  readonly clocks: readonly StationClock[];
}

/** Days somebody is not there, both ends in. */
export interface Absence {
  readonly from: PlainDate;
  readonly to: PlainDate;
}

/** Somebody who does the work. */
export interface StationPerson {
  readonly id: string;
  readonly hoursPerWeek: number;
  readonly may?: readonly string[] | undefined;
  /** Qualifications that they may see done by somebody who lacks them. */
  readonly sees?: readonly string[] | undefined;
  readonly absent?: readonly Absence[] | undefined;
}

/** A part on the shelf and on its way. */
export interface StationPart {
  readonly id: string;
  readonly onHand: number;
  /** Weeks from 0; what arrives in a week can be used in it. */
  readonly arrivals?: readonly { readonly week: number; readonly count: number }[] | undefined;
}

/** A place and how many ready kits it must hold. */
export interface StationPlace {
  readonly id: string;
  readonly strength: number;
}

/** An opening already settled. */
export interface FixedOpening {
  readonly kit: string;
  readonly week: number;
  /** Weeks, both ends in, in which the kit is opened in no other: the opening was moved here from one of them. */
  readonly instead?: { readonly from: number; readonly to: number } | undefined;
}

/** Everything a year is planned from. */
export interface YearStation {
  /** The Monday of week 0. */
  readonly start: PlainDate;
  /** Weeks planned. */
  readonly weeks: number;
  readonly places: readonly StationPlace[];
  readonly kits: readonly StationKit[];
  readonly people: readonly StationPerson[];
  readonly parts?: readonly StationPart[] | undefined;
  /** Openings already settled. */
  readonly fixed?: readonly FixedOpening[] | undefined;
}

/** Days of a week. */
export const WEEK = 7;
