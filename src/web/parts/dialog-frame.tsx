import type { ReactNode } from "react";
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from "react-aria-components";
import { useBackCloses } from "./back-closes.ts";
import "./dialog.css";

export interface DialogProps {
  readonly title: string;
  readonly isOpen: boolean;
  /** Escape, the Back button, a tap beside the dialog, or its own way out. */
  readonly onClose: () => void;
  /** Takes the whole screen, for what is looked at. */
  readonly isWhole?: boolean;
  readonly children: ReactNode;
}

/** The frame of a dialog over the page: it holds the focus, and gives it back. */
export default function DialogFrame({ title, isOpen, onClose, isWhole = false, children }: DialogProps) {
  useBackCloses(onClose);
  return (
    <ModalOverlay className="dialog-ground" isOpen={isOpen} onOpenChange={(open) => !open && onClose()} isDismissable>
      <Modal className={isWhole ? "dialog-frame dialog-frame-whole" : "dialog-frame"}>
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
