import { FINDINGS_TO_TELL, type FindingsByYear } from "#station";
import type { Words } from "#words";

type FindingsWords = Words["patternFindings"];

/** Whether findings come oftener, in a sentence or two, with the range of the rate now. */
export function sayFindings({ kind, found, counted, law, laplace }: FindingsByYear, words: FindingsWords): string {
  if (kind === "too-few" || !law || !laplace) return words.tooFew({ more: Math.max(1, FINDINGS_TO_TELL - counted) });
  const now = words.rateNow({ low: law.rateLow.toFixed(2), high: law.rateHigh.toFixed(2) });
  const chance = sayChance(Math.max(law.p ?? 1, laplace.p), words);
  const told = {
    chance,
    findings: counted < found ? words.countedOnce({ count: counted }) : words.counted({ count: counted }),
  };
  if (kind === "rising") return `${words.rising(told)} ${now}`;
  return kind === "falling" ? `${words.falling(told)} ${now}` : `${words.noTrend()} ${now}`;
}

/** What it rests on. */
export function sayFindingsBasis(
  { found, counted, kitYears, law, laplace }: FindingsByYear,
  words: FindingsWords,
): string {
  const basis = words.basis({ count: found, years: kitYears.toFixed(1) });
  const base = counted < found ? `${basis} ${words.basisOnce({ count: counted })}` : basis;
  if (!law || !laplace) return base;
  const steady = { shape: law.shape.toFixed(2), p: (law.p ?? 1).toFixed(3) };
  return `${base} ${words.law({ ...steady, z: laplace.z.toFixed(2), testP: laplace.p.toFixed(3) })}`;
}

function sayChance(p: number, words: FindingsWords): string {
  return p < 0.001 ? words.rarely() : words.inThousand({ count: Math.max(1, Math.round(1000 * p)) });
}
