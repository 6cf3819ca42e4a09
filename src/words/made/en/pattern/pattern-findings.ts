/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PatternFindingsWords } from "#src/words/made/pattern/pattern-findings.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
import { plural } from "#src/words/cases.ts";
const words: PatternFindingsWords = {
  title: () => "Findings a year",
  tooFew: (d) =>
    "Too little to tell whether findings come oftener than they did: it takes about " +
    plural(d.more, 0, en, { one: d.more + " more finding", other: d.more + " more findings" }) +
    ".",
  counted: (d) => plural(d.count, 0, en, { one: d.count + " finding", other: d.count + " findings" }),
  countedOnce: (d) =>
    plural(d.count, 0, en, { one: d.count + " finding", other: d.count + " findings" }) +
    ", those of one failed start counted once,",
  basisOnce: (d) => "Those of one failed start count once: " + d.count + ".",
  rising: (d) =>
    "By " +
    d.findings +
    " they come oftener than they did: if they came steadily, luck alone would make it look so " +
    d.chance +
    ".",
  falling: (d) =>
    "By " +
    d.findings +
    " they come more seldom than they did: if they came steadily, luck alone would make it look so " +
    d.chance +
    ".",
  noTrend: () => "No clear trend: findings come about as often as they did, as far as can be told.",
  rateNow: (d) => "Now " + d.low + " to " + d.high + " on one kit in a year, nine times in ten.",
  basis: (d) =>
    plural(d.count, 0, en, { one: d.count + " finding", other: d.count + " findings" }) +
    " while kits were on charge for " +
    d.years +
    " years, all together; drills left out.",
  law: (d) =>
    "Dotted line: power law of shape " +
    d.shape +
    ", above 1 they crowd (steady: p " +
    d.p +
    "); Laplace's test z " +
    d.z +
    ", p " +
    d.testP +
    ". Told as a trend only where both are below 0.05.",
  rarely: () => "less than once in 1000",
  inThousand: (d) => d.count + " times in 1000",
  asTable: () => "Findings a year as a table",
  chart: (d) =>
    "Findings so far against the time that all kits were on charge. " +
    d.said +
    " By calendar year in the table below.",
  reading: () => "Findings so far, all kits together",
  across: () => "on charge, all kits together",
  year: () => "Year",
  findings: () => "Findings",
  countedHead: () => "Failed starts counted once",
  kitsOnCharge: () => "Kits on charge, on average",
};
export default words;
