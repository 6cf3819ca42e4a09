import { createStationFold, newestReceipt } from "#station";
import { sourceOfFold, TABLE_IDS, tableCsv, type TableId } from "#store/sheets";
import { writeFile } from "node:fs/promises";
import type { Call, Command } from "./command.ts";
import { requireDatabase, stationPatterns, withLog } from "./open-data.ts";
import { requireOutside } from "./output-file.ts";
import { warnOfClock } from "./station-clock.ts";
import { usageError } from "./usage-error.ts";
import { writeWhole } from "./whole-file.ts";
import { readWholeLog } from "./whole-log.ts";

/** `drykeel table`: a table of the station as comma-separated values. */
export const tableCommand: Command = {
  name: "table",
  usage: "table NAME [FILE]",
  summary: `a table as CSV, printed or written to FILE: ${TABLE_IDS.join(", ")}`,
  options: {},
  run: async (call) => {
    const id = requireTable(call);
    requireDatabase(call.surroundings);
    if (call.words[1] !== undefined) requireOutside(call.surroundings, call.words[1]);
    const fold = createStationFold(stationPatterns(call));
    await withLog(call.surroundings, async (log) => {
      warnOfClock(call, await newestReceipt(log));
      await readWholeLog(log, fold);
    });
    const rows = tableCsv(id, sourceOfFold(fold, call.surroundings.now));
    const [, file] = call.words;
    if (file === undefined) printRows(call, rows);
    else await writeWhole(file, (handle) => writeFile(handle, rows));
    return 0;
  },
};

/** To a terminal each line ends as its own do, and signs that would steer it are question marks. */
function printRows({ terminal }: Call, rows: Iterable<string>): void {
  for (const row of rows) terminal.out(row.replace(/\r\n$/, ""));
}

function requireTable({ words: [name] }: Call): TableId {
  const id = TABLE_IDS.find((one) => one === name);
  if (id !== undefined) return id;
  throw usageError("NAME", name ?? "nothing", TABLE_IDS.join(", "), "Write: table kits kits.csv");
}
