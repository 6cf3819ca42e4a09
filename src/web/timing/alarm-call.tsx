import type { ReactNode } from "react";
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from "react-aria-components";
import { useBackStays } from "../parts/back-closes.ts";
import { useSounding } from "./use-sounding.ts";
import "./alarm.css";

export interface AlarmCallProps {
  /** Who calls, where more than one thing on this device could. */
  readonly caller?: string;
  /** What is to be done now. */
  readonly title: string;
  /** How long it has been due, for the clock face. */
  readonly face: string;
  /** What to heed, and the ways to answer. */
  readonly children: ReactNode;
}

/** The whole screen calls, with sound and shaking, until it is answered; Back does not. Steady where motion is not wanted. */
export function AlarmCall({ caller, title, face, children }: AlarmCallProps) {
  useSounding();
  useBackStays();
  return (
    <ModalOverlay className="alarm" isOpen isKeyboardDismissDisabled>
      <Modal className="alarm-frame">
        <AriaDialog role="alertdialog" className="alarm-words">
          {caller !== undefined && <p>{caller}</p>}
          <Heading slot="title" level={2}>
            {title}
          </Heading>
          <p className="figure">{face}</p>
          {children}
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}
