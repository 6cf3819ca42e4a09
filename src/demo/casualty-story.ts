import type { EntryKind, Bodies } from "#readiness";
import { STATION_PLACE } from "#log";
import { DAY_MS, HOUR_MS } from "./kit-plan.ts";
import type { LogWriter } from "./log-writer.ts";
import { CREW, SECOND_CREW } from "./roster.ts";

const MINUTE_MS = 60_000;
/** Litres a minute in SI. */
const PER_MINUTE = 1 / 60_000;
const SPACE = "engine-room";
/** Levels [m] at minutes after the sheet was opened: rising, then held, then falling once the hole was half stopped. */
const SOUNDINGS: readonly (readonly [minute: number, level: number])[] = [
  [2, 0.62],
  [7, 0.69],
  [12, 0.74],
  [20, 0.73],
  [26, 0.71],
  [34, 0.58],
  [42, 0.44],
  [52, 0.28],
];

/** The invented fishing vessel that an away kit is aboard of: what was seen and done, and how it ended. */
export function writeCasualty(writer: LogWriter, today: number): void {
  const start = today - DAY_MS - 6 * HOUR_MS;
  const subject = `casualty:${writer.newId(start).slice(-8)}`;
  const acts: { readonly minute: number; readonly write: () => void }[] = [];
  const at = <K extends EntryKind>(minute: number, kind: K, body: Bodies[K]): void => {
    const hand = minute < 10 ? SECOND_CREW : CREW;
    const line = { kind, subject, place: STATION_PLACE, ms: start + minute * MINUTE_MS, hand, body };
    acts.push({ minute, write: () => void writer.write(line) });
  };
  at(0, "casualty-opened", {
    name: "Corrie Lass",
    boat: { kind: "fishing boat", length: 12 },
    space: { id: SPACE, name: "Engine room", sort: "engine-room", part: "aft" },
    note: "Skin fitting broken off below the waterline, says her skipper. Three people aboard, all well.",
  });
  at(14, "pump-set", {
    pump: "br-11",
    kit: "br-11",
    name: "Pump 11",
    space: SPACE,
    running: true,
    flow: 420 * PER_MINUTE,
    throttle: 1,
    lift: 2.1,
    runtime: 3.2 * 3600,
  });
  at(28, "hole-patched", { space: SPACE, open: 0.4 });
  at(36, "casualty-noted", { about: "people", note: "One man taken off, cold. Two stay to steer." });
  for (const [minute, level] of SOUNDINGS) {
    at(minute, "sounding-taken", { space: SPACE, level, text: `${Math.round(level * 100)} cm` });
  }
  at(75, "casualty-closed", {
    outcome: "towed-in",
    note: "Alongside at the lift. The pump stays aboard until she is out of the water.",
  });
  for (const act of acts.toSorted((one, other) => one.minute - other.minute)) act.write();
}
