import { dayIn } from "#base";
import { practisingOf, trainingOf } from "#station";
import type { WholeLog } from "../log/whole-log.ts";
import type { Parts } from "../parts.ts";

/** The training record of a person, one who left too; undefined for nobody of this station. */
export async function printTraining(parts: Parts, log: WholeLog, id: string): Promise<Uint8Array | undefined> {
  const reading = (await log.read()).read();
  const person = reading.people.find((one) => one.id === id);
  if (person === undefined) return undefined;
  const now = parts.ambient.now();
  const day = dayIn(reading.places[0]?.zone ?? "UTC", now);
  const training = trainingOf(practisingOf(reading), id, day);
  const { renderTrainingRecord } = await import("#paper");
  return renderTrainingRecord({ stationName: reading.stationName, person, day, training, naming: reading, now });
}
