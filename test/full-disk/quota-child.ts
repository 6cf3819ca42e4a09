import { openSqliteStore } from "#store/sqlite";
import type { PushReply } from "#station";
import { stageStation } from "../../src/server/start/staged-station.ts";

/* Run under a limit on the size of files: pushes until a push is refused, then prints what came of it. */

process.on("SIGXFSZ", () => undefined);
const store = await openSqliteStore(process.argv[2]!);
const station = await stageStation({ store });
const keeper = await station.signedIn("keeper");
const acknowledged: string[] = [];
for (let tries = 0; tries < 100; tries++) {
  const what = { step: "vent-wrapping", what: "unclear", note: "x".repeat(900) };
  const entries = Array.from({ length: 50 }, () => station.line(keeper.me, { body: what }));
  const reply = await keeper.send("POST", "/api/log/push", { entries });
  if (reply.statusCode === 200) {
    for (const one of reply.json<PushReply>().verdicts) acknowledged.push(one.id);
    continue;
  }
  const found = await Promise.all(acknowledged.map((id) => store.find(id)));
  const missing = found.filter((one) => one === undefined).length;
  process.stdout.write(JSON.stringify({ status: reply.statusCode, ...reply.json<{ code: string }>(), missing }));
  break;
}
process.exit(0);
