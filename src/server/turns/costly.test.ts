import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { spawnServer, type SpawnedServer } from "../spawned-server.ts";
import { askHeads, COSTLY, pushFromBeside, setUpStation, type Keeper, type Pushes } from "./test-pushes.ts";

/** So many costly pushes of one person at once. Judged by the order of answers: time is proved in the bench. */
const AT_ONCE = 5;

let folder: string;
let server: SpawnedServer;
let keeper: Keeper;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "drykeel-costly-"));
  server = await spawnServer(folder);
  keeper = await setUpStation(server);
}, 120_000);
afterAll(async () => {
  await server.kill();
  await rm(folder, { recursive: true, force: true });
});

/** How many pushes were answered while somebody waited for each of their small questions, one asked after the other. */
async function answeredWhileWaiting(pushes: Pushes): Promise<readonly number[]> {
  const passed: number[] = [];
  while (pushes.answered.length < AT_ONCE) {
    const before = pushes.answered.length;
    expect(await askHeads(server, keeper)).toBe(200);
    passed.push(pushes.answered.length - before);
  }
  return passed;
}

describe("what one person sends at great cost, five times at once", () => {
  test.each(Object.entries(COSTLY))(
    "%s: nobody else waits for all five",
    async (_, make) => {
      const bodies = Array.from({ length: AT_ONCE }, () => `{"entries":${make(keeper.person)}}`);
      const pushes = pushFromBeside(server, keeper, bodies);
      const passed = await answeredWhileWaiting(pushes);
      for (const status of pushes.answered) expect([200, 400, 413, 429]).toContain(status);
      expect(Math.max(...passed), "pushes answered while one question waited").toBeLessThan(AT_ONCE);
      expect(passed.length, "questions answered meanwhile").toBeGreaterThan(2 * AT_ONCE);
    },
    300_000,
  );
});
