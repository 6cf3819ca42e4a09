import type { Pattern } from "#kit";
import { Link } from "wouter";

/** An item by its name, leading to its own life. */
export function ItemLink({
  pattern,
  item,
}: {
  readonly pattern: Pattern;
  readonly item: { readonly id: string; readonly name: string };
}) {
  return <Link to={`/pattern/${pattern.id}/lives/${item.id}`}>{item.name}</Link>;
}
