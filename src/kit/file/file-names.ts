import { allCautions, isCautionId, printGiven, type Fault } from "#base";
import { valueAt } from "./file-faults.ts";
import { fieldName, type FilePath, type YamlSource } from "./yaml-source.ts";

/*
 * Ids in a pattern file: each once, and each reference to one that is there. Works on the plain values, so that it
 * finds these faults also in a file whose shape has others.
 */

type Naming = "place" | "machine" | "item" | "mode" | "check" | "step" | "stage" | "card";

interface Named {
  readonly id: string;
  readonly path: FilePath;
}

/** Faults of ids: given twice, or named and not there. */
export function idFaults(source: YamlSource): readonly Fault[] {
  const named = namesIn(source.value);
  const twice = (Object.keys(named) as Naming[]).flatMap((what) => doubled(source, what, named[what]));
  return [...twice, ...dangling(source, named), ...unknownCautions(source)];
}

/** Every id given in the file, by what it names. */
export function namesIn(value: unknown): Readonly<Record<Naming, readonly Named[]>> {
  return {
    place: idsAt(value, ["container", "places"]),
    machine: idsAt(value, ["container", "machines"]),
    item: idsAt(value, ["items"]),
    mode: entriesOf(value, ["items"]).flatMap((path) => idsAt(value, [...path, "modes"])),
    check: entriesOf(value, ["items"]).flatMap((path) => idsAt(value, [...path, "checks"])),
    step: stepPaths(value).flatMap((path) => idAt(value, path)),
    stage: idsAt(value, ["stages"]),
    card: idsAt(value, ["stranger", "steps"]),
  };
}

function doubled(source: YamlSource, what: Naming, all: readonly Named[]): readonly Fault[] {
  const seen = new Map<string, Named>();
  return all.flatMap((one) => {
    const first = seen.get(one.id);
    if (first === undefined) seen.set(one.id, one);
    return first === undefined ? [] : [doubledFault(source, { what, one, first })];
  });
}

function doubledFault(source: YamlSource, found: { what: Naming; one: Named; first: Named }): Fault {
  const { line } = source.positionOf(found.first.path);
  return {
    code: "KI-108",
    field: fieldName(source, found.one.path),
    got: printGiven(found.one.id),
    allowed: `each ${found.what} id once`,
    remedy: `It stands in line ${line} of the file already: give this one another id.`,
  };
}

function dangling(source: YamlSource, named: Readonly<Record<Naming, readonly Named[]>>): readonly Fault[] {
  const uses = usesIn(source.value);
  return (Object.keys(uses) as (keyof typeof uses)[]).flatMap((what) => {
    const known = new Set(named[what].map((one) => one.id));
    return uses[what].filter((use) => !known.has(use.id)).map((use) => danglingFault(source, what, use));
  });
}

function danglingFault(source: YamlSource, what: Naming, use: Named): Fault {
  return {
    code: "KI-107",
    field: fieldName(source, use.path),
    got: printGiven(use.id),
    allowed: `the id of a ${what} in this file`,
    remedy: `Correct the spelling, or add the ${what}.`,
  };
}

/** Every place that names something by id, and what it names. */
export function idUses(value: unknown): readonly (Named & { readonly what: Naming })[] {
  return Object.entries(usesIn(value)).flatMap(([what, all]) => all.map((one) => ({ ...one, what: what as Naming })));
}

function usesIn(value: unknown) {
  const items = entriesOf(value, ["items"]);
  const steps = stepPaths(value);
  const checks = items.flatMap((path) => entriesOf(value, [...path, "checks"]));
  const modes = items.flatMap((path) => entriesOf(value, [...path, "modes"]));
  const causes = entriesOf(value, ["troubles"]).flatMap((path) => entriesOf(value, [...path, "causes"]));
  return {
    place: items.flatMap((path) => idAt(value, path, "place")),
    machine: steps.flatMap((path) => idAt(value, [...path, "lift"], "by")),
    item: [
      ...items.flatMap((path) => idAt(value, path, "partOf")),
      ...steps.flatMap((path) => [...texts(value, [...path, "stows"]), ...texts(value, [...path, "renews"])]),
      ...idAt(value, ["engine"], "fuelItem"),
      ...entriesOf(value, ["afterUse", "counted"]).flatMap((path) => idAt(value, path, "item")),
    ],
    mode: [
      ...checks.flatMap((path) => [...texts(value, [...path, "finds"]), ...texts(value, [...path, "behind"])]),
      ...entriesOf(value, ["afterUse", "counted"]).flatMap((path) => idAt(value, path, "missing")),
      ...causes.flatMap((path) => idAt(value, path, "mode")),
    ],
    step: metPaths(value).flatMap((path) => texts(value, [...path, "flushedBy"])),
    check: [
      ...steps.flatMap((path) => texts(value, [...path, "checks"])),
      ...modes.flatMap((path) => texts(value, [...path, "provedBy"])),
    ],
  };
}

function unknownCautions(source: YamlSource): readonly Fault[] {
  const bearers = [...stepPaths(source.value), ...metPaths(source.value)];
  const used = bearers.flatMap((path) => texts(source.value, [...path, "cautions"]));
  const allowed = `one of ${allCautions()
    .map((one) => one.id)
    .join(", ")}`;
  return used
    .filter((use) => !isCautionId(use.id))
    .map((use) => ({ ...danglingFault(source, "step", use), allowed, remedy: "Correct the spelling." }));
}

function metPaths(value: unknown): readonly FilePath[] {
  return entriesOf(value, ["afterUse", "met"]);
}

function stepPaths(value: unknown): readonly FilePath[] {
  return entriesOf(value, ["stages"]).flatMap((path) => entriesOf(value, [...path, "steps"]));
}

/** Paths of the entries of a list; none where there is no list. */
function entriesOf(value: unknown, path: FilePath): readonly FilePath[] {
  const list = valueAt(value, path);
  return Array.isArray(list) ? list.map((_, index) => [...path, index]) : [];
}

function idsAt(value: unknown, path: FilePath): readonly Named[] {
  return entriesOf(value, path).flatMap((entry) => idAt(value, entry));
}

function idAt(value: unknown, path: FilePath, field = "id"): readonly Named[] {
  const id = valueAt(value, [...path, field]);
  return typeof id === "string" ? [{ id, path: [...path, field] }] : [];
}

function texts(value: unknown, path: FilePath): readonly Named[] {
  return entriesOf(value, path).flatMap((entry) => {
    const id = valueAt(value, entry);
    return typeof id === "string" ? [{ id, path: entry }] : [];
  });
}
