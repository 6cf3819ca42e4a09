import type { Pattern } from "#kit";
import { describe, expect, it } from "vitest";
import type { CasualtyState } from "../casualty/casualty-state.ts";
import type { KitState } from "../state.ts";
import { demandsOf, failureOf, hiddenOf } from "./index.ts";

const run = (at: string, more: object) => ({ turnaround: `t-${at}`, at: `${at}T10:00:00Z`, ...more });
const kitWith = (...runs: object[]) => ({ id: "k1", runs }) as unknown as KitState;
const sheet = (pump: object, seen: object[] = []) =>
  ({ pumps: [{ pump: "p1", kit: "k1", runs: [], ...pump }], pumpSeen: seen }) as unknown as CasualtyState;
const told = (kit: KitState, ...casualties: CasualtyState[]) =>
  demandsOf(kit, casualties, undefined).map(({ on, worked, failed }) => `${on} ${worked ? "worked" : failed}`);

const refused = (at: string) => ({ pump: "p1", sign: "wont-start", at });

const SEEN_START = {
  modes: [{ id: "dead", effect: "grounds" }],
  checks: [{ id: "runs", kind: "prove", finds: ["dead"] }],
  stages: [{ id: "prime", steps: [{ id: "start", checks: ["runs"] }] }],
} as unknown as Pattern;

const answered = (answer: string) =>
  ({
    id: "k1",
    findings: [],
    turnarounds: [
      {
        id: "t-2027-01-01",
        opened: { at: "2027-01-01T09:00:00Z" },
        answers: { "start/runs": { answer, check: "runs", mark: { at: "2027-01-01T10:02:00Z" } } },
      },
    ],
    runs: [run("2027-01-01", { pulls: 6, started: false })],
  }) as unknown as KitState;

const toldBy = (answer: string) => demandsOf(answered(answer), [], SEEN_START).map(({ worked }) => worked);

describe("times that a kit was asked to start", () => {
  it("are the first starts of turnarounds: started and primed, not started, started without water", () => {
    const kit = kitWith(
      run("2027-01-01", { pulls: 2, started: true, primed: true }),
      run("2027-02-01", { pulls: 6, started: false }),
      run("2027-03-01", { pulls: 1, started: true, primed: false }),
      run("2027-04-01", { pulls: 1, started: true }),
    );
    expect(told(kit)).toEqual(["turnaround worked", "turnaround start", "turnaround prime", "turnaround worked"]);
  });

  it("are what the line says where pulls were counted, no start was told, and it was answered as seen", () => {
    expect(toldBy("seen")).toEqual([true]);
    expect(toldBy("wrong")).toEqual([false]);
  });

  it("are not turnarounds in which nobody told of a start or of water", () => {
    expect(told(kitWith(run("2027-01-01", { primeSeconds: 30 })))).toEqual([]);
  });

  it("are casualties: one demand each, failed where anybody saw it refuse before it ran", () => {
    const ran = { runs: [{ from: "2027-05-01T10:00:00Z" }] };
    expect(told(kitWith(), sheet(ran))).toEqual(["casualty worked"]);
    expect(told(kitWith(), sheet({}, [refused("2027-05-01T09:55:00Z")]))).toEqual(["casualty start"]);
    expect(told(kitWith(), sheet(ran, [refused("2027-05-01T09:55:00Z")]))).toEqual(["casualty start"]);
    expect(told(kitWith(), sheet(ran, [refused("2027-05-01T11:00:00Z")]))).toEqual(["casualty worked"]);
    expect(told(kitWith(), sheet({}))).toEqual([]);
  });

  it("are counted once where the kit's own runs tell of the casualty too", () => {
    const ran = { runs: [{ from: "2027-05-01T10:00:00Z" }] };
    const kit = kitWith(run("2027-05-01", { casualty: { id: "c1", name: "boat" }, started: true }));
    expect(told(kit, sheet(ran))).toEqual(["casualty worked"]);
  });

  it("come oldest first, whatever they were", () => {
    const kit = kitWith(run("2027-06-01", { started: true }), run("2027-01-01", { started: false }));
    expect(told(kit, sheet({ runs: [{ from: "2027-05-01T10:00:00Z" }] }))).toEqual([
      "turnaround start",
      "casualty worked",
      "turnaround worked",
    ]);
  });
});

