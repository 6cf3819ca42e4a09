import type { Entry } from "#log";
import { strikeEntry } from "#station";
import { useState } from "react";
import { doingOf, useRecorder, type HistoryLine, type StationView } from "#web/device/index.ts";
import { Button, Section, sayCount, Timestamp } from "#web/parts/index.ts";
import { ReceivedLate } from "#web/parts/notices/received-late.tsx";
import { sayKind } from "#web/parts/words/entry-words.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { HandedMark } from "../join/handed-mark.tsx";
import { StrikeDialog } from "#web/kit-view/strike-dialog.tsx";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { usePreferences } from "#web/theme/index.ts";
import { tellCasualty } from "../casualty-telling.ts";
import { useSheet } from "./use-sheet.ts";

/** Every line written about her, newest first; struck ones stay in sight. Drawn once somebody looks, not at every tap. */
export function SheetEntries() {
  const { casualty, view } = useSheet();
  const recorder = useRecorder();
  const [isOpen, setOpen] = useState(false);
  const [striking, setStriking] = useState<Entry>();
  const lines = view.historyOf(`casualty:${casualty.id}`).toReversed();
  return (
    <Section title="Entries" beside={<span className="quiet">{sayCount(lines.length, "line")}, newest first</span>}>
      <details className="casualty-more" onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>All lines</summary>
        {isOpen && <Lines lines={lines} onStrike={setStriking} />}
      </details>
      {striking && (
        <StrikeDialog
          what={sayKind(striking.kind)}
          judge={(reason) => strikeEntry(doingOf(view), striking, reason)}
          onStrike={(reason) => recorder.strike(striking, reason)}
          onClose={() => setStriking(undefined)}
        />
      )}
    </Section>
  );
}

interface LinesProps {
  readonly lines: readonly HistoryLine[];
  readonly onStrike: (entry: Entry) => void;
}

function Lines({ lines, onStrike }: LinesProps) {
  const { view } = useSheet();
  return (
    <Table
      caption="Entries, newest first"
      isCaptionHidden
      columns={columns(view, onStrike)}
      rows={lines}
      rowKey={({ entry }) => entry.id}
    />
  );
}

function columns(view: StationView, onStrike: LinesProps["onStrike"]): readonly Column<HistoryLine>[] {
  return [
    { key: "what", head: "What", cell: (line) => <What line={line} /> },
    { key: "when", head: "When", cell: (line) => <When line={line} /> },
    { key: "who", head: "By", cell: ({ entry }) => nameOf(view, entry.by) },
    { key: "strike", head: "Strike", isAct: true, cell: (line) => <Strike line={line} onStrike={onStrike} /> },
  ];
}

function When({ line: { entry, received } }: { readonly line: HistoryLine }) {
  return (
    <>
      <Timestamp at={entry.at} /> <ReceivedLate at={entry.at} received={received} />
    </>
  );
}

interface StrikeProps extends Pick<LinesProps, "onStrike"> {
  readonly line: HistoryLine;
}

/** Offered to whoever may strike this line, as the station's rule says. */
function Strike({ line: { entry, struck }, onStrike }: StrikeProps) {
  const { view } = useSheet();
  if (struck || strikeEntry(doingOf(view), entry, "asked").kind !== "entry") return null;
  return (
    <Button kind="quiet" label={`Strike: ${sayKind(entry.kind)}, ${entry.at}`} onPress={() => onStrike(entry)}>
      Strike
    </Button>
  );
}

function What({ line: { entry, struck } }: { readonly line: HistoryLine }) {
  const { units } = usePreferences();
  const told = tellCasualty(entry, units);
  const words = (
    <>
      <strong>{sayKind(entry.kind)}</strong>
      {told !== "" && `: ${told}`}
      <HandedMark entry={entry} />
    </>
  );
  if (!struck) return words;
  return (
    <>
      <s>{words}</s> <span className="quiet">struck: {(struck.body as { readonly reason: string }).reason}</span>
    </>
  );
}
