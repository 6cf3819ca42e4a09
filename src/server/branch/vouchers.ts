import { hashEntry, type ChainHead, type Entry } from "#log";
import { createHmac, timingSafeEqual } from "node:crypto";

/**
 * The station's word that it kept a line, or stood at a head: HMAC-SHA-256 with a key that never leaves the server, and
 * the epoch in which it was given. Good only with the station itself: it shows nobody else anything.
 *
 * @source IETF RFC 2104, HMAC: Keyed-Hashing for Message Authentication, section 2, 1997
 */
export class Vouchers {
  readonly #key: string;
  readonly #epoch: string;

  /** @param epoch - the one in which vouchers are given now */
  constructor(key: string, epoch: string) {
    this.#key = key;
    this.#epoch = epoch;
  }

  forHead(place: string, head: ChainHead): string {
    return this.#give(this.#epoch, headText(place, head));
  }

  forLine(entry: Entry): string {
    return this.#give(this.#epoch, lineText(entry));
  }

  /** True where the voucher was given for this head, in whatever epoch. */
  holdsHead(voucher: string, place: string, head: ChainHead): boolean {
    return this.#isOurs(voucher, headText(place, head));
  }

  /** True where the voucher was given for this line, word for word, in whatever epoch. */
  holdsLine(voucher: string, entry: Entry): boolean {
    return this.#isOurs(voucher, lineText(entry));
  }

  #give(epoch: string, text: string): string {
    const mac = createHmac("sha256", this.#key).update(`drykeel voucher 1\n${epoch}\n${text}`).digest("hex");
    return `${epoch}.${mac}`;
  }

  #isOurs(voucher: string, text: string): boolean {
    const [given, expected] = [voucher, this.#give(epochOf(voucher), text)].map((one) => Buffer.from(one));
    return given!.length === expected!.length && timingSafeEqual(given!, expected!);
  }
}

/** The epoch in which a voucher says it was given. */
export function epochOf(voucher: string): string {
  return voucher.slice(0, voucher.lastIndexOf("."));
}

function headText(place: string, { seq, hash }: ChainHead): string {
  return `head\n${place}\n${seq}\n${hash}`;
}

function lineText(entry: Entry): string {
  return `line\n${hashEntry(entry)}`;
}
