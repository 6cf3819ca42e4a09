import { useWords } from "#web/language/index.ts";
import type { OnSceneAnswer } from "#questions";
import { useState } from "react";
import { Button, Dialog, ErrorBox } from "#web/parts/index.ts";
import { MeasuresForm } from "./measures-form.tsx";
import { useSheet } from "../sheet/use-sheet.ts";

interface MeasuresButtonProps {
  readonly words: string;
  readonly hull?: OnSceneAnswer["hull"];
}

/** One tap to her measures. */
export function MeasuresButton({ words, hull }: MeasuresButtonProps) {
  const messages = useWords("sheetBoat");
  const { error } = useSheet();
  const [isOpen, setOpen] = useState(false);
  const close = () => setOpen(false);
  return (
    <>
      <Button wide onPress={() => setOpen(true)}>
        {words}
      </Button>
      <Dialog title={messages.herMeasures()} isOpen={isOpen} onClose={close}>
        <MeasuresForm hull={hull} onDone={close} />
        <ErrorBox error={error} title={messages.notWritten()} />
        <Button wide onPress={close}>
          {messages.goBack()}
        </Button>
      </Dialog>
    </>
  );
}
