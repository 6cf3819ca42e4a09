import { InputError, parsedJson, printGiven } from "#base";
import type { ChainHead } from "#log";
import {
  exportWhole,
  PULL_LIMIT,
  pullPage,
  pullPageRequest,
  pullQuery,
  pullReply,
  type Cursor,
  type HeldHeads,
  type PullPage,
  type PullPageRequest,
  type PullReply,
} from "#station";
import { Readable } from "node:stream";
import { z } from "zod";
import { placesApart } from "../branch/compare-heads.ts";
import { advance } from "../http/cursor.ts";
import type { Parts } from "../parts.ts";
import type { Routes } from "../routes.ts";

const cursorShape = z.record(z.string().max(64), z.number().int().nonnegative());

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
  app.post(
    "/api/log/pull",
    { config: { permission: "read-log" }, schema: { body: pullPageRequest, response: { 200: pullPage } } },
    async (request) => pullPageAfter(parts, request.body),
  );
  app.get("/api/export.ndjson", { config: { permission: "export-log" } }, async (_request, reply) => {
    void reply.header("content-disposition", 'attachment; filename="drykeel-log.ndjson"');
    return reply.type("application/x-ndjson").send(Readable.from(exportWhole(parts.store)));
  });
}

/** What follows on what a device holds; nothing where that is not in this log. */
async function pullPageAfter(parts: Parts, request: PullPageRequest): Promise<PullPage> {
  const { store, epochs, patternDesk } = parts;
  const { held, unvouched = [], limit = PULL_LIMIT } = request;
  const { epoch, vouchers } = await epochs.now();
  const apart = [...(await placesApart(store, held))];
  if (apart.length > 0) return { entries: [], more: false, epoch, heads: [], apart };
  await patternDesk.catchUp();
  const places = (await store.heads()).map(({ place }) => place);
  const found = await store.since(places, cursorOf(held), limit + 1);
  const entries = found.slice(0, limit);
  const ends = new Map<string, ChainHead>(unvouched.flatMap((place) => (held[place] ? [[place, held[place]]] : [])));
  for (const { entry, seq, hash } of entries) ends.set(entry.place, { seq, hash });
  const heads = [...ends].map(([place, head]) => ({ place, ...head, voucher: vouchers.forHead(place, head) }));
  return { entries, more: found.length > limit, epoch, heads, apart, patterns: patternDesk.mark };
}

function cursorOf(held: HeldHeads): Cursor {
  return Object.fromEntries(Object.entries(held).map(([place, { seq }]) => [place, seq]));
}

async function pull(parts: Parts, cursor: Cursor, limit: number): Promise<PullReply> {
  const places = (await parts.store.heads()).map(({ place }) => place);
  const found = await parts.store.since(places, cursor, limit + 1);
  const entries = found.slice(0, limit);
  return { entries, cursor: advance(cursor, entries), more: found.length > limit };
}

function readCursor(text: string | undefined): Cursor {
  if (text === undefined) return {};
  const read = cursorShape.safeParse(parsedJson(text));
  if (read.success) return read.data;
  const allowed = 'JSON of the last seq by place, such as {"north": 12}';
  const remedy = "Give back the cursor of the reply before, or leave it out to begin again.";
  throw new InputError([{ code: "SV-150", field: "cursor", got: printGiven(text), allowed, remedy }]);
}
