import type { DateOrder } from "#base";
import type { PlannedRow, RowFault, SheetField, SheetPlan } from "#store/sheets";
import { useState, type ComponentProps } from "react";
import { Button, ButtonRow, Notice, sayDate, Section } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { Table, type Column } from "#web/parts/table.tsx";
import { MendRow } from "./mend-row.tsx";
import type { Words } from "#words";
import { useWords, withParts } from "#web/language/index.ts";

/** The sheet, and the ways to change it. */
type Mending = Pick<ComponentProps<typeof MendRow>, "table" | "onCells" | "onLeaveOut">;

/** Rows shown before somebody asks for all. */
const FIRST = 10;
const MOST_BAD = 50;

/** Columns that are wanted and not said. */
export function ColumnFaults({ plan }: { readonly plan: SheetPlan }) {
  const words = useWords("sheets");
  if (plan.columns.length === 0) return null;
  return (
    <Notice tone="attention" title={words.sayColumns()}>
      <ul className="error-list">
        {plan.columns.map(({ field, allowed, remedy }) => (
          <li key={field}>
            {words.wanted({ allowed })} {remedy}
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
  const words = useWords("sheets");
  return (
    <Choice
      label={words.whatIsDate({ text: text.replaceAll('"', "") })}
      hint={words.dateHint()}
      options={[
        { value: "day-first", label: words.dayFirst({ day: sayDate(dayFirst) }) },
        { value: "month-first", label: words.monthFirst({ day: sayDate(monthFirst) }) },
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
  const words = useWords("sheets");
  const rows = [...new Set(bad.map(({ row }) => row))];
  const more = rows.length - MOST_BAD;
  return (
    <Notice tone="wrong" title={words.cannotTake({ count: rows.length })} isNews>
      <p>{words.mendMore()}</p>
      <ul className="sheet-bad" aria-label={words.badRows()}>
        {rows.slice(0, MOST_BAD).map((row) => (
          <BadRow key={row} faults={bad.filter((one) => one.row === row)} row={row} {...mending} />
        ))}
      </ul>
      {more > 0 && <p>{words.moreRows({ count: more })}</p>}
    </Notice>
  );
}

interface BadRowProps extends Mending {
  readonly row: number;
  readonly faults: readonly RowFault[];
}

function BadRow({ row, faults, ...mending }: BadRowProps) {
  const words = useWords("sheets");
  const columns = [...new Set(faults.flatMap(({ at }) => at ?? []))].toSorted((one, other) => one - other);
  return (
    <li>
      {faults.map(({ column, fault }) => (
        <div key={`${column} ${fault.code} ${fault.field}`}>
          <p>
            {withParts(({ at }) => words.fault({ at, got: fault.got, allowed: fault.allowed }), {
              at: <strong>{column === undefined ? words.row({ row }) : words.rowColumn({ row, column })}</strong>,
            })}
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
  const words = useWords("sheets");
  if (rows.length === 0) return null;
  const numbers = rows.toSorted((one, other) => one - other).join(", ");
  return (
    <Notice tone="attention" title={words.leftOutByYou({ count: rows.length, rows: numbers })}>
      <ButtonRow>
        <Button onPress={onPutBack}>{words.putBack({ count: rows.length })}</Button>
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
  const words = useWords("sheets");
  const [isAll, setAll] = useState(false);
  const [open, setOpen] = useState<number>();
  const used = fields.filter(({ key }) => rows.some(({ read }) => read[key] !== undefined));
  const columns: readonly Column<PlannedRow>[] = [
    { key: "row", head: words.rowHead(), cell: ({ number }) => number },
    ...used.map(({ key, label }) => ({ key, head: label, cell: ({ read }: PlannedRow) => read[key] ?? "-" })),
    ...(rows.some(({ notes }) => notes.length > 0)
      ? [
          {
            key: "notes",
            head: words.toKnow(),
            cell: ({ notes }: PlannedRow) => notes.join(words.notesBetween()) || "-",
          },
        ]
      : []),
    changeColumn(open, words, setOpen),
  ];
  const all = mending.table.heads.map((_, column) => column);
  const shown = isAll ? rows : rows.slice(0, FIRST);
  return (
    <Section title={words.asRead()}>
      {open !== undefined && <MendRow key={open} number={open} columns={all} {...mending} />}
      <div className="sheet-preview">
        <Table
          caption={words.rowsAsRead()}
          isCaptionHidden
          columns={columns}
          rows={shown}
          rowKey={({ number }) => String(number)}
        />
      </div>
      {shown.length < rows.length && (
        <div>
          <Button onPress={() => setAll(true)}>{words.showAll({ count: rows.length })}</Button>
        </div>
      )}
    </Section>
  );
}

/** Opens the cells of one row at a time. */
function changeColumn(
  open: number | undefined,
  words: Words["sheets"],
  onOpen: (row: number | undefined) => void,
): Column<PlannedRow> {
  const cell = ({ number }: PlannedRow) => (
    <Button
      kind="quiet"
      isOpen={open === number}
      label={words.changeRow({ row: number })}
      onPress={() => onOpen(open === number ? undefined : number)}
    >
      {words.change()}
    </Button>
  );
  return { key: "change", head: words.change(), isAct: true, cell };
}
