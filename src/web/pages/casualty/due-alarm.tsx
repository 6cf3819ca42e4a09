import { refuelsDue, type RefuelDue } from "#readiness";
import { refuelPump } from "#station";
import { useState } from "react";
import { Button, Cautions, GloveRow, sayElapsed } from "../../parts/index.ts";
import { AlarmCall, useArming, useNow, useWakeLock } from "../../timing/index.ts";
import { useSheet } from "./use-sheet.ts";

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

interface CallProps {
  readonly due: RefuelDue;
  readonly now: number;
  readonly onAnswer: () => void;
}

function Call({ due, now, onAnswer }: CallProps) {
  const { write } = useSheet();
  const refuelled = () => {
    onAnswer();
    void write(`${due.name} refuelled`, (doing, casualty) => refuelPump(doing, casualty, due.pump));
  };
  return (
    <AlarmCall
      title={`${due.name}: stop the engine and refuel`}
      face={now - due.at < 60_000 ? "now" : `${sayElapsed((now - due.at) / 1000)} over`}
    >
      <Cautions ids={["refuel-stopped-and-cool"]} />
      <GloveRow>
        <Button kind="primary" wide onPress={refuelled}>
          Refuelled
        </Button>
        <Button wide onPress={onAnswer}>
          Stop the alarm only
        </Button>
      </GloveRow>
    </AlarmCall>
  );
}
