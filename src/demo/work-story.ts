import { STATION_PLACE } from "#log";
import { DAY_MS, HOUR_MS } from "./kit-plan.ts";
import { KITS, type DemoKit, type Trouble } from "./kits.ts";
import { dayOf, type LogWriter } from "./log-writer.ts";
import { ADMINISTRATOR, CREW, KEEPER } from "./roster.ts";

/** Hours a week that the invented people have for work on kits [h]. */
const HOURS: readonly (readonly [person: string, hours: number])[] = [
  ["mara-tolliver", 6],
  ["jonas-wick", 4],
  ["ede-sorrell", 3],
  ["ines-dunmore", 0],
];

/** What the station says of the work ahead: hours, days away, a line taken, one given its day, one put off. */
export function writeWork(writer: LogWriter, today: number): void {
  const evening = today - 5 * HOUR_MS;
  const station = { place: STATION_PLACE, ms: evening - 60 * DAY_MS };
  for (const [person, hours] of HOURS) {
    writer.write({ ...station, kind: "hours-set", subject: `person:${person}`, hand: ADMINISTRATOR, body: { hours } });
  }
  const away = { from: dayOf(today + 9 * DAY_MS), to: dayOf(today + 22 * DAY_MS), note: "On leave." };
  writer.write({ ...station, kind: "absence-set", subject: "person:ede-sorrell", hand: KEEPER, body: away });
  const soon = kitOf("lapses-soon");
  const worn = kitOf("lived-with");
  const said = { ms: evening, hand: CREW };
  const taken = { work: "opening", person: CREW.by } as const;
  writer.write({ ...said, kind: "work-taken", subject: soon.kit, place: soon.place, body: taken });
  const day = { work: "opening", day: dayOf(today + 2 * DAY_MS) } as const;
  writer.write({ ...said, ms: evening + 60_000, kind: "work-dated", subject: soon.kit, place: soon.place, body: day });
  const reason = "The part is on order.";
  const wait = { work: "opening", until: dayOf(today + 16 * DAY_MS), reason } as const;
  writer.write({ ...said, hand: KEEPER, kind: "work-put-off", subject: worn.kit, place: worn.place, body: wait });
}

function kitOf(trouble: Trouble): DemoKit {
  return KITS.find((kit) => kit.trouble === trouble)!;
}
