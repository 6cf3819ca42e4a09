import { entryKinds, type EntryKind, type Role } from "#readiness";
import { describe, expect, it } from "vitest";
import { CALLING, mayCall, mayWrite, ROLES, WRITING, type Permission } from "./permission.ts";

const LETTERS: Readonly<Record<Role, string>> = {
  keeper: "k",
  crew: "c",
  assessor: "a",
  commander: "o",
  administrator: "A",
};

function lettersOf(may: (role: Role) => boolean): string {
  return ROLES.map((role) => (may(role) ? LETTERS[role] : ".")).join("");
}

/** The whole table, written out a second time by hand: keeper, crew, assessor, commander, administrator. */
const WRITES: Readonly<Record<EntryKind, string>> = {
  "kit-enrolled": "k...A",
  "visit-begun": "k.a.A",
  "line-reexamined": "k.a.A",
  "visit-ended": "k.a.A",
  "kit-renamed": "k...A",
  "kit-rebuilt": "k...A",
  "kit-moved": "k...A",
  "kit-retired": "k...A",
  "handed-over": "kc..A",
  returned: "kc..A",
  flushed: "kc..A",
  "lent-settled": "kc..A",
  mustered: "kca.A",
  "turnaround-opened": "kc..A",
  "step-answered": "kc..A",
  "timer-started": "kc..A",
  "timer-stopped": "kc..A",
  "pulls-counted": "kc..A",
  "prime-timed": "kc..A",
  "delivery-measured": "kc..A",
  "item-fitted": "kc..A",
  "item-robbed": "kc..A",
  "date-read": "kc..A",
  "finding-raised": "kca.A",
  "remedy-made": "kc..A",
  "finding-proved": "kc..A",
  sealed: "kc..A",
  "closed-grounded": "kc..A",
  settled: "k...A",
  "second-named": "kc..A",
  "second-confirmed": "kc..A",
  "gone-on-alone": "kc..A",
  "turnaround-told": "k...A",
  "drill-begun": "k...A",
  "faults-planted": "kc..A",
  "drill-revealed": "kc..A",
  "planted-removed": "kc..A",
  "drill-finding-judged": "kc..A",
  "drill-ended": "kc..A",
  "practice-told": "k...A",
  "qualification-set": "k...A",
  "qualification-retired": "k...A",
  "work-taken": "kc..A",
  "work-dated": "kc..A",
  "work-put-off": "kc..A",
  "openings-planned": "k...A",
  "hours-set": "k...A",
  "absence-set": "kca.A",
  "place-set": "....A",
  "place-closed": "....A",
  "shelves-set": "k...A",
  "policy-set": "....A",
  "opening-interval-set": "k...A",
  "station-named": "....A",
  "boat-set": "k...A",
  "boat-retired": "k...A",
  "part-set": "k...A",
  "part-retired": "k...A",
  "stock-received": "kc..A",
  "stock-used": "kc..A",
  "stock-counted": "kca.A",
  "stock-scrapped": "kc..A",
  "stock-moved": "kc..A",
  "stock-ordered": "k...A",
  "order-closed": "k...A",
  "lot-recalled": "k...A",
  "person-joined": "....A",
  "person-changed": "....A",
  "person-left": "....A",
  "device-joined": "....A",
  "device-shut-out": "k...A",
  "lines-brought-back": ".....",
  "lines-imported": ".....",
  "lines-handed-in": ".....",
  "step-reported": "kcaoA",
  "report-answered": "k...A",
  "line-pictured": "k...A",
  "casualty-opened": "kc.oA",
  "casualty-changed": "kc.oA",
  "sounding-taken": "kc.oA",
  "pump-set": "kc.oA",
  "pump-seen": "kc.oA",
  "pump-start-told": "kc.oA",
  "pump-refuelled": "kc.oA",
  "hole-patched": "kc.oA",
  "stability-seen": "kc.oA",
  "tow-set": "kc.oA",
  "fuel-smelt": "kc.oA",
  "fuel-cleared": "kc.oA",
  "casualty-joined": "kc.oA",
  "casualty-noted": "kc.oA",
  "casualty-closed": "kc.oA",
  "review-noted": "kcaoA",
  "casualty-reviewed": "k...A",
  struck: "kcaoA",
};

const CALLS: Readonly<Record<Permission, readonly [signedOut: boolean, roles: string]>> = {
  "open-app": [true, "kcaoA"],
  "see-health": [true, "kcaoA"],
  "keep-heads": [true, "kcaoA"],
  "see-wall": [true, "kcaoA"],
  "keep-wall-links": [false, "k...A"],
  "see-calendar": [true, "kcaoA"],
  "keep-own-calendar": [false, "kcaoA"],
  "keep-own-mail": [false, "kcaoA"],
  "issue-pattern": [false, "k...A"],
  "see-session": [true, "kcaoA"],
  "sign-in": [true, "kcaoA"],
  "sign-out": [true, "kcaoA"],
  ask: [false, "kcaoA"],
  "read-log": [false, "kcaoA"],
  "push-log": [false, "kcaoA"],
  "bring-back": [false, "kcaoA"],
  "send-photo": [false, "kca.A"],
  "print-paper": [false, "kcaoA"],
  "export-log": [false, "kcaoA"],
  "change-own-pin": [false, "kcaoA"],
  "confirm-by-pin": [false, "kcaoA"],
  "add-own-passkey": [false, "kcaoA"],
  "remove-own-passkey": [false, "kcaoA"],
  invite: [false, "....A"],
  "see-wrong-pins": [false, "....A"],
};

describe("the permission table", () => {
  it("RULE-1 has a line for every kind of entry there is", () => {
    expect(Object.keys(WRITING).sort()).toEqual([...entryKinds].sort());
  });

  it.each(Object.entries(WRITES))("lets these write %s: %s", (kind, roles) => {
    expect(lettersOf((role) => mayWrite(role, kind as EntryKind))).toBe(roles);
  });

  it("has no route but those written out here", () => {
    expect(Object.keys(CALLING).sort()).toEqual(Object.keys(CALLS).sort());
  });

  it.each(Object.entries(CALLS))("lets these call %s", (name, [signedOut, roles]) => {
    const permission = name as Permission;
    expect(mayCall(undefined, permission)).toBe(signedOut);
    expect(lettersOf((role) => mayCall(role, permission))).toBe(roles);
  });
});
