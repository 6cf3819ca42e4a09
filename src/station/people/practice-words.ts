import { stageNamed, stepNamed, type Pattern } from "#kit";
import type { CasualtyState, JudgedDoing, KitState, Person, Qualification } from "#readiness";

/** What is needed to tell of people and what they did by name. */
export interface Naming {
  readonly kits: readonly KitState[];
  readonly retired?: readonly KitState[];
  readonly people: readonly Person[];
  readonly casualties: readonly CasualtyState[];
  readonly patterns: ReadonlyMap<string, Pattern>;
}

/** What a qualification is for, one phrase each. Lines by the newest version of their pattern. */
export function sayTies(
  { ties }: Pick<Qualification, "ties">,
  { patterns }: Pick<Naming, "patterns">,
): readonly string[] {
  const newest = [...patterns.values()].toSorted((one, other) => other.version - one.version);
  return ties.map((tie) => {
    if (tie.to === "sheet") return "the sheet of a casualty";
    const pattern = newest.find(({ id }) => id === tie.pattern);
    if (tie.to === "step") return sayStep(tie.step, pattern, tie.pattern);
    const known = pattern ?? newest.find((one) => stageNamed(one, tie.stage) !== undefined);
    const stage = `stage ${(known && stageNamed(known, tie.stage)?.name) ?? tie.stage}`;
    return tie.pattern === undefined ? `${stage} of every pattern` : `${stage} of ${pattern?.name ?? tie.pattern}`;
  });
}

function sayStep(id: string, pattern: Pattern | undefined, name: string): string {
  const step = pattern && stepNamed(pattern, id);
  return step ? `line ${step.line} of ${pattern.name}` : `step ${id} of ${name}`;
}

/** Where something was done. */
export function sayWhere({ in: where }: JudgedDoing, { kits, retired = [], casualties }: Naming): string {
  switch (where.kind) {
    case "turnaround":
      return nameIn([...kits, ...retired], where.kit);
    case "casualty":
      return `On the sheet of ${nameIn(casualties, where.casualty)}`;
    case "told":
      return where.how.replace(/\.$/, "");
  }
}

/** Why something done counts, or that it does not. */
export function sayCounts({ counts, second, note, in: where }: JudgedDoing, { people }: Naming): string {
  const seen = second === undefined ? "" : `seen by ${nameIn(people, second)}`;
  switch (counts) {
    case "before":
      return "before a second person was asked for";
    case "held":
      return "held it";
    case "seen":
      return seen;
    case "told":
      return [where.kind === "told" ? `told by ${nameIn(people, where.by)}` : "", seen].filter(Boolean).join(", ");
    default:
      return `does not count: ${note === undefined ? seen || "nobody named who saw it" : `gone on alone, ${note}`}`;
  }
}

function nameIn(all: readonly { readonly id: string; readonly name: string }[], id: string): string {
  return all.find((one) => one.id === id)?.name ?? id;
}
