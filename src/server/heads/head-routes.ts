import { InputError, parsedJson, printGiven } from "#base";
import { headsQuery, headsReply, type Cursor } from "#station";
import { z } from "zod";
import type { Routes } from "../routes.ts";
import type { HeadDesk } from "./head-desk.ts";

const seenShape = z.record(z.string().max(64), z.number().int().nonnegative());

/** Signed heads of the log, each with the proof that it goes on from the one the asker keeps. None where nothing signs. */
export function addHeadRoutes(app: Routes, desk: HeadDesk | undefined): void {
  app.get(
    "/api/log/heads",
    { config: { permission: "read-log" }, schema: { querystring: headsQuery, response: { 200: headsReply } } },
    async (request) => {
      if (desk === undefined) return { keys: [], heads: [] };
      const shown = await desk.show(readSeen(request.query.seen));
      const heads = shown.map(({ head, proof }) => ({ head: { ...head }, proof: [...proof] }));
      return { keys: desk.keys().map((key) => ({ ...key })), heads };
    },
  );
}

function readSeen(text: string | undefined): Cursor {
  if (text === undefined) return {};
  const read = seenShape.safeParse(parsedJson(text));
  if (read.success) return read.data;
  const allowed = 'JSON of the number kept of each place, such as {"north": 12}';
  const remedy = "Give the numbers of the heads you keep, or leave it out.";
  throw new InputError([{ code: "SV-198", field: "seen", got: printGiven(text), allowed, remedy }]);
}
