import {
  draftsReply,
  issueReply,
  issueRequest,
  patternFileParams,
  patternFileReply,
  type IssueReply,
  type IssueRequest,
} from "#station";
import type { FastifyRequest } from "fastify";
import { callerOf } from "../http/gate.ts";
import { Refusal } from "../http/problem.ts";
import type { Parts } from "../parts.ts";
import type { Routes } from "../routes.ts";
import { besideOf, judgeIssue, otherVersion } from "./issue-pattern.ts";
import type { IssueParts } from "./pattern-desk.ts";

/** Half a million characters, each at most six bytes of JSON. */
const BYTES_LIMIT = 3 * 1024 * 1024 + 4096;
/** The lint of a long pattern takes some tenths of a second of the server's own time. */
const FEW = { rateLimit: { max: 30, timeWindow: "1 minute" } } as const;
const issues = { config: { permission: "issue-pattern", ...FEW }, bodyLimit: BYTES_LIMIT } as const;
const reads = { config: { permission: "read-log" } } as const;

/** Files of patterns: fetched, laid out as drafts, and issued as new versions. */
export function addPatternRoutes(app: Routes, parts: Parts): void {
  app.get(
    "/api/patterns/:pattern/file",
    { ...reads, schema: { params: patternFileParams, response: { 200: patternFileReply } } },
    async ({ params: { pattern } }) => {
      const written = parts.issuing?.files.read(pattern);
      if (written === undefined) throw noFile(pattern);
      return { pattern, text: written.text, beside: { ...written.beside } };
    },
  );
  app.post(
    "/api/patterns/issue",
    { ...issues, schema: { body: issueRequest, response: { 201: issueReply } } },
    async (request, reply) => reply.code(201).send(await issue(parts, request, request.body)),
  );
  addDraftRoutes(app, parts);
}

/** One draft a person: what is laid out can be walked on every device of the station. */
function addDraftRoutes(app: Routes, parts: Parts): void {
  app.put("/api/patterns/draft", { ...issues, schema: { body: issueRequest } }, async (request, reply) => {
    const issuing = issuingOf(parts);
    const { text, base } = request.body;
    const beside = base === undefined ? {} : besideOf(issuing, base);
    await issuing.shelf.layOut({ text, beside, by: callerOf(request).person.id, at: parts.ambient.now() });
    return reply.code(204).send();
  });
  app.delete("/api/patterns/draft", issues, async (request, reply) => {
    await issuingOf(parts).shelf.takeIn(callerOf(request).person.id);
    return reply.code(204).send();
  });
  app.get("/api/patterns/drafts", { ...reads, schema: { response: { 200: draftsReply } } }, async () => {
    const drafts = (await parts.issuing?.shelf.laidOut()) ?? [];
    return { drafts: drafts.map((one) => ({ ...one, beside: { ...one.beside } })) };
  });
}

async function issue(parts: Parts, request: FastifyRequest, wanted: IssueRequest): Promise<IssueReply> {
  const issuing = issuingOf(parts);
  const { patternDesk, ambient } = parts;
  await patternDesk.catchUp();
  const { pattern, text, beside } = judgeIssue(patternDesk, issuing, wanted);
  const { id, version } = pattern;
  const issued = { id, version, text, beside, by: callerOf(request).person.id, at: ambient.now() };
  if (!(await patternDesk.issue(issued))) throw otherVersion(id, version, version);
  return { pattern: `${id}@${version}`, by: issued.by, at: issued.at };
}

function issuingOf({ issuing }: Parts): IssueParts {
  if (issuing !== undefined) return issuing;
  throw new Refusal("unavailable", {
    code: "SV-465",
    message: "This server keeps no patterns of its own.",
    remedy: "The draft stays on this device. Download the file and give it to whoever looks after the server.",
  });
}

function noFile(pattern: string): Refusal {
  return new Refusal("not-found", {
    code: "SV-464",
    message: `There is no file named ${pattern}.yaml at this station.`,
    remedy: "Choose another version, or open the file from where it is kept.",
  });
}
