import type { Alarm } from "../device-state.ts";
import { saveFile } from "../held/held-file.ts";
import type { DeviceStore } from "../held/device-store.ts";
import type { ServerDoor } from "../sync/server-door.ts";
import type { HeadWitness } from "./head-witness.ts";
import { readWitness, type Doubt } from "./witness-note.ts";

/** So long between two looks at the station's heads, where nothing else asks for one [ms]. */
const LOOK_MS = 60_000;
/** The first look waits until the first screen stands: what checks signatures is heavy, and is fetched for it [ms]. */
const FIRST_LOOK_MS = 10_000;

/** Looks at the station's signed heads after exchanges, and tells when there is, or is no more, something to doubt. */
export class WitnessDesk {
  readonly #parts: WitnessParts;
  #witness: Promise<HeadWitness> | undefined;
  #doubts: readonly Doubt[] = [];
  #looked = -Infinity;
  #isFirst = true;

  constructor(parts: WitnessParts) {
    this.#parts = parts;
  }

  /** Doubts of before, until the station can be asked. */
  async open(): Promise<void> {
    this.#doubts = (await readWitness(this.#parts.store)).doubts;
    this.#looked = performance.now() - LOOK_MS + FIRST_LOOK_MS;
  }

  /**
   * An exchange with the station went well.
   *
   * @param isMending - lines that a station put back lacks are still on their way to it from this device
   */
  async exchanged(isMending: boolean): Promise<void> {
    const isToJudge = !isMending && this.#doubts.some(({ isPassing }) => isPassing);
    if (!isToJudge && performance.now() - this.#looked < LOOK_MS) return this.#lookLater(isMending);
    this.#looked = performance.now();
    const before = this.#doubts.length;
    this.#doubts = await (await this.#load()).look(isMending);
    if (this.#doubts.length > 0 || before > 0) this.#parts.tell();
  }

  /** The first look does not wait for another exchange. */
  #lookLater(isMending: boolean): void {
    if (this.#isFirst) setTimeout(() => void this.exchanged(isMending).catch(this.#parts.fail), FIRST_LOOK_MS);
    this.#isFirst = false;
  }

  /** Silent on what may pass: that the station was put back is told then, and one notice is enough. */
  alarms(): readonly Alarm[] {
    const doubts = this.#doubts.filter(({ isPassing }) => isPassing !== true);
    return doubts.length === 0 ? [] : [{ kind: "other-history", doubts }];
  }

  /** Whoever looks after the station knows: what it shows from now on is held to as before. */
  async takeNote(): Promise<void> {
    await (await this.#load()).takeNote();
    this.#doubts = [];
    this.#looked = -Infinity;
    this.#parts.tell();
  }

  /** Saves the heads kept here, and those in doubt, for `drykeel verify --witness`. */
  async save(at: string): Promise<void> {
    const file = new Blob([await (await this.#load()).file()], { type: "application/x-ndjson" });
    saveFile(file, `drykeel-heads-${at.slice(0, 16).replace("T", "-").replace(":", "")}.ndjson`);
  }

  #load(): Promise<HeadWitness> {
    const { door, store, now } = this.#parts;
    this.#witness ??= import("./head-witness.ts").then(({ HeadWitness }) => new HeadWitness(door, store, now));
    return this.#witness;
  }
}

interface WitnessParts {
  readonly door: Pick<ServerDoor, "ask">;
  readonly store: DeviceStore;
  readonly now: () => string;
  readonly tell: () => void;
  readonly fail: (cause: unknown) => void;
}
