import { useState } from "react";
import { useWords } from "../language/index.ts";
import { Button, Dialog, TextField } from "../parts/index.ts";
import { Choice } from "../parts/fields/choice.tsx";

const OTHER = "other";
const REASONS = ["nothingToDoItWith", "weather", "notFitted", "danger"] as const;

interface NotPossibleProps {
  readonly onClose: () => void;
  readonly onSave: (why: string) => void;
}

/** A line that cannot be done says why; one tap for the usual reasons. */
export function NotPossible({ onClose, onSave }: NotPossibleProps) {
  const words = useWords("act");
  const [chosen, setChosen] = useState<string>();
  const [own, setOwn] = useState("");
  const [missing, setMissing] = useState(false);
  const why = chosen === OTHER ? own.trim() : (chosen ?? "");
  const reasons = REASONS.map((key) => words[key]()).map((value) => ({ value, label: value }));
  const options = [...reasons, { value: OTHER, label: words.otherReason() }];
  const save = () => {
    setMissing(why === "");
    if (why === "") return;
    onClose();
    onSave(why);
  };
  return (
    <Dialog title={words.whyNotPossible()} isOpen onClose={onClose}>
      <Choice
        label={words.reason()}
        options={options}
        value={chosen}
        onChange={setChosen}
        {...(missing && { fault: words.reasonMissing() })}
      />
      {chosen === OTHER && <TextField label={words.reasonInWords()} value={own} onChange={setOwn} />}
      <div className="sheet-ways">
        <Button kind="primary" wide onPress={save}>
          {words.forThisReason()}
        </Button>
        <Button wide onPress={onClose}>
          {words.goBack()}
        </Button>
      </div>
    </Dialog>
  );
}
