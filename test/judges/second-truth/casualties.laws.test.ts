import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Casualty } from "../../../bench/second-truth/casualties.ts";
import { under } from "../../../bench/second-truth/columns.ts";
import { drawCasualty, FAMILIES } from "../../../bench/second-truth/families.ts";
import { floodAt } from "../../../bench/second-truth/following.ts";
import { lieOf } from "../../../bench/second-truth/lies.ts";
import { lieWith } from "../../../bench/second-truth/lying.ts";
import { SETTINGS } from "../../../bench/second-truth/settings.ts";
import { trueRun } from "../../../bench/second-truth/watching.ts";

const FOLDER = "bench/second-truth";
const drawn: readonly Casualty[] = FAMILIES.flatMap((family) => [3, 8].map((number) => drawCasualty(family, number)));

describe("the second truth", () => {
  it("imports nothing of the program but the door of the questions, and that in one file", () => {
    const found = readdirSync(FOLDER).flatMap((name) =>
      [...readFileSync(join(FOLDER, name), "utf8").matchAll(/from "([^"]+)"/g)].map(([, from]) => ({
        name,
        from: from!,
      })),
    );
    const outside = found.filter(({ from }) => !from.startsWith("./"));
    expect(outside).toEqual([{ name: "sheet.ts", from: "#questions" }]);
  });

  it("is the same casualty for the same family and number", () => {
    const { chance: _chance, afloat: one, ...first } = drawCasualty("second pump", 5);
    const { chance: _other, afloat: two, ...again } = drawCasualty("second pump", 5);
    expect(again).toEqual(first);
    expect(two.told).toEqual(one.told);
    expect(two.lies.rows).toEqual(one.lies.rows);
  });

  it("has other boats and a rougher stick in its second setting, and the same ones at every call", () => {
    const [usual, other, again] = [SETTINGS.usual, SETTINGS.other, SETTINGS.other].map((setting) =>
      drawCasualty("steady", 11, setting),
    );
    expect(other!.afloat.lies.rows).not.toEqual(usual!.afloat.lies.rows);
    expect(other!.stick.error[1]).toBeGreaterThan(usual!.stick.error[1]);
    expect(again!.afloat.lies.rows).toEqual(other!.afloat.lies.rows);
    expect(usual!.afloat.lies.rows).toEqual(drawCasualty("steady", 11).afloat.lies.rows);
  });

  it("keeps the books of its water: what ran in less what was taken out is what she holds more, to 1e-9 m³", () => {
    const off = drawn.map((one) => {
      const run = trueRun(one);
      return Math.abs(run.taken.in - run.taken.out - (run.flood.at(-1)! - one.start));
    });
    expect(Math.max(...off)).toBeLessThan(1e-9);
  });

  it("holds the water it books: under the surface inside there is as much, in every lie", () => {
    const off = drawn.flatMap(({ afloat: { lies } }) =>
      lies.rows.slice(1).map((row) => {
        const { columns, filled } = lies.boat.space;
        return Math.abs(under(columns, row.inside, filled).volume - row.flood) / lies.boat.weight;
      }),
    );
    expect(Math.max(...off)).toBeLessThan(1e-8);
  });

  it("lies between two rows of its table as it does when solved for itself, within 3 mm", () => {
    const off = drawn.map((one) => {
      const { lies } = one.afloat;
      const flood = Math.min(floodAt(trueRun(one), 400), 0.95 * lies.lostWith);
      const near = lies.rows.findLast((row) => row.flood <= flood)!;
      const solved = lieWith(lies.boat, flood, near)!;
      const read = lieOf(lies, flood);
      return Math.max(
        Math.abs(solved.inside.middle - read.inside.middle),
        Math.abs(solved.sea.middle - read.sea.middle),
      );
    });
    expect(Math.max(...off)).toBeLessThan(0.003);
  });
});
