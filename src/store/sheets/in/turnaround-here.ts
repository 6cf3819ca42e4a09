import { dayWritten, formatDate, parseDate, plainName } from "#base";
import type { KitState } from "#readiness";
import type { ActContext } from "#station";
import type { RowIn } from "./row-in.ts";

/** What a row says of a turnaround. */
interface SaidOfTurnaround {
  readonly day: string;
  readonly doneBy?: string;
  readonly result?: string;
  readonly note?: string;
}

/** Refuses a turnaround that was told of before, or done here, and says which line it repeats. */
export function refuseDouble(row: RowIn, kit: KitState, said: SaidOfTurnaround, doing: ActContext): void {
  const before = toldBefore(kit, said) ?? doneHere(kit, said, doing);
  if (before === undefined) return;
  row.fault("ST-231", "day", said.day, `a turnaround of ${kit.name} that is not here yet`, `It repeats ${before}.`);
}

/** By the sheet and row that it came from. */
function toldBefore(kit: KitState, said: SaidOfTurnaround): string | undefined {
  const same = (kit.told ?? []).find((one) => one.day === said.day && isSame(one, said));
  if (same === undefined) return undefined;
  const when = formatDate(parseDate(dayWritten(same.at)));
  return same.sheet ? `row ${same.sheet.row} of ${same.sheet.file}, taken in on ${when}` : `what was told on ${when}`;
}

function isSame(one: SaidOfTurnaround, other: SaidOfTurnaround): boolean {
  return (["doneBy", "result"] as const).every((key) => plainName(one[key] ?? "") === plainName(other[key] ?? ""));
}

function doneHere(kit: KitState, { day, doneBy = "" }: SaidOfTurnaround, doing: ActContext): string | undefined {
  const same = kit.turnarounds.find(({ closed }) => {
    if (closed === undefined || dayWritten(closed.at) !== day) return false;
    const who = doing.people.find(({ id }) => id === closed.by)?.name ?? "";
    return doneBy === "" || plainName(doneBy) === plainName(who);
  });
  return same && `the turnaround that was closed here on ${formatDate(parseDate(day))}`;
}
