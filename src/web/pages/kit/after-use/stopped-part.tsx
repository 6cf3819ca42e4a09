import { useState } from "react";
import { sayDuration, type Words } from "#words";
import { useWords } from "#web/language/index.ts";
import type { KitState } from "#readiness";
import { pumpedFrom } from "#station";
import { sayInstant, sayTime, TextField, Timestamp } from "#web/parts/index.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { isBeforeHandOver, stoppedAgo, stoppedOnSheet, stoppedTyped, type Stopped } from "./stopped.ts";

interface StoppedPartProps {
  readonly kit: KitState;
  /** [ms] */
  readonly now: number;
  readonly stopped: Stopped | undefined;
  /** Undefined while a time is being typed. */
  readonly onStopped: (stopped: Stopped | undefined) => void;
}

/** When it last pumped: the time to its first flush is counted from then. */
export function StoppedPart({ kit, now, stopped, onStopped }: StoppedPartProps) {
  const words = useWords("handOver");
  const [typed, setTyped] = useState<string>();
  const pick = (id: Picked) => {
    setTyped(id === "typed" ? "" : undefined);
    onStopped(id === "typed" ? undefined : id);
  };
  return (
    <>
      <PickRow
        label={words.lastPump()}
        hint={words.lastPumpHint()}
        options={optionsOf(kit, now, words)}
        picked={typed === undefined ? stopped : "typed"}
        onPick={pick}
      />
      {typed !== undefined && (
        <TypedTime
          text={typed}
          kit={kit}
          at={typed === "" ? undefined : stoppedTyped(typed, kit, now)}
          onText={(text) => {
            setTyped(text);
            onStopped(stoppedTyped(text, kit, now));
          }}
        />
      )}
    </>
  );
}

type Picked = Stopped | "typed";

function optionsOf(kit: KitState, now: number, words: Words["handOver"]): { id: Picked; words: string }[] {
  const sheet = stoppedOnSheet(kit);
  return [
    ...(sheet === undefined ? [] : [{ id: "sheet" as const, words: words.bySheet({ time: sayTime(sheet) }) }]),
    ...stoppedAgo(kit, now).map((ago) => ({ id: `${ago}` as const, words: sayAgo(ago, words) })),
    { id: "typed", words: words.typedTime() },
    { id: "unknown", words: words.unknown() },
  ];
}

/** [min] */
function sayAgo(ago: number, words: Words["handOver"]): string {
  if (ago === 0) return words.justNow();
  return ago === 1440 ? words.yesterday() : words.ago({ duration: sayDuration(60 * ago, "minutes") });
}

interface TypedTimeProps {
  readonly text: string;
  readonly kit: KitState;
  readonly at: Stopped | undefined;
  readonly onText: (text: string) => void;
}

/** A time by the clock, said again with its day so that a slip is seen. */
function TypedTime({ text, kit, at, onText }: TypedTimeProps) {
  const words = useWords("handOver");
  const from = pumpedFrom(kit);
  const since = Number.isFinite(from) ? sayInstant(new Date(from).toISOString()) : "";
  return (
    <>
      <TextField
        label={words.lastPumpTime()}
        hint={words.lastPumpTimeHint()}
        value={text}
        onChange={onText}
        isShort
        {...(text.length > 3 && at === undefined && { fault: words.noSuchTime({ from: since }) })}
      />
      {at !== undefined && (
        <p>
          <Timestamp at={at.slice(3)} />
          {isBeforeHandOver(at, kit) && <> {words.beforeHandOver()}</>}
        </p>
      )}
    </>
  );
}
