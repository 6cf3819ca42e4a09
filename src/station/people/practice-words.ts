import { stageNamed, stepNamed, type Pattern } from "#kit";
import type { CasualtyState, JudgedDoing, KitState, Person, Qualification } from "#readiness";
import type { Words } from "#words";

type PracticeWords = Words["practice"];

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
  words: PracticeWords,
): readonly string[] {
  const newest = [...patterns.values()].toSorted((one, other) => other.version - one.version);
  return ties.map((tie) => {
    if (tie.to === "sheet") return words.sheet();
    const pattern = newest.find(({ id }) => id === tie.pattern);
    if (tie.to === "step") return sayStep(tie.step, pattern, { name: tie.pattern, words });
    const known = pattern ?? newest.find((one) => stageNamed(one, tie.stage) !== undefined);
    const stage = (known && stageNamed(known, tie.stage)?.name) ?? tie.stage;
    return tie.pattern === undefined
      ? words.stageOfEvery({ stage })
      : words.stageOf({ stage, pattern: pattern?.name ?? tie.pattern });
  });
}

function sayStep(
  id: string,
  pattern: Pattern | undefined,
  { name, words }: { readonly name: string; readonly words: PracticeWords },
): string {
  const step = pattern && stepNamed(pattern, id);
  return step ? words.lineOf({ line: step.line, pattern: pattern.name }) : words.stepOf({ step: id, pattern: name });
}

/** Where something was done. */
export function sayWhere(
  { in: where }: JudgedDoing,
  { kits, retired = [], casualties }: Naming,
  words: PracticeWords,
): string {
  switch (where.kind) {
    case "turnaround":
      return nameIn([...kits, ...retired], where.kit);
    case "casualty":
      return words.onSheet({ casualty: nameIn(casualties, where.casualty) });
    case "told":
      return where.how.replace(/\.$/, "");
  }
}

/** Why something done counts, or that it does not. */
export function sayCounts(
  { counts, second, note, in: where }: JudgedDoing,
  { people }: Naming,
  words: PracticeWords,
): string {
  const seen = second === undefined ? "" : words.seenBy({ name: nameIn(people, second) });
  switch (counts) {
    case "before":
      return words.before();
    case "held":
      return words.held();
    case "seen":
      return seen;
    case "told":
      return sayTold(where.kind === "told" ? words.toldBy({ name: nameIn(people, where.by) }) : "", seen, words);
    default:
      return words.notCounted({
        why: note === undefined ? seen || words.nobodyNamed() : words.goneAlone({ note }),
      });
  }
}

function sayTold(told: string, seen: string, words: PracticeWords): string {
  return told !== "" && seen !== "" ? words.toldAndSeen({ told, seen }) : told || seen;
}

function nameIn(all: readonly { readonly id: string; readonly name: string }[], id: string): string {
  return all.find((one) => one.id === id)?.name ?? id;
}
