import type { Words } from "#words";
import { isForCasualty, type CasualtyState, type StandingKind } from "#readiness";
import { mayWrite } from "#station";
import type { StationView } from "#web/device/index.ts";

/** A kit that can be put on her. */
export interface KitChoice {
  readonly id: string;
  readonly words: string;
}

const STANDINGS = {
  ready: "ready",
  "ready-with-limits": "readyWithLimits",
  grounded: "grounded",
  open: "open",
  away: "away",
} as const satisfies Readonly<Record<StandingKind, keyof Words["sheetPumps"]>>;

/**
 * Kits to choose from: those handed over to her already first, then the ready ones, then any that are here. Only the
 * first where the role may hand none over.
 */
export function kitChoices(
  { kits, standings, me }: Pick<StationView, "kits" | "standings"> & { readonly me: Pick<StationView["me"], "role"> },
  casualty: Pick<CasualtyState, "id" | "name" | "opened" | "closed" | "pumps">,
  words: Words["sheetPumps"],
): readonly KitChoice[] {
  const mayHandOver = mayWrite(me.role, "handed-over");
  const taken = new Set(casualty.pumps.map(({ kit }) => kit));
  return kits
    .filter(({ id, turnaround }) => !taken.has(id) && !turnaround)
    .flatMap(({ id, name, custody }) => {
      if (custody.kind === "away")
        return isForCasualty(casualty, custody) ? [{ id, words: words.kitOnHer({ kit: name }), rank: 0 }] : [];
      if (!mayHandOver) return [];
      const standing = standings.get(id)?.standing ?? "grounded";
      if (standing === "ready") return [{ id, words: name, rank: 1 }];
      const said = words.kitStanding({ kit: name, standing: words[STANDINGS[standing]]() });
      return [{ id, words: said, rank: standing === "ready-with-limits" ? 2 : 3 }];
    })
    .sort((one, other) => one.rank - other.rank || one.words.localeCompare(other.words, "en", { numeric: true }))
    .map(({ id, words: said }) => ({ id, words: said }));
}
