import { refuelsDue, type RefuelDue } from "#readiness";
import { refuelPump } from "#station";
import { useEffect, useState } from "react";
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from "react-aria-components";
import { Button, Cautions, GloveRow, sayElapsed } from "../../parts/index.ts";
import { useAlarm } from "../turnaround/alarm-context.ts";
import { useNow } from "../turnaround/use-now.ts";
import { useWakeLock } from "../turnaround/wake-lock.ts";
import { useSheet } from "./use-sheet.ts";

/** How often it sounds again until somebody answers [ms]. */
const REPEAT = 5000;

/** Calls over the whole screen when a tank is about to run dry. Kept awake while a pump runs. */
export function DueAlarm() {
  const { casualty } = useSheet();
  const isPumping = casualty.pumps.some(({ running }) => running);
  const now = useNow(isPumping);
  const wake = useWakeLock(isPumping);
  const [answered, setAnswered] = useState<readonly string[]>([]);
  useArming();
  const calling = refuelsDue(casualty, now).find((one) => one.at <= now && !answered.includes(keyOf(one)));
  return (
    <>
      {wake === "refused" && (
        <p className="quiet">This screen may go dark: the clocks go on, but cannot call. Set a watch too.</p>
      )}
      {calling && <Call due={calling} now={now} onAnswer={() => setAnswered([...answered, keyOf(calling)])} />}
    </>
  );
}

function keyOf({ pump, at }: RefuelDue): string {
  return `${pump} ${Math.round(at / 1000)}`;
}

/** A browser lets sound out only after a tap: the first one anywhere arms the alarm. */
function useArming(): void {
  const alarm = useAlarm();
  useEffect(() => {
    document.addEventListener("pointerup", alarm.arm);
    return () => document.removeEventListener("pointerup", alarm.arm);
  }, [alarm]);
}

interface CallProps {
  readonly due: RefuelDue;
  readonly now: number;
  readonly onAnswer: () => void;
}

function Call({ due, now, onAnswer }: CallProps) {
  const { write } = useSheet();
  const alarm = useAlarm();
  useEffect(() => {
    alarm.sound();
    const sounding = setInterval(alarm.sound, REPEAT);
    return () => clearInterval(sounding);
  }, [alarm]);
  const refuelled = () => {
    onAnswer();
    void write(`${due.name} refuelled`, (doing, casualty) => refuelPump(doing, casualty, due.pump));
  };
  return (
    <ModalOverlay className="alarm" isOpen isKeyboardDismissDisabled>
      <Modal className="alarm-frame">
        <AriaDialog role="alertdialog" className="alarm-words">
          <Heading slot="title" level={2}>
            {due.name}: stop the engine and refuel
          </Heading>
          <p className="figure">{now - due.at < 60_000 ? "now" : `${sayElapsed((now - due.at) / 1000)} over`}</p>
          <Cautions ids={["refuel-stopped-and-cool"]} />
          <GloveRow>
            <Button kind="primary" wide onPress={refuelled}>
              Refuelled
            </Button>
            <Button wide onPress={onAnswer}>
              Stop the alarm only
            </Button>
          </GloveRow>
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}
