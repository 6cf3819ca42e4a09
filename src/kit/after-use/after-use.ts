/** What a kit in use can meet that does harm until it is washed out. */
export const MET = ["salt", "oil", "sewage", "fuel"] as const;
export type Met = (typeof MET)[number];

/** What a pattern says of a kit that comes back from use. */
export interface AfterUse {
  /** One for each thing met that the pattern says something of. */
  readonly met: readonly AfterMet[];
  /** Items counted when it comes back, in the order in which they are looked for. */
  readonly counted: readonly CountedItem[];
}

/** What is done about one thing that a kit met. */
export interface AfterMet {
  readonly what: Met;
  /** Longest time from the last pumping to the first flush [s]. */
  readonly flushWithin: number;
  /** Where that time is from. */
  readonly source: string;
  /** Ids of the cautions shown before the first aid. */
  readonly cautions: readonly string[];
  /** What to do at once, in order, before the turnaround. */
  readonly firstAid: readonly string[];
  /** Ids of the steps that are the first flush, where first aid was not given. */
  readonly flushedBy: readonly string[];
}

/** One item counted when the kit comes back. */
export interface CountedItem {
  readonly item: string;
  /** Mode of the item that its absence is. */
  readonly missing: string;
}
