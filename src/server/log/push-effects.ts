import type { KeptEntry } from "#log";
import { idOf } from "#readiness";
import type { Parts } from "../parts.ts";

/**
 * What some entries do at once, besides being kept: a device shut out has no session any more. Those of a person who
 * leaves stay, useless, so that each of their devices is told why; they end where the person joins again.
 */
export async function actOn(parts: Parts, kept: readonly KeptEntry[]): Promise<void> {
  for (const { entry } of kept) {
    const id = idOf(entry.subject);
    if (entry.kind === "device-shut-out") await parts.secrets.removeSessionsOfDevice(id);
    if (entry.kind === "person-joined") await parts.secrets.removeSessionsOfPerson(id);
  }
}