const step = (id: string, ...checks: string[]) => ({ id, checks });
const PLUGGED = {
  modes: [
    { id: "dead", effect: "grounds" },
    { id: "float", effect: "limits" },
  ],
  checks: [
    { id: "hum", kind: "look", finds: ["dead"] },
    { id: "holds", kind: "prove", finds: ["float"] },
    { id: "runs", kind: "prove", finds: ["dead"] },
  ],
  stages: [
    { id: "examine", steps: [step("look", "hum")] },
    { id: "run", steps: [step("hose", "holds"), step("switch", "runs")] },
  ],
  hydraulics: { proof: { grounds: 0.7, notes: 0.85 } },
  troubles: [{ sign: "will-not-start", causes: [{ id: "c", mode: "dead" }] }],
} as unknown as Pattern;
const opened = (day: string, answer: string | undefined, more: object = {}) => ({
  id: `t-${day}`,
  closed: { how: "sealed" },
  answers: answer ? { "switch/runs": { check: "runs", answer, mark: { at: `${day}T10:00:00Z` } } } : {},
  ...more,
});
const plugged = (turnarounds: object[], runs: object[] = [], findings: object[] = []) =>
  ({ id: "k1", runs, turnarounds, findings }) as unknown as KitState;
const demands = (kit: KitState, pattern: Pattern | undefined = PLUGGED) =>
  demandsOf(kit, [], pattern).map(({ at, worked, failed }) => `${at.slice(0, 10)} ${worked ? "worked" : failed}`);

describe("times that a kit without a cord was asked to start", () => {
  it("are the proof that it starts, by key or plug: seen right, or found wrong", () => {
    const kit = plugged([opened("2027-01-01", "seen"), opened("2027-02-01", "wrong")]);
    expect(demands(kit)).toEqual(["2027-01-01 worked", "2027-02-01 start"]);
  });

  it("are none where the proof was not possible or not made, in a drill, or in an opening set aside", () => {
    const kit = plugged([
      opened("2027-01-01", "not-possible"),
      opened("2027-02-01", undefined),
      opened("2027-03-01", "seen", { drill: "d" }),
      opened("2027-04-01", "seen", { closed: { how: "set-aside" } }),
    ]);
    expect(demands(kit)).toEqual([]);
  });

  it("failed where a finding was raised at the proof, though it was mended and seen right in the same opening", () => {
    const found = { turnaround: "t-2027-01-01", check: "runs", raised: { at: "2027-01-01T09:00:00Z" } };
    expect(demands(plugged([opened("2027-01-01", "seen")], [], [found]))).toEqual(["2027-01-01 start"]);
  });

  it("are runs under load too: water was measured, enough of it or too little", () => {
    const runs = [run("2027-01-01", { ratio: 0.9 }), run("2027-02-01", { ratio: 0.69 })];
    const [first, second] = runs.map(({ turnaround }) => ({ ...opened("", undefined), id: turnaround }));
    expect(demands(plugged([first!, second!], runs))).toEqual(["2027-01-01 worked", "2027-02-01 delivery"]);
  });

  it("are one for each opening, however it was told that it started", () => {
    const runs = [run("2027-01-01", { pulls: 2, started: true, primed: true, ratio: 0.5 })];
    expect(demands(plugged([opened("2027-01-01", "seen")], runs))).toEqual(["2027-01-01 delivery"]);
  });

  it("count the one that is open, and every mode that grounds where the pattern tells of no troubles", () => {
    const { troubles: _troubles, ...bare } = PLUGGED;
    const open = { ...plugged([]), turnaround: opened("2027-05-01", "seen", { closed: undefined }) } as KitState;
    expect(demands(open, bare)).toEqual(["2027-05-01 worked"]);
  });
});

const seen = (minute: number, sign: string) => ({ pump: "p1", sign, at: `2027-05-01T10:0${minute}:00Z` });

describe("a casualty on which it ran", () => {
  const ran = { runs: [{ from: "2027-05-01T10:00:00Z" }] };

  it("is a demand that failed where no water came before any did", () => {
    expect(told(kitWith(), sheet(ran, [seen(3, "no-water"), seen(8, "water")]))).toEqual(["casualty prime"]);
    expect(told(kitWith(), sheet(ran, [seen(3, "water"), seen(8, "no-water")]))).toEqual(["casualty worked"]);
  });

  it("is one that worked where its prime was timed before somebody saw no water", () => {
    const primed = { pump: "p1", primeSeconds: 40, at: "2027-05-01T10:01:00Z" };
    const one = { ...sheet(ran, [seen(3, "no-water")]), starts: [primed] } as unknown as CasualtyState;
    expect(told(kitWith(), one)).toEqual(["casualty worked"]);
  });
});

