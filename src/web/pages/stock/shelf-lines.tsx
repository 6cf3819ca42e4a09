import type { Words } from "#words";
import type { Entry } from "#log";
import type { PartShelf, StockLine, StockPart } from "#readiness";
import { strikeEntry } from "#station";
import { useState } from "react";
import { Link } from "wouter";
import { doingOf, useRecorder, type StationView } from "#web/device/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { StrikeDialog } from "#web/kit-view/strike-dialog.tsx";
import { Button, EmptyState, sayDate } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { sayKind } from "#web/parts/words/entry-words.ts";
import { sayChange } from "./line-words.ts";
import { useWords, withParts } from "#web/language/index.ts";

interface ShelfLinesProps {
  readonly view: StationView;
  readonly shelf: PartShelf;
  readonly part: StockPart;
}

/** So many of the newest are shown. */
const NEWEST = 40;

/** Every line that made the shelf what it is, newest first. What was done before a count was in that count. */
export function ShelfLines({ view, shelf, part }: ShelfLinesProps) {
  const words = useWords("stockPart");
  const kinds = useWords("entryKinds");
  const recorder = useRecorder();
  const [striking, setStriking] = useState<Entry>();
  if (shelf.lines.length === 0) return <EmptyState title={words.neverWritten()} />;
  const own = new Map(view.entriesOf(`part:${part.id}`).map((entry) => [entry.id, entry]));
  return (
    <>
      <Table
        caption={words.lines()}
        isCaptionHidden
        columns={columns(view, shelf, own, { words, strike: setStriking })}
        rows={shelf.lines.toReversed().slice(0, NEWEST)}
        rowKey={({ entry }) => entry}
      />
      {striking && (
        <StrikeDialog
          what={sayKind(striking.kind, kinds)}
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
  { words, strike }: { readonly words: Words["stockPart"]; readonly strike: (entry: Entry) => void },
): readonly Column<StockLine>[] {
  const countedAt = shelf.lines.findLastIndex(({ what }) => what === "counted");
  return [
    { key: "day", head: words.day(), cell: ({ day }) => sayDate(day) },
    { key: "what", head: words.what(), cell: (line) => <What line={line} view={view} place={shelf.place} /> },
    { key: "who", head: words.by(), cell: ({ by }) => nameOf(view, by) },
    {
      key: "counts",
      head: words.counts(),
      cell: (line) => (shelf.lines.indexOf(line) < countedAt ? words.inCount() : ""),
    },
    {
      key: "strike",
      isAct: true,
      head: words.strike(),
      cell: ({ entry, kit }: StockLine & { readonly kit?: string }) => {
        const line = own.get(entry);
        if (line === undefined) return kit === undefined ? "" : words.onKitPage();
        if (strikeEntry(doingOf(view), line, "asked").kind !== "entry") return "";
        return (
          <Button kind="quiet" onPress={() => strike(line)}>
            {words.strike()}
          </Button>
        );
      },
    },
  ];
}

/** What the line did to the shelf; a part fitted into a kit leads there. */
function What({ line, view, place }: { readonly line: StockLine; readonly view: StationView; readonly place: string }) {
  const words = useWords("stockPart");
  const kit = line.what === "used" ? line.kit : undefined;
  const kitOf = (id: string) => [...view.kits, ...view.retired].find((one) => one.id === id)?.name ?? id;
  const placeOf = (id: string) => view.places.find((one) => one.id === id)?.name ?? id;
  if (kit === undefined) return sayChange(line, { shelf: place, words, placeOf, kitOf });
  return withParts(({ kit: mark }) => sayChange(line, { shelf: place, words, placeOf, kitOf: () => mark }), {
    kit: <Link to={`/kit/${kit}`}>{kitOf(kit)}</Link>,
  });
}
