/**
 * What is known of one life, or of as many alike: that it ended after one age and by another. The two are the same where
 * the end was seen, and the second is infinite where it was still good when last looked at.
 */
export interface LifeRecord {
  readonly after: number;
  readonly before: number;
  /** How many such lives. */
  readonly count: number;
  readonly group?: string;
}

/** True where the very age of the end is known. */
export function isSeen({ after, before }: LifeRecord): boolean {
  return after === before;
}

/** True where no end was seen yet. */
export function isStillGood({ before }: LifeRecord): boolean {
  return before === Infinity;
}

/** True where the end is known only to lie between two looks. */
export function isBetween(record: LifeRecord): boolean {
  return !isSeen(record) && !isStillGood(record);
}

/** Lives that are known to have ended. */
export function failuresIn(records: readonly LifeRecord[]): number {
  return records.reduce((sum, record) => sum + (isStillGood(record) ? 0 : record.count), 0);
}
