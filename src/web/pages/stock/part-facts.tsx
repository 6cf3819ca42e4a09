import { newestOf } from "#kit";
import type { StockPart } from "#readiness";
import type { StationView } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { sayCost } from "#web/kit-view/say-cost.ts";
import { sayKeeps } from "./line-words.ts";

/** What is on record of a part, as far as anything is. */
export function PartFacts({ part, view }: { readonly part: StockPart; readonly view: StationView }) {
  const words = useWords("stockPart");
  const facts = [
    [words.ownNumber(), part.number],
    [words.supplier(), [part.supplier, part.supplierNumber].filter((said) => said !== undefined).join(", ")],
    [words.costOfOne(), part.cost === undefined ? undefined : sayCost(part.cost, view.policy.currency)],
    [words.leadTime(), part.leadTime ?? words.leadSupposed()],
    [words.keeps(), sayKeeps(part, words)],
    [
      words.toBeKept(),
      part.keep.map(({ place, least }) => words.leastAt({ least, place: placeName(view, place) })).join(", "),
    ],
    [words.fittedAs(), part.items.map((one) => itemName(view, one)).join(", ")],
  ] as const;
  return (
    <dl className="stock-facts">
      {facts.map(([name, value]) => (
        <div key={name} className="stock-fact">
          <dt>{name}</dt>
          <dd>{value === undefined || value === "" ? words.notOnRecord() : value}</dd>
        </div>
      ))}
    </dl>
  );
}

function placeName({ places }: StationView, id: string): string {
  return places.find((place) => place.id === id)?.name ?? id;
}

function itemName({ patterns }: StationView, { pattern, item }: StockPart["items"][number]): string {
  const known = newestOf([...patterns.values()], pattern);
  return `${known?.items.find(({ id }) => id === item)?.name ?? item} (${known?.name ?? pattern})`;
}
