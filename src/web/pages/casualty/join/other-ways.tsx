import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import { useId, useState } from "react";
import { LazyReader } from "#web/camera/index.ts";
import { Button, Section, TextField, useDoing } from "#web/parts/index.ts";

interface OtherWaysProps {
  readonly onCodes: (texts: readonly string[]) => Promise<unknown>;
  readonly onText: (text: string) => Promise<unknown>;
}

/** Longest text that can be pasted: more than the longest sheet [character]. */
const MOST = 400_000;

/** Without a camera in the page: photos of the codes, the file, or its text. */
export function OtherWays({ onCodes, onText }: OtherWaysProps) {
  const words = useWords("sheetJoin");
  const { isBusy, run } = useDoing();
  const [text, setText] = useState("");
  const open = (files: readonly File[]) =>
    run(async () => {
      for (const file of files) {
        if (file.type.startsWith("image/")) await onCodes(await readPhoto(file, words));
        else await onText(await file.slice(0, MOST).text());
      }
    });
  return (
    <Section title={words.without()}>
      <FileWay isBusy={isBusy} onFiles={open} />
      <details className="casualty-more">
        <summary>{words.paste()}</summary>
        <TextField label={words.text()} value={text} onChange={setText} isLong limit={MOST} />
        <Button isDisabled={text.trim() === ""} isBusy={isBusy} onPress={() => void run(() => onText(text))}>
          {words.take()}
        </Button>
      </details>
    </Section>
  );
}

interface FileWayProps {
  readonly isBusy: boolean;
  readonly onFiles: (files: readonly File[]) => Promise<unknown>;
}

function FileWay({ isBusy, onFiles }: FileWayProps) {
  const words = useWords("sheetJoin");
  const id = useId();
  return (
    <div>
      <label className="button button-plain button-wide" htmlFor={id}>
        {isBusy ? words.reading() : words.fileOrPhotos()}
      </label>
      <input
        id={id}
        className="for-readers-only"
        type="file"
        multiple
        accept="image/*,text/plain,.txt"
        onChange={({ target }) => {
          void onFiles([...(target.files ?? [])]).then(() => (target.value = ""));
        }}
      />
    </div>
  );
}

/** No code in a photo is an answer that somebody waits for, so it is read as one that is none. */
async function readPhoto(file: File, words: Words["sheetJoin"]): Promise<readonly string[]> {
  const found = await new LazyReader().read(file);
  return found.length > 0 ? found : [words.noCodeIn({ file: file.name })];
}
