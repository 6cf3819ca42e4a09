import { sayClock } from "../sheet/say.ts";
import { useWords } from "#web/language/index.ts";
import { useState } from "react";
import { Button, TextField } from "#web/parts/index.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { sayDuration } from "#words";
import { agoOptions, faultOf, isToday, NOW, readClock, type ClockRead, type Taken } from "./taken.ts";
import { useSheet } from "../sheet/use-sheet.ts";

interface TakenPickerProps {
  /** Undefined while a time is being typed that is none yet. */
  readonly taken: Taken | undefined;
  readonly onTaken: (taken: Taken | undefined) => void;
}

const NOTHING: ClockRead = { kind: "none" };

/** A sounding that was read before it could be written down: minutes ago, or a time typed, judged as it is typed. */
export function TakenPicker({ taken, onTaken }: TakenPickerProps) {
  const words = useWords("soundings");
  const { casualty } = useSheet();
  const [{ text, read, now }, setTyped] = useState({ text: "", read: NOTHING, now: 0 });
  const picked = taken && "ago" in taken ? String(taken.ago) : undefined;
  const pick = (id: string) => {
    setTyped({ text: "", read: NOTHING, now: 0 });
    onTaken({ ago: Number(id) });
  };
  const type = (next: string) => {
    const at = Date.now();
    const clock = readClock(next, at, Date.parse(casualty.opened.at));
    setTyped({ text: next, read: clock, now: at });
    onTaken(next === "" ? NOW : clock.kind === "read" ? { at: clock.at } : undefined);
  };
  const fault = faultOf(text, read, now, words);
  return (
    <>
      <PickRow label={words.whenRead()} options={agoOptions(words)} picked={picked} onPick={pick} />
      <TextField
        label={words.orAt()}
        isShort
        inputMode="numeric"
        limit={5}
        value={text}
        onChange={type}
        {...(fault !== undefined && { fault })}
      />
      {read.kind === "early" && taken === undefined && <Early read={read} now={now} onTaken={onTaken} />}
    </>
  );
}

interface EarlyProps extends Pick<TakenPickerProps, "onTaken"> {
  readonly read: ClockRead & { readonly kind: "early" };
  readonly now: number;
}

/** Nobody sounds a boat long before her sheet is opened, unless told so by somebody aboard: asked, not assumed. */
function Early({ read: { at, minutes }, now, onTaken }: EarlyProps) {
  const words = useWords("soundings");
  return (
    <>
      <p className="field-fault" role="alert">
        {words.beforeOpened({ duration: sayDuration(60 * minutes, "minutes") })}
      </p>
      <Button wide onPress={() => onTaken({ at })}>
        {isToday(at, now) ? words.yesReadAt({ time: sayClock(at) }) : words.yesReadYesterday({ time: sayClock(at) })}
      </Button>
    </>
  );
}
