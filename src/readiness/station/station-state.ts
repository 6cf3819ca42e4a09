import type { Span } from "#base";
import type { Mark } from "../mark.ts";

/** How long things last at this station, where it is stricter than the patterns. */
export interface StationPolicy {
  readonly proofRun?: Span;
  readonly muster?: Span;
  readonly turnaround?: Span;
  readonly fuelAge?: Span;
  /** In which all costs are told, by its three letters (ISO 4217); absent where nobody said. */
  readonly currency?: string;
  /** By pattern id: how often its kits are opened, as it was accepted for the plan; absent where nothing was. */
  readonly openings?: Readonly<Record<string, Span>>;
}

/** The station as a whole. */
export interface StationState {
  readonly name: string;
  readonly policy: StationPolicy;
  /** Lines that the database had lost and devices gave back, oldest first; absent where that never happened. */
  readonly broughtBack?: readonly BroughtBack[];
}

/** Lines that came to the station by another way than from their own device: mostly after it was put back to a copy. */
export interface BroughtBack extends Mark {
  readonly lines: readonly string[];
  /**
   * `vouched`: the station once kept them; `word`: nothing shows that, an administrator said so. `handed`: it never had
   * them, another device had handed them over, and an administrator said that they are genuine. `file-bringer`: from a
   * file that their own writer brought to the station's terminal; `file-word`: from a file, by an administrator's word.
   */
  readonly how: "vouched" | "word" | "handed" | "file-bringer" | "file-word";
  /** Ids of the devices on which lines from a file were written, where the log says so. */
  readonly from?: readonly string[];
}
