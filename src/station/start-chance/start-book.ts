import { familyOf, type Pattern } from "#kit";
import {
  demandsOf,
  hiddenOf,
  lastProved,
  type CasualtyState,
  type Demand,
  type HiddenRecord,
  type KitState,
} from "#readiness";
import {
  hiddenRates,
  openingsToTell,
  startsByFleet,
  worthTelling,
  type Belief,
  type Demands,
  type FleetMember,
  type HiddenRate,
  type Spread,
} from "#reliability";

/** What the log says of whether a kit starts and gives water when asked. */
export interface KitStartRecord {
  /** Oldest first. */
  readonly demands: readonly Demand[];
  readonly failures: number;
  /** Chance that it fails when asked, just proved [1]. */
  readonly failing: Belief;
  /** The same as equally likely values [1]. */
  readonly asked: Spread;
  /** Openings it would take about until the range is narrow enough to be told; 0 where it is. */
  readonly openings: number;
  /** Others of its pattern that stand for what to expect of it; 0 where they say nothing yet. */
  readonly others: number;
  /** Starts of theirs that were asked for. */
  readonly othersStarts: number;
  /** What one failure more of another would make of the mean of failing [1]; only where it would look less likely by it. */
  readonly oneMore?: number;
  /** Faults found at openings; absent where this copy has not the kit's pattern. */
  readonly unseen?: HiddenRecord;
  /** Rate at which faults come unseen [1/s]; absent where no kit of the pattern ever lay closed between two openings. */
  readonly hidden?: HiddenRate;
  /** RFC 3339: when it last started and gave water; absent where it never did. */
  readonly proved?: string;
}

/** What a station tells of starting. */
export interface StartLog {
  readonly kits: readonly KitState[];
  /** Of the station, open and closed. */
  readonly casualties: readonly CasualtyState[];
  /** By "id@version". */
  readonly patterns: ReadonlyMap<string, Pattern>;
}

/** A kit's own counts. */
interface Counted {
  readonly called: readonly CasualtyState[];
  readonly pattern: Pattern | undefined;
  readonly demands: readonly Demand[];
  readonly failures: number;
  readonly unseen: HiddenRecord | undefined;
  readonly proved: string | undefined;
}

/** A fleet of one pattern, whatever its version. */
interface Fleet {
  readonly of: readonly Counted[];
  readonly others: number;
  readonly asked: number;
  readonly startsOf: (own: Demands) => FleetMember & Pick<KitStartRecord, "oneMore">;
  readonly hiddenOf: ReturnType<typeof hiddenRates>;
}

/**
 * The chance of starting of every kit, from its own demands and those of others of its pattern. What a new entry does not
 * touch is not counted again: a kit's counts are kept as long as the kit and the casualties it was on are the same.
 */
export class StartBook {
  readonly #counted = new WeakMap<KitState, Counted>();
  #log: StartLog | undefined;
  #called: ReadonlyMap<string, readonly CasualtyState[]> = new Map();
  #fleets = new Map<string, Fleet>();
  /** What was said of a kit, as long as its counts and its fleet are the same. */
  readonly #records = new WeakMap<Counted, { readonly fleet: Fleet; readonly record: KitStartRecord }>();
  /** How many kits were counted so far: what a new entry costs. */
  counts = 0;

  /**
   * A kit's record and the belief.
   *
   * @param kit - in hand; one that was taken off charge is told of too
   * @param log - the station as it now stands
   * @source others pooled warily; Jeffreys' prior where no other was ever asked
   */
  read(kit: KitState, log: StartLog): KitStartRecord {
    this.#turnTo(log);
    const counted = this.#count(kit, log);
    const fleet = this.#fleetOf(familyOf(kit.pattern), log);
    const known = this.#records.get(counted);
    if (known?.fleet === fleet) return known.record;
    const record = recordOf(counted, fleet);
    this.#records.set(counted, { fleet, record });
    return record;
  }

