import { Suspense } from "react";
import { useWords } from "../language/index.ts";
import { fetchedLater } from "../loading/index.ts";
import { Button } from "./button.tsx";
import type { DialogProps } from "./dialog-frame.tsx";

const DialogFrame = fetchedLater(() => import("./dialog-frame.tsx"));

/** Something that must be answered, or left, before going on. Its frame is fetched with the first one: no first screen has it. */
export function Dialog(props: DialogProps) {
  if (!props.isOpen) return null;
  return (
    <Suspense fallback={null}>
      <DialogFrame {...props} />
    </Suspense>
  );
}

export interface ConfirmDialogProps extends DialogProps {
  /** Words of the button that does it: "Sign out and remove". */
  readonly confirm: string;
  readonly onConfirm: () => void;
  /** Words of the way out; "Go back" where absent. */
  readonly cancel?: string;
  readonly tone?: "usual" | "grave";
  readonly isBusy?: boolean;
  readonly isDisabled?: boolean;
}

/** Asks before doing what cannot be undone. The way out comes first. */
export function ConfirmDialog(props: ConfirmDialogProps) {
  const words = useWords("parts");
  return (
    <Dialog title={props.title} isOpen={props.isOpen} onClose={props.onClose}>
      {props.children}
      <div className="dialog-ways">
        <Button onPress={props.onClose}>{props.cancel ?? words.goBack()}</Button>
        <Button
          tone={props.tone ?? "usual"}
          isBusy={props.isBusy ?? false}
          isDisabled={props.isDisabled ?? false}
          onPress={props.onConfirm}
        >
          {props.confirm}
        </Button>
      </div>
    </Dialog>
  );
}
