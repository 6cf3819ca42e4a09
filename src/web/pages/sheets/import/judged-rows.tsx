import { formatDate, type DateOrder } from "#base";
import type { PlannedRow, RowFault, SheetField, SheetPlan } from "#store/sheets";
import { useState } from "react";
import { Button, Notice, sayCount, Section } from "../../../parts/index.ts";
import { Choice } from "../../../parts/fields/choice.tsx";
import { Table, type Column } from "../../../parts/table.tsx";

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

/** Every bad row by its number, what was got, what is allowed and what to do. */
export function BadRows({ bad }: { readonly bad: readonly RowFault[] }) {
  const rows = new Set(bad.map(({ row }) => row));
  const more = bad.length - MOST_BAD;
  return (
    <Notice tone="wrong" title={`${sayCount(rows.size, "row")} cannot be taken in, so none is`} isNews>
      <p>Mend them in the sheet, save it, and choose it again. What you said of the columns stands.</p>
      <ul className="sheet-bad" aria-label="Bad rows">
        {bad.slice(0, MOST_BAD).map(({ row, column, fault }) => (
          <li key={`${row} ${column} ${fault.code} ${fault.field}`}>
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
          </li>
        ))}
      </ul>
      {more > 0 && <p>And {more} more.</p>}
    </Notice>
  );
}

interface PreviewProps {
  readonly rows: readonly PlannedRow[];
  readonly fields: readonly SheetField[];
}

/** Every row as it was understood. */
export function Preview({ rows, fields }: PreviewProps) {
  const [isAll, setAll] = useState(false);
  const used = fields.filter(({ key }) => rows.some(({ read }) => read[key] !== undefined));
  const columns: readonly Column<PlannedRow>[] = [
    { key: "row", head: "Row", cell: ({ number }) => number },
    ...used.map(({ key, label }) => ({ key, head: label, cell: ({ read }: PlannedRow) => read[key] ?? "-" })),
    ...(rows.some(({ notes }) => notes.length > 0)
      ? [{ key: "notes", head: "To know", cell: ({ notes }: PlannedRow) => notes.join("; ") || "-" }]
      : []),
  ];
  const shown = isAll ? rows : rows.slice(0, FIRST);
  return (
    <Section title="As it was read">
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
