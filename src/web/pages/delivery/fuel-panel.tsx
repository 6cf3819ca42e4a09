import { useWords, withParts } from "#web/language/index.ts";
import { sayDuration, type Words } from "#words";
import type { UnitSystem } from "#base";
import { fuelKindOf, type FuelKind } from "#kit";
import { useState } from "react";
import { Button, ErrorBox, MoreOnPhone, Notice, Section, sayTime } from "#web/parts/index.ts";
import { ShortCautions } from "#web/parts/caution-box.tsx";
import { QuantityField } from "#web/parts/fields/quantity-field.tsx";
import { useNow } from "#web/timing/index.ts";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import { AssumptionList } from "#web/rig/assumption-list.tsx";
import type { Setting } from "#web/rig/delivery-words.ts";
import { askFuel, canUnit, sayCan, sayCans, sayTank, usualCan, type FuelAnswer } from "./fuel-words.ts";
import { refuelInstant, refuels, useRefuels, type Refuel } from "./refuel.ts";
import { Stepper } from "./stepper.tsx";
import { STEPS } from "./stepping.ts";

interface FuelPanelProps {
  readonly at: KitAtHand;
  readonly about: Setting;
}

const FUEL_CAUTIONS: Readonly<Record<FuelKind, readonly string[]>> = {
  petrol: ["petrol-vapour", "refuel-stopped-and-cool", "hot-exhaust"],
  diesel: ["diesel-fuel", "hot-exhaust"],
};

/** Shown beside the fuel. */
export function fuelCautions(pattern: Parameters<typeof fuelKindOf>[0]): readonly string[] {
  return FUEL_CAUTIONS[fuelKindOf(pattern) ?? "petrol"];
}

/** Part of the tank to have left where nobody says [1]. */
const USUAL_RESERVE = 0.15;

/** What a person plans with; what is not entered stands as usual. */
interface Planned {
  readonly reserve: number;
  readonly passage?: number | undefined;
  readonly can?: number | undefined;
}

/** How long the fuel lasts, when to refuel, and how many cans a passage needs. */
export function FuelPanel({ at, about }: FuelPanelProps) {
  const words = useWords("delivery");
  const { pattern, setting, units } = about;
  const [planned, setPlanned] = useState<Planned>({ reserve: USUAL_RESERVE });
  const can = planned.can ?? usualCan(units);
  const answer = askFuel(pattern, { throttle: setting.throttle, ...planned, can });
  if (!answer || !pattern.engine) return null;
  if ("error" in answer) return <ErrorBox error={answer.error} title={words.fuelNotComputed()} />;
  const cans = sayCans(answer, can, units, words);
  return (
    <Section title={words.fuel()}>
      <p className="delivery-line">{sayTank(answer, pattern.engine, units, words)}</p>
      <div className="delivery-cautions">
        <ShortCautions ids={fuelCautions(pattern)} />
      </div>
      <RefuelClock at={at} answer={answer} />
      <MoreOnPhone title={words.cansFolded()}>
        <PlanFields planned={planned} units={units} onChange={(part) => setPlanned({ ...planned, ...part })} />
        {cans !== undefined && <output className="delivery-line">{cans}</output>}
      </MoreOnPhone>
      <details className="extras">
        <summary>{words.granted()}</summary>
        <AssumptionList assumptions={[burnTaken(words), ...answer.assumptions]} />
      </details>
    </Section>
  );
}

interface PlanFieldsProps {
  readonly planned: Planned;
  readonly units: UnitSystem;
  readonly onChange: (part: Partial<Planned>) => void;
}

function PlanFields({ planned, units, onChange }: PlanFieldsProps) {
  const words = useWords("delivery");
  return (
    <div className="delivery-steppers">
      <Stepper
        label={words.reserve()}
        steps={STEPS.reserve}
        value={planned.reserve}
        onChange={(reserve) => onChange({ reserve })}
      />
      <PlanField
        label={words.passage()}
        hint={words.passageHint()}
        dimension="time"
        unit="h"
        onRead={(passage) => onChange({ passage })}
      />
      <PlanField
        label={words.canHolds()}
        hint={words.canHoldsHint({ can: sayCan(usualCan(units), units) })}
        dimension="volume"
        unit={canUnit(units)}
        onRead={(can) => onChange({ can })}
      />
    </div>
  );
}

