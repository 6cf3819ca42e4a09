import type { Pattern } from "#kit";
import { lastSealed } from "../kit/life.ts";
import type { KitState } from "../state.ts";

/** Something that two kits have in common, by which one cause may strike both. */
export interface InCommon {
  readonly kind: "fuel" | "lot" | "hands";
  /** The same for whoever shares it. */
  readonly key: string;
  /** The item, for fuel and lots; the person, for hands. */
  readonly of: string;
}

/**
 * What a kit may share with others: its fuel's delivery, lots of its items, and who closed it last.
 *
 * The delivery is the fuel's batch where one was written down, else the day on which it was filled: cans filled on one day
 * are taken as of one delivery.
 *
 * @param kit - as its entries tell it
 * @param pattern - it is built to
 * @returns each thing once
 */
export function inCommonOf(kit: KitState, pattern: Pattern): readonly InCommon[] {
  const fuel = pattern.engine?.fuelItem;
  const lots = Object.values(kit.contents).flatMap(({ item, batch, fitted }): readonly InCommon[] => {
    if (item === fuel) return [{ kind: "fuel", key: `fuel ${pattern.engine?.fuel} ${batch ?? fitted}`, of: item }];
    return batch === undefined ? [] : [{ kind: "lot", key: `lot ${item} ${batch}`, of: item }];
  });
  const closed = lastSealed(kit)?.closed;
  return [...lots, ...(closed ? [{ kind: "hands" as const, key: `hands ${closed.by}`, of: closed.by }] : [])];
}
