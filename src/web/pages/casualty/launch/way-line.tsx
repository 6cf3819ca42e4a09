import type { Way } from "./our-boat.ts";
import { OURS_PLACE } from "./our-boat-part.tsx";
import { sayWay } from "./way-words.ts";

/** What the way there is counted with, beside the answer, and the way to change it. */
export function WayLine({ way }: { readonly way: Way }) {
  return (
    <p className="launch-way">
      <strong>{way.boat?.name ?? "Another boat"}</strong>: {sayWay(way)}
      {way.isGuessed && " (guessed: nobody has set it)"}. <a href={`#${OURS_PLACE}`}>Change</a>
    </p>
  );
}
