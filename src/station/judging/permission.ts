import { KEEPING_ROLES, type EntryKind, type Role } from "#readiness";

/** A role, or nobody signed in. */
export type Asker = Role | "signed-out";

/** Every role there is. */
export const ROLES: readonly Role[] = ["keeper", "crew", "assessor", "commander", "administrator"];

const HANDS: readonly Role[] = ["keeper", "crew", "administrator"];
/** Who may be at the telephone when a boat calls. */
const OPENERS: readonly Role[] = ["keeper", "crew", "commander", "administrator"];
const KEEPERS = KEEPING_ROLES;
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
  flushed: HANDS,
  mustered: WATCHERS,
  "turnaround-opened": HANDS,
  "step-answered": HANDS,
  "timer-started": HANDS,
  "timer-stopped": HANDS,
  "pulls-counted": HANDS,
  "prime-timed": HANDS,
  "delivery-measured": HANDS,
  "item-fitted": HANDS,
  "item-robbed": HANDS,
  "date-read": HANDS,
  "finding-raised": WATCHERS,
  /** Living with a finding is for keepers: see `judgeEntry`. */
  "remedy-made": HANDS,
  "finding-proved": HANDS,
  sealed: HANDS,
  "closed-grounded": HANDS,
  settled: KEEPERS,
  /** Of what one does oneself. */
  "second-named": HANDS,
  "gone-on-alone": HANDS,
  /** What a keeper is told, by a sheet or a book. */
  "turnaround-told": KEEPERS,
  "drill-begun": KEEPERS,
  /** By somebody who is not drilled: see the acts. */
  "faults-planted": HANDS,
  "drill-revealed": HANDS,
  "planted-removed": HANDS,
  "drill-finding-judged": HANDS,
  "drill-ended": HANDS,
  /** Others than oneself are put to work by keepers: see `judgeEntry`. */
  "work-taken": HANDS,
  "work-dated": HANDS,
  "work-put-off": HANDS,
  "openings-planned": KEEPERS,
  "hours-set": KEEPERS,
  /** One's own; other people's are for keepers: see `judgeEntry`. */
  "absence-set": WATCHERS,
  /** Of others than oneself, by whoever decides for others. */
  "practice-told": KEEPERS,
  "qualification-set": KEEPERS,
  "qualification-retired": KEEPERS,
  "place-set": ADMINISTRATORS,
  "place-closed": ADMINISTRATORS,
  "shelves-set": KEEPERS,
  "policy-set": ADMINISTRATORS,
  "opening-interval-set": KEEPERS,
  "station-named": ADMINISTRATORS,
  "boat-set": KEEPERS,
  "boat-retired": KEEPERS,
  "part-set": KEEPERS,
  "part-retired": KEEPERS,
  "stock-received": HANDS,
  "stock-used": HANDS,
  "stock-counted": WATCHERS,
  "stock-scrapped": HANDS,
  "stock-moved": HANDS,
  "stock-ordered": KEEPERS,
  "order-closed": KEEPERS,
  "lot-recalled": KEEPERS,
  "person-joined": ADMINISTRATORS,
  "person-changed": ADMINISTRATORS,
  "person-left": ADMINISTRATORS,
  "device-joined": ADMINISTRATORS,
  "device-shut-out": KEEPERS,
  /** Written by the server itself when it takes such lines. */
  "lines-brought-back": [],
  /** Written by the shell when it takes such lines. */
  "lines-imported": [],
  "lines-handed-in": [],
  "step-reported": ROLES,
  "report-answered": KEEPERS,
  "casualty-opened": OPENERS,
  "casualty-changed": HANDS,
  "sounding-taken": HANDS,
  "pump-set": HANDS,
  "pump-seen": HANDS,
  "pump-start-told": HANDS,
  "pump-refuelled": HANDS,
  "hole-patched": HANDS,
  "stability-seen": HANDS,
  "tow-set": HANDS,
  "fuel-smelt": HANDS,
  "fuel-cleared": HANDS,
  "casualty-joined": HANDS,
  "casualty-noted": HANDS,
  "casualty-closed": HANDS,
  /** Whoever was there, or watched. */
  "review-noted": ROLES,
  "casualty-reviewed": KEEPERS,
  /** One's own lines; other people's are for keepers: see `judgeEntry`. */
  struck: WATCHERS,
};

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
