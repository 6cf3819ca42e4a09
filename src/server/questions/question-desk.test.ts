import { loadSolver } from "#solver";
import { InputError } from "#base";
import { newestOf } from "#kit";
import { ask, exampleOf, questionNames, usesSolver } from "#questions";
import { readPatternFolders } from "#store/patterns";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createQuestionDesk, type DeskLimits, type QuestionDesk } from "./question-desk.ts";
import { stageStation, type Browser, type StagedStation } from "../start/staged-station.ts";

const { patterns } = readPatternFolders(["patterns"]);
/** More than a thread of 32 MB can even hold. */
const VAST = { temperature: Array.from({ length: 500_000 }, (_, at) => ({ at })) };
/** What is asked here is the answer, not the time: a machine that others load may take its own. */
const UNHURRIED_MS = 300_000;
const SLOW = { ...(exampleOf("flood") as object), duration: 2 * 86_400, step: 30 };

/** An example; where a solver works on it, with time enough that a busy machine finds what a calm one does. */
function unhurried(name: string): unknown {
  const example = exampleOf(name);
  return usesSolver(name) ? { ...(example as object), limitSeconds: 20 } : example;
}

describe("questions on a server", () => {
  let station: StagedStation;
  let keeper: Browser;
  beforeAll(async () => {
    station = await stageStation();
    keeper = await station.signedIn("keeper");
    await keeper.send("POST", "/api/ask/water", exampleOf("water") as object);
  });
  afterAll(() => station.app.close());

  it("hold nobody else up: pulls asked for after the slowest question are answered before it is", async () => {
    const answered: string[] = [];
    const note = (what: string) => (reply: { statusCode: number }) => answered.push(`${what} ${reply.statusCode}`);
    const slow = keeper.send("POST", "/api/ask/flood", SLOW).then(note("question"));
    for (let i = 0; i < 3; i++) await keeper.send("GET", "/api/log/pull").then(note("pull"));
    await slow;
    expect(answered).toEqual(["pull 200", "pull 200", "pull 200", "question 200"]);
  });

  it("are one at a time for each person: whoever asks many keeps nobody else from asking", async () => {
    const crew = await station.signedIn("crew");
    const many = Array.from({ length: 9 }, () => keeper.send("POST", "/api/ask/flood", SLOW));
    const other = await crew.send("POST", "/api/ask/water", exampleOf("water") as object);
    expect(other.statusCode).toBe(200);
    const replies = await Promise.all(many);
    expect(replies.map(({ statusCode }) => statusCode).toSorted()).toEqual([200, ...Array(8).fill(429)]);
    expect(replies.find(({ statusCode }) => statusCode === 429)?.json()).toMatchObject({ code: "SV-186", wait: 10 });
    expect((await keeper.send("POST", "/api/ask/water", exampleOf("water") as object)).statusCode).toBe(200);
  });

  it("say what was wrong with what was asked, as any door does", async () => {
    const reply = await keeper.send("POST", "/api/ask/water", { temperature: "80 °C", salinity: -1 });
    expect(reply.statusCode).toBe(400);
    expect(reply.json<{ faults: unknown[] }>().faults).toHaveLength(2);
    expect((await keeper.send("POST", "/api/ask/weather", {})).json()).toMatchObject({ code: "QU-100" });
  });

  it("refuse what is nested without end as they refuse any other nonsense", async () => {
    const nested = `{"temperature": ${"[".repeat(60_000)}${"]".repeat(60_000)}}`;
    const reply = await keeper.send("POST", "/api/ask/water", nested, { "content-type": "application/json" });
    expect(reply.statusCode).toBe(400);
  });
});

describe("a question desk", () => {
  const desks: QuestionDesk[] = [];
  const open = (limits: Partial<DeskLimits> = {}) => {
    const desk = createQuestionDesk(() => patterns, { limitMs: UNHURRIED_MS, ...limits });
    desks.push(desk);
    let askers = 0;
    return {
      ask: (name: string, given: unknown) => desk.ask(name, given, `asker-${(askers += 1)}`),
      close: () => desk.close(),
    };
  };
  afterAll(() => Promise.all(desks.map((desk) => desk.close())));

  it("answers every question as it is answered anywhere", async () => {
    const desk = open();
    const solver = await loadSolver();
    for (const name of questionNames()) {
      const example = unhurried(name);
      const here = ask(name, example, { patterns: (id) => newestOf(patterns, id), solver });
      expect(await desk.ask(name, example), name).toBe(JSON.stringify(here));
    }
  });

  it("stops one that takes too long, says what to do, and answers the next", async () => {
    const desk = open({ limitMs: 250 });
    await desk.ask("water", exampleOf("water"));
    await expect(desk.ask("flood", SLOW)).rejects.toMatchObject({
      kind: "too-much",
      problem: { code: "SV-182", message: expect.stringContaining("0.25 s"), remedy: expect.stringContaining("step") },
    });
    expect(await desk.ask("water", exampleOf("water"))).toContain("density");
  });

  it("gives one that asks a solver the time that it takes", async () => {
    const desk = open({ limitMs: 1, solverLimitMs: UNHURRIED_MS });
    expect(await desk.ask("plan-year", exampleOf("plan-year"))).toContain("openings");
    const hasty = open({ solverLimitMs: 1 });
    await expect(hasty.ask("plan-year", exampleOf("plan-year"))).rejects.toMatchObject({
      problem: { code: "SV-182", message: expect.stringContaining("0.001 s") },
    });
  });

  it("stops one that takes too much memory, says what to do, and answers the next", async () => {
    const desk = open({ memoryMb: 32 });
    await desk.ask("water", exampleOf("water"));
    await expect(desk.ask("water", VAST)).rejects.toMatchObject({
      kind: "too-much",
      problem: { code: "SV-185", message: expect.stringContaining("32 MB"), remedy: expect.stringContaining("step") },
    });
    expect(await desk.ask("water", exampleOf("water"))).toContain("density");
  });

  it("refuses what cannot be handed to a thread, and nothing else for that", async () => {
    const desk = open();
    const refused = { faults: [{ code: "SV-184" }] };
    await expect(desk.ask("water", () => undefined)).rejects.toMatchObject(refused);
    const broken = {
      get temperature(): never {
        throw new TypeError("broken");
      },
    };
    await expect(desk.ask("water", broken)).rejects.toThrow(new TypeError("broken"));
    expect(await desk.ask("water", exampleOf("water"))).toContain("density");
  });

  it("takes a line of so many, and no more until it is shorter", async () => {
    const desk = open({ line: 2 });
    const asked = [1, 2, 3].map(() => desk.ask("water", exampleOf("water")));
    await expect(asked[2]).rejects.toMatchObject({
      kind: "unavailable",
      problem: { code: "SV-181", wait: UNHURRIED_MS / 1000 },
    });
    expect(await Promise.all(asked.slice(0, 2))).toHaveLength(2);
    expect(await desk.ask("water", exampleOf("water"))).toContain("density");
  });

  it("goes on after faults in what was asked", async () => {
    const desk = open();
    await expect(desk.ask("water", {})).rejects.toBeInstanceOf(InputError);
    expect(await desk.ask("water", exampleOf("water"))).toContain("density");
  });

  it("answers nothing more once it is closed", async () => {
    const desk = open();
    const slow = desk.ask("flood", SLOW);
    const refused = expect(slow).rejects.toMatchObject({ problem: { code: "SV-183" } });
    await desk.close();
    await refused;
  });
});
