import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { fromBase45, toBase45 } from "./base45.ts";
import { damagedPiece, damagedWhole, notASheet, otherVersion, tooLarge, unfitSheet } from "./sheet-faults.ts";

/**
 * Bytes of what is handed over in one piece: 540 letters, and 80 more in front, fill a QR code of version 14 (73 by 73
 * fields), which a phone reads off another at a hand's breadth.
 */
const PIECE_BYTES = 360;
/** The most pieces that one sheet may have: some 140 kB. */
export const MOST_PIECES = 400;

const NAME = "DRYKEEL";
const VERSION = "1";
const SHEET_ID = /^[0-9a-z.-]{1,96}$/;
const PIECE = /^([0-9A-Z.-]{1,96}):([0-9A-F]{16}):([1-9]\d{0,3})\/([1-9]\d{0,3}):([0-9A-F]{8}):([0-9A-Z $%*+\-./:]*)$/;

/** One piece of a sheet. */
export interface Piece {
  readonly sheet: string;
  /** First 16 hexadecimal digits of the SHA-256 of the whole. */
  readonly sum: string;
  /** 1, 2, 3 ... of `of`. */
  readonly number: number;
  readonly of: number;
  readonly bytes: Uint8Array;
}

/**
 * Takes what is handed over apart. Each piece says whose it is, which one of how many, and carries a sum of its own, and
 * is written in letters that a QR code packs closest: "DRYKEEL:1:SHEET:SUM:2/7:SUM:DATA".
 *
 * @throws InputError WE-124 where it is too long, WE-127 where the sheet's id cannot be written so
 */
export function cutIntoPieces(sheet: string, whole: Uint8Array): readonly string[] {
  if (!SHEET_ID.test(sheet)) throw unfitSheet(sheet);
  const of = Math.max(1, Math.ceil(whole.length / PIECE_BYTES));
  if (of > MOST_PIECES) throw tooLarge(`${of} pieces`, `at most ${MOST_PIECES} pieces`);
  const sum = sumOf(whole, 16);
  return Array.from({ length: of }, (_, at) => {
    const data = toBase45(whole.subarray(at * PIECE_BYTES, (at + 1) * PIECE_BYTES));
    const head = `${sheet.toUpperCase()}:${sum}:${at + 1}/${of}`;
    return `${NAME}:${VERSION}:${head}:${sumOf(utf8ToBytes(head + data), 8)}:${data}`;
  });
}

/**
 * Reads one piece.
 *
 * @throws InputError WE-120 where it is none, WE-121 of another version, WE-122 damaged, WE-124 of too many
 */
export function readPiece(text: string): Piece {
  const [name, version = "", ...rest] = text.trim().split(":");
  if (name !== NAME) throw notASheet(text);
  if (version !== VERSION) throw otherVersion(version);
  const parts = PIECE.exec(rest.join(":"));
  if (parts === null) throw damagedPiece(text);
  const [, sheet = "", sum = "", number = "", of = "", own = "", data = ""] = parts;
  if (Number(of) > MOST_PIECES) throw tooLarge(`${of} pieces`, `at most ${MOST_PIECES} pieces`);
  const bytes = fromBase45(data);
  const isWhole = sumOf(utf8ToBytes(`${sheet}:${sum}:${number}/${of}${data}`), 8) === own;
  if (bytes === undefined || !isWhole || Number(number) > Number(of)) throw damagedPiece(text);
  return { sheet: sheet.toLowerCase(), sum, number: Number(number), of: Number(of), bytes };
}

/** What a piece did to those gathered so far. */
export type Gathered = "new" | "again" | "begun-anew";

/** Gathers pieces in any order, each as often as it comes, until all are there. */
export class PieceTray {
  #pieces = new Map<number, Piece>();
  #first: Piece | undefined;

  /** Of how many; 0 before the first. */
  get of(): number {
    return this.#first?.of ?? 0;
  }

  get sheet(): string | undefined {
    return this.#first?.sheet;
  }

  /** Numbers of those that are still wanted. */
  get missing(): readonly number[] {
    return Array.from({ length: this.of }, (_, at) => at + 1).filter((number) => !this.#pieces.has(number));
  }

  get isFull(): boolean {
    return this.of > 0 && this.#pieces.size === this.of;
  }

  /** A piece of something else begins anew: the other device shows the sheet as it is now, or another one. */
  add(piece: Piece): Gathered {
    const isSame = this.#first?.sum === piece.sum && this.#first.of === piece.of && this.#first.sheet === piece.sheet;
    const isAnew = this.#first !== undefined && !isSame;
    if (!isSame) {
      this.#first = piece;
      this.#pieces = new Map();
    }
    const isKnown = this.#pieces.has(piece.number);
    this.#pieces.set(piece.number, piece);
    return isAnew ? "begun-anew" : isKnown ? "again" : "new";
  }

  /**
   * Puts the pieces together.
   *
   * @throws InputError WE-123 where they do not make what was taken apart
   */
  whole(): Uint8Array {
    const parts = [...this.#pieces.values()].toSorted((one, other) => one.number - other.number);
    const whole = Uint8Array.from(parts.flatMap(({ bytes }) => [...bytes]));
    if (!this.isFull || sumOf(whole, 16) !== this.#first?.sum)
      throw damagedWhole(`${parts.length} of ${this.of} pieces`);
    return whole;
  }
}

/** The first hexadecimal digits of the SHA-256, in capitals. */
function sumOf(bytes: Uint8Array, digits: number): string {
  return bytesToHex(sha256(bytes)).slice(0, digits).toUpperCase();
}
