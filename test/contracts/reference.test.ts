import { loadSolver } from "#solver";
import { ask, exampleOf, questionNamed, questionNames } from "#questions";
import { readPatternFolders } from "#store/patterns";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { renderQuestions } from "../../scripts/question-pages.ts";
import { stageStation, type StagedStation } from "../../src/server/start/staged-station.ts";

const ROOT = join(import.meta.dirname, "..", "..");
const read = (path: string) => readFileSync(join(ROOT, path), "utf8");
const { patterns } = readPatternFolders([join(ROOT, "patterns")]);

function newest(id: string) {
  return patterns.filter((one) => one.id === id).toSorted((a, b) => b.version - a.version)[0];
}

interface Described {
  readonly info: { readonly version: string };
  readonly paths: Readonly<Record<string, Readonly<Record<string, { readonly operationId: string }>>>>;
}

describe("the description of the API", () => {
  let station: StagedStation;
  let served: Described;
  beforeAll(async () => {
    station = await stageStation();
    served = (await station.browser().send("GET", "/api/openapi.json")).json<Described>();
  });
  afterAll(() => station.app.close());

  it("is kept as it is served: npx tsx scripts/openapi.ts", () => {
    expect(JSON.parse(read("docs/openapi.json"))).toEqual(served);
  });

  it("has every route of the API, each under a name of its own", () => {
    const routes = station.app.listedRoutes.filter(({ url, method }) => url.startsWith("/api/") && method !== "HEAD");
    const names = Object.values(served.paths).flatMap((path) => Object.values(path).map((one) => one.operationId));
    expect(names).toHaveLength(routes.length);
    expect(new Set(names).size).toBe(names.length);
  });

  it("is of the version of the package", () => {
    expect(served.info.version).toBe((JSON.parse(read("package.json")) as { version: string }).version);
  });
});

describe("the page of questions", () => {
  it("is what the schemas say: npx tsx scripts/question-pages.ts", () => {
    expect(read("docs/questions.md")).toBe(renderQuestions());
  });

  it.each(questionNames())("ASK-7 %s answers its example as its schema says", async (name) => {
    const solver = await loadSolver();
    const answer = ask(name, exampleOf(name), { patterns: newest, solver });
    expect(questionNamed(name)!.output.safeParse(answer).error?.issues ?? []).toEqual([]);
  });
});
