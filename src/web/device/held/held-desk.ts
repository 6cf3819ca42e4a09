import type { BringBackReply } from "#station";
import type { MenderParts } from "../branch/branch-mender.ts";
import { loadMender } from "../branch/load-mender.ts";
import { forgetPutBack } from "../branch/put-back-note.ts";
import { deviceAmbient } from "../clock.ts";
import type { SheetDesk } from "../handed/sheet-desk.ts";
import type { Reply } from "../sync/server-door.ts";
import type { DeviceStore, OutboxLine } from "./device-store.ts";
import { heldFile, heldFileName, saveFile } from "./held-file.ts";
import type { HeldLog } from "./held-log.ts";

interface HeldDeskParts {
  readonly store: DeviceStore;
  readonly log: HeldLog;
  /** The ends that a mending or a sheet goes between, and who sits here now. */
  readonly ends: () => MenderParts;
  /** There is something new on the disk to be read. */
  readonly onNew: () => Promise<void>;
  /** What is shown has been read already, and the other windows are to read on. */
  readonly onTaken: () => void;
  /** Lines that were here are not, or are others now. */
  readonly onReplaced: () => void;
  readonly tell: () => void;
  readonly wake: () => void;
}

/** What a person does with what this device holds: send it again, let go of it, hand it on, save it. */
export class HeldDesk {
  readonly #parts: HeldDeskParts;

  constructor(parts: HeldDeskParts) {
    this.#parts = parts;
  }

  /** Puts right the times of lines refused for the clock and sends them again. */
  async correctClock(lines: readonly OutboxLine[], aheadMs: number): Promise<void> {
    await this.#parts.log.correct(lines, aheadMs);
    this.#parts.onReplaced();
  }

  async retry(lines: readonly OutboxLine[]): Promise<void> {
    await this.#parts.log.retry(lines);
    this.#parts.onReplaced();
  }

  async discard(line: OutboxLine): Promise<void> {
    await this.#parts.log.discard(line);
    this.#parts.onReplaced();
  }

  /** Takes in, by the word of the administrator who sits here, lines that nothing shows the station to have had. */
  async takeByWord(): Promise<Reply<BringBackReply>> {
    const reply = await (await loadMender(this.#parts.ends())).takeByWord();
    this.#parts.wake();
    return reply;
  }

  /** The same of lines that other devices handed over, where the device that wrote them is lost. */
  async takeHandedByWord(): Promise<Reply<BringBackReply>> {
    const { ends, log, wake } = this.#parts;
    const reply = await (await loadMender(ends())).takeHanded(log.handed.map(({ entry }) => entry));
    wake();
    return reply;
  }

  /** What hands sheets to other devices and takes them from such. */
  async sheets(): Promise<SheetDesk> {
    const { SheetDesk } = await import("../handed/sheet-desk.ts");
    const { ends, log, onTaken, onReplaced } = this.#parts;
    return new SheetDesk({ log, ...ends(), onTaken, onDropped: onReplaced });
  }

  /** Its person has read that the station was put back. */
  async forgetPutBack(): Promise<void> {
    await forgetPutBack(this.#parts.store);
    await this.#parts.onNew();
  }

  /** Its person has read that the board shown at first was not what the lines say. */
  async forgetFalseSnapshot(): Promise<void> {
    await this.#parts.log.forgetFalseSnapshot();
    this.#parts.tell();
  }

  /** Saves everything held here to a file. */
  async save(): Promise<void> {
    saveFile(await heldFile(this.#parts.store), heldFileName(deviceAmbient.now()));
  }
}
