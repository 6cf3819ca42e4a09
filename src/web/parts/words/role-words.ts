import type { Role } from "#readiness";

/** Roles in words. */
export const ROLE_WORDS: Readonly<Record<Role, string>> = {
  keeper: "Keeper",
  crew: "Crew",
  assessor: "Assessor",
  commander: "Commander",
  administrator: "Administrator",
};

/** What each role is for, to choose by. */
export const ROLE_NOTES: Readonly<Record<Role, string>> = {
  keeper: "Keeps the kits: everything about kits and findings, shuts out lost devices.",
  crew: "Works on kits: turnarounds, findings, musters, hand-overs.",
  assessor: "Looks at every place and raises findings.",
  commander: "Reads everything.",
  administrator: "Keeps people, places and policy, and may do all that a keeper may.",
};
