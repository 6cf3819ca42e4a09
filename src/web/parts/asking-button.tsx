import { useState, type ReactNode } from "react";
import { Button, type ButtonProps } from "./button.tsx";
import { ConfirmDialog, type ConfirmDialogProps } from "./dialog.tsx";

interface AskingButtonProps
  extends
    Pick<ButtonProps, "kind" | "isBusy" | "isDisabled">,
    Pick<ConfirmDialogProps, "title" | "confirm" | "cancel"> {
  /** Words of the button. */
  readonly words: ReactNode;
  readonly onConfirm: () => void;
  /** What it does, told before it is done. */
  readonly children: ReactNode;
}

/** A button that asks once more before it does what cannot be taken back. */
export function AskingButton({ words, kind, isBusy, isDisabled, onConfirm, children, ...asked }: AskingButtonProps) {
  const [isAsked, setAsked] = useState(false);
  const confirm = () => {
    setAsked(false);
    onConfirm();
  };
  const look = { ...(kind && { kind }), isBusy: isBusy ?? false, isDisabled: isDisabled ?? false };
  return (
    <>
      <Button {...look} onPress={() => setAsked(true)}>
        {words}
      </Button>
      <ConfirmDialog {...asked} isOpen={isAsked} onClose={() => setAsked(false)} onConfirm={confirm}>
        {children}
      </ConfirmDialog>
    </>
  );
}
