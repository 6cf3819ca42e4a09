import { fetchWords } from "#words";
import type { KeptForecast } from "#readiness";
import { describe, expect, it } from "vitest";
import { sayOff } from "./review-words.ts";

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
      / was 30\smm off on average.*CRPS of 2 forecasts.*, 60\smm\. Lower/,
    );
    expect(sayOff(forecasts, "us", words)).toMatch(/ was 1\.2\sin off on average.*, 2\.4\sin\. Lower/);
  });

  it("is nothing where none was scored", () => {
    expect(sayOff([forecast()], "metric", words)).toBeUndefined();
  });
});
