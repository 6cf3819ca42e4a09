import type { Entry } from "#log";

/** Lines that somebody made to hold readers up: as many as asked for, all about one subject. */
export type Crafted = (lines: number) => readonly Entry[];

const START = Date.UTC(2027, 0, 1);

/** Id of the line of this number. */
export function idOf(number: number): string {
  return `01920000-0000-7000-8000-${number.toString(16).padStart(12, "0")}`;
}

/** When the line of this number was made; each a second after the one before. */
export function at(number: number): string {
  return new Date(START + number * 1000).toISOString();
}

/** What a line says, and what of it is not as usual. */
export type Line = Pick<Entry, "kind" | "body"> & Partial<Entry>;

/** So many lines, written by turns on two devices. */
export function lines(subject: string, count: number, line: (number: number) => Line): readonly Entry[] {
  return Array.from({ length: count }, (_, number) => ({
    id: idOf(number),
    place: "north",
    subject,
    at: at(number),
    by: "mallory",
    device: `d${number % 2}`,
    ...line(number),
  }));
}

/** A pump set on a casualty. */
export function pumpSet(pump: string, running: boolean): Line {
  return { kind: "pump-set", body: { pump, name: pump, space: "hold", running, flow: 0.01 } };
}
