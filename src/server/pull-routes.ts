import { InputError, printGiven } from "#base";
import { exportHeader, exportLine } from "#log";
import { pullQuery, pullReply, type Cursor, type PullReply } from "#station";
import { Readable } from "node:stream";
import { z } from "zod";
import { advance } from "./cursor.ts";
import type { Parts } from "./parts.ts";
import type { Routes } from "./routes.ts";

const cursorShape = z.record(z.string().max(64), z.number().int().nonnegative());
/** Entries read from the store at once for an export. */
const EXPORT_PAGE = 1000;

/** The log, page by page after a cursor, and whole as NDJSON. Every place is read by everyone: a station is one. */
export function addPullRoutes(app: Routes, parts: Parts): void {
  app.get(
    "/api/log/pull",
    { config: { permission: "read-log" }, schema: { querystring: pullQuery, response: { 200: pullReply } } },
    async (request) => {
      const { entries, ...rest } = await pull(parts, readCursor(request.query.cursor), request.query.limit);
      return { entries: [...entries], ...rest };
    },
  );
  app.get("/api/export.ndjson", { config: { permission: "export-log" } }, async (_request, reply) => {
    void reply.header("content-disposition", 'attachment; filename="drykeel-log.ndjson"');
    return reply.type("application/x-ndjson").send(Readable.from(exportLog(parts)));
  });
}

async function pull(parts: Parts, cursor: Cursor, limit: number): Promise<PullReply> {
  const places = (await parts.store.heads()).map(({ place }) => place);
  const found = await parts.store.since(places, cursor, limit + 1);
  const entries = found.slice(0, limit);
  return { entries, cursor: advance(cursor, entries), more: found.length > limit };
}

function readCursor(text: string | undefined): Cursor {
  if (text === undefined) return {};
  const read = cursorShape.safeParse(parseJson(text));
  if (read.success) return read.data;
  const allowed = 'JSON of the last seq by place, such as {"north": 12}';
  const remedy = "Give back the cursor of the reply before, or leave it out to begin again.";
  throw new InputError([{ code: "SV-150", field: "cursor", got: printGiven(text), allowed, remedy }]);
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/**
 * The log as it stands now, as lines of JSON with what each place ended at in front. Read in pages, so that a long log
 * needs little memory; what arrives meanwhile is for the next export.
 */
async function* exportLog(parts: Parts): AsyncGenerator<string> {
  const heads = await parts.store.heads();
  const ends = new Map(heads.map(({ place, seq }) => [place, seq]));
  yield `${exportHeader(heads)}\n`;
  let cursor: Cursor = {};
  for (;;) {
    const page = await parts.store.since([...ends.keys()], cursor, EXPORT_PAGE);
    if (page.length === 0) return;
    const wanted = page.filter(({ entry, seq }) => seq <= ends.get(entry.place)!);
    yield wanted.map((kept) => `${exportLine({ kind: "kept", kept })}\n`).join("");
    cursor = advance(cursor, page);
  }
}
