import type { KitState } from "#readiness";
import { useWords } from "#web/language/index.ts";
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
  const words = useWords("board");
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
      <summary>{words.ofReady({ enough: told.words })}</summary>
      <p>{told.rests}</p>
      {told.common.length === 0 ? (
        <p>{words.shareNothing()}</p>
      ) : (
        <ul>
          {told.common.map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ul>
      )}
      <p className="quiet">{words.sharedStrikes()}</p>
    </details>
  );
}
