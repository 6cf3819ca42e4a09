import type { Span } from "#base";
import type { BroughtBack, StationPolicy, StationState } from "./station-state.ts";

/**
 * The station while entries are folded into it. What grows with the log, the patterns with an interval of their own and the
 * lines brought back, is copied when the station is read and not at each line: a line costs the same however many came
 * before it.
 */
export class StationDraft {
  #name: string;
  #policy: StationPolicy;
  readonly #openings: Map<string, Span>;
  readonly #broughtBack: BroughtBack[];
  #released: StationState | undefined;

  constructor({ name, policy: { openings = {}, ...policy }, broughtBack = [] }: StationState = BLANK) {
    [this.#name, this.#policy] = [name, policy];
    this.#openings = new Map(Object.entries(openings));
    this.#broughtBack = [...broughtBack];
  }

  rename(name: string): void {
    this.#name = name;
    this.#released = undefined;
  }

  /** Each policy named replaces the one before it. */
  setPolicy(policy: Omit<StationPolicy, "openings">): void {
    this.#policy = { ...this.#policy, ...policy };
    this.#released = undefined;
  }

  /** What is accepted last stands, by pattern; back to the unit's manual without a span. */
  setOpening(pattern: string, every: Span | undefined): void {
    this.#openings.delete(pattern);
    if (every !== undefined) this.#openings.set(pattern, every);
    this.#released = undefined;
  }

  /** Lines came to the station by another way than from their own device. */
  bringBack(taken: BroughtBack): void {
    this.#broughtBack.push(taken);
    this.#released = undefined;
  }

  /** The station as it stands, never written to again; the same until a line changes it. */
  release(): StationState {
    this.#released ??= {
      name: this.#name,
      policy: { ...this.#policy, ...(this.#openings.size > 0 && { openings: Object.fromEntries(this.#openings) }) },
      ...(this.#broughtBack.length > 0 && { broughtBack: [...this.#broughtBack] }),
    };
    return this.#released;
  }
}

const BLANK: StationState = { name: "", policy: {} };
