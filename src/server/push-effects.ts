import type { KeptEntry } from "#log";
import { idOf } from "#readiness";
import type { Parts } from "./parts.ts";

/** What some entries do at once, besides being kept: who is shut out or has left has no session any more. */
export async function actOn(parts: Parts, kept: readonly KeptEntry[]): Promise<void> {
  for (const { entry } of kept) {
    const id = idOf(entry.subject);
    if (entry.kind === "device-shut-out") await parts.secrets.removeSessionsOfDevice(id);
    if (entry.kind === "person-left") await parts.secrets.removeSessionsOfPerson(id);
  }
}
