import { useState } from "react";
import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import type { Entry } from "#log";
import { strikeEntry } from "#station";
import { doingOf, useRecorder, type HistoryLine } from "#web/device/index.ts";
import { Button, ButtonRow, sayInstant, Section, Timestamp } from "#web/parts/index.ts";
import { ReceivedLate } from "#web/parts/notices/received-late.tsx";
import { sayKind } from "#web/parts/words/entry-words.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { nameOf, type KitAtHand } from "#web/kit-view/at-hand.ts";
import { isStepLine, tellEntry } from "./entry-telling.ts";
import { StrikeDialog } from "#web/kit-view/strike-dialog.tsx";

const PAGE = 15;

/** Every line written about the kit, newest first: who, when, on which device; struck ones too. */
export function KitEntries({ at }: { readonly at: KitAtHand }) {
  const words = useWords("kitHistory");
  const kinds = useWords("entryKinds");
  const recorder = useRecorder();
  const [withSteps, setWithSteps] = useState(false);
  const [page, setPage] = useState(0);
  const [striking, setStriking] = useState<Entry>();
  const all = at.view.historyOf(`kit:${at.kit.id}`).toReversed();
  const wanted = withSteps ? all : all.filter(({ entry }) => !isStepLine(entry));
  const shown = wanted.slice(page * PAGE, (page + 1) * PAGE);
  const turn = (steps: boolean) => (setWithSteps(steps), setPage(0));
  return (
    <Section
      id="entries"
      title={words.entries()}
      beside={<span className="quiet">{words.linesNewest({ count: wanted.length })}</span>}
    >
      <div>
        <Button isPressed={withSteps} onPress={() => turn(!withSteps)}>
          {words.withSteps()}
        </Button>
      </div>
      <Table
        caption={words.entriesNewest()}
        isCaptionHidden
        columns={columns(at, setStriking, words)}
        rows={shown}
        rowKey={({ entry }) => entry.id}
      />
      <Pages page={page} count={Math.ceil(wanted.length / PAGE)} onTurn={setPage} />
      {striking && (
        <StrikeDialog
          what={sayKind(striking.kind, kinds)}
          judge={(reason) => strikeEntry(doingOf(at.view), striking, reason)}
          onStrike={(reason) => recorder.strike(striking, reason)}
          onClose={() => setStriking(undefined)}
        />
      )}
    </Section>
  );
}

interface PagesProps {
  readonly page: number;
  readonly count: number;
  readonly onTurn: (page: number) => void;
}

function Pages({ page, count, onTurn }: PagesProps) {
  const words = useWords("kitHistory");
  if (count < 2) return null;
  return (
    <ButtonRow>
      <Button isQuick isDisabled={page === 0} onPress={() => onTurn(page - 1)}>
        {words.newer()}
      </Button>
      <Button isQuick isDisabled={page >= count - 1} onPress={() => onTurn(page + 1)}>
        {words.olderPage()}
      </Button>
      <output className="kit-page-number tabular">{words.page({ page: page + 1, count })}</output>
    </ButtonRow>
  );
}

function columns(
  at: KitAtHand,
  onStrike: (entry: Entry) => void,
  words: Words["kitHistory"],
): readonly Column<HistoryLine>[] {
  return [
    { key: "what", head: words.what(), cell: (line) => <What at={at} line={line} /> },
    { key: "when", head: words.when(), cell: (line) => <When line={line} /> },
    { key: "who", head: words.by(), cell: ({ entry }) => nameOf(at.view, entry.by) },
    { key: "device", head: words.on(), cell: ({ entry }) => deviceName(at, entry.device, words) },
    { key: "strike", head: words.strike(), cell: (line) => <Strike at={at} line={line} onStrike={onStrike} /> },
  ];
}

function What({ at, line: { entry, struck } }: { readonly at: KitAtHand; readonly line: HistoryLine }) {
  const kinds = useWords("entryKinds");
  const telling = useWords("telling");
  const told = tellEntry(entry, {
    words: telling,
    pattern: at.pattern,
    places: at.view.places,
    kits: at.view.kits,
    people: at.view.people,
  });
  const words = useWords("kitHistory");
  const said = (
    <>
      <strong>{sayKind(entry.kind, kinds)}</strong>
      {told !== "" && <span className="kit-told">: {told}</span>}
    </>
  );
  if (!struck) return said;
  const { reason } = struck.body as { readonly reason: string };
  return (
    <>
      <s>{said}</s>
      <span className="kit-struck">
        {words.struck({ at: sayInstant(struck.at), name: nameOf(at.view, struck.by), reason })}
      </span>
    </>
  );
}

function When({ line: { entry, received } }: { readonly line: HistoryLine }) {
  return (
    <>
      <Timestamp at={entry.at} /> <ReceivedLate at={entry.at} received={received} />
    </>
  );
}

interface StrikeProps {
  readonly at: KitAtHand;
  readonly line: HistoryLine;
  readonly onStrike: (entry: Entry) => void;
}

/** Offered to whoever may strike this line, as the station's rule says. */
function Strike({ at, line: { entry, struck }, onStrike }: StrikeProps) {
  const words = useWords("kitHistory");
  const kinds = useWords("entryKinds");
  const may = strikeEntry(doingOf(at.view), entry, "asked").kind === "entry";
  if (struck || !may) return null;
  return (
    <Button
      kind="quiet"
      label={words.strikeOf({ what: sayKind(entry.kind, kinds), at: entry.at })}
      onPress={() => onStrike(entry)}
    >
      {words.strike()}
    </Button>
  );
}

function deviceName({ view }: KitAtHand, device: string, words: Words["kitHistory"]): string {
  if (device === view.device) return words.thisDevice();
  return view.devices.find(({ id }) => id === device)?.name ?? device;
}
