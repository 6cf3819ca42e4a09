import { describe, expect, it } from "vitest";
import { InputError } from "#base";
import { ask, questionNamed } from "./ask.ts";

/** A small, fast source of numbers in [0, 1) with a fixed seed (mulberry32). */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

type Given = Record<string, unknown>;

class Inputs {
  readonly #next: () => number;
  constructor(seed: number) {
    this.#next = chance(seed);
  }
  between(low: number, high: number): number {
    return low + (high - low) * this.#next();
  }
  pick<T>(choices: readonly T[]): T {
    return choices[Math.floor(this.#next() * choices.length)]!;
  }
  maybe(given: Given): Given {
    return this.#next() < 0.5 ? given : {};
  }
  /** Any question with any valid input. */
  any(): readonly [string, Given] {
    const name = this.pick(["water", "air", "hose-loss", "delivery", "delivery", "delivery", "prime", "fuel"]);
    return [name, this.of(name)];
  }
  of(name: string): Given {
    switch (name) {
      case "water":
        return this.water();
      case "air":
        return { altitude: this.between(-500, 5000), ...this.maybe({ temperature: this.between(224, 333) }) };
      case "hose-loss":
        return { flow: this.between(0, 0.2), ...this.hose(), ...this.maybe({ water: this.water() }) };
      case "delivery":
        return this.delivery();
      case "prime":
        return this.prime();
      default:
        return this.fuel();
    }
  }
  water(): Given {
    return { temperature: this.between(271.15, 333.15), salinity: this.between(0, 42) };
  }
  air(): Given {
    return {
      ...this.pick<Given>([{ altitude: this.between(-500, 5000) }, { pressure: this.between(50_000, 110_000) }]),
      ...this.maybe({ temperature: this.between(224, 333) }),
      ...this.maybe({ humidity: this.between(0, 1) }),
    };
  }
  hose(): Given {
    const bore = this.between(0.005, 1);
    return {
      bore,
      length: this.between(0, 2000) * this.between(0, 1) ** 3,
      ...this.pick<Given>([
        { roughness: Math.min(0.05, (bore / 10) * this.between(0, 1) ** 3) },
        { hazenWilliams: this.between(20, 200) },
        { fireHoseCoefficient: this.between(0.001, 5000) },
      ]),
      ...this.maybe({ fittings: this.between(0, 50) }),
    };
  }
  delivery(): Given {
    return {
      ...this.maybe({ water: this.water() }),
      ...this.maybe({ air: this.air() }),
      pump: this.pump(),
      ...this.maybe({ throttle: this.between(0.05, 1.5) }),
      suction: { lift: this.between(-50, 50) * this.between(0, 1) ** 2, ...this.hose() },
      discharge: {
        rise: this.between(-50, 300) * this.between(0, 1) ** 3,
        ...this.hose(),
        ...this.maybe({ exitLoss: this.pick([true, false]) }),
      },
      ...this.maybe({ pumpsInParallel: this.pick([1, 2, 3, 20]) }),
      advise: this.pick([true, false, false, false, false, false, false, false]),
    };
  }
  pump(): Given {
    const count = this.pick([1, 2, 3, 3, 4, 6]);
    const flows = this.rising(count, this.pick([0, 0.001]), 0.03);
    const heads = flows.map(() => this.between(0, 100));
    if (count === 1) return { curve: [{ flow: this.between(1e-4, 0.05), head: this.between(1, 100) }] };
    heads[count - 1] = heads[count - 2]! * this.between(0, 0.99);
    if (heads[count - 2] === 0) heads[count - 2] = 1;
    return {
      curve: flows.map((flow, i) => ({ flow, head: heads[i] })),
      ...this.maybe({ between: this.pick(["straight", "smooth"]) }),
      ...this.maybe({ npshRequired: this.rising(3, 0, 0.03).map((flow) => ({ flow, head: this.between(0, 8) })) }),
      ...this.maybe({ greatestLift: this.between(0.5, 10) }),
      ...this.maybe({ drive: this.pick(["engine", "electric"]) }),
    };
  }
  rising(count: number, first: number, most: number): number[] {
    const steps = Array.from({ length: count }, (_, i) => (i === 0 ? first : this.between(1e-5, most / count)));
    return steps.map((_, i) => steps.slice(0, i + 1).reduce((sum, step) => sum + step, 0));
  }
  prime(): Given {
    const lift = this.between(-2, 12);
    return {
      lift,
      hose: { bore: this.between(0.01, 0.1), length: Math.max(0, lift) + this.between(0, 10) },
      deadVolume: this.between(0, 0.02),
      stroke: this.between(2e-4, 0.01),
      ...this.maybe({ strokesPerMinute: this.between(1, 200) }),
      ...this.maybe({ airLeak: this.between(0, 5e-4) }),
      ...this.maybe(this.maybe({ observed: this.between(0.1, 600) })),
      ...this.maybe({ water: this.water() }),
      ...this.maybe({ air: this.air() }),
    };
  }
  fuel(): Given {
    return {
      tank: this.between(5e-4, 0.1),
      ...this.maybe({ cans: this.between(0, 0.5) }),
      ...this.pick<Given>([
        { burn: this.between(1e-8, 1e-4) },
        { shaftPower: this.between(100, 50_000), bsfc: this.between(5e-8, 4e-7) },
      ]),
      ...this.maybe({ reserve: this.pick(["0.1 L", "15 %", 1e-4]) }),
      ...this.maybe({ passage: this.between(0, 86_400) }),
    };
  }
  /** A valid input with one thing wrong somewhere, and the path of what is wrong. */
  spoilt(): readonly [string, Given, string] {
    const [name, given] = this.any();
    const leaf = this.pick(leavesOf(given, ""));
    const wrong = this.pick<unknown>(["", "three", "4 apples", NaN, Infinity, null, {}, [], -1e9, 1e12]);
    if (this.between(0, 1) < 0.25) return [name, { ...given, nonsense: 1 }, "nonsense"];
    return [name, replaced(given, leaf, wrong) as Given, leaf];
  }
}

function leavesOf(value: unknown, path: string): string[] {
  if (typeof value === "number" || typeof value === "string") return [path];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => leavesOf(inner, path === "" ? key : `${path}.${key}`));
}

function replaced(value: unknown, path: string, by: unknown): unknown {
  if (path === "") return by;
  const [step, ...rest] = path.split(".");
  const copy: Record<string, unknown> | unknown[] = Array.isArray(value) ? [...value] : { ...(value as Given) };
  Reflect.set(copy, step!, replaced(Reflect.get(value as object, step!), rest.join("."), by));
  return copy;
}

function badNumbers(value: unknown, path = "answer"): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [path];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => badNumbers(inner, `${path}.${key}`));
}

