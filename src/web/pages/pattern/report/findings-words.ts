import { FINDINGS_TO_TELL, type FindingsByYear } from "#station";
import { sayCount } from "#web/parts/words/say-count.ts";

/** Whether findings come oftener, in a sentence or two, with the range of the rate now. */
export function sayFindings({ kind, found, law, laplace }: FindingsByYear): string {
  if (kind === "too-few" || !law || !laplace) {
    const more = sayCount(Math.max(1, FINDINGS_TO_TELL - found), "more finding");
    return `Too little to tell whether findings come oftener than they did: it takes about ${more}.`;
  }
  const now = `Now ${law.rateLow.toFixed(2)} to ${law.rateHigh.toFixed(2)} on one kit in a year, nine times in ten`;
  const chance = `by luck alone about ${sayChance(Math.max(law.p ?? 1, laplace.p))}`;
  if (kind === "rising") return `Findings come oftener than they did: ${chance}. ${now}.`;
  if (kind === "falling") return `Findings come more seldom than they did: ${chance}. ${now}.`;
  return `No clear trend: findings come about as often as they did, as far as can be told. ${now}.`;
}

/** What it rests on. */
export function sayFindingsBasis({ found, kitYears, law, laplace }: FindingsByYear): string {
  const base = `${sayCount(found, "finding")} while kits were on charge for ${kitYears.toFixed(1)} years, all together; drills left out.`;
  if (!law || !laplace) return base;
  return `${base} Dotted line: power law of shape ${law.shape.toFixed(2)}, above 1 they crowd (steady: p ${(law.p ?? 1).toFixed(3)}); Laplace's test z ${laplace.z.toFixed(2)}, p ${laplace.p.toFixed(3)}. Told as a trend only where both are below 0.05.`;
}

function sayChance(p: number): string {
  return p < 0.001 ? "less than once in 1000" : `${Math.max(1, Math.round(1000 * p))} times in 1000`;
}
