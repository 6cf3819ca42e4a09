import { formatDate } from "#base";
import type { Entry } from "#log";
import type { PartShelf, StockLine, StockPart } from "#readiness";
import { strikeEntry } from "#station";
import { useState } from "react";
import { Link } from "wouter";
import { doingOf, useRecorder, type StationView } from "#web/device/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { StrikeDialog } from "#web/kit-view/strike-dialog.tsx";
import { Button, EmptyState } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { sayKind } from "#web/parts/words/entry-words.ts";
import { sayChange } from "./line-words.ts";

interface ShelfLinesProps {
  readonly view: StationView;
  readonly shelf: PartShelf;
  readonly part: StockPart;
}

/** So many of the newest are shown. */
const NEWEST = 40;

/** Every line that made the shelf what it is, newest first. What was done before a count was in that count. */
export function ShelfLines({ view, shelf, part }: ShelfLinesProps) {
  const recorder = useRecorder();
  const [striking, setStriking] = useState<Entry>();
  if (shelf.lines.length === 0) return <EmptyState title="Nothing was ever written of this shelf" />;
  const own = new Map(view.entriesOf(`part:${part.id}`).map((entry) => [entry.id, entry]));
  return (
    <>
      <Table
        caption="Lines of this shelf, newest first"
        isCaptionHidden
        columns={columns(view, shelf, own, setStriking)}
        rows={shelf.lines.toReversed().slice(0, NEWEST)}
        rowKey={({ entry }) => entry}
      />
      {striking && (
        <StrikeDialog
          what={sayKind(striking.kind)}
          judge={(reason) => strikeEntry(doingOf(view), striking, reason)}
          onStrike={(reason) => recorder.strike(striking, reason)}
          onClose={() => setStriking(undefined)}
        />
      )}
    </>
  );
}

function columns(
  view: StationView,
  shelf: PartShelf,
  own: ReadonlyMap<string, Entry>,
  strike: (entry: Entry) => void,
): readonly Column<StockLine>[] {
  const countedAt = shelf.lines.findLastIndex(({ what }) => what === "counted");
  return [
    { key: "day", head: "Day", cell: ({ day }) => formatDate(day) },
    { key: "what", head: "What", cell: (line) => <What line={line} view={view} place={shelf.place} /> },
    { key: "who", head: "By", cell: ({ by }) => nameOf(view, by) },
    {
      key: "counts",
      head: "Counts",
      cell: (line) => (shelf.lines.indexOf(line) < countedAt ? "in the count already" : ""),
    },
    {
      key: "strike",
      isAct: true,
      head: "Strike",
      cell: ({ entry, kit }: StockLine & { readonly kit?: string }) => {
        const line = own.get(entry);
        if (line === undefined) return kit === undefined ? "" : "on the kit's page";
        if (strikeEntry(doingOf(view), line, "asked").kind !== "entry") return "";
        return (
          <Button kind="quiet" onPress={() => strike(line)}>
            Strike
          </Button>
        );
      },
    },
  ];
}

/** What the line did to the shelf; a part fitted into a kit leads there. */
function What({ line, view, place }: { readonly line: StockLine; readonly view: StationView; readonly place: string }) {
  const kit = line.what === "used" ? line.kit : undefined;
  const words = sayChange(line, view, place);
  if (kit === undefined) return words;
  const name = [...view.kits, ...view.retired].find(({ id }) => id === kit)?.name ?? kit;
  return (
    <>
      {words} <Link to={`/kit/${kit}`}>{name}</Link>
    </>
  );
}
