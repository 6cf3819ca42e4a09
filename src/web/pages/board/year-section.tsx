import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";
import { useState } from "react";
import { BandLegend, YearBands, type BandFill, type BandRow } from "#web/drawing/index.ts";
import { useStation } from "#web/device/index.ts";
import { Button, sayDate, Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { allLines } from "#web/kit-view/board-lines.ts";
import {
  rowsOf,
  tableOf,
  yearFrom,
  type AheadRow,
  type AheadWords,
  type PlaceAhead,
} from "#web/kit-view/year-ahead.ts";

/** Kits drawn of one place until somebody asks for the rest. */
const FIRST_BANDS = 30;

/** The year ahead as bands, place by place, with the same in a table. */
export function YearSection({ places }: { readonly places: readonly PlaceAhead[] }) {
  const words = useWords("board");
  const aheadWords = useAheadWords();
  const range = yearFrom(useStation().today);
  const drawn = places
    .map((ahead) => ({ ahead, rows: rowsOf(ahead, range, aheadWords) }))
    .filter(({ rows }) => rows.length > 0);
  if (drawn.length === 0) return null;
  return (
    <Section id="year" title={words.year()}>
      <BandLegend fills={fillsOf(drawn.flatMap(({ rows }) => rows))} />
      {drawn.map(({ ahead }) => (
        <PlaceYear key={ahead.lines.place.id} ahead={ahead} />
      ))}
    </Section>
  );
}

function PlaceYear({ ahead }: { readonly ahead: PlaceAhead }) {
  const words = useWords("board");
  const aheadWords = useAheadWords();
  const { today } = useStation();
  const [all, setAll] = useState(false);
  const range = yearFrom(today);
  const most = all ? Infinity : FIRST_BANDS;
  const hidden = Math.max(0, allLines(ahead.lines).length - most);
  const { place } = ahead.lines;
  const label = words.yearOf({ place: place.name, from: sayDate(range.from), to: sayDate(range.to) });
  return (
    <div className="board-year">
      <h3>{place.name}</h3>
      <YearBands label={label} rows={rowsOf(ahead, range, aheadWords, most)} {...range} today={today} />
      {hidden > 0 && <Button onPress={() => setAll(true)}>{words.drawMore({ count: hidden })}</Button>}
      <YearTable ahead={ahead} most={most} />
    </div>
  );
}

function columnsOf(words: Words["board"]): readonly Column<AheadRow>[] {
  return [
    { key: "kit", head: words.kit(), cell: ({ name }) => name },
    { key: "from", head: words.from(), cell: ({ from }) => from },
    { key: "to", head: words.to(), cell: ({ to }) => to },
    { key: "standing", head: words.standing(), cell: ({ standing }) => standing },
    { key: "because", head: words.because(), cell: ({ because }) => because },
  ];
}

/** The bands in words; its rows are made only once it is opened. */
function YearTable({ ahead, most }: { readonly ahead: PlaceAhead; readonly most: number }) {
  const words = useWords("board");
  const [isOpen, setOpen] = useState(false);
  const parts = useWords("parts");
  const standing = useWords("standing");
  const { name: place } = ahead.lines.place;
  return (
    <details className="board-table" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.asTable({ place })}</summary>
      {isOpen && (
        <Table
          caption={words.yearAt({ place })}
          isCaptionHidden
          columns={columnsOf(words)}
          rows={tableOf(ahead, { parts, standing }, most)}
          rowKey={({ key }) => key}
        />
      )}
    </details>
  );
}

function fillsOf(rows: readonly BandRow[]): readonly BandFill[] {
  return [...new Set(rows.flatMap(({ pieces }) => pieces.map(({ fill }) => fill)))];
}

function useAheadWords(): AheadWords {
  const bands = useWords("bands");
  const parts = useWords("parts");
  const standing = useWords("standing");
  return { bands, parts, standing };
}
