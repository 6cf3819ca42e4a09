import { isInputError, isQuantity, parseQuantity, printGiven, type Dimension, type Fault } from "#base";
import { fieldName, type FilePath, type YamlSource } from "./yaml-source.ts";
import type { CheckFile, ItemFile, PatternFile } from "./pattern-file.ts";

/** Faults no single field shows: one of two fields needed, a limit that needs its words, a part of itself. */
export function choiceFaults(file: PatternFile, source: YamlSource): readonly Fault[] {
  return [
    ...file.items.flatMap((item, index) => itemFaults(item, { file, source, path: ["items", index] })),
    ...hoseFaults(file, source),
  ];
}

interface Within {
  readonly file: PatternFile;
  readonly source: YamlSource;
  readonly path: FilePath;
}

function itemFaults(item: ItemFile, within: Within): readonly Fault[] {
  return [
    ...placeFaults(item, within),
    ...item.checks.flatMap((check, index) => measureFaults(check, within.source, [...within.path, "checks", index])),
  ];
}

function placeFaults(item: ItemFile, { file, source, path }: Within): readonly Fault[] {
  const chain = wholesOf(item, file.items);
  if (chain.includes(item)) {
    return [
      choice(
        source,
        [...path, "partOf"],
        "a circle",
        "an item that is not itself part of this one",
        "Break the circle.",
      ),
    ];
  }
  const placed = [item, ...chain].some((one) => one.place !== undefined);
  const allowed = "`place`, or `partOf` an item that has one";
  return placed ? [] : [choice(source, path, "neither", allowed, "Say where it lives.")];
}

/** The items this one is fixed to, nearest first; where they go in a circle, once round. */
export function wholesOf(item: ItemFile, items: readonly ItemFile[]): readonly ItemFile[] {
  const chain: ItemFile[] = [];
  let here = items.find((one) => one.id === item.partOf);
  while (here !== undefined && !chain.includes(here)) {
    chain.push(here);
    const next: string | undefined = here.partOf;
    here = items.find((one) => one.id === next);
  }
  return chain;
}

function measureFaults(check: CheckFile, source: YamlSource, path: FilePath): readonly Fault[] {
  if (check.kind !== "measure") return [];
  const unit = isQuantity(`1 ${check.unit}`, check.dimension) ? [] : unitFault(check, source, path);
  const limits = (["atLeast", "atMost"] as const).flatMap((side) => {
    const text = check[side];
    return text === undefined ? [] : limitFaults(text, check.dimension, fieldName(source, [...path, side]));
  });
  return [...unit, ...limits];
}

function unitFault(
  check: { unit: string; dimension: Dimension },
  source: YamlSource,
  path: FilePath,
): readonly Fault[] {
  const remedy = `Write a unit of ${check.dimension}, or correct the dimension.`;
  const allowed = `a unit of ${check.dimension}`;
  return [
    { code: "KI-105", field: fieldName(source, [...path, "unit"]), got: printGiven(check.unit), allowed, remedy },
  ];
}

function limitFaults(text: string, dimension: Dimension, field: string): readonly Fault[] {
  try {
    parseQuantity(text, dimension, field);
    return [];
  } catch (thrown) {
    if (!isInputError(thrown)) throw thrown;
    return thrown.faults.map((fault) => ({ ...fault, code: "KI-105" }));
  }
}

function hoseFaults({ hydraulics }: PatternFile, source: YamlSource): readonly Fault[] {
  return (["suction", "discharge"] as const).flatMap((side) => {
    const hose = hydraulics?.[side];
    if (!hose || (hose.roughness === undefined) !== (hose.hazenWilliams === undefined)) return [];
    const got = hose.roughness === undefined ? "neither" : "both";
    const allowed = "exactly one of roughness and hazenWilliams";
    const remedy = got === "both" ? "Keep one and take the other out." : "Add one.";
    return [choice(source, ["hydraulics", side], got, allowed, remedy)];
  });
}

function choice(source: YamlSource, path: FilePath, got: string, allowed: string, remedy: string): Fault {
  return { code: "KI-110", field: fieldName(source, path), got, allowed, remedy };
}
