import { isInputError } from "#base";
import type { EpochStore } from "#station";
import { SignedSince } from "#store/keys";
import type { SignedMark } from "./head-desk.ts";

/**
 * Since when the log of this database is signed, kept beside the key. Where it cannot be kept that is said once, and the
 * log goes on being signed.
 */
export async function markOf(
  keyFile: string,
  lives: Pick<EpochStore, "epochs">,
  say: (line: string) => void,
): Promise<SignedMark> {
  const [first] = await lives.epochs();
  const mark = new SignedSince(keyFile, first?.id ?? "");
  let isTold = false;
  return {
    read: () => mark.read(),
    note: (at) => {
      try {
        mark.note(at);
      } catch (cause) {
        if (!isInputError(cause)) throw cause;
        if (!isTold) say(`WARNING: that the log is signed is kept in the database alone. ${cause.message}`);
        isTold = true;
      }
    },
  };
}
