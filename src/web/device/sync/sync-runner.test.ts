import "fake-indexeddb/auto";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { hashBytes } from "#log";
import { openBrowserStore, type BrowserStore } from "#store/browser";
import { ServerDoor } from "./server-door.ts";
import type { Reach } from "./reach.ts";
import { SyncRunner } from "./sync-runner.ts";

/** A network to a station that answers everything with nothing new, until it is cut. */
class Network {
  isCut = false;
  mark = "first";
  readonly asked: string[] = [];
  /** Photos that the station holds. */
  readonly photos = new Set<string>();

  readonly fetch: typeof fetch = async (address, init) => {
    const path = String(address).split("?")[0]!;
    this.asked.push(path);
    if (this.isCut) throw new TypeError("no network");
    if (init?.method === "PUT") this.photos.add(path.slice("/api/photos/".length));
    if (path === "/api/photos/missing") {
      const { hashes } = JSON.parse(String(init?.body)) as { hashes: string[] };
      return Response.json({ missing: hashes.filter((hash) => !this.photos.has(hash)) });
    }
    const answers: Record<string, unknown> = {
      "/api/patterns": { patterns: [], mark: this.mark },
      "/api/log/pull": { entries: [], more: false, epoch: "first", heads: [], apart: [], patterns: this.mark },
    };
    return Response.json(answers[path] ?? {});
  };
}

describe("sending and fetching", () => {
  let store: BrowserStore;
  let network: Network;
  let now: string;
  let runner: SyncRunner;
  let reached: ((reach: Reach) => void)[];
  let running: Promise<void>;

  beforeEach(async () => {
    store = await openBrowserStore(`sync-${Math.floor(performance.now() * 1000)}`);
    network = new Network();
    now = "2027-03-14T10:00:00.000Z";
    reached = [];
    runner = new SyncRunner({
      door: new ServerDoor(network.fetch),
      store,
      who: { person: "ana", device: "tablet" },
      onChange: async () => undefined,
      onPatterns: async () => undefined,
      clockAhead: () => undefined,
      onReach: (reach) => reached.shift()?.(reach),
      now: () => now,
      onPutBack: async () => undefined,
      onFlaw: () => undefined,
    });
  });

  afterEach(async () => {
    runner.stop();
    await running;
    await store.close();
  });

  const nextReach = () => new Promise<Reach>((resolve) => reached.push(resolve));

  /** Lets the runner look once more and tells what it asked. */
  async function look(): Promise<{ readonly reach: Reach["kind"]; readonly asked: readonly string[] }> {
    network.asked.length = 0;
    const heard = nextReach();
    runner.wake();
    const { kind } = await heard;
    return { reach: kind, asked: [...network.asked] };
  }

  test("SYNC-15 a photo that a restored copy lacks is sent again while the app stays open", async () => {
    const bytes = Uint8Array.of(0xff, 0xd8, 0xff);
    const hash = hashBytes(bytes);
    await store.putPhoto({ hash, mime: "image/jpeg", bytes }, now);
    const first = nextReach();
    running = runner.run();
    await first;
    expect([...network.photos]).toEqual([hash]);

    network.photos.clear();
    expect((await look()).asked).not.toContain("/api/photos/missing");
    now = "2027-03-14T10:15:00.000Z";
    await look();
    expect([...network.photos]).toEqual([hash]);

    network.photos.clear();
    network.isCut = true;
    await look();
    network.isCut = false;
    await look();
    expect([...network.photos]).toEqual([hash]);
    expect(await store.unsentPhotos()).toEqual([]);
  });

  test("SYNC-11 asks something small first after a failure, and everything once that is answered", async () => {
    const first = nextReach();
    running = runner.run();
    expect((await first).kind).toBe("online");

    network.isCut = true;
    expect(await look()).toEqual({ reach: "offline", asked: ["/api/log/pull"] });
    expect(await look()).toEqual({ reach: "offline", asked: ["/api/health"] });

    network.isCut = false;
    expect(await look()).toEqual({ reach: "online", asked: ["/api/health", "/api/log/pull"] });
    expect(await look()).toEqual({ reach: "online", asked: ["/api/log/pull"] });
  });

  test("SYNC-14 fetches the patterns again once the station has others", async () => {
    const first = nextReach();
    running = runner.run();
    await first;
    network.mark = "second";
    expect((await look()).asked).toEqual(["/api/log/pull", "/api/patterns"]);
    expect((await look()).asked).toEqual(["/api/log/pull"]);
  });
});
