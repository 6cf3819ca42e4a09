import type { Parts } from "../parts.ts";
import type { Routes } from "../routes.ts";
import { SnapshotDesk } from "./snapshot-desk.ts";
import { SnapshotKeeper } from "./snapshot-keeper.ts";

/** What the station's lines come to, for a device that has none of them yet. Read ahead once the server listens. */
export function addSnapshotRoute(app: Routes, parts: Parts): void {
  const { snapshots: shelf } = parts;
  const keeper = shelf && {
    keeper: new SnapshotKeeper({ secrets: parts.secrets, shelf, patterns: () => parts.patterns }),
  };
  const failed = unlessClosing(app);
  const desk = new SnapshotDesk({ ...parts, ...keeper, failed, patterns: () => parts.patterns });
  app.addHook("onListen", async () => {
    readAhead(parts, desk).catch(failed);
  });
  app.get("/api/log/snapshot", { config: { permission: "read-log" } }, async (request, reply) => {
    const { text, brotli } = await desk.written();
    void reply.type("application/json; charset=utf-8").header("vary", "accept-encoding");
    const isPacked = /\bbr\b/.test(request.headers["accept-encoding"] ?? "");
    return isPacked ? reply.header("content-encoding", "br").send(Buffer.from(brotli)) : reply.send(text);
  });
}

/** Writes down what went wrong; not that the log was still being read when the server was told to stop. */
function unlessClosing(app: Routes): (cause: unknown) => void {
  let isClosing = false;
  app.addHook("preClose", async () => void (isClosing = true));
  return (cause) => {
    if (!isClosing) app.log.error(cause);
  };
}

/** Also for the first finding after a start, which asks what its kit was built to. */
async function readAhead({ kitPatterns }: Parts, desk: SnapshotDesk): Promise<void> {
  await kitPatterns.catchUp();
  await desk.warm();
}
