/**
 * How much longer a small question waits while another person sends five of the costliest pushes at once, beside the
 * same question of a server that has nothing else to do. Ends with 1 where any of them waits half a second longer.
 * Run with `npm run bench -- costly-requests`, on a machine with nothing else to do: it is judged by the clock.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { spawnServer, type SpawnedServer } from "../src/server/spawned-server.ts";
import { askHeads, COSTLY, pushFromBeside, setUpStation, type Keeper } from "../src/server/turns/test-pushes.ts";

const AT_ONCE = 5;
/** So much longer may a question wait [ms]. */
const LIMIT_MS = 500;
const IDLE_MS = 2000;

/** Asks one question after another while something goes on. @returns how long each waited, the longest first [ms] */
async function waitsWhile(server: SpawnedServer, keeper: Keeper, goesOn: () => boolean): Promise<readonly number[]> {
  const waits: number[] = [];
  while (goesOn()) {
    const from = performance.now();
    const status = await askHeads(server, keeper);
    if (status !== 200) throw new Error(`A question was answered ${status}.`);
    waits.push(performance.now() - from);
  }
  return waits.sort((one, other) => other - one);
}

const said = (waits: readonly number[]): string =>
  `${String(waits.length).padStart(5)} answers, middle ${waits[waits.length >> 1]!.toFixed(0)} ms, longest ${waits[0]!.toFixed(0)} ms`;

const folder = mkdtempSync(join(tmpdir(), "drykeel-costly-"));
const server = await spawnServer(folder);
let worst = 0;
try {
  const keeper = await setUpStation(server);
  for (const [name, make] of Object.entries(COSTLY)) {
    const until = performance.now() + IDLE_MS;
    const idle = await waitsWhile(server, keeper, () => performance.now() < until);
    const bodies = Array.from({ length: AT_ONCE }, () => `{"entries":${make(keeper.person)}}`);
    const pushes = pushFromBeside(server, keeper, bodies);
    const beside = await waitsWhile(server, keeper, () => pushes.answered.length < AT_ONCE);
    worst = Math.max(worst, beside[0]! - idle[0]!);
    console.log(`${name}: ${said(beside)}; with nothing else ${said(idle)}`);
  }
} finally {
  await server.kill();
  rmSync(folder, { recursive: true, force: true });
}
const isMet = worst < LIMIT_MS;
console.log(`\nwanted: nobody waits ${LIMIT_MS} ms longer: ${isMet ? "met" : `NOT met, ${worst.toFixed(0)} ms`}`);
process.exit(isMet ? 0 : 1);
