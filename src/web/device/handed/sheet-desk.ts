import type { Entry } from "#log";
import type { DeviceStore } from "../held/device-store.ts";
import { packSheet, readPieces, unpackSheet, type OpenedBundle } from "./bundle.ts";
import type { HandedLine, Sorted } from "./handed-lines.ts";
import { stationMarkHere } from "./station-mark.ts";

interface Log {
  takeHanded(lines: readonly unknown[], from: HandedLine["from"]): Promise<Sorted>;
  dropHanded(lines: readonly HandedLine[]): Promise<void>;
}

export interface SheetDeskParts {
  readonly store: DeviceStore;
  readonly log: Log;
  readonly who: { readonly person: string; readonly device: string };
  readonly now: () => string;
  readonly onTaken: () => void;
  readonly onDropped: () => void;
}

/** A sheet that was taken from another device, and what came of its lines. */
export interface TakenSheet extends Sorted, Pick<OpenedBundle, "sheet" | "by" | "device" | "made"> {
  /** Ids of every line it held. */
  readonly ids: ReadonlySet<string>;
}

/** Hands sheets to other devices of the station and takes them from such, without a network. */
export class SheetDesk {
  readonly #parts: SheetDeskParts;

  constructor(parts: SheetDeskParts) {
    this.#parts = parts;
  }

  /**
   * The lines of a sheet as pieces that each make one code.
   *
   * @throws InputError WE-124, WE-126, WE-127
   */
  async pack(sheet: string, lines: readonly Entry[]): Promise<readonly string[]> {
    const { store, who, now } = this.#parts;
    const bundle = { sheet, made: now(), by: who.person, device: who.device, lines };
    return packSheet(bundle, await stationMarkHere(store));
  }

  /**
   * Takes a sheet that was put together from codes. On this device's disk when it resolves.
   *
   * @throws InputError WE-120 to WE-126; then nothing was taken
   */
  async take(whole: Uint8Array): Promise<TakenSheet> {
    const { store, log, onTaken } = this.#parts;
    const { lines, sheet, by, device, made } = await unpackSheet(whole, await stationMarkHere(store));
    const sorted = await log.takeHanded(lines, { by, device });
    onTaken();
    return { ...sorted, sheet, by, device, made, ids: new Set(lines.flatMap(idGiven)) };
  }

  /** The same from a file, or from what was pasted. */
  async takeText(text: string): Promise<TakenSheet> {
    return this.take(readPieces(text));
  }

  /** Takes lines that were handed over off this device. */
  async drop(lines: readonly HandedLine[]): Promise<void> {
    await this.#parts.log.dropHanded(lines);
    this.#parts.onDropped();
  }
}

function idGiven(line: unknown): readonly string[] {
  const id = typeof line === "object" && line !== null && "id" in line ? line.id : undefined;
  return typeof id === "string" ? [id] : [];
}
