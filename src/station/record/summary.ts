import { confirmedBy, type Confirmed } from "#readiness";
import { nameOf, secondPerson } from "./record-reading.ts";
import type { RecordRead, RecordTable } from "./record.ts";
import { instantWords } from "./value-words.ts";

/** Who opened and closed it and when, the seals, and who else saw it: each row a name and what is on record. */
export function summaryOf(record: RecordRead): RecordTable["rows"] {
  const { opened, closed, because } = record.turnaround;
  const recorded = opened.sealOnRecord === undefined ? "none was on record" : `${opened.sealOnRecord} was on record`;
  const [seen, ...before] = [opened.sealSeen, ...(opened.sealReadBefore ?? [])].map((one) => one || "no seal found");
  const first = before.length === 0 ? "" : `, read before that as ${before.join(", ")}`;
  return [
    ...(record.turnaround.drill === undefined ? [] : [{ cells: ["Drill", DRILL_WORDS], bold: true }]),
    { cells: ["Opened", `${instantWords(opened.at)} by ${nameOf(record, opened.by)}: ${WHY_OPENED[because]}`] },
    { cells: ["Seal read", `${seen}${first}; ${recorded}`] },
    { cells: ["Closed", closedWords(record)] },
    { cells: ["New seal", closed?.seal ?? "none"], bold: true },
    { cells: ["Second person", secondPerson(record) ?? "none named"] },
    ...secondRows(record),
    ...(closed?.reason ? [{ cells: ["Reason", closed.reason] }] : []),
  ];
}

/** Why it was opened, as the screen asks it. */
const WHY_OPENED: Readonly<Record<RecordRead["turnaround"]["because"], string>> = {
  routine: "routine",
  returned: "back from a vessel",
  finding: "to put a finding right",
  seal: "for its seal",
  lapse: "something in it runs out",
};

const DRILL_WORDS = "This turnaround was part of a drill: faults may have been planted.";

function closedWords(record: RecordRead): string {
  const { closed } = record.turnaround;
  if (!closed) return "not closed";
  const how = { sealed: "sealed", grounded: "as grounded", "set-aside": "set aside for another turnaround" }[
    closed.how
  ];
  return `${instantWords(closed.at)} by ${nameOf(record, closed.by)}, ${how}`;
}

/** What was done by who may not do it alone: who saw it, or why nobody did. */
function secondRows(record: RecordRead): RecordTable["rows"] {
  return (record.turnaround.seconds ?? []).map((said) => {
    const { at, by, second, note } = said;
    const doer = nameOf(record, by);
    const when = instantWords(at);
    if (second === undefined) return { cells: ["Gone on alone", `${doer}, ${when}: ${note}`], bold: true };
    const own = confirmedWords(confirmedBy(record.turnaround, said));
    return { cells: ["Seen done", `${nameOf(record, second)} saw what ${doer} did, ${when}; ${own}`] };
  });
}

/** Whether the second person said so themselves, and how. */
function confirmedWords(confirmed: Confirmed | undefined): string {
  if (confirmed === undefined) return "named by the doer, not confirmed";
  return `confirmed ${confirmed.byPin ? "by their own PIN" : "on a device of their own"}, ${instantWords(confirmed.at)}`;
}
