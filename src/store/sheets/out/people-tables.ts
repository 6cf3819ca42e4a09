import { canonicalText } from "#log";
import { qualificationsOf, workDueOf } from "#station";
import { nameIn, type OutRow, type TableSource } from "./table-source.ts";

/** People on the list. */
export function peopleRows({ people }: TableSource): readonly OutRow[] {
  const here = people.filter(({ left }) => !left);
  return [
    ["Name", "Role", "Hours a week (h)", "Away (first day to last day)"],
    ...here.map(({ name, role, hours, away = [] }) => [name, roleWord(role), hours ?? "", sayAway(away)]),
  ];
}

function sayAway(away: readonly { readonly from: string; readonly to: string }[]): string {
  return away.map(({ from, to }) => (from === to ? from : `${from} to ${to}`)).join("; ");
}

/** Who holds which qualification until when, and who does not. */
export function qualificationRows(source: TableSource): readonly OutRow[] {
  const rows = qualificationsOf(source, source.today).flatMap(({ qualification, held, others }) => [
    ...held.map(({ person, holding }): OutRow => [qualification.name, person.name, "held", holding.until]),
    ...others.map(({ person }): OutRow => [qualification.name, person.name, "not held", ""]),
  ]);
  return [["Qualification", "Person", "Stands", "Held until (last day)"], ...rows];
}

/** Work due within a month. */
export function workRows(source: TableSource): readonly OutRow[] {
  const days = ["Do by (day)", "Day given (day)", "Planned for the week of (day)"];
  const heads = ["Kit", "Serial", "Place", "What", "Due", ...days, "Minutes (min)", "People", "Taken by"];
  const rows = workDueOf(source, source.now).map((line) => [
    line.kit.name,
    line.kit.serial,
    line.place.name,
    line.tasks.map(({ what }) => what).join("; "),
    line.bucket,
    line.by ?? "",
    line.said.day?.day ?? "",
    line.planned ?? "",
    line.minutes,
    line.people,
    line.said.takers.map(({ person }) => nameIn(source.people, person)).join(", "),
  ]);
  return [heads, ...rows];
}

/** Casualties, newest first. */
export function casualtyRows({ casualties, people }: TableSource): readonly OutRow[] {
  const heads = ["Casualty", "Opened", "By", "Closed", "Soundings (count)", "Pumps (count)", "Gone through"];
  const rows = casualties.map((one) => [
    one.name,
    one.opened.at,
    nameIn(people, one.opened.by),
    one.closed?.at ?? "",
    one.soundings.length,
    one.pumps.length,
    one.reviewed?.at ?? "",
  ]);
  return [heads, ...rows];
}

/** Every line of the log, in order of time. */
export function* lineRows({ lines, people }: TableSource): Generator<OutRow> {
  yield ["Id", "At", "By", "Device", "Place", "About", "Kind", "Pattern", "What it says (JSON)"];
  const ordered = [...lines()].sort(
    (one, other) => Date.parse(one.at) - Date.parse(other.at) || (one.id < other.id ? -1 : 1),
  );
  for (const { id, at, by, device, place, subject, kind, pattern, body } of ordered) {
    yield [id, at, nameIn(people, by), device, place, subject, kind, pattern ?? "", canonicalText(body)];
  }
}

function roleWord(role: string): string {
  return role.charAt(0).toUpperCase() + role.slice(1);
}
