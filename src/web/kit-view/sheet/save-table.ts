import type { Entry } from "#log";
import type { TableId, TableSource } from "#store/sheets";
import { saveFile, type StationView } from "#web/device/index.ts";
import { deviceAmbient } from "#web/device/clock.ts";

/** Marks a file as UTF-8 for spreadsheets, which otherwise guess. */
const MARK = "\u{FEFF}";

/** Makes a table of what this device holds, and hands it to the browser to save. Needs no network. */
export async function saveTable(id: TableId, view: StationView): Promise<void> {
  const { tableCsv } = await import("#store/sheets");
  const pieces = [MARK, ...tableCsv(id, sourceOf(view))];
  saveFile(new Blob(pieces, { type: "text/csv;charset=utf-8" }), `${id}-${view.today}.csv`);
}

function sourceOf(view: StationView): TableSource {
  const kits = [...view.kits, ...view.retired];
  return { ...view, kits, now: deviceAmbient.now(), lines: () => linesOf(view) };
}

/** Every line that this device holds; of a casualty with several sheets each sheet's own. */
function* linesOf(view: StationView): Generator<Entry> {
  const seen = new Set<string>();
  for (const subject of view.subjects()) {
    for (const { entry } of view.historyOf(subject)) {
      if (!seen.has(entry.id)) yield entry;
      seen.add(entry.id);
    }
  }
}
