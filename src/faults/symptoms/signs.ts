/** Something that may be wrong, whatever else is. */
export interface Cause {
  /** Before anything is seen, strictly between 0 and 1 [1]. */
  readonly chance: number;
  /** By sign: chance that it shows where this alone is wrong [1]. */
  readonly shows: readonly number[];
}

/** A sign that was looked for, or not. */
export interface Sign {
  /** Chance that it shows where nothing is wrong [1]. */
  readonly leak: number;
  readonly seen: boolean | null;
}
