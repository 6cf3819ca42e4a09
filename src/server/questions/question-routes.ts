import { exampleOf, questionNamed, questionNames } from "#questions";
import { questionsReply } from "#station";
import { z } from "zod";
import { callerOf } from "../http/gate.ts";
import type { Parts } from "../parts.ts";
import { createQuestionDesk } from "./question-desk.ts";
import type { Routes } from "../routes.ts";

/** Every computation by its name; this door adds nothing to it. */
export function addQuestionRoutes(app: Routes, parts: Parts): void {
  const desk = createQuestionDesk(() => parts.patterns);
  app.addHook("preClose", () => desk.close());
  app.get(
    "/api/questions",
    { config: { permission: "ask" }, schema: { response: { 200: questionsReply } } },
    async () => ({ questions: questionNames().map(describeQuestion) }),
  );
  app.post(
    "/api/ask/:name",
    { config: { permission: "ask" }, schema: { params: z.object({ name: z.string().max(64) }), body: z.unknown() } },
    async (request, reply) => {
      const answer = await desk.ask(request.params.name, request.body, callerOf(request).person.id);
      return reply.type("application/json").send(answer);
    },
  );
}

function describeQuestion(name: string): { name: string; summary: string; example: unknown } {
  return { name, summary: questionNamed(name)!.summary, example: exampleOf(name) };
}
