import { cautionNamed, type CautionId, type Dimension, type UnitSystem } from "#base";
import { linesOf, type Check, type Pattern, type PatternLine, type Step, type StepTimer } from "#kit";
import { sayMet, saysItsCount } from "#readiness";
import { sayDuration, sayLimit, sayProse, ENGLISH } from "#words";
import { cautionPieces } from "../caution-panel.ts";
import type { Piece } from "../flow/flow.ts";
import { pictureNumber, type PictureNumbers } from "../pictures/picture-page.ts";
import { textPiece } from "../flow/text-piece.ts";

/** Joins what is written and ringed by hand, so that it is never broken over two lines. */
const GLUE = "\u00a0";
const BLANK = "________";
const ANSWERS = `${GLUE.repeat(3)}S${GLUE.repeat(3)}W${GLUE.repeat(3)}N`;

/** Every line of a card at a size of letters [pt], stage by stage, with the number of the drawing to look at; the panel of a caution where its danger first comes up. */
export function cardPieces(
  { pattern, units }: { readonly pattern: Pattern; readonly units: UnitSystem },
  size: number,
  numbers: PictureNumbers,
): readonly Piece[] {
  const lines = linesOf(pattern);
  const numberAt = (line: PatternLine, before: PatternLine | undefined) =>
    pictureNumber(pattern, numbers, line, before);
  const shown = new Set<string>();
  return pattern.stages.flatMap(({ id, name }) => {
    const own = lines.filter(({ stage }) => stage === id);
    const fresh = [...new Set(own.flatMap(({ step }) => step.cautions))].filter((one) => !shown.has(one));
    for (const one of fresh) shown.add(one);
    const rows = own.flatMap((line, at) => {
      const row = rowOf(line, own[at - 1], { picture: numberAt(line, own[at - 1]), units });
      return [row, ...afterRow(line, units)].map((one) => textPiece(one, size));
    });
    return [textPiece({ text: name, heading: true }, size), ...cautionPieces(fresh, size - 1), ...rows];
  });
}

interface Shown {
  readonly picture: number | undefined;
  readonly units: UnitSystem;
}

function rowOf(line: PatternLine, before: PatternLine | undefined, { picture, units }: Shown) {
  const { check, step, label } = line;
  const own = check === undefined;
  const text = own
    ? `${signalsOf(step, before?.step)}${onlyAfter(step)}${sayProse(line.text, units)}`
    : sayProse(`${line.text} Right: ${check.expect}`, units);
  const reading = own ? timerWords(step.timer) : checkWords(check, units);
  const written = [reading, line.answered ? ANSWERS : ""].filter(Boolean).join(" ");
  const part = reading === "" ? " " : ` \u2013 `;
  const shown = picture === undefined ? "" : ` [${picture}]`;
  return { text: `${label}  ${text}${shown}${part}${written}`.trim(), bold: own };
}

/** What is done once the last check of a step is answered. */
function afterRow({ step, check }: PatternLine, units: UnitSystem) {
  if (step.afterwards === undefined || check?.id !== step.checks.at(-1)) return [];
  return [{ text: `${step.line}  Then: ${sayProse(step.afterwards, units)}`, bold: true }];
}

/** Signal word and hazard of each caution that begins at this line: what goes on from the line before is not said again. */
function signalsOf(step: Step, before: Step | undefined): string {
  const fresh = step.cautions.filter((id) => before === undefined || !before.cautions.includes(id));
  const named = fresh.map((id) => cautionNamed(id as CautionId));
  return named.map(({ signal, hazard }) => `${signal}: ${hazard.toLowerCase()}. `).join("");
}

/** Which turnarounds the line belongs to, where not to every one. */
function onlyAfter({ after }: Step): string {
  return after ? `Only after ${sayMet(after, ENGLISH.standing)}. ` : "";
}

function timerWords(timer: StepTimer | undefined): string {
  if (timer === undefined) return "";
  if (timer.kind === "pulls") return `pulls, at most ${timer.atMost}: ${BLANK}`;
  if (timer.kind === "prime") return `to water, at most ${sayDuration(timer.atMost)}: ${BLANK}`;
  return `at least ${sayDuration(timer.atLeast)}; from${GLUE}${BLANK} to${GLUE}${BLANK}`;
}

function checkWords(check: Check, units: UnitSystem): string {
  if (check.kind === "measure") return `${check.once ? "when new " : ""}${limitWords({ ...check, units })}: ${BLANK}`;
  if (check.kind === "count") return `${check.of}${saysItsCount(check) ? "" : `, ${check.exactly}`}: ${BLANK}`;
  if (check.kind === "match" && check.against) return `${check.first}: ${BLANK}`;
  if (check.kind === "match") return `${check.first}: ${BLANK} ${check.second}: ${BLANK}`;
  if (check.kind === "date") return `printed date: ${BLANK}`;
  if (check.kind === "timed") return `${limitWords({ ...check, dimension: "time", unit: "s", units })}: ${BLANK}`;
  return "";
}

/** Limits as the screen has them. */
function limitWords({ atLeast, atMost, dimension, unit, units }: Limited): string {
  const say = (si: number): string =>
    dimension === "time" ? sayDuration(si) : sayLimit(si, dimension as Dimension, { unit, units });
  const parts = [
    atLeast === undefined ? "" : `at least ${say(atLeast)}`,
    atMost === undefined ? "" : `at most ${say(atMost)}`,
  ];
  return parts.filter(Boolean).join(", ") || unit;
}

interface Limited {
  readonly atLeast?: number;
  readonly atMost?: number;
  readonly dimension: string;
  readonly unit: string;
  readonly units: UnitSystem;
}
