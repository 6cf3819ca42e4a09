import { fetchWords } from "#words";
import { describe, expect, test } from "vitest";
import { readPrintedDate, sayPrinted } from "./fields/printed-date.ts";
import { readQuantity } from "./fields/quantity-field.tsx";

const words = await fetchWords("en", "parts");

/** What is said of a text that is no quantity. */
const said = (unit: string, dimension: "length" | "ratio" | "volume" = "length") => {
  const read = readQuantity("about so much", { dimension, unit }, words);
  return "fault" in read ? read.fault : "";
};

describe("a quantity as typed", () => {
  test("a bare number takes the unit shown beside the box, and the text says so", () => {
    expect(readQuantity("8", { dimension: "length", unit: "ft" }, words)).toEqual({
      reading: { si: 2.4384, text: "8 ft" },
    });
    expect(readQuantity(" 4,5 ", { dimension: "length", unit: "m" }, words)).toEqual({
      reading: { si: 4.5, text: "4,5 m" },
    });
  });

  test("any unit of the dimension is taken as written", () => {
    expect(readQuantity("8 ft", { dimension: "length", unit: "m" }, words)).toEqual({
      reading: { si: 2.4384, text: "8 ft" },
    });
  });

  test("another dimension's unit is refused, naming the units that would do", () => {
    const read = readQuantity("8 psi", { dimension: "length", unit: "m" }, words);
    expect(read).toHaveProperty("fault");
    expect("fault" in read && read.fault).toContain("mm, m, in, ft");
  });

  test("says in words how a bare number is read, never a symbol that reads as a word", () => {
    expect(said("in")).toMatch(/\. A bare number is read as inches\.$/);
    expect(said("ft")).toMatch(/ is read as feet\.$/);
    expect(said("m")).toMatch(/ is read as metres\.$/);
    expect(said("mm")).toMatch(/ is read as millimetres\.$/);
    expect(said("L", "volume")).toMatch(/ is read as L\.$/);
    expect(said("", "ratio")).toMatch(/ is read as it stands\.$/);
  });

  test("nothing typed is no reading", () => {
    expect(readQuantity("", { dimension: "length", unit: "m" }, words)).toHaveProperty("fault");
  });
});

function read(day: string, month: string, year: string, mayBeMonth = true) {
  return readPrintedDate({ day, month, year }, mayBeMonth, words);
}

describe("a date as printed", () => {
  test("is a day, or a month where no day is printed", () => {
    expect(read("4", "3", "2027")).toEqual({ kind: "date", date: "2027-03-04" });
    expect(read("", "3", "2027")).toEqual({ kind: "date", date: "2027-03" });
  });

  test("is not guessed at while it is being typed, nor without a day that is asked for", () => {
    expect(read("", "3", "20")).toEqual({ kind: "incomplete" });
    expect(read("", "3", "2027", false)).toEqual({ kind: "incomplete" });
  });

  test("knows how many days a month has, leap years too", () => {
    expect(read("29", "2", "2028")).toEqual({ kind: "date", date: "2028-02-29" });
    expect(read("29", "2", "2027")).toEqual({ kind: "fault", fault: "That month has days 1 to 28." });
    expect(read("", "13", "2027").kind).toBe("fault");
    expect(read("", "12", "2101").kind).toBe("fault");
  });

  test("says what is allowed as soon as what is typed can be no month or no year", () => {
    expect(read("", "13", "")).toEqual({ kind: "fault", fault: "The month is a number from 1 to 12." });
    const fault = "The year is one from 1990 to 2100, in four figures, such as 2027.";
    expect(read("", "3", "27")).toEqual({ kind: "fault", fault });
    for (const year of ["", "2", "20", "202", "19", "199"]) expect(read("", "03", year).kind).toBe("incomplete");
    expect(read("", "0", "2027").kind).toBe("incomplete");
  });

  test("is read back so that a slip shows", () => {
    expect(sayPrinted("2027-03-04", words)).toBe("4 March 2027");
    expect(sayPrinted("2027-03", words)).toBe("March 2027, to its last day");
    expect(sayPrinted("2027-03", words, false)).toBe("March 2027, from its first day");
  });
});
