import type { Grid } from "../station/grid.ts";
import { readKit } from "../worth/worth.ts";
import { cheapestPath, type Prices } from "./kit-path.ts";

/** What no plan goes below. */
export interface Bound {
  readonly short: number;
  /** Holds for plans that are no shorter than `short`. */
  readonly late: number;
  /** Holds for plans that are no later than `late`. */
  readonly openings: number;
  /** Openings by kit. */
  readonly byKit: readonly number[];
}

/**
 * What no plan goes below: each kit opened as seldom as it can be, were there nothing else; places that hold fewer kits
 * than they must.
 * @source DERIVED: every constraint that ties kits together, and parts, are left out, so sums over kits are lower bounds
 */
export function ownBound(grid: Grid): Bound {
  const alone = aloneGrid(grid);
  const prices = nothingElse(grid);
  const kits = alone.kits.map((kit, index) => {
    const path = cheapestPath(alone, index, prices, Number.POSITIVE_INFINITY);
    return { openings: path.length, late: readKit(kit, path, grid.weeks).late.length };
  });
  return {
    short: lacking(grid) * grid.weeks,
    late: kits.reduce((sum, one) => sum + one.late, 0),
    openings: kits.reduce((sum, one) => sum + one.openings, 0),
    byKit: kits.map((one) => one.openings),
  };
}

/** Kits that places lack even with every kit ready. */
function lacking({ strength, kits }: Grid): number {
  return strength.reduce(
    (sum, wanted, place) => sum + Math.max(0, wanted - kits.filter((kit) => kit.place === place).length),
    0,
  );
}

function aloneGrid(grid: Grid): Grid {
  const kits = grid.kits.map((kit) => ({ ...kit, clocks: kit.clocks.map((clock) => ({ ...clock, parts: [] })) }));
  return { ...grid, kits };
}

/** Prices of a kit that is alone. */
function nothingElse({ weeks }: Grid): Prices {
  const zero = Array.from({ length: weeks }, () => 0);
  return { notReady: zero, hasRoom: zero.map(() => true), level: zero, left: [] };
}
