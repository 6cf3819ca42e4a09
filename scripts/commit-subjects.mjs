// Holds the subject of every commit since the rule began to it: imperative, at most 72 characters, no full stop.
// Where that commit is not known (an unpacked archive, a shallow clone) nothing tells which commits are new: none is held.
import { spawnSync } from "node:child_process";

/** The last commit before the rule was checked. */
const BEFORE = "126614d";
const MOST = 72;
/** Words that tell what was done instead of what the commit does. */
const TOLD = /^(Added|Adds|Adding|Fixed|Fixes|Fixing|Changed|Changes|Updated|Updates|Removed|Removes|WIP)\b/;

const known = git("cat-file", "-e", `${BEFORE}^{commit}`).status === 0;
const log = git("log", "--no-merges", "--format=%h %s", `${BEFORE}..HEAD`);
const subjects = known ? log.stdout.split("\n").filter(Boolean) : [];
if (!known) console.log(`Commit ${BEFORE} is not in this checkout: no subject is looked at.`);
const faults = subjects.flatMap((line) =>
  faultsOf(line.slice(line.indexOf(" ") + 1)).map((fault) => `${line}: ${fault}`),
);
for (const fault of faults) console.error(fault);
if (faults.length > 0) console.error(`Reword it: git rebase -i ${BEFORE}. See CONTRIBUTING.md.`);
process.exit(faults.length > 0 ? 1 : 0);

function faultsOf(subject) {
  return [
    ...(subject.length > MOST ? [`${subject.length} characters, at most ${MOST}`] : []),
    ...(/^[A-Z]/.test(subject) ? [] : ["does not begin with a capital letter"]),
    ...(subject.endsWith(".") ? ["ends with a full stop"] : []),
    ...(TOLD.test(subject) ? ["tells what was done; say what it does: Add, Fix, Change"] : []),
  ];
}

function git(...args) {
  return spawnSync("git", args, { encoding: "utf8" });
}
