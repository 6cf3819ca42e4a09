import type { Entry } from "#log";
import type { Pattern } from "#kit";
import type { PushReply, SignedIn } from "#station";
import { readPatternFolders } from "#store/patterns";
import { uuidv7 } from "uuidv7";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { PIN, stageStation, type Browser, type StagedStation } from "./start/staged-station.ts";

const { patterns } = readPatternFolders(["patterns"]);
const [pattern, other] = patterns as [Pattern, Pattern];
const mode = pattern.modes.find(({ effect }) => effect === "grounds")!;
const limiting = pattern.modes.find(({ effect }) => effect === "limits")!;
const nameOf = ({ id, version }: Pattern) => `${id}@${version}`;

describe("what a finding does to its kit, as pushed", () => {
  let station: StagedStation;
  let keeper: Browser & { readonly me: SignedIn };
  let place: string;
  beforeAll(async () => {
    station = await stageStation();
    keeper = await station.signedIn("keeper");
    const heads = await station.store.since(["station"], {}, 100);
    place = heads.find(({ entry }) => entry.kind === "place-set")!.entry.subject.replace("place:", "");
    expect(await push(enrolled("k1"))).toEqual(["accepted"]);
  });
  afterAll(() => station.app.close());

  const push = async (...entries: Entry[]) => {
    const reply = await keeper.send("POST", "/api/log/push", { entries });
    return reply
      .json<PushReply>()
      .verdicts.map((one) => (one.verdict === "refused" ? one.faults.map(({ code }) => code).join() : one.verdict));
  };
  const about = (kit: string, more: Partial<Entry>) =>
    station.line(keeper.me, { subject: `kit:${kit}`, place, pattern: nameOf(pattern), ...more });
  const enrolled = (kit: string) => about(kit, { kind: "kit-enrolled", body: { name: kit, serial: "S-1", items: [] } });
  const found = (kit: string, body: object, more: Partial<Entry> = {}) =>
    about(kit, {
      kind: "finding-raised",
      body: { finding: uuidv7(), item: mode.item, mode: mode.id, effect: "grounds", photos: [], ...body },
      ...more,
    });

  const taken = (effect: string) =>
    about("k1", {
      kind: "item-robbed",
      body: { item: mode.item, quantity: 1, to: "k2", finding: uuidv7(), mode: "other", effect, note: "Taken." },
    });

  it("is what the pattern says, or worse", async () => {
    const worse = { item: limiting.item, mode: limiting.id, effect: "grounds" };
    expect(await push(found("k1", {}), found("k1", worse))).toEqual(["accepted", "accepted"]);
  });

  it("is never milder, whatever the line says", async () => {
    const milder = found("k1", { effect: "limits", limit: "Half speed." });
    expect(await push(milder, found("k1", { effect: "notes" }))).toEqual(["SN-138", "SN-138"]);
  });

  it("is never milder for an item taken out than the worst that the item can do by failing", async () => {
    expect(await push(taken("notes"), taken("grounds"))).toEqual(["SN-138", "accepted"]);
  });

  it("is judged by the kit's own pattern, whichever the line names, or none", async () => {
    const { pattern: _named, ...unnamed } = found("k1", { effect: "notes" });
    const elsewhere = [nameOf(other), "unheard-of@1"].map((pattern) => found("k1", { effect: "notes" }, { pattern }));
    expect(await push(unnamed, ...elsewhere)).toEqual(["SN-138", "SN-138", "SN-138"]);
  });

  it("is judged for a kit enrolled in the same push", async () => {
    expect(await push(enrolled("k2"), found("k2", { effect: "notes" }))).toEqual(["accepted", "SN-138"]);
  });

  it("is a person's to say where this server's file of the kit's pattern is missing, and only then", async () => {
    const without = await stageStation({ store: station.store, patterns: [other] });
    const again = keeper.at(without);
    const who = { name: keeper.me.person.name, pin: PIN, device: keeper.me.device, deviceName: "Phone" };
    expect((await again.send("POST", "/api/sign-in", who)).statusCode).toBe(200);
    const entries = [found("k1", { effect: "notes" })];
    const reply = await again.send("POST", "/api/log/push", { entries });
    expect(reply.json<PushReply>().verdicts).toMatchObject([{ verdict: "accepted" }]);
    expect(await push(found("k1", { effect: "notes" }))).toEqual(["SN-138"]);
    await without.app.close();
  });

  it("is a person's to say for what no pattern knows", async () => {
    const own = { mode: "other", note: "Smells odd.", effect: "notes" };
    const unknownKit = found("k9", { effect: "notes" }, { pattern: "unheard-of@1" });
    expect(await push(found("k1", own), unknownKit)).toEqual(["accepted", "accepted"]);
  });
});
