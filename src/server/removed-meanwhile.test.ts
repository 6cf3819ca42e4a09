import type { Entry } from "#log";
import type { Problem, PushReply, SignedIn } from "#station";
import { once } from "node:events";
import { Readable } from "node:stream";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { stageStation, type Browser, type StagedStation } from "./start/staged-station.ts";

type Member = Browser & { readonly me: SignedIn };
const JSON_TYPE = { "content-type": "application/json" };

describe("a push whose writer loses their right to it while it is on its way", () => {
  let station: StagedStation;
  let ann: Member;
  let bea: Member;
  let cy: Member;
  beforeEach(async () => {
    station = await stageStation();
    ann = await station.signedIn("administrator");
    bea = await station.signedIn("administrator", "office-2");
    cy = await station.signedIn("crew");
  });
  afterEach(() => station.app.close());

  const leave = (by: Member, who: Member) =>
    station.line(by.me, { subject: `person:${who.me.person.id}`, kind: "person-left", body: {} });
  const push = (who: Member, ...entries: readonly Entry[]) => who.send("POST", "/api/log/push", { entries });

  /** Bea's push is let in at the gate; what it says arrives only once something else was done. */
  const pushMeanwhile = async (entries: readonly Entry[], meanwhile: () => Promise<unknown>) => {
    const body = new Readable({
      read() {
        this.emit("wanted");
      },
    });
    const reply = bea.send("POST", "/api/log/push", body, JSON_TYPE);
    await once(body, "wanted");
    await meanwhile();
    body.push(JSON.stringify({ entries }));
    body.push(null);
    return reply;
  };
  it("is refused where Ann removes Bea while Bea removes Cy: Cy stays", async () => {
    const removal = leave(bea, cy);
    const reply = await pushMeanwhile([removal], () => push(ann, leave(ann, bea)));
    expect(reply.statusCode).toBe(403);
    expect(reply.json<Problem>().message).toContain("has left");
    expect(await station.store.find(removal.id)).toBeUndefined();
    expect((await push(cy, station.line(cy.me, {}))).statusCode).toBe(200);
  });

  it("is refused where the device it comes from is shut out", async () => {
    const shutOut = { subject: `device:${bea.device}`, kind: "device-shut-out", body: { reason: "Lost at sea." } };
    const line = station.line(bea.me, {});
    const reply = await pushMeanwhile([line], () => push(ann, station.line(ann.me, shutOut)));
    expect([reply.statusCode, await station.store.find(line.id)]).toEqual([403, undefined]);
  });

  it("is judged by the role that Bea has by then", async () => {
    const demoted = { subject: `person:${bea.me.person.id}`, kind: "person-changed", body: { role: "crew" } };
    const [removal, own] = [leave(bea, cy), station.line(bea.me, {})];
    const reply = await pushMeanwhile([removal, own], () => push(ann, station.line(ann.me, demoted)));
    expect(codesOf(reply)).toEqual(["SN-103"]);
    expect(await station.store.find(own.id)).toBeDefined();
  });
});

function codesOf(reply: { json<T>(): T }): readonly string[] {
  const { verdicts } = reply.json<PushReply>();
  return verdicts.flatMap((one) => (one.verdict === "refused" ? one.faults : [])).map(({ code }) => code);
}
