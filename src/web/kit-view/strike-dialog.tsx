import { InputError } from "#base";
import { useWords } from "../language/index.ts";
import type { Act } from "#station";
import { useState } from "react";
import { ConfirmDialog, ErrorBox, TextField, useDoing } from "../parts/index.ts";

export interface StrikeDialogProps {
  /** The line, in words. */
  readonly what: string;
  readonly judge: (reason: string) => Act<"struck">;
  readonly onStrike: (reason: string) => Promise<unknown>;
  readonly onClose: () => void;
}

/** Strikes a line for a reason. It stays in the log, with who struck it and why. */
export function StrikeDialog({ what, judge, onStrike, onClose }: StrikeDialogProps) {
  const words = useWords("kitView");
  const doing = useDoing();
  const [reason, setReason] = useState("");
  const strike = async () => {
    const done = await doing.run(async () => {
      const act = judge(reason.trim());
      if (act.kind === "refused") throw new InputError(act.because);
      await onStrike(reason.trim());
    });
    if (done) onClose();
  };
  return (
    <ConfirmDialog
      title={words.strike({ what })}
      isOpen
      onClose={onClose}
      confirm={words.strikeDo()}
      onConfirm={() => void strike()}
      tone="grave"
      isBusy={doing.isBusy}
      isDisabled={reason.trim() === ""}
    >
      <p>{words.strikeMore()}</p>
      <TextField label={words.why()} value={reason} onChange={setReason} />
      <ErrorBox error={doing.error} title={words.notStruck()} />
    </ConfirmDialog>
  );
}
