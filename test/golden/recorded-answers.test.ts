import { readFileSync } from "node:fs";
import type { QuestionContext } from "#questions";
import { questionNames } from "#questions";
import { beforeAll, describe, expect, it } from "vitest";
import { askedAgain, givenIn, recordedFiles, shippedContext } from "./answers/recorded.ts";

/*
 * Answers of every question to a set of inputs that is kept, valid, at the edge and bad, byte for byte as JSON. They are
 * no evidence of correctness: whoever recorded them asked this code. They show only that answers are unchanged, so that
 * a rewrite that means to change none can be told from one that does. Evidence is in `*.sources.test.ts`.
 * An answer that is meant to change is recorded anew by `npx tsx scripts/record-answers.ts`: see CONTRIBUTING.md.
 */

const FILES = recordedFiles();
const casesOf = (path: string) => givenIn(readFileSync(path, "utf8"));

describe("the recorded set", () => {
  it("has a file for every question and no other", () => {
    expect(FILES.map(({ question }) => question).toSorted()).toEqual(questionNames().toSorted());
  });

  it.each(FILES)("asks $question ten times or more, each case under a name of its own", ({ path }) => {
    const names = casesOf(path).map((one) => one.case);
    expect(new Set(names).size).toBe(names.length);
    expect(names.length).toBeGreaterThanOrEqual(10);
  });

  it("holds three hundred inputs or more", () => {
    expect(FILES.flatMap(({ path }) => casesOf(path)).length).toBeGreaterThanOrEqual(300);
  });
});

describe("an answer recorded before", () => {
  let context: QuestionContext;
  beforeAll(async () => {
    context = await shippedContext();
  });

  it.each(FILES)("is given again, byte for byte, by $question", ({ question, path }) => {
    const now = askedAgain(question, path, context);
    expect(JSON.parse(now)).toEqual(JSON.parse(readFileSync(path, "utf8")));
    expect(now).toBe(readFileSync(path, "utf8"));
  });
});
