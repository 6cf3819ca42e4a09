import type { KitState } from "#readiness";
import type { DueLine } from "../work/work-due.ts";

/** What is done with a kit in each sort of work. */
const WORK_WORDS = {
  opening: "Turn round",
  muster: "Muster",
  return: "Fetch",
  settle: "Settle a difference on",
} as const;

/**
 * What a line of work is, as an instruction: "Turn round Pump 3". A kit that is home is not fetched: what was lent with it
 * is, "Fetch 1 fuel can, lent with Pump 3 to the Marsh Harrier".
 */
export function sayWorkOn({ work, kit }: Pick<DueLine, "work" | "kit">): string {
  const lent = kit.custody.kind === "away" ? [] : (kit.lentOut ?? []);
  return work === "return" && lent.length > 0 ? sayFetchLent(kit, lent) : `${WORK_WORDS[work]} ${kit.name}`;
}

function sayFetchLent({ name: kit }: KitState, lent: NonNullable<KitState["lentOut"]>): string {
  const holders = [...new Set(lent.map(({ to }) => to))];
  const said = holders.map((holder) => {
    const things = lent.filter(({ to }) => to === holder).map(sayThing);
    return `${things.join(", ")}, lent with ${kit} to ${holder}`;
  });
  return `Fetch ${said.join("; ")}`;
}

/** Names are in people's own words, and get no plural. */
function sayThing({ count, name }: { readonly count: number; readonly name: string }): string {
  return count === 1 ? `1 ${name}` : `${count} × ${name}`;
}
