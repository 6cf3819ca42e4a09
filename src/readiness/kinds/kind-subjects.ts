import { SUBJECTS } from "../registry/subjects.ts";
import type { EntryKind } from "./kinds.ts";

const SUBJECT_OF: Readonly<Record<EntryKind, string>> = SUBJECTS;

/** The sort of subject that a kind of entry is about: "kit" for "kit:7f3k"; undefined where it may be about any. */
export function subjectOfKind(kind: EntryKind): string | undefined {
  const subject = SUBJECT_OF[kind];
  return subject === "any" ? undefined : subject;
}
