import type { Entry } from "#log";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { PIN, stageStation, type StagedStation } from "../start/staged-station.ts";

type Hand = Awaited<ReturnType<StagedStation["signedIn"]>>;

let station: StagedStation;
let doer: Hand;
let second: Hand;
let named: Entry;

beforeEach(async () => {
  station = await stageStation();
  [doer, second] = [await station.signedIn("crew"), await station.signedIn("keeper")];
  const [place] = (await station.store.heads()).map((head) => head.place).filter((one) => one !== "station");
  const about = { subject: "kit:k1", place: place ?? "station", pattern: "brinnet-450@2" };
  const enrolled = station.line(second.me, {
    ...about,
    kind: "kit-enrolled",
    body: { name: "Pump 1", serial: "S-1", seal: "00417", items: [] },
  });
  const opened = station.line(doer.me, {
    ...about,
    kind: "turnaround-opened",
    body: { turnaround: "t1", because: "routine", sealSeen: "00417" },
  });
  const body = { turnaround: "t1", qualification: "sealing", second: second.me.person.id };
  named = station.line(doer.me, { ...about, kind: "second-named", body });
  await station.store.append([enrolled, opened, named], station.ambient.now());
});

afterEach(() => station.app.close());

const ask = (by: Hand, more: object = {}) =>
  by.send("POST", "/api/second", {
    kit: "k1",
    turnaround: "t1",
    named: named.id,
    name: second.me.person.name,
    pin: PIN,
    ...more,
  });

async function confirmedLines(): Promise<readonly Entry[]> {
  const pages = await Promise.all(
    (await station.store.heads()).map(({ place }) => station.store.since([place], {}, 200)),
  );
  return pages.flat().flatMap(({ entry }) => (entry.kind === "second-confirmed" ? [entry] : []));
}

describe("the second person's PIN, typed on the doer's device", () => {
  it("RULE-31 is proved by the station, which writes the line as theirs", async () => {
    expect((await ask(doer)).statusCode).toBe(200);
    expect(await confirmedLines()).toMatchObject([
      {
        by: second.me.person.id,
        device: doer.me.device,
        subject: "kit:k1",
        body: { turnaround: "t1", named: named.id, byPin: true },
      },
    ]);
    expect((await ask(doer)).json()).toMatchObject({ faults: [{ code: "SN-232" }] });
  });

  it("is refused where it is wrong, or another's, and nothing is written", async () => {
    expect((await ask(doer, { pin: "000000" })).statusCode).toBe(401);
    const other = await ask(doer, { name: doer.me.person.name });
    expect(other.json()).toMatchObject({ faults: [{ code: "SN-232" }] });
    expect((await ask(doer, { kit: "k9" })).json()).toMatchObject({ code: "SV-203" });
    expect(await confirmedLines()).toEqual([]);
  });

  it("slows whoever guesses", async () => {
    const codes = [];
    for (let time = 0; time < 8; time += 1) codes.push((await ask(doer, { pin: `11111${time}` })).statusCode);
    expect(codes).toContain(429);
    expect(await confirmedLines()).toEqual([]);
  });
});
