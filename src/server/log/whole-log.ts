import type { Pattern } from "#kit";
import type { PlaceChain } from "#log";
import { createStationFold, type LogStore, type StationFold } from "#station";
import { everyPlace, LogFollower } from "./log-follower.ts";

/** The whole station folded, for the few answers that need more than its people: read first when first asked. */
export class WholeLog {
  #fold: StationFold;
  readonly #follower: LogFollower;
  readonly #patterns: () => readonly Pattern[];
  #foldedBy: readonly Pattern[];

  /** @param patterns - those there are now; another list than before, and the log is folded anew */
  constructor(store: LogStore, patterns: () => readonly Pattern[]) {
    this.#patterns = patterns;
    this.#foldedBy = patterns();
    this.#fold = createStationFold(this.#foldedBy);
    this.#follower = new LogFollower(store, {
      places: () => everyPlace(store),
      take: (page) => this.#fold.add(page),
      startOver: () => (this.#fold = createStationFold(this.#foldedBy)),
    });
  }

  /** The station as the store has it now; only what is new since the last call is read. */
  async read(): Promise<StationFold> {
    await this.#foldAnew();
    await this.#follower.catchUp();
    return this.#fold;
  }

  /** The station as it stood at these heads; undefined where more was read already, or they are not in the log. */
  async readTo(heads: readonly PlaceChain[]): Promise<StationFold | undefined> {
    return (await this.#follower.readTo(heads)) ? this.#fold : undefined;
  }

  /** A version issued since: kits built to it are judged by it. */
  async #foldAnew(): Promise<void> {
    const patterns = this.#patterns();
    if (patterns === this.#foldedBy) return;
    this.#foldedBy = patterns;
    await this.#follower.startOver();
  }

  /** Where each place stands in the fold: of exactly the lines up to there. */
  get heads(): readonly PlaceChain[] {
    return this.#follower.heads;
  }
}
