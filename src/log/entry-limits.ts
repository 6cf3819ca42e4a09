/** What an entry may be at most. */
export const ENTRY_LIMITS = {
  /** UTF-8 bytes of the canonical form [byte]. */
  bytes: 64 * 1024,
  /** Lists and objects within one another in `body`. */
  depth: 12,
  /** Entries named in `after`. */
  after: 16,
  /** Characters of a strike's reason. */
  reason: 2000,
  /** Faults told of one entry: a reply must not be many times what was sent. */
  faults: 20,
} as const;