const sealedBefore = opened("2026-01-01", "seen", { closed: { how: "sealed", at: "2026-01-01T12:00:00Z" } });
const failedThen = opened("2027-01-01", "wrong", { opened: { at: "2027-01-01T09:00:00Z" } });
const TWO = {
  ...PLUGGED,
  modes: [...PLUGGED.modes, { id: "wet", effect: "grounds" }],
  troubles: [
    {
      sign: "will-not-start",
      causes: [
        { id: "c", mode: "dead" },
        { id: "w", mode: "wet" },
      ],
    },
  ],
} as unknown as Pattern;
const raisedAt = (time: string, more: object) => ({
  turnaround: "t-2027-01-01",
  raised: { at: `2027-01-01T${time}:00Z` },
  ...more,
});
const atStart = raisedAt("10:00", { mode: "dead", step: "switch", check: "runs" });
const countedOf = (...findings: object[]) => {
  const kit = plugged([sealedBefore, failedThen], [], findings);
  return { failed: demands(kit, TWO).filter((one) => !one.endsWith("worked")).length, ...hiddenOf(kit, TWO) };
};

describe("two findings raised from one start that failed", () => {
  it("are one start that failed, at whichever lines they were raised", () => {
    expect(countedOf(atStart)).toMatchObject({ failed: 1, found: 0 });
    expect(countedOf(atStart, raisedAt("10:05", { mode: "wet", step: "switch", check: "runs" }))).toMatchObject({
      failed: 1,
      found: 0,
    });
  });

  it("are no fault that a look found, where the second was raised after it at another line, or at none", () => {
    expect(countedOf(atStart, raisedAt("10:05", { mode: "wet", step: "look", check: "hum" }))).toMatchObject({
      failed: 1,
      found: 0,
    });
    expect(countedOf(atStart, raisedAt("10:05", { mode: "wet" }))).toMatchObject({ failed: 1, found: 0 });
  });

  it("are a fault that a look found and a start that failed, where the look came before it", () => {
    expect(countedOf(raisedAt("09:30", { mode: "wet", step: "look", check: "hum" }), atStart)).toMatchObject({
      failed: 1,
      found: 1,
    });
  });
});

const CALLED = sheet({}, [refused("2026-08-01T10:00:00Z")]);
const afterCall = (...findings: object[]) => plugged([sealedBefore, failedThen], [], findings);

describe("what is found after a start that failed on a casualty", () => {
  const found = raisedAt("09:30", { mode: "wet", step: "look", check: "hum" });

  it("counts with that start in the kit's next opening, and is no fault that a look found", () => {
    expect(hiddenOf(afterCall(found), TWO)).toMatchObject({ found: 1 });
    expect(hiddenOf(afterCall(found), TWO, [CALLED])).toMatchObject({ found: 0, looks: 1 });
  });

  it("is a fault that a look found where the kit worked on the casualty", () => {
    const ran = sheet({ runs: [{ from: "2026-08-01T10:00:00Z" }] });
    expect(hiddenOf(afterCall(found), TWO, [ran])).toMatchObject({ found: 1 });
  });

  it("is of that start outside an opening too, until the next one is closed, and no longer", () => {
    const aboard = { mode: "dead", raised: { at: "2026-08-01T11:00:00Z" } };
    const later = { mode: "dead", raised: { at: "2027-02-01T11:00:00Z" } };
    const kit = plugged(
      [sealedBefore, { ...failedThen, closed: { how: "sealed", at: "2027-01-01T12:00:00Z" } }],
      [],
      [aboard, found, later],
    );
    const of = failureOf(kit, [CALLED], TWO);
    expect(kit.findings.map((one) => of.get(one)?.on)).toEqual(["casualty", "casualty", undefined]);
  });
});

describe("what is found beside a start that failed", () => {
  it("is not of it where it would stop nothing, but for what was raised at the start itself", () => {
    const scratch = raisedAt("10:05", { mode: "float", step: "look", check: "hum" });
    const other = raisedAt("10:05", { mode: "other", step: "switch", check: "runs" });
    const kit = plugged([sealedBefore, failedThen], [], [atStart, scratch, other]);
    const of = failureOf(kit, [], TWO);
    expect(kit.findings.map((one) => of.get(one)?.failed)).toEqual(["start", undefined, "start"]);
  });
});
