import { useWords, withParts } from "#web/language/index.ts";
import type { Way } from "./our-boat.ts";
import { OURS_PLACE } from "./our-boat-part.tsx";
import { sayWay } from "./way-words.ts";

/** What the way there is counted with, beside the answer, and the way to change it. */
export function WayLine({ way }: { readonly way: Way }) {
  const words = useWords("launch");
  return (
    <p className="launch-way">
      {withParts(way.isGuessed ? words.wayOfGuessed : words.wayOf, {
        boat: <strong>{way.boat?.name ?? words.anotherBoat()}</strong>,
        way: sayWay(way, words),
        change: <a href={`#${OURS_PLACE}`}>{words.change()}</a>,
      })}
    </p>
  );
}
