import type { Words } from "#words";
import { useRef, useState } from "react";
import { useWords } from "../language/index.ts";

/** Saving as a page sees it: a second tap while one is under way does nothing, a failure is said. */
export interface Saving {
  /** What the last one failed with, for an ErrorBox. */
  readonly error: unknown;
  /** Runs the work; resolves true once it is on the disk. */
  readonly save: (work: () => Promise<unknown>) => Promise<boolean>;
}

/**
 * @param about - what a refusal may rest on beside what is saved: once it changes, the refusal is no longer so
 */
export function useSaving(about = ""): Saving {
  const words = useWords("parts");
  const [failure, setFailure] = useState<{ readonly error: unknown; readonly about: string }>();
  const underWay = useRef(false);
  const save = async (work: () => Promise<unknown>) => {
    if (underWay.current) return false;
    underWay.current = true;
    const failed = await work().then(nothing, (cause: unknown) => asError(cause, words));
    underWay.current = false;
    setFailure(failed === undefined ? undefined : { error: failed, about });
    return failed === undefined;
  };
  return { error: failure?.about === about ? failure.error : undefined, save };
}

function nothing(): undefined {
  return undefined;
}

/** A rejection without a reason is still a failure. */
function asError(cause: unknown, words: Words["parts"]): unknown {
  return cause ?? new Error(words.notSaved());
}
