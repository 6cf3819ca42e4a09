import { useWords, withParts } from "#web/language/index.ts";
import type { Words } from "#words";
import type { Entry } from "#log";
import { strikeEntry } from "#station";
import { useState } from "react";
import { doingOf, useRecorder, type HistoryLine, type StationView } from "#web/device/index.ts";
import { Button, Section, Timestamp } from "#web/parts/index.ts";
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
  const words = useWords("sheet");
  const kinds = useWords("entryKinds");
  const { casualty, view } = useSheet();
  const recorder = useRecorder();
  const [isOpen, setOpen] = useState(false);
  const [striking, setStriking] = useState<Entry>();
  const lines = view.historyOf(`casualty:${casualty.id}`).toReversed();
  return (
    <Section
      title={words.entries()}
      beside={<span className="quiet">{words.linesNewest({ count: lines.length })}</span>}
    >
      <details className="casualty-more" onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>{words.allLines()}</summary>
        {isOpen && <Lines lines={lines} onStrike={setStriking} />}
      </details>
      {striking && (
        <StrikeDialog
          what={sayKind(striking.kind, kinds)}
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
  const words = useWords("sheet");
  const { view } = useSheet();
  return (
    <Table
      caption={words.entriesNewest()}
      isCaptionHidden
      columns={columns(view, onStrike, words)}
      rows={lines}
      rowKey={({ entry }) => entry.id}
    />
  );
}

function columns(
  view: StationView,
  onStrike: LinesProps["onStrike"],
  words: Words["sheet"],
): readonly Column<HistoryLine>[] {
  return [
    { key: "what", head: words.what(), cell: (line) => <What line={line} /> },
    { key: "when", head: words.when(), cell: (line) => <When line={line} /> },
    { key: "who", head: words.who(), cell: ({ entry }) => nameOf(view, entry.by) },
    { key: "strike", head: words.strike(), isAct: true, cell: (line) => <Strike line={line} onStrike={onStrike} /> },
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
  const words = useWords("sheet");
  const kinds = useWords("entryKinds");
  const { view } = useSheet();
  if (struck || strikeEntry(doingOf(view), entry, "asked").kind !== "entry") return null;
  return (
    <Button
      kind="quiet"
      label={words.strikeLine({ kind: sayKind(entry.kind, kinds), at: entry.at })}
      onPress={() => onStrike(entry)}
    >
      {words.strike()}
    </Button>
  );
}

function What({ line: { entry, struck } }: { readonly line: HistoryLine }) {
  const words = useWords("sheet");
  const kinds = useWords("entryKinds");
  const { units } = usePreferences();
  const said = tellCasualty(entry, units, useWords("casualtyTold"));
  const kind = <strong>{sayKind(entry.kind, kinds)}</strong>;
  const line = (
    <>
      {said === "" ? kind : withParts(words.entryTold, { kind, told: said })}
      <HandedMark entry={entry} />
    </>
  );
  if (!struck) return line;
  return (
    <>
      <s>{line}</s>{" "}
      <span className="quiet">{words.struck({ reason: (struck.body as { readonly reason: string }).reason })}</span>
    </>
  );
}
