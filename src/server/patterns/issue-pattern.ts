import type { Fault } from "#base";
import { lintDraft, loadPattern, nameOf, openDraft, type Pattern } from "#kit";
import { PROBLEM, type IssueRequest, type WrittenPattern } from "#station";
import { badInput, Refusal } from "../http/problem.ts";
import { readBeside, type IssueParts, type PatternDesk } from "./pattern-desk.ts";

/** A file judged good to be issued, with the drawings that it keeps of the version it was written from. */
export interface Judged extends WrittenPattern {
  readonly pattern: Pattern;
}

/**
 * Judges a file that is to be issued: by the schema, the lint and the rule of versions.
 *
 * @throws InputError where the file cannot be read; Refusal SV-461 errors of the lint, SV-462 not the next version,
 *   SV-463 a base that is not here
 */
export function judgeIssue(desk: PatternDesk, issuing: IssueParts, { text, base }: IssueRequest): Judged {
  const draft = openDraft(text);
  const beside = base === undefined ? {} : besideOf(issuing, base);
  const read = (name: string) => readBeside(beside, name);
  const errors = lintDraft(draft, read).filter(({ weight }) => weight === "error");
  if (errors.length > 0) throw badInput(errors.slice(0, MOST_TOLD).map(toFault));
  const pattern = loadPattern(text, nameOf(draft.value), read);
  refuseOtherVersion(desk, pattern);
  return { text, beside, pattern };
}

/** Errors told at once. */
const MOST_TOLD = 20;

function toFault({ rule, where, what, remedy }: ReturnType<typeof lintDraft>[number]): Fault {
  return {
    code: "SV-461",
    field: where,
    got: `${rule}: ${what}`,
    allowed: "a pattern without errors of the lint",
    remedy,
  };
}

/** The drawings of the version that a file was written from. */
export function besideOf({ files }: IssueParts, base: string): WrittenPattern["beside"] {
  const written = files.read(base);
  if (written !== undefined) return written.beside;
  throw new Refusal("conflict", {
    code: "SV-463",
    message: `The station has no file ${base}.yaml, whose drawings this one keeps.`,
    remedy: "Begin the draft again from a version that the station has, or from a file.",
  });
}

/** A changed pattern is a new version, and versions are counted without a gap. */
function refuseOtherVersion({ now }: PatternDesk, { id, version }: Pattern): void {
  const newest = Math.max(0, ...now.filter((one) => one.id === id).map((one) => one.version));
  if (version !== newest + 1) throw otherVersion(id, version, newest);
}

/** @param newest - the highest version of this id that the station has; 0 for none */
export function otherVersion(id: string, version: number, newest: number): Refusal {
  const has = newest === 0 ? `has no ${id} yet` : `has version ${newest} of ${id}`;
  return new Refusal("conflict", {
    code: PROBLEM.otherVersion,
    nextVersion: newest + 1,
    message: `The station ${has}, and this is version ${version}.`,
    remedy:
      version <= newest && newest > 0
        ? `Look at what version ${newest} says, bring both together, and write version ${newest + 1}. The draft stays.`
        : `Write version ${newest + 1}. The draft stays.`,
  });
}
