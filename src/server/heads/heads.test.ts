import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { judgeHead, readHead, trustedKeys } from "#log";
import type { HeadsReply } from "#station";
import { openKeyFile, rotateKey } from "#store/keys";
import { openMemoryStore } from "#store/memory";
import type { HTTPMethods } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { EntryMaker } from "#test/contracts/sample-log.ts";
import { stageStation, type Browser, type StagedStation } from "../start/staged-station.ts";
import { signingFrom } from "./signing.ts";

const NOW = "2027-03-14T09:00:00.000Z";
const folder = mkdtempSync(join(tmpdir(), "drykeel-heads-"));
const keyFile = join(folder, "keys", "signing.json");
const store = openMemoryStore();
const make = new EntryMaker(1);

describe("heads of the log", () => {
  let station: StagedStation;
  let crew: Browser;

  beforeAll(async () => {
    const signing = signingFrom(keyFile, await openKeyFile(keyFile, NOW));
    station = await stageStation({ store, signer: { signing, shelf: store } });
    crew = await station.signedIn("crew");
  });
  afterAll(async () => {
    await station.app.close();
    rmSync(folder, { recursive: true });
  });

  async function ask(seen: object = {}): Promise<HeadsReply> {
    const reply = await crew.send("GET", `/api/log/heads?seen=${encodeURIComponent(JSON.stringify(seen))}`);
    expect(reply.statusCode).toBe(200);
    return reply.json<HeadsReply>();
  }

  it("are signed, and proved to go on from what the asker keeps, line after line", async () => {
    await store.append(make.many(5, { place: "harbour" }), NOW);
    let { heads, keys } = await ask();
    let kept = readHead(heads.find(({ head }) => head.place === "harbour")!.head);
    for (let round = 1; round <= 6; round += 1) {
      await store.append(make.many(round, { place: "harbour" }), NOW);
      ({ heads, keys } = await ask({ harbour: kept.number }));
      const { head, proof } = heads.find((one) => one.head.place === "harbour")!;
      expect(head.number).toBe(kept.number + round);
      expect(judgeHead(kept, head, proof, new Set(keys.map(({ key }) => key)))).toEqual({ kind: "goes-on" });
      kept = head;
    }
    expect(await store.signedHeads()).toContainEqual(kept);
  });

  it("are signed with a new key once there is one, which the old one vouches for", async () => {
    const before = await ask();
    await rotateKey(keyFile, NOW);
    const after = await ask();
    const trusted = trustedKeys([before.keys[0]!.key], after.keys);
    expect(after.heads[0]!.head.key).not.toBe(before.heads[0]!.head.key);
    expect(trusted.has(after.heads[0]!.head.key)).toBe(true);
  });

  it("are refused for a number of lines that is none", async () => {
    expect((await crew.send("GET", "/api/log/heads?seen=nonsense")).json()).toMatchObject({ code: "SV-198" });
  });

  it("no route gives the secret away, whoever asks and however it is asked for", async () => {
    const text = JSON.parse(readFileSync(keyFile, "utf8")) as { secret: string };
    const bytes = Buffer.from(text.secret, "hex");
    const secrets = [text.secret, bytes.toString("base64"), bytes.toString("base64url"), bytes.toString("latin1")];
    const names = ["none", "..%2f..%2fkeys%2fsigning.json", encodeURIComponent(keyFile)];
    const askers = [station.browser(), await station.signedIn("administrator")];
    let asked = 0;
    for (const asker of askers) {
      for (const { url, method } of station.app.listedRoutes) {
        if (url === "/api/log/live" || (method === "DELETE" && url === "/api/session")) continue;
        for (const name of names) {
          const filled = url.replace(/:\w+/g, name).replace("*", name);
          const query = filled.includes("?") ? "" : `?seen={}&cursor={}&file=${name}&path=${name}&key=${name}`;
          const reply = await asker.send(method as HTTPMethods, filled + query);
          const told = reply.rawPayload.toString("latin1") + JSON.stringify(reply.headers);
          expect(secrets.filter((secret) => told.includes(secret))).toEqual([]);
          asked += 1;
        }
      }
    }
    expect(asked).toBeGreaterThan(180);
  }, 180_000);
});
