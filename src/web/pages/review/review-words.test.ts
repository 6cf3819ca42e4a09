import { fetchWords } from "#words";
import type { KeptForecast } from "#readiness";
import { describe, expect, it } from "vitest";
import { scoreForecasts } from "#reliability";
import { sayMarks, sayOff, sayPump, sayScore } from "./review-words.ts";

const words = await fetchWords("en", "review");

const forecast = (off?: KeptForecast["off"]): KeptForecast => ({
  of: "lower",
  at: "2027-01-04T20:00:00+00:00",
  chance: 0.8,
  came: true,
  ...(off && { off }),
});

describe("how far off levels were, in words", () => {
  it("is a mean in the reader's units beside that of saying that she stays as she is, with how many were scored", () => {
    const forecasts = [forecast({ told: 0.02, stayed: 0.05 }), forecast({ told: 0.04, stayed: 0.07 }), forecast()];
    expect(sayOff(forecasts, "metric", words)).toMatch(
      /^By 2 forecasts the level was 30\smm off on average.*; had we said that it stays as it is, 60\smm\./,
    );
    expect(sayOff(forecasts, "us", words)).toMatch(/ was 1\.2\sin off on average.*, 2\.4\sin\./);
  });

  it("is nothing where none was scored", () => {
    expect(sayOff([forecast()], "metric", words)).toBeUndefined();
  });
});

describe("what soundings showed of a pump's delivery", () => {
  const pump = { pump: "p", name: "Pump", refused: false, refuels: 0 };
  const said = (seen: { p05: number; p95: number }, minutesRan: number) =>
    sayPump({ ...pump, minutesRan, seen: { ...seen, p50: 0.5 } }, words).at(-1);

  it("is too little to tell where it ran less than a minute, or where anything from none to all of it may be true", () => {
    expect(said({ p05: 0.4, p95: 0.6 }, 0)).toBe("The soundings tell too little of its delivery.");
    expect(said({ p05: 0.01, p95: 0.99 }, 30)).toBe("The soundings tell too little of its delivery.");
    expect(said({ p05: 0.3, p95: 0.6 }, 30)).toBe("The soundings saw 3 to 6 tenths of its stated delivery.");
  });
});

describe("a verdict on forecasts", () => {
  const told = Array.from({ length: 24 }, (_, i) => ({
    at: new Date(Date.UTC(2025, i, 10)).toISOString(),
    chance: 0.75,
    came: i % 4 !== 0,
  }));

  it("says of how many it is, from when to when, what was told and what came, without a name of a score", () => {
    const said = sayScore(told, scoreForecasts(told), words);
    expect(said).toBe(
      "About as sure as it should be. That is of 24 forecasts, from 10 Jan 2025 to 10 Dec 2026: on average they said 7.5 in 10, and 18 of the 24 came.",
    );
    expect(said).not.toMatch(/Brier|log score/);
    expect(sayMarks(scoreForecasts(told), words)).toMatch(/Brier score 0\.188/);
  });

  it("names one day once", () => {
    const oneDay = told.map((one, i) => ({ ...one, at: new Date(Date.UTC(2026, 10, 29, 9, i)).toISOString() }));
    expect(sayScore(oneDay, scoreForecasts(oneDay), words)).toContain(
      "That is of 24 forecasts, on 29 Nov 2026: on average",
    );
  });

  it("says how many more it takes where there are too few, and nothing else where there is none", () => {
    const few = told.slice(0, 4);
    expect(sayScore(few, scoreForecasts(few), words)).toMatch(
      /^Too few to tell: about 16 more forecasts would tell\. That is of 4 forecasts/,
    );
    expect(sayScore([], scoreForecasts([]), words)).toBe("None yet.");
  });
});
