import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Ancestry } from "../ancestry.ts";
import type { Entry } from "../entry.ts";
import { idOf, makeEntry } from "../testing/entries.ts";
import { componentsOf } from "./components.ts";
import { ReachTable } from "./reach-table.ts";

/** Which nodes each names; rings and names of itself too, which only a forger can make. */
const graphArb = fc.array(fc.array(fc.nat(39), { maxLength: 4 }), { minLength: 1, maxLength: 40 });

function graphOf(names: readonly (readonly number[])[]) {
  const known = names.map((one) => one.filter((name) => name < names.length));
  return { size: names.length, names: (node: number) => known[node]! };
}

/** The definition: walk until nothing new is found. */
function walk(graph: ReturnType<typeof graphOf>, from: number): ReadonlySet<number> {
  const found = new Set<number>();
  const open = [from];
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    for (const name of graph.names(node)) {
      if (!found.has(name)) open.push(name);
      found.add(name);
    }
  }
  return found;
}

/** A chain on one device; beside it a line of another for each, which nothing names. Counts the reads of `after`. */
function readsFor(lines: number): number {
  let reads = 0;
  const counted = (entry: Entry, after: readonly string[] | undefined) =>
    Object.defineProperty(entry, "after", { get: () => ((reads += 1), after) });
  const ancestry = new Ancestry();
  for (let number = 0; number < lines; number++) {
    const isChain = number % 2 === 1;
    const after = isChain && number > 1 ? [idOf(number - 2)] : undefined;
    ancestry.add(counted(makeEntry(number, { device: isChain ? "d1" : "d2" }), after));
    if (isChain) expect(ancestry.knew(idOf(number), idOf(number - 1))).toBe(false);
  }
  return reads;
}

describe("what reaches what", () => {
  test("is by the table what a walk finds, in any graph", () => {
    const law = fc.property(graphArb, (names) => {
      const graph = graphOf(names);
      const table = new ReachTable(graph);
      for (let from = 0; from < graph.size; from++) {
        const walked = walk(graph, from);
        for (let to = 0; to < graph.size; to++) expect(table.reaches(from, to)).toBe(walked.has(to));
      }
    });
    fc.assert(law, { seed: 417, numRuns: 300 });
  });

  test("groups what leads back to itself, each node in one group, named ones first", () => {
    const law = fc.property(graphArb, (names) => {
      const graph = graphOf(names);
      const groups = componentsOf(graph);
      expect(groups.flat().toSorted((one, other) => one - other)).toEqual(names.map((_, node) => node));
      const groupOf = new Map(groups.flatMap((group, at) => group.map((node) => [node, at] as const)));
      for (let node = 0; node < graph.size; node++) {
        const reached = walk(graph, node);
        for (const name of graph.names(node)) {
          const isTogether = groupOf.get(name) === groupOf.get(node);
          expect(isTogether).toBe(name === node || (reached.has(name) && walk(graph, name).has(node)));
          if (!isTogether) expect(groupOf.get(name)!).toBeLessThan(groupOf.get(node)!);
        }
      }
    });
    fc.assert(law, { seed: 417, numRuns: 300 });
  });

  test("goes on with lines that come later, beyond one block of them", () => {
    const names: number[][] = [[]];
    const table = new ReachTable({
      get size() {
        return names.length;
      },
      names: (node) => names[node]!,
    });
    for (let node = 1; node < 2500; node++) {
      names.push(node === 1700 ? [3] : [node - 1]);
      expect(table.reaches(node, Math.max(0, node - 1500))).toBe(node < 1700 || (node >= 1700 && node - 1500 <= 3));
    }
  });
});

describe("asking who knew what", () => {
  test("reads so many lines for each, however many there are", () => {
    const [some, more] = [readsFor(2000) / 2000, readsFor(8000) / 8000];
    expect(more).toBeLessThan(some * 1.5);
  });
});
