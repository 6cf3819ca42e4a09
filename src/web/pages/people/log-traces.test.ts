import { createStationFold } from "#station";
import type { Entry } from "#log";
import { beforeAll, describe, expect, it } from "vitest";
import { StationCopy } from "#web/device/sync/station-copy.ts";
import { deviceTracesOf, writersOf, type WholeStation } from "./log-traces.ts";

/** Ada sets the station up at her desk, invites Bo and Cy, and Bo signs in on a telephone. */
const LINES = [
  wrote("2027-03-01T09:00:00Z", "ada", "desk", "person:ada", { name: "Ada", role: "administrator" }),
  wrote("2027-03-01T09:00:00Z", "ada", "desk", "device:desk", { name: "Desk" }),
  wrote("2027-03-01T09:01:00Z", "ada", "desk", "place:boat", { name: "Boat", strength: 0, zone: "UTC" }),
  wrote("2027-03-01T10:00:00Z", "ada", "desk", "person:bo", { name: "Bo", role: "crew" }),
  wrote("2027-03-01T14:00:00+05:00", "ada", "desk", "person:cy", { name: "Cy", role: "crew" }),
  wrote("2027-03-02T08:00:00Z", "bo", "phone", "device:phone", { name: "Desk" }),
];

function wrote(at: string, by: string, device: string, subject: string, body: object): Omit<Entry, "id"> {
  const kind = subject.startsWith("place:") ? "place-set" : `${subject.split(":", 1)[0]}-joined`;
  return { at, by, device, subject, kind, body, place: "station" };
}

let view: WholeStation;

beforeAll(() => {
  const copy = new StationCopy(createStationFold([]));
  copy.add(LINES.map((line, at) => ({ ...line, id: `0198f2c0-0000-7000-8000-00000000000${at}` })));
  const person = { id: "ada", name: "Ada", role: "administrator", left: false } as const;
  const now = "2027-03-03T09:00:00Z";
  view = copy.view({ person, device: "desk", place: undefined, now, units: "metric" })!;
});

describe("traces in the log", () => {
  it("tell who has written and who was only invited", () => {
    expect([...writersOf(view)].toSorted()).toEqual(["ada", "bo"]);
  });

  it("tell two devices of one name apart by who joined on them and when", () => {
    const traces = deviceTracesOf(view);
    expect(traces.get("desk")?.joined).toMatchObject({ by: "ada", at: "2027-03-01T09:00:00Z" });
    expect(traces.get("phone")?.joined).toMatchObject({ by: "bo", at: "2027-03-02T08:00:00Z" });
  });

  it("tell the newest line of a device by the instant, whatever zone it was written in", () => {
    // 14:00 at five hours east is 09:00 UTC: an hour before the line about Bo.
    expect(deviceTracesOf(view).get("desk")?.last).toMatchObject({ subject: "person:bo" });
  });
});
