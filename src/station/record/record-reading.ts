import type { Entry } from "#log";
import { answerKey, sealWitness, type Bodies, type Finding, type RecordLine, type StepAnswer } from "#readiness";
import type { RecordRead } from "./record.ts";
import { instantWords } from "./value-words.ts";
import { answerWordsOf } from "./record-words.ts";

/* What the parts of a record look up in it alike. */

/** The lines of a kind, oldest first. */
export function linesOfKind<Kind extends keyof Bodies>(
  entries: readonly Entry[],
  kind: Kind,
): readonly Entry<Kind, Bodies[Kind]>[] {
  const isOfKind = (entry: Entry): entry is Entry<Kind, Bodies[Kind]> => entry.kind === kind;
  return entries.filter(isOfKind);
}

/** Who a person is by name. */
export function nameOf({ people }: Pick<RecordRead, "people">, person: string): string {
  return people.get(person) ?? person;
}

/** Findings raised in the turnaround, and those raised, mended or closed while the kit was open: robbed, recalled, older. */
export function findingsOf({ kit, turnaround }: RecordRead): readonly Finding[] {
  return kit.findings.filter((finding) => {
    const own = finding.turnaround === turnaround.id;
    const told = [finding.raised, ...finding.remedies, ...(finding.closed ? [finding.closed] : [])];
    return own || told.some(({ at }) => isWhileOpen(turnaround, at));
  });
}

/** True for an instant between the opening of a turnaround and its closing. */
function isWhileOpen({ opened, closed }: RecordRead["turnaround"], at: string): boolean {
  const instant = Date.parse(at);
  return instant >= Date.parse(opened.at) && (!closed || instant <= Date.parse(closed.at));
}

/** Who else saw it closed, as the line that sealed it says. */
export function secondPerson({ entries }: Pick<RecordRead, "entries">): string | undefined {
  return entries.flatMap((entry) => sealWitness(entry) ?? []).at(-1);
}

/** A line's number as the card and the screen print it. */
export function labelOf(labels: ReadonlyMap<string, string>, { step, check, line }: RecordLine): string {
  return labels.get(answerKey(step, check)) ?? String(line);
}

/** What was answered at a line, in the words of the screen, with every reading that was taken there. */
export function said(record: RecordRead, line: RecordLine): string {
  const all = answersAt(record, line);
  const standing = all.at(-1);
  return standing ? answerWordsOf(record, standing, all) : "NOT ANSWERED";
}

type Said = StepAnswer & { readonly at: string };

/** What was answered at a line, each time with its instant, the one that stands last. */
export function answersAt({ entries, turnaround }: RecordRead, { step, check }: RecordLine): readonly Said[] {
  const standing = turnaround.answers[answerKey(step, check)];
  if (!standing) return [];
  const earlier = linesOfKind(entries, "step-answered").filter(
    ({ id, body }) => id !== standing.mark.entry && body.step === step && body.check === check,
  );
  return [...earlier.map(({ at, body }) => ({ ...body, at })), { ...standing, at: standing.mark.at }];
}

/** Who answered a line, and when. */
export function whoWhen(record: RecordRead, { mark }: RecordLine): string {
  return mark ? `${nameOf(record, mark.by)}, ${instantWords(mark.at)}` : "";
}
