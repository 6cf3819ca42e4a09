import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setImmediate as nextTurn } from "node:timers/promises";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openSqliteStore } from "#store/sqlite";
import { stageStation, type Browser, type StagedStation } from "../start/staged-station.ts";
import { COSTLY } from "./test-pushes.ts";

/**
 * What one person sends at great cost holds nobody else up. Counted are the turns of the server's loop, in each of which
 * it can answer others: a machine that has much else to do takes longer for them, and no fewer. Time is proved in the bench.
 */

/** How many turns a push has to leave at the least, by what is in it; none needed where it is refused unread. */
const LEAST_TURNS: Readonly<Record<string, number>> = {
  "lines that name sixteen strangers each": (2000 * 16) / 50,
  "ten thousand lines at once": 10_000 / 100,
};
const UNREAD = "lines of lists within lists";

const folder = mkdtempSync(join(tmpdir(), "drykeel-costly-"));
let station: StagedStation;
let keeper: Browser & { readonly me: { readonly person: { readonly id: string } } };

beforeAll(async () => {
  station = await stageStation({ store: await openSqliteStore(join(folder, "log.db")) });
  keeper = await station.signedIn("keeper");
});
afterAll(async () => {
  await station.app.close();
  await station.store.close();
  rmSync(folder, { recursive: true });
});

function push(kind: string) {
  const payload = `{"entries":${COSTLY[kind]!(keeper.me.person.id)}}`;
  return keeper.send("POST", "/api/log/push", payload, { "content-type": "application/json" });
}

/** How often the loop came round before the work was done. */
async function turnsOf(work: Promise<unknown>): Promise<number> {
  const state = { isDone: false, turns: 0 };
  void work.finally(() => (state.isDone = true));
  while (!state.isDone) {
    await nextTurn();
    state.turns += 1;
  }
  return state.turns;
}

describe("what one person sends at great cost", () => {
  test.each(Object.entries(LEAST_TURNS))("%s: leaves others %i turns of the loop at the least", async (kind, least) => {
    const pushed = push(kind);
    expect(await turnsOf(pushed)).toBeGreaterThanOrEqual(least);
    expect((await pushed).statusCode).toBe(200);
  });

  test(`${UNREAD}: is refused without being read`, async () => {
    const reply = await push(UNREAD);
    expect([400, 413]).toContain(reply.statusCode);
  });
});
