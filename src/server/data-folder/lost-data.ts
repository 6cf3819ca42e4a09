import type { FastifyInstance } from "fastify";
import type { DataLoss } from "./data-loss.ts";
import type { ServerOptions } from "../parts.ts";
import { Refusal } from "../http/problem.ts";

/**
 * Refuses every request while the data are not where they were. Looked at before each request, and again before an
 * answer leaves: a line kept in a file that nobody will open again must never be acknowledged.
 */
export function refuseWithoutData(app: FastifyInstance, { dataLoss }: Pick<ServerOptions, "dataLoss">): void {
  if (dataLoss === undefined) return;
  const requireData = () => {
    const loss = dataLoss();
    if (loss !== undefined) throw dataLost(loss);
  };
  app.addHook("onRequest", async () => requireData());
  app.addHook("preSerialization", async (_request, reply, payload) => {
    if (reply.statusCode < 400) requireData();
    return payload;
  });
}

function dataLost({ what }: DataLoss): Refusal {
  return new Refusal("unavailable", {
    code: "SV-180",
    message: `The station does not find its data where they were: ${what}.`,
    remedy: "What was written stays on this device and is sent later. The server's terminal says what to do.",
  });
}
