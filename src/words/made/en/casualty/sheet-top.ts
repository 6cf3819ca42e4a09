/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { SheetTopWords } from "#src/words/made/casualty/sheet-top.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: SheetTopWords = {
  dueNext: () => "Due next",
  sound: () => "Sound",
  soundSpace: (d) => "Sound " + d.space,
  refuel: () => "Refuel",
  refuelPump: (d) => "Refuel " + d.pump,
  now: () => "now",
  over: (d) => d.duration + " over",
  at: (d) => "at " + d.time,
  nowOver: (d) => "now, " + d.duration + " over",
  atIn: (d) => "at " + d.time + ", in " + d.duration,
  gravest: () => "Gravest",
  warnings: () => "Warnings",
  leaveNow: () => "Time to leave her",
  leaveNowMore: () =>
    "Signs that people should be off her now. The person in charge on scene decides, and does not wait for a figure.",
  leaveReady: () => "Be ready to leave her",
  leaveReadyMore: () =>
    "Lifejackets on, way out clear, nobody below alone, someone counts heads. The person in charge on scene decides.",
  areWeGaining: () => "Are we gaining?",
  readOut: (d) => d.word + ": " + d.detail + ".",
  computingWord: () => "COMPUTING…",
  notComputed: () => "Not computed",
  chance: (d) => "Chance " + d.chance + ".",
  inCharge: () => "The person in charge on scene decides.",
  computing: () => "Computing…",
  computingAnew: () => "Computing anew…",
  anEstimate: () => "An estimate.",
  madeAt: (d) => "At " + d.time,
  oldOf: (d) => "OLD, of " + d.time,
  origin: (d) =>
    plural(d.count, 0, en, {
      one: d.age + ", from " + strictNumber("en", d.count, 0, "count") + " sounding. " + d.state,
      other: d.age + ", from " + strictNumber("en", d.count, 0, "count") + " soundings. " + d.state,
    }),
};
export default words;
