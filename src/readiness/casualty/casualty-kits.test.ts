import { describe, expect, it } from "vitest";
import { isForCasualty, kitsOfCasualty, vesselName } from "./casualty-kits.ts";

const SHEET = { id: "c1", name: "Corrie Lass", opened: { at: "2027-03-14T10:00:00Z" }, pumps: [] };
const AT = "2027-03-14T10:05:00Z";

const at = (instant: string) => ({ to: "fishing vessel corrie lass, off the point", at: instant });
const hand = (kit: string, to: string) => ({ kit, to, at: AT, method: "passed" as const });

describe("a vessel's name", () => {
  it.each([
    ["Fishing vessel Corrie Lass, off the north skerries", "corrie lass"],
    ["F/V CORRIE LASS", "corrie lass"],
    ["fv. Corrie  Lass (towed)", "corrie lass"],
    ["MV 'Corrie Lass'", "corrie lass"],
    ["the yacht Corrie-Lass", "corrie lass"],
    ["Fishing boat Córrie Lass", "corrie lass"],
    ["Myfanwy", "myfanwy"],
    ["My Girl", "my girl"],
    ["MY GIRL", "my girl"],
    ["my girl, off the point", "my girl"],
    ["FV My Girl", "my girl"],
    ["MY Corrie Lass", "corrie lass"],
    ["MY My Girl", "my girl"],
    ["M.Y. Corrie Lass", "corrie lass"],
    ["M/Y CORRIE LASS", "corrie lass"],
    ["MY", "my"],
    ["Yachtsman's Rest", "yachtsman s rest"],
    ["Yacht", "yacht"],
    ["motor boat, 9 m", "motor boat"],
  ])("%s is %s", (given, name) => {
    expect(vesselName(given)).toBe(name);
  });
});

describe("a hand-over is for a casualty", () => {
  it("by the id it carries, whatever it is called", () => {
    expect(isForCasualty(SHEET, { to: "Somebody", at: AT, casualty: "c1" })).toBe(true);
    expect(isForCasualty(SHEET, { to: "Corrie Lass", at: AT, casualty: "c2" })).toBe(false);
  });

  it("by her name where it was typed, from half a day before the sheet until it is closed", () => {
    expect(isForCasualty(SHEET, at(AT))).toBe(true);
    expect(isForCasualty(SHEET, at("2027-03-14T00:30:00Z"))).toBe(true);
    expect(isForCasualty(SHEET, at("2027-03-13T20:00:00Z"))).toBe(false);
    const closed = { ...SHEET, closed: { at: "2027-03-14T12:00:00Z" } };
    expect(isForCasualty(closed, at("2027-03-14T11:59:00Z"))).toBe(true);
    expect(isForCasualty(closed, at("2027-03-14T12:01:00Z"))).toBe(false);
    expect(isForCasualty(SHEET, { to: "Corrie", at: AT })).toBe(false);
  });
});

describe("kits of a casualty", () => {
  it("are those handed over to her, and those that pumped on her without a hand-over written down", () => {
    const pumps = ["k2", "k3", undefined].map((kit) => ({ name: `Pump ${kit}`, ...(kit !== undefined && { kit }) }));
    const hands = [hand("k1", "Corrie Lass"), hand("k2", "FV Corrie Lass, north"), hand("k9", "Other")];
    expect(kitsOfCasualty({ ...SHEET, pumps }, hands)).toEqual([
      { kit: "k1", handed: hands[0] },
      { kit: "k2", handed: hands[1] },
      { kit: "k3" },
    ]);
  });

  it("are told at each hand-over, where one went twice", () => {
    const hands = [hand("k1", "Corrie Lass"), { ...hand("k1", "Corrie Lass"), at: "2027-03-14T11:00:00Z" }];
    expect(kitsOfCasualty(SHEET, hands)).toHaveLength(2);
  });
});
