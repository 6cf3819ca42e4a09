import { ask, exampleOf, questionNamed, questionNames } from "#questions";
import type { Pattern } from "#kit";
import { questionsReply } from "#station";
import { z } from "zod";
import type { Parts } from "./parts.ts";
import type { Routes } from "./routes.ts";

/** Every computation by its name; this door adds nothing to it. */
export function addQuestionRoutes(app: Routes, parts: Parts): void {
  const patterns = (id: string) => newestOf(parts.patterns, id);
  app.get(
    "/api/questions",
    { config: { permission: "ask" }, schema: { response: { 200: questionsReply } } },
    async () => ({ questions: questionNames().map(describeQuestion) }),
  );
  app.post(
    "/api/ask/:name",
    { config: { permission: "ask" }, schema: { params: z.object({ name: z.string().max(64) }), body: z.unknown() } },
    async (request, reply) => {
      const answer = ask(request.params.name, request.body, { patterns });
      return reply.type("application/json").send(JSON.stringify(answer));
    },
  );
}

function describeQuestion(name: string): { name: string; summary: string; example: unknown } {
  return { name, summary: questionNamed(name)!.summary, example: exampleOf(name) };
}

/** The newest version of a pattern, which is what a question means by its id alone. */
function newestOf(patterns: readonly Pattern[], id: string): Pattern | undefined {
  return patterns.filter((one) => one.id === id).toSorted((a, b) => b.version - a.version)[0];
}
