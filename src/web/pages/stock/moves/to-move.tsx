import { movesProposed, partShelf, type MoveProposed, type OrderAsked, type OrderLine } from "#readiness";
import { mayWrite } from "#station";
import { useState } from "react";
import type { StationView } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button } from "#web/parts/index.ts";
import { TakeForm } from "../take-form.tsx";

interface ToMoveProps {
  readonly view: StationView;
  readonly asked: OrderAsked;
  readonly lines: readonly OrderLine[];
}

/** What lies where it is not wanted, for places that fall short: each move fills in its form. */
export function ToMove({ view, asked, lines }: ToMoveProps) {
  const words = useWords("stock");
  const [chosen, setChosen] = useState<MoveProposed>();
  const open = view.places.filter(({ closed }) => !closed).map(({ id }) => id);
  const moves = movesProposed(asked, lines, open);
  const nameOf = (place: string) => view.places.find(({ id }) => id === place)?.name ?? place;
  const said = ({ part, count, from, to }: MoveProposed) => ({
    part: part.name,
    count,
    from: nameOf(from),
    to: nameOf(to),
  });
  if (moves.length === 0) return null;
  return (
    <>
      <p>{words.orMove()}</p>
      <ul className="stock-lots">
        {moves.map((move) => (
          <li key={keyOf(move)} className="stock-acts">
            {words.moveProposed(said(move))}{" "}
            {mayWrite(view.me.role, "stock-moved") && (
              <Button label={words.fillMoveOf(said(move))} onPress={() => setChosen(move)}>
                {words.fillMove()}
              </Button>
            )}
          </li>
        ))}
      </ul>
      {chosen && (
        <TakeForm
          key={keyOf(chosen)}
          how="move"
          part={chosen.part}
          shelf={partShelf(asked.stock, chosen.part.id, chosen.from)}
          proposed={chosen}
          onDone={() => setChosen(undefined)}
        />
      )}
    </>
  );
}

function keyOf({ part, from, to }: MoveProposed): string {
  return `${part.id} ${from} ${to}`;
}
