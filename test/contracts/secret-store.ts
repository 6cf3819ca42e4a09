import type { Credential, Invite, SecretStore, Session } from "#station";
import { afterEach, beforeEach, describe, expect, test } from "vitest";

export interface SecretHouse {
  open(): Promise<SecretStore & { close(): Promise<void> }>;
  clear(): Promise<void>;
}

const PIN: Credential = {
  id: "pin:ane",
  person: "ane",
  kind: "pin",
  secret: "$argon2id$...",
  counter: 0,
  created: "2027-01-01T00:00:00Z",
};
const PASSKEY: Credential = {
  id: "key-1",
  person: "ane",
  kind: "passkey",
  secret: "cHVibGlj",
  counter: 4_294_967_295,
  transports: ["internal", "hybrid"],
  created: "2027-01-02T00:00:00Z",
};

/** What every store of secrets must do. */
export function describeSecretStore(name: string, newHouse: () => Promise<SecretHouse>): void {
  describe(`secret store: ${name}`, () => {
    let house: SecretHouse;
    let store: SecretStore & { close(): Promise<void> };

    beforeEach(async () => {
      house = await newHouse();
      store = await house.open();
    });
    afterEach(async () => {
      await store.close();
      await house.clear();
    });

    test("keeps credentials by person, replaces by id, removes", async () => {
      for (const one of [PIN, PASSKEY, { ...PIN, id: "pin:bo", person: "bo" }]) await store.putCredential(one);
      expect(await store.credentialsOf("ane")).toEqual([PASSKEY, PIN]);
      expect(await store.credential("key-1")).toEqual(PASSKEY);
      await store.putCredential({ ...PASSKEY, counter: 7 });
      expect(await store.credential("key-1")).toEqual({ ...PASSKEY, counter: 7 });
      await store.removeCredential("key-1");
      expect(await store.credentialsOf("ane")).toEqual([PIN]);
      expect(await store.credential("key-1")).toBeUndefined();
      expect(await store.credentialsOf("nobody")).toEqual([]);
    });

    test("is made in one life, with a key of its own, and notes later lives in order", async () => {
      const [made, ...others] = await store.epochs();
      expect([made?.because, others]).toEqual(["made", []]);
      const later = [
        { id: "epoch-2", begun: "2027-01-01T00:00:00Z", because: "seen" },
        { id: "epoch-3", begun: "2027-01-02T00:00:00Z", because: "put-back" },
      ] as const;
      await store.addEpochs(later);
      expect(await store.epochs()).toEqual([made, ...later]);
      expect((await store.voucherKey()).length).toBeGreaterThanOrEqual(32);
      expect(await store.voucherKey()).toBe(await store.voucherKey());
    });

    test("counts failures by key and forgets them when told", async () => {
      expect(await store.failures("ane@tablet")).toEqual({ count: 0 });
      expect(await store.noteFailure("ane@tablet", "2027-01-01T00:00:00Z")).toEqual({ count: 1 });
      expect(await store.noteFailure("ane@tablet", "2027-01-01T00:00:05Z")).toEqual({ count: 2 });
      expect(await store.failures("ane@tablet")).toEqual({ count: 2, last: "2027-01-01T00:00:05Z" });
      expect(await store.failures("bo@tablet")).toEqual({ count: 0 });
      await store.clearFailures("ane@tablet");
      expect(await store.failures("ane@tablet")).toEqual({ count: 0 });
    });

    test("moves a counter's last failure to another time, and makes none", async () => {
      await store.noteFailure("ane@tablet", "2037-01-01T00:00:00Z");
      await store.moveFailures("ane@tablet", "2027-01-01T00:00:00Z");
      await store.moveFailures("bo@tablet", "2027-01-01T00:00:00Z");
      expect(await store.failures("ane@tablet")).toEqual({ count: 1, last: "2027-01-01T00:00:00Z" });
      expect(await store.failures("bo@tablet")).toEqual({ count: 0 });
    });

    test("counts every one of many failures at once", async () => {
      const tries = Array.from({ length: 20 }, () => store.noteFailure("ane@tablet", "2027-01-01T00:00:00Z"));
      const counts = (await Promise.all(tries)).map((one) => one.count).sort((a, b) => a - b);
      expect(counts).toEqual(Array.from({ length: 20 }, (_, at) => at + 1));
    });

    test("keeps sessions, and ends them one by one, by device and by person", async () => {
      const sessions = [
        sessionOf("t1", "ane", "tablet"),
        sessionOf("t2", "ane", "phone"),
        sessionOf("t3", "bo", "tablet"),
      ];
      for (const session of [...sessions, sessionOf("t4", "bo", "phone")]) await store.putSession(session);
      expect(await store.sessionsOfPerson("ane")).toEqual(sessions.slice(0, 2));
      expect(await store.session("t1")).toEqual(sessions[0]);
      await store.putSession({ ...sessionOf("t1", "ane", "tablet"), expires: "2028-01-01T00:00:00Z" });
      expect((await store.session("t1"))?.expires).toBe("2028-01-01T00:00:00Z");
      await store.removeSession("t1");
      expect(await store.session("t1")).toBeUndefined();
      await store.removeSessionsOfDevice("tablet");
      expect(await store.session("t3")).toBeUndefined();
      await store.removeSessionsOfPerson("ane");
      expect(await store.session("t2")).toBeUndefined();
      expect(await store.session("t4")).toBeDefined();
    });

    test("STORE-21 an invite is taken once, in time, by one of all who try at once, and is kept where it is tried too late", async () => {
      const invite: Invite = { codeHash: "c1", person: "cy", by: "ane", expires: "2027-01-08T00:00:00+01:00" };
      await store.putInvite(invite);
      const takers = Array.from({ length: 5 }, () => store.takeInvite("c1", "2027-01-07T22:59:59Z"));
      expect((await Promise.all(takers)).filter((taken) => taken !== undefined)).toEqual([invite]);
      await store.putInvite(invite);
      expect(await store.takeInvite("c1", "2027-01-07T23:00:00Z")).toBeUndefined();
      expect(await store.takeInvite("c1", "2027-01-07T22:59:59Z")).toEqual(invite);
      expect(await store.takeInvite("never", "2027-01-07T23:00:00Z")).toBeUndefined();
    });

    test("purges what ran out by the instant, whatever the offset it is written in, and nothing else", async () => {
      const now = "2027-01-07T23:00:00Z";
      const ends = { over: "2027-01-08T00:00:00+01:00", ahead: "2027-01-07T22:00:01-01:00" };
      await store.putSession({ ...sessionOf("over", "ane", "tablet"), expires: ends.over });
      await store.putSession({ ...sessionOf("ahead", "ane", "tablet"), expires: ends.ahead });
      await store.putInvite({ codeHash: "over", person: "cy", by: "ane", expires: ends.over });
      await store.putInvite({ codeHash: "ahead", person: "cy", by: "ane", expires: ends.ahead });
      await store.noteFailure("old", "2026-12-08T22:59:59Z");
      await store.noteFailure("young", "2026-12-08T22:00:00-01:00");
      await store.putCredential(PIN);
      expect(await store.purge({ now, failuresBefore: "2026-12-08T23:00:00Z" })).toBe(3);
      expect(await store.session("over")).toBeUndefined();
      expect(await store.session("ahead")).toBeDefined();
      expect(await store.takeInvite("over", "2026-01-01T00:00:00Z")).toBeUndefined();
      expect(await store.takeInvite("ahead", now)).toBeDefined();
      expect([await store.failures("old"), await store.failures("young")]).toMatchObject([{ count: 0 }, { count: 1 }]);
      expect(await store.credential(PIN.id)).toEqual(PIN);
      expect(await store.purge({ now, failuresBefore: "2026-12-08T23:00:00Z" })).toBe(0);
    });

    test("purges thousands, while sessions are renewed and tries counted", async () => {
      const many = Array.from({ length: 1100 }, (_, at) => `t${at}`);
      for (const token of many) await store.putSession(sessionOf(token, "ane", "tablet"));
      const later = { ...sessionOf("t700", "ane", "tablet"), expires: "2028-01-01T00:00:00Z" };
      const limits = { now: "2027-03-01T00:00:00Z", failuresBefore: "2027-03-01T00:00:00Z" };
      await Promise.all([store.purge(limits), store.putSession(later)]);
      expect(await store.session("t700")).toEqual(later);
      await store.purge(limits);
      const left = await Promise.all(many.map((token) => store.session(token)));
      expect(left.filter((session) => session !== undefined)).toEqual([later]);
    });
  });
}

function sessionOf(tokenHash: string, person: string, device: string): Session {
  return { tokenHash, person, device, created: "2027-01-01T00:00:00Z", expires: "2027-02-01T00:00:00Z" };
}
