import type { KitState } from "#readiness";
import { useMemo } from "react";
import type { PlaceLines } from "#web/kit-view/board-lines.ts";
import { useStartsHere } from "./use-starts.ts";

/** Whether a kit starts tonight, in words; what that rests on is on its page. */
export function StartLine({ kit }: { readonly kit: KitState }) {
  const starts = useStartsHere();
  const words = useMemo(() => starts?.ofKit(kit), [starts, kit]);
  return words === undefined ? null : <span className="quiet">{words}</span>;
}

/** Whether enough ready kits of a place start tonight, and what they have in common. */
export function PlaceStart({ lines: { place, ready } }: { readonly lines: PlaceLines }) {
  const starts = useStartsHere();
  const told = useMemo(
    () =>
      starts?.ofPlace(
        ready.map(({ kit }) => kit),
        place.strength,
      ),
    [starts, ready, place.strength],
  );
  if (!told) return null;
  return (
    <details className="board-table">
      <summary>Of the ready kits {told.words}.</summary>
      {told.common.length === 0 ? (
        <p>They share no delivery of fuel, no lot and no hands that the log knows of.</p>
      ) : (
        <ul>
          {told.common.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
      <p className="quiet">
        What is shared is taken to strike all who share it in one failure of ten: that is judgement, not the log.
      </p>
    </details>
  );
}
