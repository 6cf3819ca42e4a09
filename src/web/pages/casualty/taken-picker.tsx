import { useState } from "react";
import { Button, TextField } from "../../parts/index.ts";
import { PickRow } from "./pick-row.tsx";
import { AGO, NOW, readClock, sayAgo, type Taken } from "./taken.ts";

interface TakenPickerProps {
  /** Undefined while a time is being typed that is none yet. */
  readonly taken: Taken | undefined;
  readonly onTaken: (taken: Taken | undefined) => void;
}

const OPTIONS = AGO.map((ago) => ({ id: String(ago), words: ago === 0 ? "Now" : sayAgo(ago) }));

/** A sounding that was read before it could be written down: quiet until it is asked for. */
export function TakenPicker({ taken, onTaken }: TakenPickerProps) {
  const [isOpen, setOpen] = useState(false);
  const toggle = () => {
    setOpen(!isOpen);
    onTaken(NOW);
  };
  return (
    <div className="sound-when">
      <Button kind="quiet" isOpen={isOpen} onPress={toggle}>
        {isOpen ? "Taken now after all" : "Taken earlier?"}
      </Button>
      {isOpen && <When taken={taken} onTaken={onTaken} />}
    </div>
  );
}

function When({ taken, onTaken }: TakenPickerProps) {
  const [text, setText] = useState("");
  const picked = taken && "ago" in taken ? String(taken.ago) : undefined;
  const pick = (id: string) => {
    setText("");
    onTaken({ ago: Number(id) });
  };
  const type = (next: string) => {
    const at = readClock(next, Date.now());
    setText(next);
    onTaken(next === "" ? NOW : at === undefined ? undefined : { at });
  };
  return (
    <>
      <PickRow label="When was it read?" options={OPTIONS} picked={picked} onPick={pick} />
      <TextField
        label="Or at this time"
        isShort
        inputMode="numeric"
        limit={5}
        value={text}
        onChange={type}
        {...(text.length >= 4 && taken === undefined && { fault: "Hours and minutes, such as 16:40." })}
      />
    </>
  );
}
