import { findFault, type FaultCase } from "#faults";
import { repeatableStream } from "#numerics";
import { fitLife, startingOf } from "#reliability";
import { StartBook, type StartLog } from "#station";
import { peerFits } from "./lives/peers.ts";
import { manyKits } from "./lives/station.ts";
import { bestOf } from "./processor/best-of.ts";

/**
 * What the answers about faults and reliability cost. In milliseconds of a processor, the best of several rounds, as
 * what else the machine does only adds to them.
 * A next step of fault finding is wanted under 50 ms for 40 causes and 60 actions.
 */
const WANTED = 50;
const random = repeatableStream(5);

function bigFault(tests: number): FaultCase {
  const raw = Array.from({ length: 40 }, () => random() ** 3);
  const whole = raw.reduce((sum, one) => sum + one, 0);
  const someOf = (chance: number) => raw.map(() => (random() < chance ? random() : 0));
  return {
    chances: raw.map((one) => one / whole),
    steps: Array.from({ length: 60 }, (_, i) => {
      return { kind: "action", name: `action ${i}`, cost: 1 + 10 * random(), ends: someOf(0.1), repair: 0 };
    }),
    tests: Array.from({ length: tests }, (_, i) => ({ name: `test ${i}`, cost: 1 + random(), positive: someOf(0.9) })),
    covers: [],
    fallback: 40,
    lastIsInferred: false,
  };
}

const plain = bigFault(0);
const tested = bigFault(20);
const lives = Array.from({ length: 500 }, () => {
  const [life, stop] = [10 * (-Math.log(1 - random())) ** 0.6, 3 + 12 * random()];
  return life <= stop ? { after: life, before: life, count: 1 } : { after: stop, before: Infinity, count: 1 };
});
const fleet = Array.from({ length: 500 }, () => {
  const trials = 4 + Math.floor(20 * random());
  return { trials, failures: Array.from({ length: trials }, () => random() < 0.06).filter(Boolean).length };
});
const wary = { kind: "fleet", fleet, pooling: "wary" } as const;

const measured = [
  { name: "fault, 40 causes, 60 actions", millis: bestOf(20, () => findFault(plain)), wanted: WANTED },
  { name: "fault, 40 causes, 60 actions, 20 tests", millis: bestOf(20, () => findFault(tested)), wanted: WANTED },
  { name: "Weibull of 500 lives", millis: bestOf(5, () => fitLife(lives, "weibull")), wanted: 1000 },
  {
    name: "chance of starting, 500 kits pooled warily",
    millis: bestOf(3, () => startingOf({ least: 1, most: 1, trials: 9 }, wary)),
    wanted: 1000,
  },
];
const log = manyKits(500, 20);
const book = new StartBook();
const readAll = (reader: StartBook, station: StartLog) => station.kits.map((kit) => reader.read(kit, station));
measured.push({
  name: "statistics of 500 kits of 20 openings, every line of them answered, read whole",
  millis: bestOf(5, () => readAll(new StartBook(), log)),
  wanted: 1000,
});
readAll(book, log);
const counted = book.counts;
const [changed, ...others] = log.kits;
const newer = { ...log, kits: [{ ...changed!, name: "as after one more line" }, ...others] };
const entry = bestOf(1, () => readAll(book, newer));
measured.push({
  name: `the same after one more line (${book.counts - counted} kit counted again)`,
  millis: entry,
  wanted: 1000,
});

const found = log.kits.flatMap(({ findings }) => findings)[0]!;
const more = { ...found, id: "one more", turnaround: changed!.turnarounds.at(-1)!.id };
const worse = { ...log, kits: [{ ...changed!, findings: [...changed!.findings, more] }, ...others] };
measured.push({
  name: "the same after one more fault, the fleet worked out anew",
  millis: bestOf(1, () => readAll(book, worse)),
  wanted: 1000,
});

for (const { name, millis, wanted } of measured)
  console.log(`${name}: ${millis.toFixed(1)} ms (wanted under ${wanted} ms)${millis > wanted ? " TOO SLOW" : ""}`);

const own = fitLife(lives, "weibull")!;
for (const { name, fit } of peerFits(lives)) {
  if (!fit) console.log(`${name}: not on this machine, so nothing stands beside the Weibull fit`);
  else {
    const apart = Math.max(Math.abs(fit.shape / own.shape - 1), Math.abs(fit.scale / own.scale - 1));
    console.log(
      `Weibull of 500 lives by ${fit.version}: ${fit.millis.toFixed(1)} ms, figures ${apart.toExponential(0)} apart`,
    );
  }
}
process.exitCode = measured.some(({ millis, wanted }) => millis > wanted) ? 1 : 0;
