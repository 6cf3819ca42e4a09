import { newestOf } from "#kit";
import type { StockPart } from "#readiness";
import type { StationView } from "#web/device/index.ts";

/** What is on record of a part, as far as anything is. */
export function PartFacts({ part, view }: { readonly part: StockPart; readonly view: StationView }) {
  const facts = [
    ["Own number", part.number],
    ["Supplier", [part.supplier, part.supplierNumber].filter((words) => words !== undefined).join(", ")],
    ["Cost of one", part.cost?.toFixed(2)],
    ["Lead time", part.leadTime],
    ["Keeps", part.printed ? "to the date printed on it" : part.shelfLife],
    ["To be kept", part.keep.map(({ place, least }) => `${least} at ${placeName(view, place)}`).join(", ")],
    ["Fitted as", part.items.map((one) => itemName(view, one)).join(", ")],
  ] as const;
  return (
    <dl className="stock-facts">
      {facts.map(([name, value]) => (
        <div key={name} className="stock-fact">
          <dt>{name}</dt>
          <dd>{value === undefined || value === "" ? "not on record" : value}</dd>
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
