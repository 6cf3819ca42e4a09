import { familyOf, type Pattern } from "#kit";
import { demandsOf, hiddenOf, type CasualtyState, type Demand, type KitState } from "#readiness";
import { hiddenRates, startsByFleet, workingAt } from "#reliability";
import type { StartLog } from "../start-chance/index.ts";

/** What was to be believed of a start before it was asked for, and what came. */
export interface StartForecast {
  readonly kit: string;
  readonly at: string;
  readonly on: Demand["on"];
  /** Chance that it would start and give water [1]. */
  readonly chance: number;
  readonly came: boolean;
}

interface Asked {
  readonly kit: KitState;
  readonly pattern: Pattern | undefined;
  readonly casualties: readonly CasualtyState[];
  readonly demands: readonly Demand[];
}

/**
 * For every start ever asked for, the chance that the tool would have told just before, from nothing that came later:
 * the kit's own record up to then, the spread of its fleet as it was known when the year began.
 *
 * A start in a turnaround follows a look: hidden faults count only on casualties, by the time since the last proof.
 *
 * @param log - the station; kits taken off charge too
 * @returns oldest first
 * @source as `StartBook`; each judged by what came after it (Dawid's prequential principle, 1984, FROM MEMORY)
 */
export function startForecasts({ kits, casualties, patterns }: StartLog): readonly StartForecast[] {
  const asked = kits.map((kit) => {
    const pattern = patterns.get(kit.pattern);
    return { kit, pattern, casualties, demands: demandsOf(kit, casualties, pattern) };
  });
  const families = new Map<string, Asked[]>();
  for (const one of asked) {
    const family = familyOf(one.kit.pattern);
    families.set(family, [...(families.get(family) ?? []), one]);
  }
  const all = [...families.values()].flatMap(forecastsIn);
  return all.toSorted((one, other) => Date.parse(one.at) - Date.parse(other.at));
}

function forecastsIn(family: readonly Asked[]): readonly StartForecast[] {
  const years = new Map<number, Believer>();
  return family.flatMap((own) =>
    own.demands.map((demand, i) => {
      const year = new Date(demand.at).getUTCFullYear();
      const believer = years.get(year) ?? believerOf(family, Date.UTC(year, 0, 1));
      years.set(year, believer);
      const chance = believer(own, own.demands.slice(0, i), demand);
      return { kit: own.kit.id, at: demand.at, on: demand.on, chance, came: demand.worked };
    }),
  );
}

type Believer = (own: Asked, before: readonly Demand[], demand: Demand) => number;

function believerOf(family: readonly Asked[], until: number): Believer {
  const counts = family.map(({ demands }) => countOf(demands.filter(({ at }) => Date.parse(at) < until)));
  const fleet = startsByFleet(counts);
  const rates = hiddenRates(family.map((one) => unseenBefore(one, until)));
  return (own, before, demand) => {
    const { failing, spread } = fleet.of(countOf(before));
    const proved = before.findLast(({ worked }) => worked)?.at;
    if (demand.on === "turnaround" || !rates || proved === undefined) return 1 - failing.mean;
    const hidden = rates(unseenBefore(own, Date.parse(demand.at))).spread;
    return workingAt({ asked: spread, hidden }, (Date.parse(demand.at) - Date.parse(proved)) / 1000).mean;
  };
}

function unseenBefore({ kit, pattern, casualties }: Asked, until: number) {
  if (!pattern) return { failures: 0, time: 0 };
  const { id, runs, findings } = kit;
  const turnarounds = kit.turnarounds.filter(({ opened }) => Date.parse(opened.at) < until);
  const { found, lay } = hiddenOf({ id, runs, findings, turnarounds }, pattern, casualties);
  return { failures: found, time: lay };
}

function countOf(demands: readonly Demand[]) {
  return { failures: demands.filter(({ worked }) => !worked).length, trials: demands.length };
}
