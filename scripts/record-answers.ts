import { writeFileSync } from "node:fs";
import { askedAgain, recordedFiles, shippedContext } from "../test/golden/answers/recorded.ts";

/*
 * Records anew what questions answer to the inputs kept in test/golden/answers; with names, only those questions.
 * Run by hand, and only where an answer is meant to change: the commit's body gives the reason.
 */

const wanted = process.argv.slice(2);
const context = await shippedContext();
for (const { question, path } of recordedFiles()) {
  if (wanted.length === 0 || wanted.includes(question)) writeFileSync(path, askedAgain(question, path, context));
}
