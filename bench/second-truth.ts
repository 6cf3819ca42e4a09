// `npm run calibrate -- second-truth`: the sheet against a truth that shares no line with the estimator. See
// docs/methods/second-truth.md.
import { fork } from "node:child_process";
import { appendFileSync, existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { CONTROLS } from "./second-truth/controls.ts";
import { drawCasualty, FAMILIES } from "./second-truth/families.ts";
import { markdownOf, measure, notKept, tableOf } from "./second-truth/report.ts";
import { SETTINGS, type Setting } from "./second-truth/settings.ts";
import { askSheet } from "./second-truth/sheet.ts";
import { watch, type Asker, type Watched } from "./second-truth/watching.ts";

const FULL = 1200;
const QUICK = 144;

const { values: given } = parseArgs({
  options: {
    cases: { type: "string" },
    quick: { type: "boolean", default: false },
    workers: { type: "string", default: "1" },
    family: { type: "string" },
    first: { type: "string", default: "0" },
    control: { type: "string" },
    setting: { type: "string", default: "usual" },
    save: { type: "string" },
    resume: { type: "boolean", default: false },
    from: { type: "string" },
    markdown: { type: "boolean", default: false },
    worker: { type: "boolean", default: false },
  },
});

type Job = readonly [family: (typeof FAMILIES)[number], number: number];

/** Families in turn, so that a run cut short still has some of each. */
function jobs(): readonly Job[] {
  const families = FAMILIES.filter((family) => given.family === undefined || family === given.family);
  const cases = Number(given.cases ?? (given.quick ? QUICK : FULL));
  const each = Math.ceil(cases / families.length);
  const first = Number(given.first);
  return Array.from({ length: each }, (_, n) => families.map((family) => [family, first + n] as const)).flat();
}

interface Done {
  readonly family: string;
  readonly number: number;
}

function nameOf({ family, number }: Done): string {
  return `${family} ${number}`;
}

/** One casualty a line, as each was done; what was begun and not finished is not there. */
function readSaved(file: string | undefined): readonly Watched[] {
  if (file === undefined || !existsSync(file)) return [];
  const lines = readFileSync(file, "utf8")
    .split("\n")
    .filter((line) => line !== "");
  return lines.map((line) => JSON.parse(line) as Watched);
}

function asker(): Asker {
  if (given.control === undefined) return askSheet;
  const found = CONTROLS[given.control];
  if (found === undefined)
    throw new Error(`no such control: ${given.control}; there are ${Object.keys(CONTROLS).join(", ")}`);
  return found;
}

function setting(): Setting {
  const found = Object.entries(SETTINGS).find(([name]) => name === given.setting)?.[1];
  if (found === undefined)
    throw new Error(`no such setting: ${given.setting}; there are ${Object.keys(SETTINGS).join(", ")}`);
  return found;
}

type Keep = (watched: Watched) => void | Promise<void>;

/** Every so manyth job, kept as it is done; those done before are left out. */
async function runPart([part, parts]: readonly [number, number], before: readonly Done[], keep: Keep): Promise<void> {
  const answers = asker();
  const isDone = new Set(before.map(nameOf));
  const own = jobs().filter(([family, number], n) => n % parts === part && !isDone.has(nameOf({ family, number })));
  for (const [family, number] of own) await keep(watch(drawCasualty(family, number, setting()), answers));
}

/** Shows how far it is, twenty times in a run. */
function progress(count: number): () => void {
  const began = Date.now();
  let done = 0;
  return () => {
    done += 1;
    if (done % Math.max(1, Math.round(count / 20)) !== 0 && done !== count) return;
    const gone = (Date.now() - began) / 1000;
    console.error(
      `${done} of ${count} casualties, ${Math.round(gone)} s, about ${Math.round((gone / done) * (count - done))} s to go`,
    );
  };
}

async function runAll(): Promise<readonly Watched[]> {
  const before = given.resume ? readSaved(given.save) : [];
  if (given.save !== undefined && !given.resume) writeFileSync(given.save, "");
  const all = [...before];
  const tell = progress(Math.max(0, jobs().length - before.length));
  const keep = (watched: Watched): void => {
    all.push(watched);
    if (given.save !== undefined) appendFileSync(given.save, `${JSON.stringify(watched)}\n`);
    tell();
  };
  const workers = Number(given.workers);
  if (workers <= 1) await runPart([0, 1], before, keep);
  else await Promise.all(Array.from({ length: workers }, (_, part) => runForked([part, workers], before, keep)));
  return all.toSorted((a, b) => FAMILIES.indexOf(a.family) - FAMILIES.indexOf(b.family) || a.number - b.number);
}

/** A worker is told what was done before, and sends each casualty as it is done. */
function runForked(
  part: readonly [number, number],
  before: readonly Watched[],
  keep: (one: Watched) => void,
): Promise<void> {
  return new Promise((resolve, reject) => {
    const child = fork(fileURLToPath(import.meta.url), [...process.argv.slice(2), "--worker"]);
    child.on("message", (watched) => keep(watched as Watched));
    child.on("exit", (code) => (code === 0 ? resolve() : reject(new Error(`a worker ended with ${code}`))));
    child.send({ part, before: before.map(({ family, number }) => ({ family, number })) });
  });
}

function work(): void {
  process.once("message", (told) => {
    const { part, before } = told as { part: [number, number]; before: readonly Done[] };
    runPart(part, before, sendUp).then(
      () => process.disconnect(),
      (problem: unknown) => {
        console.error(problem);
        process.exit(1);
      },
    );
  });
}

/** Done when it has been sent: a worker that left at once would take its last casualties along. */
function sendUp(watched: Watched): Promise<void> {
  return new Promise((resolve, reject) => {
    process.send!(watched, undefined, {}, (problem) => (problem ? reject(problem) : resolve()));
  });
}

async function main(): Promise<void> {
  const all = given.from === undefined ? await runAll() : readSaved(given.from);
  const rows = measure(all);
  const answers = all.reduce((total, { moments }) => total + moments.length, 0);
  console.log(`\n${all.length} casualties of the second truth, ${answers} answers; 95 % intervals by casualty`);
  console.log(given.markdown ? markdownOf(rows) : tableOf(rows));
  const missed = notKept(rows);
  console.log(missed.length === 0 ? "\nEvery bound is kept." : `\n${missed.length} bounds are not met:`);
  for (const { group, name } of missed) console.log(`  ${group}: ${name}`);
  process.exit(missed.length === 0 ? 0 : 1);
}

if (given.worker) work();
else await main();
