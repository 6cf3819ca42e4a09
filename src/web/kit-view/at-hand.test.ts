import { describe, expect, it } from "vitest";
import type { StationView } from "../device/sync/contract.ts";
import { sampleKit } from "../pages/board/sample-kits.ts";
import { findKit, findKitEver, nameOf, sayWho } from "./at-hand.ts";
import { SAMPLE } from "./sample.ts";

const view = {
  device: "device:phone",
  people: [{ id: "person:ada", name: "Ada", role: "keeper", left: false }],
  devices: [{ id: "device:tablet", name: "Boat room tablet", shutOut: false }],
} as unknown as StationView;
const mark = { by: "person:ada", at: "2026-03-14T14:05:00+02:00" };

describe("the kit of a page's address", () => {
  const retired = sampleKit("9");
  const kits = { ...view, kits: [sampleKit("1")], retired: [retired], patterns: new Map([[retired.pattern, SAMPLE]]) };

  it("is one on charge", () => {
    expect(findKit(kits, "1")?.kit.name).toBe("Pump 1");
    expect(findKit(kits, "9")).toBeUndefined();
  });

  it("is a retired one too where the page only tells of it", () => {
    expect(findKitEver(kits, "9")?.kit).toBe(retired);
    expect(findKitEver(kits, "1")?.kit.name).toBe("Pump 1");
    expect(findKitEver(kits, "404")).toBeUndefined();
  });
});

describe("who answered", () => {
  it("names the person and the time on their own clock", () => {
    expect(sayWho(view, { ...mark, device: "device:phone" })).toBe("Ada, 14:05");
  });

  it("names the other device where it was one", () => {
    expect(sayWho(view, { ...mark, device: "device:tablet" })).toBe("Ada, 14:05, on Boat room tablet");
    expect(sayWho(view, { ...mark, device: "device:lost" })).toContain("on another device");
  });

  it("falls back to the id of a person not yet heard of", () => {
    expect(nameOf(view, "person:new")).toBe("person:new");
  });
});
