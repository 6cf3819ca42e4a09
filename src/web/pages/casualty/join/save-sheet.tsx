import { useWords } from "#web/language/index.ts";
import type { CasualtyState } from "#readiness";
import { saveFile } from "#web/device/index.ts";
import { Button, ButtonRow, ErrorBox, Section, useDoing } from "#web/parts/index.ts";

interface SaveSheetProps {
  readonly sheet: CasualtyState;
  readonly pieces: readonly string[];
}

/** The same pieces in a file, for another way to the other device: a cable, a near-by share, a message. */
export function SaveSheet({ sheet, pieces }: SaveSheetProps) {
  const words = useWords("sheetJoin");
  const doing = useDoing();
  const file = () => new File([pieces.join("\n")], fileName(sheet), { type: "text/plain" });
  const canShare = "canShare" in navigator && navigator.canShare({ files: [file()] });
  return (
    <Section title={words.asFile()}>
      <ButtonRow>
        <Button onPress={() => saveFile(file(), fileName(sheet))}>{words.saveFile()}</Button>
        {canShare && (
          <Button isBusy={doing.isBusy} onPress={() => void doing.run(() => share(file()))}>
            {words.shareFile()}
          </Button>
        )}
      </ButtonRow>
      <ErrorBox error={doing.error} title={words.notShared()} />
      <p className="quiet">{words.whoReads()}</p>
    </Section>
  );
}

/** Somebody who thinks better of it has not failed. */
async function share(file: File): Promise<void> {
  try {
    await navigator.share({ files: [file] });
  } catch (cause) {
    if (!(cause instanceof DOMException && cause.name === "AbortError")) throw cause;
  }
}

/** "drykeel-sheet-grey-motor-boat.txt" */
function fileName({ name, id }: CasualtyState): string {
  const plain = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
  return `drykeel-sheet-${plain === "" ? id : plain}.txt`;
}
