import { useEffect, useMemo } from "react";
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from "react-aria-components";
import { Button, Cautions, GloveRow, sayElapsed } from "../../parts/index.ts";
import { makeAlarm, type SoundAlarm } from "../turnaround/alarm-sound.ts";
import { useNow } from "../turnaround/use-now.ts";
import { callingRefuel, refuelInstant, refuels, type Refuel } from "./refuel.ts";
import "../turnaround/runner.css";

/** How often it sounds again until somebody answers [ms]. */
const REPEAT = 5000;

/** Watches the reminders by the wall clock and calls over whatever page is shown. */
export default function RefuelAlarm({ kept }: { readonly kept: readonly Refuel[] }) {
  const now = useNow(true);
  const sound = useArmedSound();
  const calling = callingRefuel(kept, now);
  return calling ? <Call key={calling.kit} refuel={calling} now={now} sound={sound} /> : null;
}

/** A browser lets sound out only after a tap: the first one anywhere arms it. */
function useArmedSound(): SoundAlarm {
  const alarm = useMemo(() => makeAlarm(), []);
  useEffect(() => {
    const arm = () => alarm.arm();
    document.addEventListener("pointerup", arm);
    document.addEventListener("keydown", arm);
    return () => {
      document.removeEventListener("pointerup", arm);
      document.removeEventListener("keydown", arm);
    };
  }, [alarm]);
  return alarm.sound;
}

interface CallProps {
  readonly refuel: Refuel;
  readonly now: number;
  readonly sound: SoundAlarm;
}

function Call({ refuel, now, sound }: CallProps) {
  useEffect(() => {
    sound();
    const sounding = setInterval(sound, REPEAT);
    return () => clearInterval(sounding);
  }, [sound]);
  const over = (now - refuelInstant(refuel)) / 1000;
  return (
    <ModalOverlay className="alarm" isOpen isKeyboardDismissDisabled>
      <Modal className="alarm-frame">
        <AriaDialog role="alertdialog" className="alarm-words">
          <Heading slot="title" level={2}>
            {refuel.name}: stop the engine and refuel
          </Heading>
          <p className="figure">{over < 60 ? "now" : `${sayElapsed(over)} over`}</p>
          <Cautions ids={["refuel-stopped-and-cool"]} />
          <GloveRow>
            <Button kind="primary" wide onPress={() => refuels.answer(refuel.kit)}>
              Stop the alarm
            </Button>
          </GloveRow>
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}
