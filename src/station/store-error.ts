/**
 * A store could not do its work, though nothing was wrong with what it was given: disk full, database locked or out of
 * reach. Nothing was kept of what was being written.
 */
export class StoreError extends Error {
  override readonly name = "StoreError";
  /** Room letters and number, listed in docs/errors.md. */
  readonly code: string;
  /** What to do about it, in the words of whoever looks after the station's computer. */
  readonly remedy: string;

  constructor(code: string, message: string, remedy: string, cause?: unknown) {
    super(`${code} ${message} ${remedy}`, cause === undefined ? {} : { cause });
    this.code = code;
    this.remedy = remedy;
  }
}

/** True for a StoreError, also one that crossed a worker or module boundary and lost its prototype. */
export function isStoreError(thrown: unknown): thrown is StoreError {
  return typeof thrown === "object" && thrown !== null && (thrown as { name?: unknown }).name === "StoreError";
}