describe("100 000 random valid inputs (seed 1)", () => {
  it("are all answered, with no NaN or Infinity, as the output schema says", { timeout: 240_000 }, () => {
    const inputs = new Inputs(1);
    const kinds = new Set<unknown>();
    for (let i = 0; i < 100_000; i += 1) {
      const [name, given] = inputs.any();
      const answer = ask(name, given) as Given;
      if (badNumbers(answer).length > 0) expect.fail(`${name} ${JSON.stringify(given)}: ${badNumbers(answer).join()}`);
      kinds.add(answer["kind"]);
      if (i % 50 === 0) expect(questionNamed(name)!.output.safeParse(answer).success).toBe(true);
    }
    expect(kinds).toEqual(
      new Set([undefined, "delivers", "cannot-lift", "suction-limited", "primes", "will-not-prime"]),
    );
  });
});

describe("10 000 random invalid inputs (seed 2)", () => {
  it("are each refused with a clear error that names the field", { timeout: 120_000 }, () => {
    const inputs = new Inputs(2);
    for (let i = 0; i < 10_000; i += 1) {
      const [name, given, path] = inputs.spoilt();
      const thrown = thrownBy(() => ask(name, given));
      if (!(thrown instanceof InputError)) expect.fail(`${name} ${path} ${JSON.stringify(given)}: ${String(thrown)}`);
      for (const fault of thrown.faults) {
        expect(fault.code).toMatch(/^[A-Z]{2}-\d{3}$/);
        expect(
          Math.min(fault.field.length, fault.got.length, fault.allowed.length, fault.remedy.length),
        ).toBeGreaterThan(0);
      }
      const named = thrown.faults.some((fault) => namesSame(fault.field, path));
      if (!named) expect.fail(`${name} ${path} ${JSON.stringify(given)}: ${thrown.message}`);
    }
  });
});

function thrownBy(act: () => unknown): unknown {
  try {
    return act();
  } catch (thrown) {
    return thrown;
  }
}

/** True where a fault is about this path or something it belongs to: "pump.curve[2].flow" is about "pump.curve.2". */
function namesSame(field: string, path: string): boolean {
  const dotted = field.replace(/\[(\d+)\]/g, ".$1");
  return dotted === path || path.startsWith(`${dotted}.`) || dotted.startsWith(`${path}.`);
}
