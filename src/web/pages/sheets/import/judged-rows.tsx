import { formatDate, type DateOrder } from "#base";
import type { PlannedRow, RowFault, SheetField, SheetPlan } from "#store/sheets";
import { useState, type ComponentProps } from "react";
import { Button, ButtonRow, Notice, sayCount, Section } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { Table, type Column } from "#web/parts/table.tsx";
import { MendRow } from "./mend-row.tsx";

/** The sheet, and the ways to change it. */
type Mending = Pick<ComponentProps<typeof MendRow>, "table" | "onCells" | "onLeaveOut">;

/** Rows shown before somebody asks for all. */
const FIRST = 10;
const MOST_BAD = 50;

/** Columns that are wanted and not said. */
export function ColumnFaults({ plan }: { readonly plan: SheetPlan }) {
  if (plan.columns.length === 0) return null;
  return (
    <Notice tone="attention" title="Say first which column is which">
      <ul className="error-list">
        {plan.columns.map(({ field, allowed, remedy }) => (
          <li key={field}>
            Wanted: {allowed}. {remedy}
          </li>
        ))}
      </ul>
    </Notice>
  );
}

interface OrderChoiceProps {
  readonly either: NonNullable<SheetPlan["either"]>;
  readonly order: DateOrder | undefined;
  readonly onChoose: (order: DateOrder) => void;
}

/** Asked, never guessed: 03/04/2026 is two days. */
export function OrderChoice({ either: { text, dayFirst, monthFirst }, order, onChoose }: OrderChoiceProps) {
  return (
    <Choice
      label={`What is ${text.replaceAll('"', "")}, in this sheet?`}
      hint="Day and month could stand either way round. It holds for every date of the sheet."
      options={[
        { value: "day-first", label: `${formatDate(dayFirst)}: the day comes first` },
        { value: "month-first", label: `${formatDate(monthFirst)}: the month comes first` },
      ]}
      value={order}
      onChange={onChoose}
    />
  );
}

interface BadRowsProps extends Mending {
  readonly bad: readonly RowFault[];
}

/** Every bad row by its number, what was got, what is allowed and what to do, and its cells to be mended in place. */
export function BadRows({ bad, ...mending }: BadRowsProps) {
  const rows = [...new Set(bad.map(({ row }) => row))];
  const more = rows.length - MOST_BAD;
  return (
    <Notice tone="wrong" title={`${sayCount(rows.length, "row")} cannot be taken in, so none is`} isNews>
      <p>
        Mend them here, or in the sheet: save it, and choose it again. What you said of the columns stands; what is
        mended here leaves the file as it is.
      </p>
      <ul className="sheet-bad" aria-label="Bad rows">
        {rows.slice(0, MOST_BAD).map((row) => (
          <BadRow key={row} faults={bad.filter((one) => one.row === row)} row={row} {...mending} />
        ))}
      </ul>
      {more > 0 && <p>And {sayCount(more, "more row")}. They stand here once these are mended.</p>}
    </Notice>
  );
}

interface BadRowProps extends Mending {
  readonly row: number;
  readonly faults: readonly RowFault[];
}

function BadRow({ row, faults, ...mending }: BadRowProps) {
  const columns = [...new Set(faults.flatMap(({ at }) => at ?? []))].toSorted((one, other) => one - other);
  return (
    <li>
      {faults.map(({ column, fault }) => (
        <div key={`${column} ${fault.code} ${fault.field}`}>
          <p>
            <strong>
              Row {row}
              {column === undefined ? "" : `, ${column}`}
            </strong>
            : got {fault.got}; allowed: {fault.allowed}.
          </p>
          <p>
            {fault.remedy} <span className="error-code">{fault.code}</span>
          </p>
        </div>
      ))}
      <MendRow number={row} columns={columns} {...mending} />
    </li>
  );
}

interface LeftOutProps {
  readonly rows: readonly number[];
  readonly onPutBack: () => void;
}

/** Said as long as it is so: a row that somebody left out is not taken in. */
export function LeftOutRows({ rows, onPutBack }: LeftOutProps) {
  if (rows.length === 0) return null;
  const numbers = rows.toSorted((one, other) => one - other).join(", ");
  return (
    <Notice tone="attention" title={`Left out by you: ${rows.length === 1 ? "row" : "rows"} ${numbers}`}>
      <ButtonRow>
        <Button onPress={onPutBack}>{rows.length === 1 ? "Put it back" : "Put them back"}</Button>
      </ButtonRow>
    </Notice>
  );
}

interface PreviewProps extends Mending {
  readonly rows: readonly PlannedRow[];
  readonly fields: readonly SheetField[];
}

/** Every row as it was understood, and each of its cells to be changed. */
export function Preview({ rows, fields, ...mending }: PreviewProps) {
  const [isAll, setAll] = useState(false);
  const [open, setOpen] = useState<number>();
  const used = fields.filter(({ key }) => rows.some(({ read }) => read[key] !== undefined));
  const columns: readonly Column<PlannedRow>[] = [
    { key: "row", head: "Row", cell: ({ number }) => number },
    ...used.map(({ key, label }) => ({ key, head: label, cell: ({ read }: PlannedRow) => read[key] ?? "-" })),
    ...(rows.some(({ notes }) => notes.length > 0)
      ? [{ key: "notes", head: "To know", cell: ({ notes }: PlannedRow) => notes.join("; ") || "-" }]
      : []),
    changeColumn(open, setOpen),
  ];
  const all = mending.table.heads.map((_, column) => column);
  const shown = isAll ? rows : rows.slice(0, FIRST);
  return (
    <Section title="As it was read">
      {open !== undefined && <MendRow key={open} number={open} columns={all} {...mending} />}
      <div className="sheet-preview">
        <Table
          caption="Rows as they were read"
          isCaptionHidden
          columns={columns}
          rows={shown}
          rowKey={({ number }) => String(number)}
        />
      </div>
      {shown.length < rows.length && (
        <div>
          <Button onPress={() => setAll(true)}>Show all {rows.length} rows</Button>
        </div>
      )}
    </Section>
  );
}

/** Opens the cells of one row at a time. */
function changeColumn(open: number | undefined, onOpen: (row: number | undefined) => void): Column<PlannedRow> {
  const cell = ({ number }: PlannedRow) => (
    <Button
      kind="quiet"
      isOpen={open === number}
      label={`Change row ${number}`}
      onPress={() => onOpen(open === number ? undefined : number)}
    >
      Change
    </Button>
  );
  return { key: "change", head: "Change", isAct: true, cell };
}
