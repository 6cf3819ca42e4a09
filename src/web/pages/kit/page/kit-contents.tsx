import { Section, Timestamp } from "#web/parts/index.ts";
import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
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

function columnsOf(words: Words["kitHistory"]): readonly Column<ContentLine>[] {
  return [
    { key: "item", head: words.item(), cell: ({ item }) => item.name },
    { key: "good", head: words.good(), cell: (line) => <Good line={line} /> },
    { key: "quantity", head: words.quantity(), align: "figures", cell: (line) => <Quantity line={line} /> },
    { key: "fitted", head: words.fitted(), cell: ({ fitted }) => fitted && <Timestamp at={fitted} /> },
    {
      key: "printed",
      head: words.printed(),
      cell: ({ printed, batch }) => <Printed printed={printed} batch={batch} />,
    },
  ];
}

/** What is in the kit, place by place in the order in which it is stowed; what has a life first, the rest in a line. */
export function KitContents({ at: { kit, pattern, view } }: { readonly at: KitAtHand }) {
  const words = useWords("kitHistory");
  const places = contentsByPlace(kit, pattern, view.policy, view.today);
  return (
    <Section id="contents" title={words.contents()}>
      <div className="kit-contents">
        {places.map((place) => (
          <PlaceContents key={place.id} place={place} />
        ))}
      </div>
    </Section>
  );
}

function PlaceContents({ place: { name, lines } }: { readonly place: ContentPlace }) {
  const words = useWords("kitHistory");
  const plain = lines.filter(isPlain);
  const dated = lines.filter((line) => !isPlain(line));
  return (
    <div className="kit-place">
      <h3>{name}</h3>
      {dated.length > 0 && (
        <Table caption={name} isCaptionHidden columns={columnsOf(words)} rows={dated} rowKey={({ item }) => item.id} />
      )}
      {plain.length > 0 && (
        <p>
          {plain.some(({ quantity }) => quantity === undefined) && <span className="quiet">{words.notCounted()} </span>}
          {plain.every(({ quantity }) => quantity !== undefined) && dated.length > 0 && (
            <span className="quiet">{words.withoutDate()} </span>
          )}
          {plain.map(sayPlain).join(", ")}.
        </p>
      )}
    </div>
  );
}

function Good({ line }: { readonly line: ContentLine }) {
  const words = useWords("kitHistory");
  const said = sayGood(line, words);
  if (said === "") return null;
  const isWrong = line.good === "unknown" || (line.daysLeft ?? 0) < 0;
  const life = sayLife(line.item, words);
  return (
    <>
      <span className={isWrong ? "kit-wrong" : undefined}>{said}</span>
      {line.item.life.kind !== "single-use" && <span className="quiet">, {life}</span>}
    </>
  );
}

function Quantity({ line: { item, quantity } }: { readonly line: ContentLine }) {
  const words = useWords("kitHistory");
  if (quantity === undefined) return <span className="quiet">{words.notOnRecord()}</span>;
  if (quantity === item.quantity) return quantity;
  return <span className="kit-wrong">{words.someOf({ count: quantity, of: item.quantity })}</span>;
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
