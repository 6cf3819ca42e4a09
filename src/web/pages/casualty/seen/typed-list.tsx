import { useWords } from "#web/language/index.ts";
import { useState } from "react";
import { Button, TextField } from "#web/parts/index.ts";
import { DEGREE, MOST_LIST, readDegrees } from "./picks.ts";

/** A list in degrees that no button says, typed; a tap on its side writes it down. */
export function TypedList({ onList }: { readonly onList: (list: number) => Promise<boolean> }) {
  const words = useWords("sheetSeen");
  const [text, setText] = useState("");
  const degrees = readDegrees(text);
  const isWrong = text.trim() !== "" && degrees === undefined;
  const write = async (side: number) => {
    if (degrees !== undefined && (await onList(side * degrees * DEGREE))) setText("");
  };
  return (
    <div className="typed-list">
      <TextField
        label={words.listTyped()}
        {...(isWrong && { fault: words.listFault({ most: MOST_LIST }) })}
        inputMode="numeric"
        isShort
        limit={4}
        value={text}
        onChange={setText}
      />
      <Button isDisabled={degrees === undefined} onPress={() => void write(-1)}>
        {degrees === undefined ? words.toPort() : words.port({ degrees })}
      </Button>
      <Button isDisabled={degrees === undefined} onPress={() => void write(1)}>
        {degrees === undefined ? words.toStarboard() : words.starboard({ degrees })}
      </Button>
    </div>
  );
}
