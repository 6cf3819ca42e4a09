/**
 * Kills the server, with kill -9 and under load, again and again; after each kill starts from what it
 * left and checks that no acknowledged line is lost, none is half there, none is there twice, and the chains are sound.
 *
 * `npm run torture -- [--kills 200] [--seed 20270314] [--store]`; `--store` kills a bare store instead of the server.
 * `--rounds 200` does something else hard each round: see torture/rounds.ts.
 * Exit 0 when everything held, 1 otherwise.
 */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { createChance } from "./torture-chance.ts";
import { Judge } from "./torture-judge.ts";
import { Load } from "./torture-load.ts";
import { serverTarget } from "./torture-server.ts";
import { sqliteTarget } from "./torture-sqlite.ts";
import { tortureRounds } from "./torture/rounds.ts";
import type { Target } from "./torture-target.ts";

/** Longest time under load before the kill [ms]. */
const LONGEST_RUN = 250;

const { values } = parseArgs({
  options: {
    kills: { type: "string", default: "200" },
    seed: { type: "string", default: "20270314" },
    rounds: { type: "string" },
    store: { type: "boolean", default: false },
  },
});
const folder = await mkdtemp(join(tmpdir(), "drykeel-torture-"));
try {
  if (values.rounds !== undefined) {
    process.exit((await tortureRounds(Number(values.rounds), Number(values.seed))) ? 0 : 1);
  }
  const target = await (values.store ? sqliteTarget(folder) : serverTarget(folder));
  process.exitCode = (await torture(target, Number(values.kills), Number(values.seed))) ? 0 : 1;
} finally {
  await rm(folder, { recursive: true, force: true });
}

async function torture(target: Target, kills: number, seed: number): Promise<boolean> {
  const chance = createChance(seed);
  const judge = new Judge(target.markOf);
  const load = new Load(target, judge, chance);
  const faults: string[] = [];
  const began = performance.now();
  console.log(`Killing ${target.name} ${kills} times under load, seed ${seed}.`);
  for (let kill = 1; kill <= kills && faults.length === 0; kill++) {
    await load.runUntilKilled(target.start(), { ms: chance() * LONGEST_RUN, whileStarting: chance() < 0.1 });
    faults.push(...(await target.inspect((left) => judge.judge(left))).map((fault) => `after kill ${kill}: ${fault}`));
    if (kill % 20 === 0) console.log(`${kill} kills: ${judge.kept} lines kept, ${judge.acknowledged} acknowledged.`);
  }
  faults.push(...(await lastLook(target, judge)));
  report(judge, load, faults, kills, performance.now() - began);
  return faults.length === 0;
}

/** Everything read once more from the beginning, and the file checked by the database itself. */
async function lastLook(target: Target, judge: Judge): Promise<readonly string[]> {
  judge.startOver();
  return target.inspect(async (left) => {
    const integrity = await left.integrity();
    return [...(await judge.judge(left)), ...(integrity === "ok" ? [] : [`the database says: ${integrity}`])];
  });
}

function report(judge: Judge, load: Load, faults: readonly string[], kills: number, ms: number): void {
  for (const fault of faults.slice(0, 20)) console.log(`LOST: ${fault}`);
  const { resent, unacknowledged } = load;
  console.log(
    `${kills} kills in ${(ms / 1000).toFixed(0)} s: ${judge.acknowledged} lines and ${judge.photos} photos acknowledged, ` +
      `${judge.kept} lines kept, ${unacknowledged} batches cut off before their acknowledgement and ${resent} sent again.`,
  );
  console.log(
    faults.length === 0
      ? "Held: no acknowledged line lost, no line or batch half kept, none kept twice, chains sound."
      : `FAILED: ${faults.length} faults.`,
  );
}
