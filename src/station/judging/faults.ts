import { printGiven, type Fault } from "#base";
import type { Role } from "#readiness";

/** One fault in a person's words. */
export function because(code: string, field: string, got: unknown, allowed: string, remedy: string): Fault {
  return { code, field, got: printGiven(got), allowed, remedy };
}

/** The role may not write this kind of line; those of `may` do, none of them where the server alone writes it. */
export function roleMayNot(role: Role, kind: string, may: readonly Role[]): Fault {
  const remedy = may.length === 0 ? "Only the server writes it." : `Ask somebody who may: ${may.join(", ")}.`;
  return because("SN-103", "kind", kind, `what the role ${role} may write`, remedy);
}

/** No such place, or not one that this may belong to. */
export function noSuchPlace(field: string, got: string, allowed = "a place of this station"): Fault {
  return because("SN-104", field, got, allowed, "Choose a place of this station.");
}

/** The line to strike is not there, or not this person's to strike. */
export function mayNotStrike(got: string, allowed: string): Fault {
  return because("SN-106", "body.entry", got, allowed, "Ask its writer or the keeper to strike it.");
}

/** The station does not have this pattern version. */
export function noSuchPattern(got: string | undefined): Fault {
  const remedy = "Choose the pattern that the kit is built to, or have its file put back.";
  return because("SN-108", "pattern", got, "a pattern version this station has", remedy);
}

/** Who does a thing is not who sees it done. */
export function secondIsDoer(field: string, got: string): Fault {
  return because("SN-227", field, got, "somebody else than who does it", "Name who sees it done.");
}

/** Nobody named this person there, or they said so already. */
export function notNamed(named: string): Fault {
  const remedy = "Only who was named as the second person says so, and once.";
  return because("SN-232", "body.named", named, "a line that names you and that you have not confirmed", remedy);
}

/** No turnaround of that id stands open. */
export function notOpen(id: string): Fault {
  return because("SN-122", "body.turnaround", id, "a turnaround that is open", "Open the kit first.");
}

/** Nobody of that id is at the station. */
export function noSuchPerson(id: string): Fault {
  return because("SN-218", "person", id, "a person of this station", "Choose a person of the list.");
}

/** The station has no such qualification, or it is retired. */
export function noSuchQualification(field: string, got: string): Fault {
  return because("SN-228", field, got, "a qualification of the station", "Choose one of the list.");
}

/** The pattern has no such item. */
export function noSuchItem(field: string, got: string): Fault {
  return because("SN-118", field, got, "an item of the pattern", "Choose an item of the pattern.");
}
