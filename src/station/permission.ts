import type { EntryKind, Role } from "#readiness";

/** A role, or nobody signed in. */
export type Asker = Role | "signed-out";

/** Every role there is. */
export const ROLES: readonly Role[] = ["keeper", "crew", "assessor", "commander", "administrator"];

const HANDS: readonly Role[] = ["keeper", "crew", "administrator"];
const KEEPERS: readonly Role[] = ["keeper", "administrator"];
const ADMINISTRATORS: readonly Role[] = ["administrator"];
const WATCHERS: readonly Role[] = ["keeper", "crew", "assessor", "administrator"];
const EVERYONE: readonly Asker[] = [...ROLES, "signed-out"];

/** Who may write which kind of entry. One line for each kind; a kind without a line does not compile. */
export const WRITING: Readonly<Record<EntryKind, readonly Role[]>> = {
  "kit-enrolled": KEEPERS,
  "kit-renamed": KEEPERS,
  "kit-rebuilt": KEEPERS,
  "kit-moved": KEEPERS,
  "kit-retired": KEEPERS,
  "handed-over": HANDS,
  returned: HANDS,
  mustered: WATCHERS,
  "turnaround-opened": HANDS,
  "step-answered": HANDS,
  "timer-started": HANDS,
  "timer-stopped": HANDS,
  "pulls-counted": HANDS,
  "prime-timed": HANDS,
  "delivery-measured": HANDS,
  "item-fitted": HANDS,
  "finding-raised": WATCHERS,
  /** Living with a finding is for keepers: see `judgeEntry`. */
  "remedy-made": HANDS,
  "finding-proved": HANDS,
  sealed: HANDS,
  "closed-grounded": HANDS,
  settled: KEEPERS,
  "place-set": ADMINISTRATORS,
  "place-closed": ADMINISTRATORS,
  "policy-set": ADMINISTRATORS,
  "station-named": ADMINISTRATORS,
  "person-joined": ADMINISTRATORS,
  "person-changed": ADMINISTRATORS,
  "person-left": ADMINISTRATORS,
  "device-joined": ADMINISTRATORS,
  "device-shut-out": KEEPERS,
  "step-reported": ROLES,
  "report-answered": KEEPERS,
  "casualty-opened": HANDS,
  "casualty-changed": HANDS,
  "sounding-taken": HANDS,
  "pump-set": HANDS,
  "pump-refuelled": HANDS,
  "hole-patched": HANDS,
  "stability-seen": HANDS,
  "fuel-smelt": HANDS,
  "fuel-cleared": HANDS,
  "casualty-noted": HANDS,
  "casualty-closed": HANDS,
  /** One's own lines; other people's are for keepers: see `judgeEntry`. */
  struck: WATCHERS,
};

/** Who may do what at the server's door. Every route names one of these. */
export const CALLING = {
  "open-app": EVERYONE,
  "see-health": EVERYONE,
  "see-session": EVERYONE,
  "sign-in": EVERYONE,
  "sign-out": EVERYONE,
  ask: ROLES,
  "read-log": ROLES,
  "push-log": ROLES,
  "send-photo": WATCHERS,
  "print-paper": ROLES,
  "export-log": ROLES,
  "change-own-pin": ROLES,
  "add-own-passkey": ROLES,
  "remove-own-passkey": ROLES,
  invite: ADMINISTRATORS,
} as const satisfies Readonly<Record<string, readonly Asker[]>>;

/** A line of the table of routes. */
export type Permission = keyof typeof CALLING;

/** True where the role may write entries of this kind. */
export function mayWrite(role: Role, kind: EntryKind): boolean {
  return WRITING[kind].includes(role);
}

/** True where the role, or nobody signed in (undefined), may call a route of this permission. */
export function mayCall(role: Role | undefined, permission: Permission): boolean {
  const allowed: readonly Asker[] = CALLING[permission];
  return allowed.includes(role ?? "signed-out");
}

/** True where the role decides for others: settles, lives with findings, strikes other people's lines. */
export function isKeeper(role: Role): boolean {
  return KEEPERS.includes(role);
}
