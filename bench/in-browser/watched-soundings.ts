import { levelAfter, strengthOf } from "#flooding";
import { normalQuantile, repeatableStream } from "#numerics";

/** Error of a sounding [m], rounded to a whole centimetre as it is read off. */
const NOISE = 0.01;
const APART = 150;
const PUMP = { from: 300, flow: 0.004 };

/** What is asked: the question's name, and its input for one casualty. */
export const QUESTIONS: readonly (readonly [name: string, input: (k: number, readings: number) => object])[] = [
  ["sounding", soundingOf],
  ["on-scene", onSceneOf],
];

function soundingOf(k: number, readings: number): object {
  const compartment = { area: 12, outsideLevel: 1.2, sinkage: 0.02, lossLevel: 1.1 };
  return { compartment, readings: readingsOf(k, readings), pumping: pumpingBy(APART * (readings - 1)) };
}

function onSceneOf(k: number, readings: number): object {
  const now = APART * (readings - 1) + 60;
  return {
    boat: { kind: "motor boat", length: 10 },
    spaces: [{ name: "engine room", sort: "engine-room", part: "aft" }],
    readings: readingsOf(k, readings),
    pumping: pumpingBy(now),
    now,
  };
}

/** Only what runs by now is told. @param now - clock of the casualty [s] */
const pumpingBy = (now: number): readonly (typeof PUMP)[] => (PUMP.from <= now ? [PUMP] : []);

/** Soundings of casualty number k: an upright space, a hole of 30 to 60 mm, a pump from the third sounding on. */
function readingsOf(k: number, count: number): { readonly at: number; readonly level: number }[] {
  const draw = repeatableStream(0x50d + k);
  const strength = strengthOf({ kind: "hole", area: (Math.PI / 4) * (0.03 + 0.03 * draw()) ** 2, height: 0 });
  const space = { area: 12, strength, hole: 0.15, outside: 1.2 };
  const unpumped = (at: number): number => levelAfter({ ...space, pumped: 0 }, 0.45, at);
  const level = (at: number): number =>
    at <= PUMP.from ? unpumped(at) : levelAfter({ ...space, pumped: PUMP.flow }, unpumped(PUMP.from), at - PUMP.from);
  return Array.from({ length: count }, (_, n) => {
    const read = level(n * APART) + NOISE * normalQuantile(draw());
    return { at: n * APART, level: Math.max(0, Math.round(100 * read) / 100) };
  });
}
