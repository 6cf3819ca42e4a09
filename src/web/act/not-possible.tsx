import { useState } from "react";
import { Button, Dialog, TextField } from "../parts/index.ts";
import { Choice } from "../parts/fields/choice.tsx";

const OTHER = "other";
const REASONS = [
  "Nothing here to do it with",
  "Weather or light does not allow it",
  "Not fitted on this kit",
  "Would put somebody in danger here and now",
] as const;

interface NotPossibleProps {
  readonly onClose: () => void;
  readonly onSave: (why: string) => void;
}

/** A line that cannot be done says why; one tap for the usual reasons. */
export function NotPossible({ onClose, onSave }: NotPossibleProps) {
  const [chosen, setChosen] = useState<string>();
  const [own, setOwn] = useState("");
  const [missing, setMissing] = useState(false);
  const why = chosen === OTHER ? own.trim() : (chosen ?? "");
  const options = [...REASONS, OTHER].map((value) => ({ value, label: value === OTHER ? "Another reason" : value }));
  const save = () => {
    setMissing(why === "");
    if (why === "") return;
    onClose();
    onSave(why);
  };
  return (
    <Dialog title="Why is it not possible?" isOpen onClose={onClose}>
      <Choice
        label="Reason"
        options={options}
        value={chosen}
        onChange={setChosen}
        {...(missing && { fault: "Choose a reason, or write one." })}
      />
      {chosen === OTHER && <TextField label="Reason in your words" value={own} onChange={setOwn} />}
      <div className="sheet-ways">
        <Button kind="primary" wide onPress={save}>
          Not possible, for this reason
        </Button>
        <Button wide onPress={onClose}>
          Go back
        </Button>
      </div>
    </Dialog>
  );
}
