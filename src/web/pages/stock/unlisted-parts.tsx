import { Link } from "wouter";
import type { StationView } from "#web/device/index.ts";
import { Section } from "#web/parts/index.ts";
import { useWords } from "#web/language/index.ts";

/** Names of parts that patterns give to their items, and that no part of the list belongs to. */
export function UnlistedParts({ view }: { readonly view: StationView }) {
  const words = useWords("stock");
  const names = unlistedParts(view);
  if (names.length === 0) return null;
  return (
    <Section title={words.unlisted()}>
      <ul className="stock-lots">
        {names.map((name) => (
          <li key={name}>
            <Link to={`/stock/new?name=${encodeURIComponent(name)}`}>{name}</Link>
          </li>
        ))}
      </ul>
    </Section>
  );
}

/** Names of parts that patterns in use give, and that are on no list. */
export function unlistedParts({ patterns, parts, kits }: StationView): readonly string[] {
  const inUse = new Set(kits.map(({ pattern }) => pattern));
  const held = parts.filter(({ retired }) => retired === undefined).flatMap(({ items }) => items);
  const names = [...patterns]
    .filter(([key]) => inUse.has(key))
    .flatMap(([, { id, items }]) =>
      items.flatMap(({ id: item, part }) =>
        part === undefined || held.some((one) => one.pattern === id && one.item === item) ? [] : [part],
      ),
    );
  return [...new Set(names)].toSorted();
}
