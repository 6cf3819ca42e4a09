/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { CallsWords } from "#src/words/made/frame/calls.ts";

const words: CallsWords = {
  now: () => "now",
  over: (d) => d.duration + " over",
  stopAlarm: () => "Stop the alarm",
  stopAndRefuel: (d) => d.pump + ": stop the engine and refuel",
  caller: (d) => "Casualty sheet: " + d.casualty,
  sound: () => "Sound the water",
  soundSpace: (d) => "Sound the water: " + d.space,
  last: (d) => "Last: " + d.level + " at " + d.time + ". Same mark, same stick.",
  soundNow: () => "Sound now",
  refuelFirst: (d) => "Refuel " + d.pump + ": stop the engine first",
  notWritten: () => "Not written down",
  refuelled: () => "Refuelled",
  inAMinute: () => "In a minute",
  stopAlarmOnly: () => "Stop the alarm only",
};
export default words;
