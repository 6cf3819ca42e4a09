import type { ReactNode } from "react";
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from "react-aria-components";
import { Button } from "./button.tsx";
import "./dialog.css";

export interface DialogProps {
  readonly title: string;
  readonly isOpen: boolean;
  /** Escape, a tap beside the dialog, or its own way out. */
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** Something that must be answered, or left, before going on. */
export function Dialog({ title, isOpen, onClose, children }: DialogProps) {
  return (
    <ModalOverlay className="dialog-ground" isOpen={isOpen} onOpenChange={(open) => !open && onClose()} isDismissable>
      <Modal className="dialog-frame">
        <AriaDialog className="dialog">
          <Heading slot="title" level={2}>
            {title}
          </Heading>
          {children}
        </AriaDialog>
      </Modal>
    </ModalOverlay>
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
  return (
    <Dialog title={props.title} isOpen={props.isOpen} onClose={props.onClose}>
      {props.children}
      <div className="dialog-ways">
        <Button onPress={props.onClose}>{props.cancel ?? "Go back"}</Button>
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
