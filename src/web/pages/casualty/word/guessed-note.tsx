import { useWords, withParts } from "#web/language/index.ts";
import type { OnSceneAnswer } from "#questions";
import { MeasuresButton } from "../boat/measures-button.tsx";
import { sayGuessed } from "../boat/measures.ts";
import { useSheet } from "../sheet/use-sheet.ts";

/** What of the picture is a guess, and one tap to better it. */
export function GuessedNote({ hull }: Pick<OnSceneAnswer, "hull">) {
  const boat = useWords("sheetBoat");
  const words = useWords("sheetWord");
  const { casualty } = useSheet();
  const guessed = sayGuessed(casualty.boat, boat);
  if (guessed === undefined) return <p className="quiet">{words.measuredHull()}</p>;
  return (
    <>
      <p className="guessed">
        {withParts(casualty.closed ? words.guessedToo : words.guessedEnter, { guessed: <strong>{guessed}</strong> })}
      </p>
      {!casualty.closed && <MeasuresButton words={words.enterMeasures()} hull={hull} />}
    </>
  );
}