function burnTaken(words: Words["delivery"]) {
  return { what: words.burnTaken(), effect: words.burnEffect() };
}

interface PlanFieldProps {
  readonly label: string;
  readonly hint: string;
  readonly dimension: "time" | "volume";
  readonly unit?: string;
  readonly onRead: (si: number | undefined) => void;
}

function PlanField({ onRead, ...words }: PlanFieldProps) {
  const [text, setText] = useState("");
  return (
    <QuantityField
      {...words}
      value={text}
      onChange={(typed, read) => (setText(typed), onRead(read && read.si > 0 ? read.si : undefined))}
    />
  );
}

/** The refuel clock: by when, from a start on a full tank; it calls on this device until it is answered. */
function RefuelClock({ at, answer }: { readonly at: KitAtHand; readonly answer: FuelAnswer }) {
  const words = useWords("delivery");
  const running = useRefuels().find(({ kit }) => kit === at.kit.id);
  const now = useNow(true);
  const start = (started: number) =>
    refuels.start({
      kit: at.kit.id,
      name: at.kit.name,
      started: new Date(started).toISOString(),
      seconds: answer.refuelAt,
    });
  if (running) return <RunningClock running={running} now={now} onAgain={() => start(Date.now())} />;
  const by = new Date(now + 1000 * answer.refuelAt).toISOString();
  return (
    <div className="delivery-clock">
      <p>{withParts(words.startedNow, { by: <strong className="tabular">{sayTime(by)}</strong> })}</p>
      <Button kind="primary" onPress={() => start(Date.now())}>
        {words.remind()}
      </Button>
      <StartedEarlier onStart={start} />
    </div>
  );
}

/** For a pump that was started before anybody opened this page. */
function StartedEarlier({ onStart }: { readonly onStart: (started: number) => void }) {
  const words = useWords("delivery");
  const [text, setText] = useState("");
  const [ago, setAgo] = useState<number>();
  return (
    <details className="extras">
      <summary>{words.startedEarlier()}</summary>
      <QuantityField
        label={words.runningSince()}
        hint={words.runningSinceHint()}
        dimension="time"
        unit="min"
        value={text}
        onChange={(typed, read) => (setText(typed), setAgo(read && read.si >= 0 ? read.si : undefined))}
      />
      <Button isDisabled={ago === undefined} onPress={() => ago !== undefined && onStart(Date.now() - 1000 * ago)}>
        {words.remindFrom()}
      </Button>
    </details>
  );
}

interface RunningClockProps {
  readonly running: Refuel;
  readonly now: number;
  readonly onAgain: () => void;
}

function RunningClock({ running, now, onAgain }: RunningClockProps) {
  const words = useWords("delivery");
  const due = refuelInstant(running);
  const isOver = now >= due;
  const by = sayTime(new Date(due).toISOString());
  const clock = (
    <span role="timer" aria-live="off" className="delivery-line tabular">
      {isOver
        ? words.over({ duration: sayDuration((now - due) / 1000, "face") })
        : words.left({ duration: sayDuration((due - now) / 1000, "face") })}
    </span>
  );
  return (
    <div className="delivery-clock">
      <Notice tone={isOver ? "wrong" : "plain"} title={words.refuelBy({ by })}>
        <p>{withParts(words.clockMore, { clock, started: sayTime(running.started) })}</p>
      </Notice>
      <div className="delivery-clock-ways">
        <Button kind="primary" onPress={onAgain}>
          {words.refuelled()}
        </Button>
        <Button onPress={() => refuels.stop(running.kit)}>{words.stopped()}</Button>
      </div>
    </div>
  );
}
