/**
 * The process that `torture.ts` kills: takes lines on stdin, appends them to a SQLite store, several at once, and
 * acknowledges on stdout only what the store says is kept.
 */
import { createInterface } from "node:readline";
import type { Entry } from "#log";
import { openSqliteStore, type SqliteStore } from "#store/sqlite";

export type Request =
  | { readonly number: number; readonly entries: readonly Entry[] }
  | {
      readonly number: number;
      readonly photo: { readonly hash: string; readonly mime: string; readonly base64: string };
    };

export type Reply = { readonly ready: true } | { readonly number: number; readonly fault?: string };

const path = process.argv[2];
if (path === undefined) throw new Error("usage: torture-child DATABASE");
const store = await openSqliteStore(path);
reply({ ready: true });
for await (const line of createInterface({ input: process.stdin })) void answer(JSON.parse(line) as Request);

async function answer(request: Request): Promise<void> {
  try {
    await keep(store, request);
    reply({ number: request.number });
  } catch (thrown) {
    reply({ number: request.number, fault: String(thrown) });
  }
}

async function keep(into: SqliteStore, request: Request): Promise<void> {
  if ("photo" in request) {
    const { hash, mime, base64 } = request.photo;
    return into.putPhoto({ hash, mime, bytes: Buffer.from(base64, "base64") });
  }
  const { clashing } = await into.append(request.entries, new Date().toISOString());
  if (clashing.length > 0) throw new Error(`kept with other content: ${clashing.join()}`);
}

/** Pipes are written at once on this side, so an acknowledgement is never lost in the process. */
function reply(message: Reply): void {
  process.stdout.write(`${JSON.stringify(message)}\n`);
}
