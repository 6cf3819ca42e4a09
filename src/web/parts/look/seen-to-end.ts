/** Where something stands on the screen [px from its upper edge]. */
interface Span {
  readonly bottom: number;
}

/**
 * How many of a list's members have not yet been on the screen to their last line.
 *
 * @param members - in the order of the page, where they stand now
 * @param floor - what is below this is hidden: the screen ends there, or a bar lies over it [px]
 * @example unseenOf([{ bottom: 300 }, { bottom: 900 }], 700) // 1
 */
export function unseenOf(members: readonly Span[], floor: number): number {
  return members.filter(({ bottom }) => bottom > floor + 1).length;
}
