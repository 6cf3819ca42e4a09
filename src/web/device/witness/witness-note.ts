import type { SignedHead } from "#log";
import type { DeviceStore } from "../held/device-store.ts";

/** A place whose log does not go on from what the station had signed before this device. */
export interface Doubt {
  readonly place: string;
  readonly kind: "cut-off" | "another-history" | "not-signed";
  readonly because: string;
  /** RFC 3339: when it was found. */
  readonly found: string;
  /** What the station signed before, and what it shows now: both in its own hand. */
  readonly seen?: SignedHead;
  readonly shown?: SignedHead;
  /** Found while a station that was put back is being mended: judged anew once it is. */
  readonly isPassing?: true;
}

/** What this device keeps to hold the station to. */
export interface WitnessNote {
  readonly heads: Readonly<Record<string, SignedHead>>;
  /** Public keys it takes the station's word from: those of the first time, and those vouched for since. */
  readonly keys: readonly string[];
  readonly doubts: readonly Doubt[];
  /** Doubts that a person has taken note of. */
  readonly noted: readonly Doubt[];
}

/** Under which it is kept. */
export const WITNESS = "witness";
const NOTHING: WitnessNote = { heads: {}, keys: [], doubts: [], noted: [] };

/** What this device holds the station to; nothing at first. */
export async function readWitness(store: DeviceStore): Promise<WitnessNote> {
  return (await store.note<WitnessNote>(WITNESS)) ?? NOTHING;
}
