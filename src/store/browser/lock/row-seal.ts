import { seal, unseal } from "./cipher.ts";
import { describeDamaged, describeLocked } from "../browser-faults.ts";
import { pack, unpack } from "./packing.ts";

/** A row as a table holds it. */
export type Row = Readonly<Record<string, unknown>>;

/** A row of which only what it is found by can be read. */
interface SealedRow extends Row {
  readonly sealed: ArrayBuffer;
}

/** What of a table's rows can be read without the key, since the database finds and orders rows by it. */
interface Clear {
  /** Fields that stay as they are, and to which the rest is bound. */
  readonly fields: readonly string[];
  /** The key that the database counts up itself: it is not known before the row is written. */
  readonly counted?: string;
}

/** Every table of the device, with what of it stays in the clear. */
export const CLEAR: Readonly<Record<string, Clear>> = {
  kept: { fields: ["id", "place", "seq"] },
  chains: { fields: ["place"] },
  outbox: { fields: ["id"], counted: "order" },
  photos: { fields: ["hash", "unsentSince"] },
  notes: { fields: ["key"] },
  branches: { fields: [], counted: "branch" },
  aside: { fields: ["branch", "seq", "id"] },
};

/** Notes that stay in the clear whole: what a locked device must know to be opened, or to serve a casualty unopened. */
export const CLEAR_NOTES: ReadonlySet<unknown> = new Set(["lock", "device", "used", "patterns", "beside"]);

/** Seals and unseals rows, once the device's key is in hand. One for each opening of the database. */
export class RowSeal {
  /** The device's key, while it is unlocked. */
  key: CryptoKey | undefined;
  /** Whether what is written from now on is sealed. What is read may be either, at any time. */
  isSealing = false;
  /** A row was read unsealed while rows are being sealed: another window wrote it before it heard. */
  hasStrays = false;

  /** @throws StoreError ST-145 where the device is locked */
  async close(table: string, row: Row): Promise<Row> {
    if (!this.isSealing || isClear(table, row)) return row;
    if (this.key === undefined) throw describeLocked();
    const { clear, rest } = divide(table, row);
    return { ...clear, sealed: await seal(this.key, pack(rest), aboutOf(table, row)) };
  }

  /** @throws StoreError ST-145 where the device is locked, ST-146 where the row was changed from outside */
  async open(table: string, row: Row): Promise<Row> {
    if (!isSealed(row)) {
      this.hasStrays ||= this.isSealing && !isClear(table, row);
      return row;
    }
    if (this.key === undefined) throw describeLocked();
    const packed = await unseal(this.key, row.sealed, aboutOf(table, row));
    if (packed === undefined) throw describeDamaged(table);
    const { sealed: _, ...clear } = row;
    return { ...clear, ...unpack(packed) };
  }
}

/** True for a row of which only what it is found by can be read. */
export function isSealed(row: Row): row is SealedRow {
  return row["sealed"] instanceof ArrayBuffer;
}

/** True for a row that is never sealed. */
export function isClear(table: string, row: Row): boolean {
  return table === "notes" && CLEAR_NOTES.has(row["key"]);
}

function divide(table: string, row: Row): { readonly clear: Row; readonly rest: Row } {
  const { fields, counted } = clearOf(table);
  const isKept = ([name]: [string, unknown]) => fields.includes(name) || name === counted;
  const all = Object.entries(row);
  return {
    clear: Object.fromEntries(all.filter(isKept)),
    rest: Object.fromEntries(all.filter((field) => !isKept(field))),
  };
}

/** Binds what is sealed to where it stands, so that no row can be put in another's place. */
function aboutOf(table: string, row: Row): Uint8Array<ArrayBuffer> {
  const places = clearOf(table).fields.map((name) => row[name] ?? null);
  return new TextEncoder().encode(JSON.stringify([table, ...places]));
}

function clearOf(table: string): Clear {
  const clear = CLEAR[table];
  if (clear === undefined) throw new Error(`Broken invariant: nobody said what of ${table} stays in the clear`);
  return clear;
}
