import { readHead } from "#log";
import { keepHeadsReply, keepHeadsRequest } from "#station";
import type { KeptHeads } from "#store/keys";
import type { FastifyRequest } from "fastify";
import { z } from "zod";
import { unknownAddress } from "../http/problem.ts";
import type { Routes } from "../routes.ts";

const params = z.object({ name: z.string().max(64) });
const ADDRESS = "/api/witness/:name";
/** A station comes once a day or once a month: who tries tokens comes oftener. */
const config = { permission: "keep-heads", asksNobody: true, rateLimit: { max: 30, timeWindow: "1 minute" } } as const;

/**
 * Heads of other stations' logs, kept for whoever shows the token that was given for a name. Without it there is nothing
 * at the address, whatever the name.
 */
export function addKeptHeadRoutes(app: Routes, kept: KeptHeads | undefined): void {
  app.post(
    ADDRESS,
    { config, schema: { params, body: keepHeadsRequest, response: { 200: keepHeadsReply } } },
    async (request) => {
      const { store, name } = letIn(kept, request, request.params.name);
      return {
        kept: store.keep(
          name,
          request.body.heads.map((head) => readHead(head)),
        ),
      };
    },
  );
  app.get(ADDRESS, { config, schema: { params } }, async (request, reply) => {
    const { store, name } = letIn(kept, request, request.params.name);
    return reply.header("cache-control", "no-store").type("application/x-ndjson").send(store.text(name));
  });
}

function letIn(kept: KeptHeads | undefined, request: FastifyRequest, name: string) {
  const token = /^Bearer ([\w-]{1,100})$/.exec(request.headers.authorization ?? "")?.[1];
  if (kept === undefined || token === undefined || !kept.isLetIn(name, token)) throw unknownAddress(request);
  return { store: kept, name };
}
