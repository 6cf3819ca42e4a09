import { InputError, type DateOrder } from "#base";
import {
  fieldsOf,
  guessMapping,
  mendTable,
  NO_MENDS,
  planSheet,
  type Mapping,
  type Mends,
  type SheetOf,
  type SheetSaid,
  type SheetTable,
} from "#store/sheets";
import { useState } from "react";
import { uuidv7 } from "uuidv7";
import { doingOf, useRecorder, useStation, type StationView } from "#web/device/index.ts";
import { useDoing } from "#web/parts/index.ts";
import { readSheetFile } from "#web/worker/sheet-line.ts";

/** A file that was chosen, as it was read and as somebody said its columns are. */
interface Chosen {
  readonly file: File;
  readonly table: SheetTable;
  readonly mapping: Mapping;
  readonly order?: DateOrder;
  readonly mends: Mends;
}

/** A sheet from its choice to its last line. Nothing is written before somebody has seen all of it and says so. */
export function useSheet(of: SheetOf) {
  const view = useStation();
  const recorder = useRecorder();
  const [chosen, setChosen] = useState<Chosen>();
  const [written, setWritten] = useState<number>();
  const reading = useDoing();
  const writing = useDoing();
  const choose = (file: File, sheet?: string) => {
    setWritten(undefined);
    writing.clear();
    return reading.run(async () => {
      setChosen((before) => (before?.file === file ? before : undefined));
      const table = await readSheetFile(file, sheet);
      setChosen((before) => ({
        ...before,
        file,
        table,
        mapping: mappingFor(table, of, view, chosen),
        mends: NO_MENDS,
      }));
    });
  };
  const change = (part: Partial<Chosen>) => setChosen((before) => before && { ...before, ...part });
  const takeIn = () =>
    writing.run(async () => {
      if (!chosen) return;
      const plan = planNow(saidOf(of, chosen), recorder.station() ?? view);
      if (plan.drafts.length === 0) throw new InputError([...plan.columns, ...plan.bad.map(({ fault }) => fault)]);
      await recorder.recordAll(plan.drafts);
      setWritten(plan.rows.length);
      setChosen(undefined);
    });
  return { chosen, choose, change, takeIn, written, reading, writing };
}

export type SheetNow = ReturnType<typeof useSheet>;

/** What was said of a file, for the plan. */
export function saidOf(of: SheetOf, { table, mapping, order, mends }: Chosen): SheetSaid {
  return { of, table: mendTable(table, mends), mapping, ...(order !== undefined && { order }) };
}

/** The plan as the station stands now. */
export function planNow(said: SheetSaid, view: StationView) {
  return planSheet(said, doingOf(view), uuidv7);
}

/** The same headings again: what was said of them stands. */
function mappingFor(table: SheetTable, of: SheetOf, view: StationView, before: Chosen | undefined): Mapping {
  const isSame = before?.table.heads.join("\n") === table.heads.join("\n");
  return isSame && before ? before.mapping : guessMapping(table.heads, fieldsOf(of, view));
}
