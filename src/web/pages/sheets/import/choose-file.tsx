import { SHEET_LIMITS } from "#store/sheets";
import { useId } from "react";
import { ErrorBox, sayCount } from "#web/parts/index.ts";
import type { SheetNow } from "./use-sheet.ts";

/** The file, and which of its sheets. */
export function ChooseFile({ sheet }: { readonly sheet: SheetNow }) {
  const id = useId();
  const { chosen, choose, reading } = sheet;
  return (
    <>
      <div className="sheet-file">
        <label htmlFor={id} className="button button-plain" data-pending={reading.isBusy || undefined}>
          {reading.isBusy ? "Reading the file" : chosen ? "Choose another file, or the mended one" : "Choose the file"}
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
      <p className="quiet">
        CSV or XLSX, at most {SHEET_LIMITS.rows.toLocaleString("en")} rows and {SHEET_LIMITS.bytes / 1e6} MB. It is read
        on this device; nothing is sent and nothing is written until you say so.
      </p>
      <ErrorBox error={reading.error} title="Not read" />
      {chosen && (
        <p>
          {[`${chosen.table.file}: ${sayCount(chosen.table.rows.length, "row")}.`, ...chosen.table.notices].join(" ")}
        </p>
      )}
      {chosen && chosen.table.sheets.length > 1 && <SheetPick sheet={sheet} />}
    </>
  );
}

function SheetPick({ sheet: { chosen, choose } }: { readonly sheet: SheetNow }) {
  if (!chosen) return null;
  return (
    <label className="field">
      <span className="field-label">Which sheet of the workbook</span>
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
