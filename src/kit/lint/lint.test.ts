import { describe, expect, it } from "vitest";
import { LINT_RULES, type LintRule } from "./lint-fault.ts";
import { lintPattern, lintPatternText } from "./lint.ts";
import { loadPattern } from "../file/load-pattern.ts";
import type { Pattern } from "../pattern.ts";
import { PICTURE_RULES } from "../pictures/test-pictures.ts";
import { changedText, SOUND_TEXT } from "../test-sound-pattern.ts";

const FILE = "sound@3.yaml";
type Path = readonly (string | number)[];
type Change = readonly [Path, unknown];

// Places in the sound pattern that the cases change.
const LOOK: Path = ["stages", 0, "steps", 0];
const VENT: Path = ["stages", 0, "steps", 1];
const START: Path = ["stages", 4, "steps", 0];
const RUN: Path = ["stages", 4, "steps", 1];
const PRIME: Path = ["stages", 3, "steps", 0];
const DRAIN: Path = ["stages", 5, "steps", 0];
const STOW: Path = ["stages", 6, "steps", 0];
const CARD: Path = ["stranger", "steps", 0];
const AFTER: Path = ["afterUse", "met"];
const COUPLE: Path = ["stages", 2, "steps", 0];
const DAVIT = { id: "davit", name: "Davit", safeWorkingLoad: "200 kg" };
const HUNG: Change = [
  ["stages", 5, "steps", 0],
  { id: "drain", text: "Hang it up.", timer: { kind: "wait", atLeast: "9 days", unattended: true }, minutes: 1 },
];
const LIFTED: readonly Change[] = [
  [["container", "machines"], [DAVIT]],
  [[...COUPLE, "hazards"], ["lifts-by-machine"]],
  [
    [...COUPLE, "cautions"],
    ["load-overhead", "crushing-load"],
  ],
  [[...COUPLE, "lift"], { by: "davit" }],
  [[...COUPLE, "people"], 3],
];
const KINKED = {
  sign: "weak-delivery",
  name: "Too little",
  nextPump: 6,
  causes: [{ id: "kinked", says: "Hose kinked", weight: 1 }],
  tries: [{ id: "straighten", does: "Take out every kink.", minutes: 1, hazards: [] as string[], ends: { kinked: 1 } }],
};
const COLD = {
  ...KINKED,
  causes: [{ id: "kinked", says: "Choke open on a cold engine", weight: 1 }],
  tries: [{ ...KINKED.tries[0]!, does: "Engine cool: take it out.", hazards: ["pulls-cord"] }],
};
const LONG = "Turn the handle. ".repeat(12);

