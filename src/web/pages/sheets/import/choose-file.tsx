import { SHEET_LIMITS } from "#store/sheets";
import { useId } from "react";
import { ErrorBox } from "#web/parts/index.ts";
import type { SheetNow } from "./use-sheet.ts";
import { useWords } from "#web/language/index.ts";

/** The file, and which of its sheets. */
export function ChooseFile({ sheet }: { readonly sheet: SheetNow }) {
  const words = useWords("sheets");
  const id = useId();
  const { chosen, choose, reading } = sheet;
  return (
    <>
      <div className="sheet-file">
        <label htmlFor={id} className="button button-plain" data-pending={reading.isBusy || undefined}>
          {reading.isBusy ? words.reading() : chosen ? words.chooseAnother() : words.choose()}
        </label>
        <input
          id={id}
          className="for-readers-only"
          type="file"
          accept=".csv,.tsv,.txt,.xlsx,text/csv"
          onChange={({ target }) => {
            const [file] = target.files ?? [];
            if (file) void choose(file);
            target.value = "";
          }}
        />
      </div>
      <p className="quiet">{words.limits({ rows: SHEET_LIMITS.rows, megabytes: SHEET_LIMITS.bytes / 1e6 })}</p>
      <ErrorBox error={reading.error} title={words.notRead()} />
      {chosen && (
        <p>
          {[words.fileRows({ file: chosen.table.file, count: chosen.table.rows.length }), ...chosen.table.notices].join(
            " ",
          )}
        </p>
      )}
      {chosen && chosen.table.sheets.length > 1 && <SheetPick sheet={sheet} />}
    </>
  );
}

function SheetPick({ sheet: { chosen, choose } }: { readonly sheet: SheetNow }) {
  const words = useWords("sheets");
  if (!chosen) return null;
  return (
    <label className="field">
      <span className="field-label">{words.whichSheet()}</span>
      <select
        className="field-input"
        value={chosen.table.sheet ?? ""}
        onChange={({ target }) => void choose(chosen.file, target.value)}
      >
        {chosen.table.sheets.map((name) => (
          <option key={name}>{name}</option>
        ))}
      </select>
    </label>
  );
}
