import type { Entry } from "#log";
import { isBuilding, type LogStore } from "#station";
import { everyPlace, LogFollower } from "../log/log-follower.ts";

/**
 * Which patterns each kit was ever built to: read when a line first needs it, and only what is new from then on. The
 * first reading, of the whole log, takes some 0.6 s for 100,000 lines; others are served after every 5,000 of them.
 */
export class KitPatterns {
  readonly #builtTo = new Map<string, readonly string[]>();
  readonly #follower: LogFollower;

  constructor(store: LogStore) {
    this.#follower = new LogFollower(store, {
      places: () => everyPlace(store),
      take: (page) => page.forEach(({ entry }) => isBuilding(entry) && this.#note(entry)),
      startOver: () => this.#builtTo.clear(),
    });
  }

  /** Takes in what any server process has added since. */
  catchUp(): Promise<void> {
    return this.#follower.catchUp();
  }

  /** "id@version" of every pattern that the kit of this subject was enrolled with or rebuilt to. */
  of(subject: string): readonly string[] {
    return this.#builtTo.get(subject) ?? [];
  }

  #note({ subject, pattern }: Entry): void {
    const before = this.of(subject);
    if (pattern !== undefined && !before.includes(pattern)) this.#builtTo.set(subject, [...before, pattern]);
  }
}