const CASES: readonly (readonly [LintRule, string, string, ...Change[]])[] = [
  ["loads", "does not load", "sound@3.yaml", [["name"], undefined]],
  ["file-name", "named for another", "id", [["id"], "another"]],
  ["mode-unfound", "no check finds it", "mode gasket-thin", [["items", 1, "checks", 0, "finds"], ["pump-dead"]]],
  [
    "wear-and-loss",
    "two things in one",
    "mode gasket-thin",
    [["items", 1, "modes", 0, "name"], "Gasket thin, hard or missing"],
  ],
  ["mode-unfound", "only a check nobody asks finds it", "mode pump-dead", [[...RUN, "checks"], []]],
  [
    "item-without-mode",
    "nothing can be wrong",
    "item spare",
    [["items", 7], { id: "spare", name: "Spare", place: "inside" }],
  ],
  ["item-not-restowed", "never put back", "item cells", [[...STOW, "stows"], ["pump"]]],
  ["item-not-restowed", "part of what is never put back", "item gasket", [[...STOW, "stows"], ["cells"]]],
  ["check-without-effect", "finds nothing", "check pump-turns", [["items", 0, "checks", 0, "finds"], []]],
  [
    "check-never-asked",
    "no step asks",
    "check cells-date",
    [["stages", 1, "steps", 0, "checks"], ["gasket-thickness"]],
  ],
  ["printed-date-never-read", "date check not asked", "item cells", [["stages", 1, "steps", 0, "checks"], []]],
  ["date-never-in-hand", "no step asks for it", "item gasket", [["stages", 1, "steps", 0, "checks"], ["cells-date"]]],
  ["unread-unsaid", "grounds, unread unsaid", "item gasket", [["items", 1, "lapse"], "grounds"]],
  ["limit-unstated", "limiting unread date", "item gasket", [["items", 1, "unread"], "limits"]],
  ["single-use-not-renewed", "used again", "item seal", [["stages", 7, "steps", 0, "renews"], []]],
  [
    "single-use-not-renewed",
    "renewed in the wrong stage",
    "item seal",
    [["stages", 7, "steps", 0, "renews"], []],
    [["stages", 0, "steps", 0, "renews"], ["seal"]],
  ],
  ["limit-unstated", "limiting mode", "mode pump-slow", [["items", 0, "modes", 1, "limit"], undefined]],
  ["limit-unstated", "limiting lapse", "item gasket", [["items", 1, "lapseLimit"], undefined]],
  ["remedy-unstated", "grounding mode", "mode pump-dead", [["items", 0, "modes", 0, "remedy"], undefined]],
  ["hazard-without-caution", "hazard declared", "step vent", [[...VENT, "cautions"], []]],
  ["hazard-without-caution", "pulls undeclared", "step start", [[...START, "hazards"], []]],
  ["hazard-without-caution", "pumping undeclared", "step prime", [[...PRIME, "hazards"], []]],
  ["stages-missing-or-out-of-order", "no drying", "stage dry", [["stages", 5], undefined]],
  ["stages-missing-or-out-of-order", "no priming with a suction hose", "stage prime", [["stages", 3], undefined]],
  [
    "stages-missing-or-out-of-order",
    "rig after run",
    "stage rig",
    [["stages", 2, "id"], "run"],
    [["stages", 4, "id"], "rig"],
  ],
  ["time-missing", "names a wait", "step vent", [[...VENT, "timer"], undefined]],
  ["time-missing", "timed without limits", "check pump-time", [["items", 0, "checks", 1, "atMost"], undefined]],
  ["time-too-short", "less than its timer", "step vent", [[...VENT, "minutes"], 1]],
  ["delivery-never-measured", "curve for nothing", "stage run", [[...RUN, "measuresDelivery"], false]],
  ["out-of-range", "limits crossed", "check gasket-thickness", [["items", 1, "checks", 0, "atLeast"], "3 cm"]],
  [
    "out-of-range",
    "no limit",
    "check gasket-thickness",
    [["items", 1, "checks", 0, "atLeast"], undefined],
    [["items", 1, "checks", 0, "atMost"], undefined],
  ],
  [
    "out-of-range",
    "what is left of no tank",
    "check gasket-thickness",
    [["items", 1, "checks", 0, "dimension"], "volume"],
    [["items", 1, "checks", 0, "unit"], "L"],
    [["items", 1, "checks", 0, "atLeast"], "1 L"],
    [["items", 1, "checks", 0, "atMost"], "4 L"],
    [["items", 1, "checks", 0, "trend"], "fuel-left"],
    [["engine"], undefined],
  ],
  ["out-of-range", "a limit below zero", "check gasket-thickness", [["items", 1, "checks", 0, "atLeast"], "-1 mm"]],
  [
    "out-of-range",
    "a limit of no such kit",
    "check gasket-thickness",
    [["items", 1, "checks", 0, "atMost"], "1000 km"],
  ],
  ["out-of-range", "timed for years", "check pump-time", [["items", 0, "checks", 1, "atMost"], "1000000000 s"]],
  ["out-of-range", "timed for nothing", "check pump-time", [["items", 0, "checks", 1, "atMost"], "0 s"]],
  ["out-of-range", "too heavy for one", "container.mass over container.lifters", [["container", "mass"], "60 kg"]],
  ["out-of-range", "a bore in metres", "hydraulics.suction.bore", [["hydraulics", "suction", "bore"], "2 m"]],
  [
    "out-of-range",
    "a lift no pump has",
    "hydraulics.pump.greatestLift",
    [["hydraulics", "pump", "greatestLift"], "12 m"],
  ],
  ["out-of-range", "grounds above notes", "hydraulics.proof.grounds", [["hydraulics", "proof", "grounds"], 0.95]],
  ["out-of-range", "a wait of nothing", "step vent", [[...VENT, "timer", "atLeast"], "0 s"]],
  ["out-of-range", "a run of days", "step run", [[...RUN, "timer", "atLeast"], "2 days"]],
  [
    "curve-not-monotone",
    "head rises",
    "hydraulics.pump.curve head",
    [["hydraulics", "pump", "curve", 1, "head"], "30 m"],
  ],
  ["curve-not-monotone", "burn falls", "engine.burn burn", [["engine", "burn", 1, "burn"], "0.3 L/h"]],
  ["too-long-to-read", "step", "step couple", [["stages", 2, "steps", 0, "text"], LONG]],
  ["too-long-to-read", "check", "check pump-turns", [["items", 0, "checks", 0, "ask"], LONG]],
  ["promises-safety", "step", "step couple", [["stages", 2, "steps", 0, "text"], "Now it is safe to couple the hose."]],
  ["vague", "step", "step couple", [["stages", 2, "steps", 0, "text"], "Check the hose."]],
  ["card-missing", "no card", "stranger", [["stranger"], undefined]],
  ["card-part-missing", "how to stop is left out", "stranger", [["stranger", "steps", 1], undefined]],
  ["card-caution-missing", "a danger is left out", "stranger", [[...CARD, "cautions"], ["never-pump-fuel"]]],
  ["card-undrawn", "no drawing named", "card start-it", [[...CARD, "drawing"], undefined]],
  ["card-untranslated", "no Polish", "card start-it", [[...CARD, "words", "pl"], undefined]],
  ["met-unanswered", "no word of fuel", "afterUse", [[...AFTER, 3], undefined]],
  ["flush-left-out", "a flush nobody must do", "step run", [[...RUN, "optional"], true]],
  ["flush-left-out", "a flush for something else", "step run", [[...RUN, "after"], ["oil"]]],
  ["counted-without-mode", "another item's mode", "item pump", [["afterUse", "counted", 0, "missing"], "gasket-thin"]],
  [
    "step-after-unknown",
    "a step for what nothing is said of",
    "step stow",
    [[...AFTER, 3], undefined],
    [[...STOW, "after"], ["fuel"]],
  ],
  ["step-after-unknown", "nothing said at all", "step stow", [["afterUse"], undefined], [[...STOW, "after"], ["salt"]]],
  ["hazard-without-caution", "first aid at fuel", "afterUse fuel", [[...AFTER, 3, "cautions"], []]],
  ["forbids-unsaid", "no hazard tells", "mode seal-broken", [["items", 3, "modes", 0, "forbids"], undefined]],
  ["forbids-nothing", "work no step does", "mode seal-broken", [["items", 3, "modes", 0, "forbids"], ["lid"]]],
  [
    "leak-proved-cold",
    "a leak nobody runs",
    "mode seal-broken",
    [
      ["items", 3, "modes", 0, "forbids"],
      ["fuel", "start"],
    ],
    [["stages", 2, "steps", 0, "does"], ["fuel"]],
  ],
  [
    "runs-on-unstarted",
    "not started, and run on",
    "mode pump-dead",
    [
      ["troubles"],
      [
        {
          sign: "will-not-start",
          name: "Will not start",
          nextPump: 6,
          causes: [{ id: "dead", says: "Pump dead", mode: "pump-dead", weight: 1 }],
          tries: [{ id: "again", does: "Try again.", minutes: 1, ends: { dead: 0.1 } }],
        },
      ],
    ],
  ],
  ["one-look-not-one", "a check of another step", "step look", [[...LOOK, "oneLook"], [["seal-count", "pump-turns"]]]],
  ["one-look-not-one", "something to be read", "step look", [[...LOOK, "oneLook"], [["seal-count", "seal-match"]]]],
  ["one-look-not-one", "twice", "step look", [[...LOOK, "oneLook"], [["seal-count", "seal-count"]]]],
  ["afterwards-misplaced", "at a line that asks nothing", "step drain", [[...DRAIN, "afterwards"], "Stand it up."]],
  [
    "afterwards-misplaced",
    "told before the answers",
    "step look",
    [[...LOOK, "text"], "Part the coupling. When both are answered, couple it."],
  ],
  [
    "afterwards-misplaced",
    "told before the one answer",
    "step look",
    [[...LOOK, "text"], "Open the cock. Shut it when this is answered."],
  ],
  ["too-long-to-read", "after the answers", "step look", [[...LOOK, "afterwards"], LONG]],
  ["not-done-together", "a line that asks", "step look", [[...LOOK, "withNext"], true]],
  ["not-done-together", "a timed line", "step start", [[...START, "withNext"], true]],
  ["not-done-together", "with a line of the next stage", "step stow", [[...STOW, "withNext"], true]],
  [
    "own-caution-not-first",
    "the starter's kick below the noise",
    "step start",
    [
      [...START, "cautions"],
      ["carbon-monoxide", "noise", "recoil-kick", "slippery-deck"],
    ],
  ],
  [
    "hazard-without-caution",
    "strainer moved while it runs",
    "step start",
    [[...START, "text"], "Pull the cord and move the strainer."],
  ],
  ["hazard-without-caution", "hot when it is stowed", "stage restow", [[...STOW, "hazards"], []]],
  ["lift-unsaid", "by what is not said", "step couple", ...LIFTED, [[...COUPLE, "lift"], undefined]],
  ["lift-unsaid", "nobody at the tag line", "step couple", ...LIFTED, [[...COUPLE, "people"], 1]],
  [
    "lift-unsaid",
    "no word of standing under it",
    "step couple",
    ...LIFTED,
    [[...COUPLE, "hazards"], []],
    [[...COUPLE, "cautions"], []],
  ],
  [
    "hazard-without-caution",
    "nobody under the load, unsaid",
    "step couple",
    ...LIFTED,
    [[...COUPLE, "cautions"], ["crushing-load"]],
  ],
  ["lift-too-heavy", "the whole kit", "container.machines", ...LIFTED, [["container", "mass"], "201 kg"]],
  [
    "lift-too-heavy",
    "what hangs at a step",
    "step couple",
    ...LIFTED,
    [[...COUPLE, "lift"], { by: "davit", mass: "250 kg" }],
  ],
  ["machine-unsaid", "an engine runs, none is told of", "engine", [["engine"], undefined]],
  [
    "machine-unsaid",
    "no tank",
    "items",
    [["items", 4, "name"], "Can"],
    [["items", 4, "id"], "can"],
    [["items", 5, "partOf"], "can"],
    [
      [...STOW, "stows"],
      ["pump", "cells", "can", "strainer"],
    ],
  ],
  ["machine-unsaid", "fuel without an age", "engine.fuelItem", [["engine", "fuelItem"], undefined]],
  ["machine-unsaid", "water pumped, no curve", "hydraulics", [["hydraulics"], undefined]],
  [
    "machine-unsaid",
    "no strainer",
    "items",
    [["items", 6, "name"], "Cage"],
    [["items", 6, "id"], "cage"],
    [
      [...STOW, "stows"],
      ["pump", "cells", "tank", "cage"],
    ],
  ],
  ["fuel-of-another", "diesel at a petrol engine", "engine.fuelKind", [[...START, "hazards"], ["opens-diesel"]]],
  ["try-without-hazard", "of an engine", "troubles[0].tries[0].hazards", [["troubles"], [KINKED]]],
  [
    "try-without-hazard",
    "of a pump on the mains",
    "troubles[0].tries[0].hazards",
    [["troubles"], [KINKED]],
    [["engine"], undefined],
    [[...START, "hazards"], ["electric-in-water"]],
  ],
  ["engine-unsaid", "a cause that speaks of a cold engine", "troubles[0].causes[0].engine", [["troubles"], [COLD]]],
  ["engine-unsaid", "a try that speaks of a cool engine", "troubles[0].tries[0].engine", [["troubles"], [COLD]]],
  [
    "engine-of-none",
    "where there is no engine",
    "troubles[0].tries[0].engine",
    [["troubles"], [{ ...KINKED, tries: [{ ...KINKED.tries[0]!, engine: "cool" }] }]],
    [["engine"], undefined],
  ],
  ["out-of-range", "hung for longer than anyone waits", "step drain", HUNG],
  ["promises-safety", "first aid", "afterUse salt", [[...AFTER, 0, "firstAid"], ["Now it is safe."]]],
  ["promises-safety", "card", "card start-it", [[...CARD, "words", "en"], "Now it is safe to start."]],
];

