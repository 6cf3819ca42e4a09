import { STATION_PLACE } from "#log";
import { hmac } from "@noble/hashes/hmac.js";
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import type { DeviceStore } from "../held/device-store.ts";
import { noStationYet } from "./sheet-faults.ts";

/** What a station's devices know each other by, without a network. */
export interface StationMark {
  /** Says which station, and gives nothing of the key away. */
  readonly mark: string;
  /**
   * The stamp on a text. Whoever holds this station's log can make it, and nobody else: it says that something comes from
   * one of its devices, never from which or from whom.
   */
  stamp(text: string): string;
}

/**
 * The mark of the station whose log has this chain hash after its very first line. Every device of the station holds that
 * line; it is in no paper and in no signed head.
 *
 * @source IETF RFC 2104, HMAC: Keyed-Hashing for Message Authentication, section 2, 1997
 */
export function stationMarkOf(firstHash: string): StationMark {
  const key = sha256(utf8ToBytes(`drykeel sheet key 1\n${firstHash}`));
  return {
    mark: bytesToHex(sha256(utf8ToBytes(`drykeel station mark 1\n${firstHash}`))).slice(0, 16),
    stamp: (text) => bytesToHex(hmac(sha256, key, utf8ToBytes(text))),
  };
}

/** @throws InputError WE-126 where the station's log has never been here */
export async function stationMarkHere(store: DeviceStore): Promise<StationMark> {
  const [first] = await store.since([STATION_PLACE], {}, 1);
  if (first?.seq !== 1) throw noStationYet();
  return stationMarkOf(first.hash);
}
