// The table of a run, and the verdict.
import { coverageRows, scoreRows, timeRows } from "./forecasts.ts";
import { falseLeaveRows } from "./false-leave.ts";
import { leavingRows } from "./leaving.ts";
import { pumpRows } from "./pumps-found.ts";
import { isKept, type Row, type Wanted } from "./rows.ts";
import type { Watched } from "./watching.ts";
import { wordRows } from "./words.ts";

/** Every figure of a run. */
export function measure(all: readonly Watched[]): readonly Row[] {
  return [
    ...wordRows(all),
    ...leavingRows(all),
    ...falseLeaveRows(all),
    ...coverageRows(all),
    ...timeRows(all),
    ...scoreRows(all),
    ...pumpRows(all),
  ];
}

/** Rows that do not keep what is wanted of them. */
export function notKept(rows: readonly Row[]): readonly Row[] {
  return rows.filter((row) => isKept(row) === false);
}

/** The table as text. */
export function tableOf(rows: readonly Row[]): string {
  const wide = Math.max(...rows.map(({ name }) => name.length)) + 2;
  const lines = rows.flatMap((row, n) => [
    ...(row.group === rows[n - 1]?.group ? [] : ["", row.group.toUpperCase()]),
    lineOf(row, wide),
  ]);
  return lines.join("\n");
}

/** The table in Markdown. */
export function markdownOf(rows: readonly Row[]): string {
  const lines = rows.map((row) => {
    const interval = intervalOf(row);
    const cells = [
      row.name,
      say(row.value),
      interval,
      sayWanted(row.wanted),
      row.counts,
      isKept(row) === false ? "no" : "",
    ];
    return `| ${cells.join(" | ")} |`;
  });
  return ["| | measured | 95 % interval | wanted | of | met |", "|---|---|---|---|---|---|", ...lines].join("\n");
}

function intervalOf({ low, high }: Row): string {
  return low === undefined || high === undefined ? "" : `${say(low)} to ${say(high)}`;
}

function lineOf(row: Row, wide: number): string {
  const { name, value, counts, wanted } = row;
  const interval = intervalOf(row);
  const mark = isKept(row) === false ? "  NOT MET" : "";
  return `${name.padEnd(wide)}${say(value).padEnd(8)}${interval.padEnd(18)}${sayWanted(wanted).padEnd(15)}${counts}${mark}`;
}

function sayWanted(wanted: Wanted | undefined): string {
  if (wanted === undefined) return "";
  const { atLeast, atMost, below } = wanted;
  if (atLeast !== undefined && atMost !== undefined) return `${atLeast} to ${atMost}`;
  if (below !== undefined) return `below ${below}`;
  return atLeast === undefined ? `at most ${atMost}` : `at least ${atLeast}`;
}

function say(value: number): string {
  if (Number.isNaN(value)) return "none";
  if (!Number.isFinite(value)) return "never";
  return value >= 100 ? value.toFixed(0) : value.toFixed(3);
}