const TRIED = CASES.map(([rule, told, where, ...changes]) => ({ rule, told, where, changes }));

describe("the lint", () => {
  it("finds nothing in a sound pattern", () => {
    expect(lintPatternText(SOUND_TEXT, FILE)).toEqual([]);
  });

  it("lets a davit lift what people may not, by name and safe working load", () => {
    expect(lintPatternText(changedText([["container", "mass"], "140 kg"], ...LIFTED), FILE)).toEqual([]);
  });

  it("knows no machine that the container does not name", () => {
    const found = lintPatternText(changedText(...LIFTED, [[...COUPLE, "lift"], { by: "crane" }]), FILE);
    expect(found).toMatchObject([
      { rule: "loads", where: expect.stringContaining("lift"), what: expect.stringContaining("KI-107") },
    ]);
  });

  it("lets hoses hang for a night in a step of one minute", () => {
    const step = {
      id: "drain",
      text: "Hang it up.",
      timer: { kind: "wait", atLeast: "12 h", unattended: true },
      minutes: 1,
    };
    expect(lintPatternText(changedText([["stages", 5, "steps", 0], step]), FILE)).toEqual([]);
  });

  it("asks a try for no hazard where nothing runs and no mains feed it", () => {
    const still: readonly Change[] = [
      [["troubles"], [KINKED]],
      [["engine"], undefined],
      [[...START, "hazards"], ["pulls-cord"]],
    ];
    expect(lintPatternText(changedText(...still), FILE).map(({ rule }) => rule)).not.toContain("try-without-hazard");
  });

  it.each(TRIED)("$rule: $told", ({ rule, where, changes }) => {
    const found = lintPatternText(changedText(...changes), FILE);
    expect(found).toContainEqual(expect.objectContaining({ rule, where: expect.stringContaining(where) }));
    for (const fault of found) expect(fault.remedy).toMatch(/\.$/);
  });

  it("knows an unknown unit in a pattern made by a program", () => {
    const sound = loadPattern(SOUND_TEXT, FILE);
    const checks = sound.checks.map((check) => (check.kind === "measure" ? { ...check, unit: "furlong" } : check));
    const found = lintPattern({ ...sound, checks } satisfies Pattern);
    expect(found).toMatchObject([{ rule: "unit-unknown", where: "check gasket-thickness" }]);
  });

  it("says which line of the file a fault is about", () => {
    const text = SOUND_TEXT.replace("[opened-wrapping]", "[]");
    const line = SOUND_TEXT.split("\n").findIndex((one) => one.includes("- id: vent")) + 1;
    expect(lintPatternText(text, FILE)).toMatchObject([{ rule: "hazard-without-caution", at: { line, column: 9 } }]);
  });

  it("has a case here for every rule", () => {
    const tried = new Set<LintRule>([...CASES.map(([rule]) => rule), "unit-unknown", "card-part-unknown"]);
    const beside: readonly LintRule[] = PICTURE_RULES;
    expect([...tried, ...beside].sort()).toEqual([...LINT_RULES].sort());
  });
});
