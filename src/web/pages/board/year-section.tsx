import { formatDate } from "#base";
import { useState } from "react";
import { BandLegend, YearBands, type BandFill, type BandRow } from "#web/drawing/index.ts";
import { useStation } from "#web/device/index.ts";
import { Button, sayCount, Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { allLines } from "#web/kit-view/board-lines.ts";
import { rowsOf, tableOf, yearFrom, type AheadRow, type PlaceAhead } from "#web/kit-view/year-ahead.ts";

/** Kits drawn of one place until somebody asks for the rest. */
const FIRST_BANDS = 30;

/** The year ahead as bands, place by place, with the same in a table. */
export function YearSection({ places }: { readonly places: readonly PlaceAhead[] }) {
  const range = yearFrom(useStation().today);
  const drawn = places.map((ahead) => ({ ahead, rows: rowsOf(ahead, range) })).filter(({ rows }) => rows.length > 0);
  if (drawn.length === 0) return null;
  return (
    <Section id="year" title="The year ahead, if nobody does anything">
      <BandLegend fills={fillsOf(drawn.flatMap(({ rows }) => rows))} />
      {drawn.map(({ ahead }) => (
        <PlaceYear key={ahead.lines.place.id} ahead={ahead} />
      ))}
    </Section>
  );
}

function PlaceYear({ ahead }: { readonly ahead: PlaceAhead }) {
  const { today } = useStation();
  const [all, setAll] = useState(false);
  const range = yearFrom(today);
  const most = all ? Infinity : FIRST_BANDS;
  const hidden = Math.max(0, allLines(ahead.lines).length - most);
  const { place } = ahead.lines;
  const label = `Standing of the kits at ${place.name} from ${formatDate(range.from)} to ${formatDate(range.to)}; the same in the table below.`;
  return (
    <div className="board-year">
      <h3>{place.name}</h3>
      <YearBands label={label} rows={rowsOf(ahead, range, most)} {...range} today={today} />
      {hidden > 0 && <Button onPress={() => setAll(true)}>Draw {sayCount(hidden, "more kit")}</Button>}
      <YearTable ahead={ahead} most={most} />
    </div>
  );
}

const COLUMNS: readonly Column<AheadRow>[] = [
  { key: "kit", head: "Kit", cell: ({ name }) => name },
  { key: "from", head: "From", cell: ({ from }) => from },
  { key: "to", head: "To", cell: ({ to }) => to },
  { key: "standing", head: "Standing", cell: ({ standing }) => standing },
  { key: "because", head: "Because", cell: ({ because }) => because },
];

/** The bands in words; its rows are made only once it is opened. */
function YearTable({ ahead, most }: { readonly ahead: PlaceAhead; readonly most: number }) {
  const [isOpen, setOpen] = useState(false);
  const { name } = ahead.lines.place;
  return (
    <details className="board-table" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{name} as a table</summary>
      {isOpen && (
        <Table
          caption={`The year ahead at ${name}`}
          isCaptionHidden
          columns={COLUMNS}
          rows={tableOf(ahead, most)}
          rowKey={({ key }) => key}
        />
      )}
    </details>
  );
}

function fillsOf(rows: readonly BandRow[]): readonly BandFill[] {
  return [...new Set(rows.flatMap(({ pieces }) => pieces.map(({ fill }) => fill)))];
}
