import type { Words } from "#words";
import type { Pattern } from "#kit";
import { type KitState, type StandingInWords, standingInWords } from "#readiness";
import type { StationView } from "#web/device/index.ts";
import type { Way } from "./our-boat.ts";

/** Light until she is pumped: told, never taken from the clock. With a torch sent along a kit for daylight may go. */
export type Light = "daylight" | "dark" | "torch";

/** What a kit needs that may be missing. */
export interface Conditions {
  readonly light: Light | undefined;
  /** Whether there is mains on her that the water cannot reach. */
  readonly herMains: boolean | undefined;
}

/** A kit that can be used on her, as the question takes it, with what to know beside. */
export interface UsableKit {
  readonly id: string;
  readonly name: string;
  readonly kit: string;
  readonly proved?: number;
  readonly runs?: { readonly of: number; readonly good: number };
  readonly follows: boolean;
  /** Seconds to water at its last proof, and when that was. */
  readonly prime?: number;
  readonly provedAt?: string;
  readonly limits: readonly string[];
  readonly placeName: string;
}

/** A kit that stays, and why. */
export interface KeptBack {
  readonly name: string;
  readonly why: string;
}

/** Kits sorted into those that can be used and those that stay. */
export interface KitsAtHand {
  readonly usable: readonly UsableKit[];
  readonly back: readonly KeptBack[];
}

/**
 * Which kits can be used on her: ready, within their limits tonight, with what their pattern needs. Those that lie
 * elsewhere than the boat follow.
 */
export function kitsAtHand(
  view: Pick<StationView, "kits" | "standings" | "patterns" | "places">,
  way: Way,
  conditions: Conditions,
  words: { readonly launch: Words["launch"]; readonly standing: Words["standing"] },
): KitsAtHand {
  const judged = view.kits.map((kit) => {
    const stands = view.standings.get(kit.id);
    const standing = stands && standingInWords(stands, words.standing);
    const pattern = view.patterns.get(kit.pattern);
    const why = whyBack(standing, pattern, way, conditions, words.launch);
    if (why !== undefined || !pattern) return { back: { name: kit.name, why: why ?? words.launch.noPattern() } };
    return { usable: usableKit(kit, pattern, standing?.limits ?? [], way, view) };
  });
  return {
    usable: judged.flatMap(({ usable }) => usable ?? []),
    back: judged.flatMap(({ back }) => back ?? []),
  };
}

function whyBack(
  standing: StandingInWords | undefined,
  pattern: Pattern | undefined,
  way: Way,
  { light, herMains }: Conditions,
  words: Words["launch"],
): string | undefined {
  const kind = standing?.standing ?? "grounded";
  if (standing === undefined || (kind !== "ready" && kind !== "ready-with-limits")) {
    const said = kind === "open" || kind === "away" ? words[kind]() : words.grounded();
    return words.keptBack({ standing: said, reason: standing?.because[0]?.text ?? words.notJudged() });
  }
  const daylight = standing.limits.find((limit) => /daylight/i.test(limit));
  if (daylight !== undefined && light !== "daylight" && light !== "torch") {
    return light === undefined ? words.lightUnknown({ limit: daylight }) : daylight;
  }
  const needsMains = pattern !== undefined && pattern.engine === undefined;
  if (needsMains && !way.mains && herMains !== true) return words.needsMains();
  return undefined;
}

function usableKit(
  kit: KitState,
  pattern: Pattern,
  limits: readonly string[],
  way: Way,
  { places }: Pick<StationView, "places">,
): UsableKit {
  const runs = kit.runs
    .filter(({ drill }) => drill === undefined)
    .toSorted((one, other) => Date.parse(one.at) - Date.parse(other.at));
  const proof = runs.findLast(({ ratio }) => ratio !== undefined);
  const prime = runs.findLast(
    ({ primeSeconds, primed }) => primeSeconds !== undefined && primed !== false,
  )?.primeSeconds;
  const tried = runs.filter(({ started, primed }) => started !== undefined || primed !== undefined);
  const good = tried.filter(({ started, primed }) => started !== false && primed !== false);
  return {
    id: kit.id,
    name: kit.name,
    kit: pattern.id,
    ...(proof?.ratio !== undefined && { proved: Math.min(1.5, proof.ratio), provedAt: proof.at }),
    ...(tried.length > 0 && { runs: { of: tried.length, good: good.length } }),
    ...(prime !== undefined && { prime }),
    follows: kit.place !== way.place,
    limits,
    placeName: places.find(({ id }) => id === kit.place)?.name ?? kit.place,
  };
}
