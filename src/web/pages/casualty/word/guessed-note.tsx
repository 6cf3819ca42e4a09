import type { OnSceneAnswer } from "#questions";
import { MeasuresButton } from "../boat/measures-button.tsx";
import { sayGuessed } from "../boat/measures.ts";
import { useSheet } from "../sheet/use-sheet.ts";

/** What of the picture is a guess, and one tap to better it. */
export function GuessedNote({ hull }: Pick<OnSceneAnswer, "hull">) {
  const { casualty } = useSheet();
  const guessed = sayGuessed(casualty.boat);
  if (guessed === undefined)
    return <p className="quiet">Hull as measured; GM guessed from her kind: trust her roll.</p>;
  return (
    <>
      <p className="guessed">
        <strong>{guessed}</strong>, GM too.
        {!casualty.closed && " Enter beam, depth and freeboard to better the picture and the times."}
      </p>
      {!casualty.closed && <MeasuresButton words="Enter her measures" hull={hull} />}
    </>
  );
}
