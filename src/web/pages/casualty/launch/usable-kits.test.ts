import { fetchWords } from "#words";
import type { Pattern } from "#kit";
import type { KitState, Standing } from "#readiness";
import { describe, expect, it } from "vitest";
import { BOAT, SHED, sampleKit, sampleStanding } from "#web/pages/board/sample-kits.ts";
import { wayOf, type Way } from "./our-boat.ts";
import { lightOf, lightPicks } from "./light-picks.ts";
import { kitsAtHand, type Conditions } from "./usable-kits.ts";

const words = { launch: await fetchWords("en", "launch"), standing: await fetchWords("en", "standing") };

const ENGINE = { id: "engine", engine: { tank: 0.003, burn: [], fuel: "petrol" } } as unknown as Pattern;
const MAINS = { id: "mains" } as unknown as Pattern;
const RUN = { turnaround: "t", at: "2027-01-03T10:00:00Z" };

const KITS: readonly KitState[] = [
  sampleKit("1", {
    pattern: "engine@1",
    runs: [
      { ...RUN, started: true, primed: true, primeSeconds: 40, ratio: 0.92 },
      { ...RUN, at: "2026-01-03T10:00:00Z", started: true, primed: false, ratio: 0.7 },
    ],
  }),
  sampleKit("2", { pattern: "engine@1" }),
  sampleKit("3", { pattern: "mains@1" }),
  sampleKit("4", { pattern: "engine@1", place: "boat" }),
  sampleKit("5", { pattern: "engine@1" }),
  sampleKit("6", { pattern: "unheard@1" }),
];
const LIMITED: Standing = {
  ...sampleStanding("ready-with-limits"),
  limits: ["Daylight only, or send a torch with it."],
};
const VIEW = {
  kits: KITS,
  standings: new Map([
    ...["1", "3", "4", "6"].map((id) => [id, sampleStanding("ready")] as const),
    ["2", LIMITED] as const,
    ["5", sampleStanding("grounded")] as const,
  ]),
  patterns: new Map([
    ["engine@1", ENGINE],
    ["mains@1", MAINS],
  ]),
  places: [SHED, BOAT],
};
const WAY: Way = {
  boat: undefined,
  place: "shed",
  speed: 10,
  launch: 600,
  setUp: 600,
  carries: 2,
  mains: false,
  isGuessed: false,
};

function namesIn(conditions: Partial<Conditions>, way: Partial<Way> = {}): readonly string[] {
  const given = { light: undefined, herMains: undefined, ...conditions };
  return kitsAtHand(VIEW, { ...WAY, ...way }, given, words).usable.map(({ id }) => id);
}

describe("kits that can be used on her", () => {
  it("can be asked for where the light is not known, which counts as dark and says so", () => {
    expect(lightPicks(words.launch)[0]).toEqual({ id: "not-known", words: "Not known: as dark" });
    expect(lightOf("not-known")).toBeUndefined();
    expect(namesIn({ light: lightOf("not-known") })).toEqual(namesIn({ light: "dark" }));
    expect(lightOf("torch")).toBe("torch");
  });

  it("are ready ones whose limits hold tonight; light not told is not daylight", () => {
    expect(namesIn({})).toEqual(["1", "4"]);
    expect(namesIn({ light: "dark" })).toEqual(["1", "4"]);
    expect(namesIn({ light: "daylight" })).toEqual(["1", "2", "4"]);
    expect(namesIn({ light: "torch" })).toEqual(["1", "2", "4"]);
  });

  it("need mains where their pattern does, from her or from our boat", () => {
    expect(namesIn({ herMains: false })).not.toContain("3");
    expect(namesIn({ herMains: true })).toContain("3");
    expect(namesIn({}, { mains: true })).toContain("3");
  });

  it("follow where they lie elsewhere than the boat that goes", () => {
    const { usable } = kitsAtHand(VIEW, WAY, { light: "dark", herMains: undefined }, words);
    expect(usable.map(({ id, follows }) => [id, follows])).toEqual([
      ["1", false],
      ["4", true],
    ]);
  });

  it("bring what their own runs proved: the newest ratio and prime, and how often they started and primed", () => {
    const [first, other] = kitsAtHand(VIEW, WAY, { light: "dark", herMains: undefined }, words).usable;
    expect(first).toMatchObject({ proved: 0.92, provedAt: RUN.at, prime: 40, runs: { of: 2, good: 1 } });
    expect(other).not.toHaveProperty("proved");
    expect(other).not.toHaveProperty("runs");
  });

  it("leave the rest behind, each with its reason", () => {
    const { back } = kitsAtHand(VIEW, WAY, { light: undefined, herMains: undefined }, words);
    expect(back.map(({ name, why }) => `${name}: ${why}`)).toEqual([
      "Pump 2: light not known, taken for dark; Daylight only, or send a torch with it.",
      "Pump 3: needs mains that the water cannot reach",
      "Pump 5: grounded: Because.",
      "Pump 6: its pattern is not here",
    ]);
  });
});

describe("the boat that goes", () => {
  const inshore = {
    id: "b1",
    name: "Inshore",
    place: "shed",
    speed: 12,
    launch: 480,
    setUp: 720,
    carries: 2,
    mains: false,
  };
  const boats = [
    { ...inshore, id: "b2", name: "All-weather", place: "boat", retired: false },
    { ...inshore, retired: false },
  ];

  it("is the one that lies where the person works, until another is picked", () => {
    expect(wayOf({ boats, place: SHED }, {}).boat?.id).toBe("b1");
    expect(wayOf({ boats, place: SHED }, { boat: "b2" })).toMatchObject({ place: "boat", isGuessed: false });
  });

  it("goes by what was told for this call before her own figures", () => {
    expect(wayOf({ boats, place: SHED }, { launch: 1500 })).toMatchObject({ launch: 1500, setUp: 720, speed: 12 });
  });

  it("that nobody has set is guessed, and says so until every figure is told", () => {
    expect(wayOf({ boats: [], place: SHED }, {})).toMatchObject({ boat: undefined, isGuessed: true, place: "shed" });
    const told = { boat: "another", speed: 9, launch: 300, setUp: 300, carries: 1 };
    expect(wayOf({ boats, place: SHED }, told)).toMatchObject({ speed: 9, carries: 1, isGuessed: false });
  });
});