  #turnTo(log: StartLog): void {
    if (this.#log?.casualties !== log.casualties) this.#called = calledOf(log.casualties);
    if (this.#log?.kits !== log.kits || this.#log.casualties !== log.casualties) this.#fleets = this.#kept(log);
    this.#log = log;
  }

  /** Fleets of which nothing that counts has changed. */
  #kept(log: StartLog): Map<string, Fleet> {
    return new Map(
      [...this.#fleets].filter(([family, { of }]) => {
        const now = membersOf(family, log).map((kit) => this.#count(kit, log));
        return now.length === of.length && now.every((one, i) => isSameCount(one, of[i]!));
      }),
    );
  }

  #count(kit: KitState, { patterns }: StartLog): Counted {
    const called = this.#called.get(kit.id) ?? [];
    const pattern = patterns.get(kit.pattern);
    const before = this.#counted.get(kit);
    if (before && before.pattern === pattern && isSame(before.called, called)) return before;
    this.counts += 1;
    const demands = demandsOf(kit, called, pattern);
    const failures = demands.filter(({ worked }) => !worked).length;
    const proved = lastProved(kit, pattern, demands);
    const counted = { called, pattern, demands, failures, proved, unseen: pattern && hiddenOf(kit, pattern, called) };
    this.#counted.set(kit, counted);
    return counted;
  }

  #fleetOf(family: string, log: StartLog): Fleet {
    const before = this.#fleets.get(family);
    if (before) return before;
    const of = membersOf(family, log).map((kit) => this.#count(kit, log));
    const fleet = fleetFrom(of);
    this.#fleets.set(family, fleet);
    return fleet;
  }
}

function recordOf({ demands, failures, unseen, proved }: Counted, fleet: Fleet): KitStartRecord {
  const { failing, spread, oneMore } = fleet.startsOf({ failures, trials: demands.length });
  const hidden = unseen && fleet.hiddenOf?.({ failures: unseen.found, time: unseen.lay });
  return {
    demands,
    failures,
    failing,
    asked: spread,
    openings: openingsToTell(failing),
    others: Math.max(0, fleet.others - (demands.length > 0 ? 1 : 0)),
    othersStarts: Math.max(0, fleet.asked - demands.length),
    ...(oneMore !== undefined && { oneMore }),
    ...(unseen && { unseen }),
    ...(hidden && { hidden }),
    ...(proved !== undefined && { proved }),
  };
}

function fleetFrom(of: readonly Counted[]): Fleet {
  const fleet = startsByFleet(of.map(({ failures, demands }) => ({ failures, trials: demands.length })));
  const beliefs = new Map<string, ReturnType<Fleet["startsOf"]>>();
  const startsOf = (own: Demands) => {
    const key = `${own.failures} ${own.trials}`;
    const belief = beliefs.get(key) ?? beliefIn(fleet, own);
    beliefs.set(key, belief);
    return belief;
  };
  const unseen = of.flatMap(({ unseen: one }) => (one ? [{ failures: one.found, time: one.lay }] : []));
  const asked = of.reduce((sum, { demands }) => sum + demands.length, 0);
  return { of, others: fleet.members, asked, startsOf, hiddenOf: hiddenRates(unseen) };
}

function beliefIn(fleet: ReturnType<typeof startsByFleet>, own: Demands): ReturnType<Fleet["startsOf"]> {
  const member = fleet.of(own);
  const oneMore = worthTelling(member.failing.mean, fleet.oneMore(own));
  return oneMore === undefined ? member : { ...member, oneMore };
}

function calledOf(casualties: readonly CasualtyState[]): ReadonlyMap<string, readonly CasualtyState[]> {
  const called = new Map<string, CasualtyState[]>();
  for (const casualty of casualties)
    for (const kit of new Set(casualty.pumps.flatMap((pump) => pump.kit ?? [])))
      called.set(kit, [...(called.get(kit) ?? []), casualty]);
  return called;
}

function membersOf(family: string, { kits }: StartLog): readonly KitState[] {
  return kits.filter((kit) => familyOf(kit.pattern) === family);
}

function isSameCount(one: Counted, other: Counted): boolean {
  const alike = one.demands.length === other.demands.length && one.failures === other.failures;
  return one === other || (alike && one.unseen?.found === other.unseen?.found && one.unseen?.lay === other.unseen?.lay);
}

function isSame<T>(one: readonly T[], other: readonly T[]): boolean {
  return one.length === other.length && one.every((each, i) => each === other[i]);
}
