import type { Grid, GridKit, Opening } from "../station/grid.ts";
import { canShare, workOf, type Work } from "../station/work-sharing.ts";
import { compareWorth, readKit, readPlan, type Worth } from "../worth/worth.ts";
import { cheapestPath, COST, type Prices } from "./kit-path.ts";
import { leastWaste } from "./least-waste.ts";

/** Kits planned in all rounds at most; a round that betters nothing is the last. */
const MOST_REPLANS = 240;
/** Rounds through all kits, at least and at most. */
const LEAST_ROUNDS = 3;
const MOST_ROUNDS = 12;

/** A legal plan: hours, qualifications, parts and fixed openings are kept; strength and dates as far as they can be. */
export interface LegalPlan {
  readonly openings: readonly Opening[];
  readonly worth: Worth;
}

/**
 * A legal plan at once: kits planned one after another, most pressing first, each as cheaply as the others allow; then
 * each again until nothing gets better. The same station always gives the same plan.
 */
export function quickPlan(grid: Grid): LegalPlan {
  const rounds = Math.min(MOST_ROUNDS, Math.max(LEAST_ROUNDS, Math.floor(MOST_REPLANS / grid.kits.length)));
  const table = new PlanTable(grid);
  const order = pressing(grid);
  let best: LegalPlan | undefined;
  for (let round = 0; round < rounds; round += 1) {
    for (const kit of order) table.replan(kit);
    const openings = leastWaste(grid, table.openings());
    const worth = readPlan(grid, openings);
    if (best && compareWorth(worth, best.worth) >= 0) break;
    best = { openings, worth };
  }
  return best!;
}

/** Kits whose first clock ends first come first. */
function pressing(grid: Grid): number[] {
  const first = (kit: GridKit) => Math.min(grid.weeks, ...kit.clocks.map((clock) => clock.good));
  const order = grid.kits.map((_, index) => index);
  return order.toSorted((one, other) => first(grid.kits[one]!) - first(grid.kits[other]!) || one - other);
}

/** The plan as it grows, with what each week holds. */
class PlanTable {
  readonly #grid: Grid;
  readonly #plans: (readonly Opening[])[];
  readonly #notReady: (readonly boolean[])[];

  constructor(grid: Grid) {
    this.#grid = grid;
    this.#plans = grid.kits.map((kit, index) => kit.fixed.map((week) => ({ kit: index, week, renews: [] })));
    this.#notReady = grid.kits.map((kit) => weeksOf(grid).map((week) => isOut(kit, week)));
  }

  openings(): readonly Opening[] {
    return this.#plans.flat();
  }

  replan(index: number): void {
    this.#plans[index] = [];
    const path = cheapestPath(this.#grid, index, this.#pricesFor(index));
    this.#plans[index] = path;
    this.#notReady[index] = readKit(this.#grid.kits[index]!, path, this.#grid.weeks).notReady;
  }

  #pricesFor(index: number): Prices {
    const kit = this.#grid.kits[index]!;
    const work = this.#workByWeek();
    const minutes = work.map((pieces) => pieces.reduce((sum, piece) => sum + piece.minutes, 0));
    return {
      notReady: weeksOf(this.#grid).map((week) => (this.#isNeeded(index, week) ? COST.short : 0)),
      hasRoom: work.map((pieces, week) => canShare(this.#grid, week, [...pieces, workOf(kit, week)])),
      level: levelPrices(minutes, kit.minutes),
      left: this.#partsLeft(),
    };
  }

  #workByWeek(): Work[][] {
    const work: Work[][] = weeksOf(this.#grid).map(() => []);
    for (const { kit, week } of this.openings()) {
      work[week]!.push(workOf(this.#grid.kits[kit]!, week));
    }
    return work;
  }

  /** Whether the place falls short by one more where this kit is not ready. */
  #isNeeded(index: number, week: number): boolean {
    const { place } = this.#grid.kits[index]!;
    const others = this.#grid.kits.filter(
      (kit, other) => other !== index && kit.place === place && !this.#notReady[other]![week],
    );
    return others.length < this.#grid.strength[place]!;
  }

  /** By part and week: the least that is left then or later. */
  #partsLeft(): number[][] {
    const uses = this.openings().flatMap(({ kit, week, renews }) =>
      renews.flatMap((clock) => this.#grid.kits[kit]!.clocks[clock]!.parts.map((need) => ({ week, ...need }))),
    );
    return this.#grid.supply.map((supply, part) => {
      const left = supply.map((there, week) =>
        uses.reduce((sum, use) => (use.part === part && use.week <= week ? sum - use.count : sum), there),
      );
      for (let week = left.length - 2; week >= 0; week -= 1) left[week] = Math.min(left[week]!, left[week + 1]!);
      return left;
    });
  }
}

/** Square of the week's work, so that the fullest week is the dearest; a quarter of the price where it stays below the worst. */
function levelPrices(minutes: readonly number[], own: number): number[] {
  const worst = Math.max(...minutes, own);
  const most = (worst + own) ** 2 || 1;
  return minutes.map((there) => {
    const growth = ((there + own) ** 2 - there ** 2) / most;
    return (there + own > worst ? COST.week / 2 : 0) + (growth * COST.week) / 2;
  });
}

function isOut(kit: GridKit, week: number): boolean {
  return kit.fixed.some((fixed) => fixed <= week && week < fixed + kit.weeksOut);
}

function weeksOf({ weeks }: Grid): number[] {
  return Array.from({ length: weeks }, (_, week) => week);
}
