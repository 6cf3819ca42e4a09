import { ADMINISTRATORS, KEEPING_ROLES, ROLES, WATCHERS, WRITING, type EntryKind, type Role } from "#readiness";

export { ROLES, WRITING };

/** A role, or nobody signed in. */
export type Asker = Role | "signed-out";

/** Who decides for others. */
export const KEEPERS = KEEPING_ROLES;
const EVERYONE: readonly Asker[] = [...ROLES, "signed-out"];

/** Who may do what at the server's door. Every route names one of these. */
export const CALLING = {
  "open-app": EVERYONE,
  "see-health": EVERYONE,
  /** Another station's shell, by the token that it was given: see `KeptHeads`. */
  "keep-heads": EVERYONE,
  /** The wall of one place, by the secret of its link: see `LinkDesk`. */
  "see-wall": EVERYONE,
  "keep-wall-links": KEEPERS,
  /** The calendar of one person, by the secret of its address: see `LinkDesk`. */
  "see-calendar": EVERYONE,
  "keep-own-calendar": ROLES,
  "keep-own-mail": ROLES,
  /** A pattern says what everybody's hands do: who answers for the kits issues it. */
  "issue-pattern": KEEPERS,
  "see-session": EVERYONE,
  "sign-in": EVERYONE,
  "sign-out": EVERYONE,
  ask: ROLES,
  "read-log": ROLES,
  "push-log": ROLES,
  /** Whoever holds the device: what is brought back was the station's own, or an administrator says so. */
  "bring-back": ROLES,
  "send-photo": WATCHERS,
  "print-paper": ROLES,
  "export-log": ROLES,
  "change-own-pin": ROLES,
  /** By the second person's own PIN, on the device of whoever did it. */
  "confirm-by-pin": ROLES,
  "add-own-passkey": ROLES,
  "remove-own-passkey": ROLES,
  invite: ADMINISTRATORS,
  "see-wrong-pins": ADMINISTRATORS,
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
