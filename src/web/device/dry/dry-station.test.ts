import { loadPattern } from "#kit";
import { filledPattern } from "#test/patterns/filled-pattern.ts";
import { expect, test } from "vitest";
import { DRY_KIT, DryStation } from "./dry-station.ts";

const pattern = loadPattern(filledPattern("bilge-kit"), "bilge-kit@1.yaml");
let seconds = 0;
let ids = 0;
const ambient = {
  now: () => new Date(Date.parse("2027-03-14T10:00:00Z") + (seconds += 1) * 1000).toISOString(),
  newId: () => `0190a000-0000-7000-8000-${(ids += 1).toString(16).padStart(12, "0")}`,
};
const parts = {
  pattern,
  me: { id: "ann", name: "Ann", role: "keeper", left: false },
  place: { id: "north", name: "North", strength: 1, zone: "UTC" },
  units: "metric",
  ambient,
} as const;

test("FORM-6 a dry run opens a kit built to the draft, and folds what is done there", async () => {
  const dry = new DryStation(parts as unknown as ConstructorParameters<typeof DryStation>[0]);
  const view = dry.now();
  const kit = view?.kits.find(({ id }) => id === DRY_KIT);
  expect([kit?.pattern, kit?.turnaround?.because]).toEqual(["bilge-kit@1", "routine"]);
  let told = 0;
  dry.hear(() => (told += 1));
  await dry.recorder.record({
    subject: `kit:${DRY_KIT}`,
    kind: "step-answered",
    body: { turnaround: kit?.turnaround?.id ?? "", step: "open-box", line: 1, answer: "seen" } as never,
  });
  expect(told).toBe(1);
  expect(
    dry
      .now()
      ?.entriesOf(`kit:${DRY_KIT}`)
      .map(({ kind }) => kind),
  ).toContain("step-answered");
  await expect(dry.recorder.keepPhoto(new Blob())).rejects.toThrow(/WE-467|no photo/);
});
