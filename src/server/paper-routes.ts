import { z } from "zod";
import { unknownAddress } from "./problem.ts";
import type { Routes } from "./routes.ts";

/** Makes the papers; absent until a paper room is wired in, and then these addresses answer. */
export interface Papers {
  /** PDF of one turnaround, or undefined where there is none. */
  turnaroundRecord(kit: string, turnaround: string): Promise<Uint8Array | undefined>;
  /** PDF of a pattern as a card to fill in; `pattern` is "id@version" or the id of the newest. */
  patternCard(pattern: string): Promise<Uint8Array | undefined>;
}

const id = z.string().max(96);

/** Papers as PDF. */
export function addPaperRoutes(app: Routes, papers: Papers): void {
  app.get(
    "/api/paper/turnaround/:kit/:turnaround.pdf",
    { config: { permission: "print-paper" }, schema: { params: z.object({ kit: id, turnaround: id }) } },
    async (request, reply) => {
      const pdf = await papers.turnaroundRecord(request.params.kit, request.params.turnaround);
      if (pdf === undefined) throw unknownAddress(request);
      return reply.type("application/pdf").send(Buffer.from(pdf));
    },
  );
  app.get(
    "/api/paper/card/:pattern.pdf",
    { config: { permission: "print-paper" }, schema: { params: z.object({ pattern: id }) } },
    async (request, reply) => {
      const pdf = await papers.patternCard(request.params.pattern);
      if (pdf === undefined) throw unknownAddress(request);
      return reply.type("application/pdf").send(Buffer.from(pdf));
    },
  );
}
