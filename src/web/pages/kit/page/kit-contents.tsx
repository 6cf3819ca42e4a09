import { Section, Timestamp } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import {
  contentsByPlace,
  isPlain,
  sayGood,
  sayLife,
  sayPlain,
  type ContentLine,
  type ContentPlace,
} from "./contents.ts";

const COLUMNS: readonly Column<ContentLine>[] = [
  { key: "item", head: "Item", cell: ({ item }) => item.name },
  { key: "good", head: "Good", cell: (line) => <Good line={line} /> },
  { key: "quantity", head: "Quantity", align: "figures", cell: (line) => <Quantity line={line} /> },
  { key: "fitted", head: "Fitted", cell: ({ fitted }) => fitted && <Timestamp at={fitted} /> },
  {
    key: "printed",
    head: "Printed",
    cell: ({ printed, batch }) => <Printed printed={printed} batch={batch} />,
  },
];

/** What is in the kit, place by place in the order in which it is stowed; what has a life first, the rest in a line. */
export function KitContents({ at: { kit, pattern, view } }: { readonly at: KitAtHand }) {
  const places = contentsByPlace(kit, pattern, view.policy, view.today);
  return (
    <Section id="contents" title="Contents">
      <div className="kit-contents">
        {places.map((place) => (
          <PlaceContents key={place.id} place={place} />
        ))}
      </div>
    </Section>
  );
}

function PlaceContents({ place: { name, lines } }: { readonly place: ContentPlace }) {
  const plain = lines.filter(isPlain);
  const dated = lines.filter((line) => !isPlain(line));
  return (
    <div className="kit-place">
      <h3>{name}</h3>
      {dated.length > 0 && (
        <Table caption={name} isCaptionHidden columns={COLUMNS} rows={dated} rowKey={({ item }) => item.id} />
      )}
      {plain.length > 0 && (
        <p>
          {plain.some(({ quantity }) => quantity === undefined) && <span className="quiet">Not counted yet: </span>}
          {plain.every(({ quantity }) => quantity !== undefined) && dated.length > 0 && (
            <span className="quiet">And without a date: </span>
          )}
          {plain.map(sayPlain).join(", ")}.
        </p>
      )}
    </div>
  );
}

function Good({ line }: { readonly line: ContentLine }) {
  const words = sayGood(line);
  if (words === "") return null;
  const isWrong = line.good === "unknown" || (line.daysLeft ?? 0) < 0;
  const life = sayLife(line.item);
  return (
    <>
      <span className={isWrong ? "kit-wrong" : undefined}>{words}</span>
      {line.item.life.kind !== "single-use" && <span className="quiet">, {life}</span>}
    </>
  );
}

function Quantity({ line: { item, quantity } }: { readonly line: ContentLine }) {
  if (quantity === undefined) return <span className="quiet">not on record</span>;
  if (quantity === item.quantity) return quantity;
  return (
    <span className="kit-wrong">
      {quantity} of {item.quantity}
    </span>
  );
}

interface PrintedProps {
  readonly printed: string | undefined;
  readonly batch: string | undefined;
}

function Printed({ printed, batch }: PrintedProps) {
  if (printed === undefined) return batch;
  return (
    <>
      <Timestamp at={printed} />
      {batch !== undefined && `, ${batch}`}
    </>
  );
}
