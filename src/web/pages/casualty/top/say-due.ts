import type { Words } from "#words";
import type { Due } from "../calls/due.ts";

/** "Sound", "Sound Hold", "Refuel Pump 1": what is due, in a few words. */
export function sayDue({ task }: Pick<Due, "task">, words: Words["sheetTop"]): string {
  if (task.kind === "refuel") return words.refuelPump({ pump: task.name });
  return task.name === undefined ? words.sound() : words.soundSpace({ space: task.name });
}
