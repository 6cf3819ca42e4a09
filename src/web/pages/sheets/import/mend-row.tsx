import { saidBy, type SheetTable } from "#store/sheets";
import { useState } from "react";
import { Button, ButtonRow, TextField } from "#web/parts/index.ts";
import { useWords } from "#web/language/index.ts";

interface MendRowProps {
  /** As it stands now, with what was changed before. */
  readonly table: SheetTable;
  /** As the spreadsheet numbers it. */
  readonly number: number;
  /** Columns to be shown, from 0. */
  readonly columns: readonly number[];
  readonly onCells: (number: number, texts: ReadonlyMap<number, string>) => void;
  readonly onLeaveOut: (number: number) => void;
}

/** Cells of one row to be written anew in place. What is typed stays, whatever it is judged to be. */
export function MendRow({ table, number, columns, onCells, onLeaveOut }: MendRowProps) {
  const words = useWords("sheets");
  const [typed, setTyped] = useState<ReadonlyMap<number, string>>(new Map());
  const cells = table.rows.find((row) => row.number === number)?.cells ?? [];
  const textOf = (column: number) => {
    const cell = cells[column];
    return typed.get(column) ?? (cell ? saidBy(cell) : "");
  };
  return (
    <form
      className="sheet-mend"
      onSubmit={(event) => {
        event.preventDefault();
        onCells(number, typed);
      }}
    >
      {columns.map((column) => (
        <TextField
          key={column}
          label={words.rowColumn({ row: number, column: table.heads[column] ?? "" })}
          value={textOf(column)}
          onChange={(text) => setTyped(new Map([...typed, [column, text]]))}
          limit={MOST}
        />
      ))}
      <ButtonRow>
        {columns.length > 0 && (
          <Button type="submit" isDisabled={typed.size === 0}>
            {words.checkAgain({ row: number })}
          </Button>
        )}
        <Button kind="quiet" onPress={() => onLeaveOut(number)}>
          {words.leaveOut({ row: number })}
        </Button>
      </ButtonRow>
    </form>
  );
}

/** The most that is typed into one cell [characters]. */
const MOST = 2000;
