import type { OnSceneAnswer } from "#questions";
import { useState } from "react";
import { Button, Dialog } from "../../parts/index.ts";
import { MeasuresForm } from "./measures-form.tsx";
import { sayGuessed } from "./measures.ts";
import { useSheet } from "./use-sheet.ts";

/** What of the picture is a guess, and one tap to better it. */
export function GuessedNote({ hull }: Pick<OnSceneAnswer, "hull">) {
  const { casualty } = useSheet();
  const [isOpen, setOpen] = useState(false);
  const guessed = sayGuessed(casualty.boat);
  if (guessed === undefined)
    return <p className="quiet">Hull as measured; GM guessed from her kind: trust her roll.</p>;
  return (
    <>
      <p className="guessed">
        <strong>{guessed}</strong>, GM too.
        {!casualty.closed && " Enter beam, depth and freeboard to better the picture and the times."}
      </p>
      {!casualty.closed && (
        <Button wide onPress={() => setOpen(true)}>
          Enter her measures
        </Button>
      )}
      <Dialog title="Her measures" isOpen={isOpen} onClose={() => setOpen(false)}>
        <MeasuresForm hull={hull} onDone={() => setOpen(false)} />
        <Button wide onPress={() => setOpen(false)}>
          Go back
        </Button>
      </Dialog>
    </>
  );
}
