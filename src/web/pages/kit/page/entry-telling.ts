import { sayDuration } from "#words";
import { checkNamed, itemNamed, modeNamed, stepNamed, titleOfMode, type Pattern } from "#kit";
import type { Entry } from "#log";
import { methodWords } from "#station";
import { sayLent, type Bodies, type EntryKind, type Place, type Remedy } from "#readiness";
import { sayCount } from "#web/parts/words/say-count.ts";
import { sayDay } from "#web/parts/words/say-time.ts";
import { saySheet } from "#web/kit-view/sheet/sheet-words.ts";
import { TREND_WORDS } from "./trend-words.ts";

/** What is needed to tell entries of a kit by name. */
export interface Telling {
  readonly pattern: Pattern;
  readonly places: readonly Place[];
  /** Kits that lines may name beside the one they are about. */
  readonly kits?: readonly { readonly id: string; readonly name: string }[];
  /** People that lines may name beside who wrote them. */
  readonly people?: readonly { readonly id: string; readonly name: string }[];
}

type Tell<Kind extends EntryKind> = (body: Bodies[Kind], telling: Telling) => string;

/** What an entry says beyond its kind; nothing where the kind says it all, or is one this version does not know. */
export function tellEntry({ kind, body }: Pick<Entry, "kind" | "body">, telling: Telling): string {
  const tell = (TELLERS as Readonly<Record<string, Tell<never> | undefined>>)[kind];
  return tell ? tell(body as never, telling) : "";
}

const TELLERS: { readonly [Kind in EntryKind]?: Tell<Kind> } = {
  "kit-enrolled": ({ serial, seal, sheet }) =>
    listed(
      `serial ${serial}`,
      seal === undefined ? "no seal read" : `seal ${sheet ? "as told" : "read"} ${seal}`,
      saySheet(sheet),
    ),
  "turnaround-told": ({ day, doneBy, result, note, sheet }) =>
    listed(sayDay(day), doneBy && `by ${doneBy}`, result, note, saySheet(sheet)),
  "kit-renamed": ({ name }) => name,
  "kit-rebuilt": ({ reason }) => reason,
  "kit-moved": ({ to }, { places }) => `to ${places.find(({ id }) => id === to)?.name ?? to}`,
  "kit-retired": ({ reason }) => reason,
  "handed-over": ({ to, method, sealBroken, note, back, taken, briefed, lent = [] }) =>
    listed(
      `to ${to}`,
      methodWords(method),
      sealBroken ? "seal broken" : "seal whole",
      taken && `taken by ${taken.name ?? "whoever signed"}`,
      briefed === undefined ? undefined : briefed ? "briefed" : "no time for a briefing",
      back && `expected back by ${sayDay(back)}`,
      lent.length === 0 ? undefined : `with ${lent.map(sayLent).join(", ")}`,
      note,
    ),
  returned: tellReturn,
  flushed: ({ note }) => note ?? "",
  "lent-settled": ({ name, how, count, note }) =>
    listed(count === undefined ? name : sayLent({ name, count }), how === "came-back" ? "came back" : "given up", note),
  mustered: ({ sealSeen, containerSound, note }) =>
    listed(saySealRead(sealSeen), containerSound ? "container sound" : "container not sound", note),
  "turnaround-opened": ({ sealSeen, sealReadBefore = [] }) =>
    listed(saySealRead(sealSeen), ...sealReadBefore.map((one) => `before that ${saySealRead(one)}`)),
  "step-answered": tellAnswer,
  "timer-started": ({ step }, telling) => tellLine(step, telling),
  "timer-stopped": ({ step, seconds, reached }, telling) =>
    listed(tellLine(step, telling), sayDuration(seconds), reached ? undefined : "not the whole time"),
  "pulls-counted": ({ step, pulls, started }, telling) =>
    listed(tellLine(step, telling), sayCount(pulls, "pull"), started ? "started" : "not started"),
  "prime-timed": ({ seconds, primed }) => listed(sayDuration(seconds), primed ? "water" : "no water"),
  "delivery-measured": ({ ratio, verdict }) =>
    listed(`${TREND_WORDS.delivery.say(ratio)} of what was expected`, VERDICT_WORDS[verdict]),
  "item-fitted": ({ item, quantity, printed, batch, robbed, drawn }, { pattern, kits, places }) =>
    listed(
      `${itemNamed(pattern, item)?.name ?? item}, ${quantity}`,
      printed && `printed ${sayDay(printed)}`,
      batch && `batch ${batch}`,
      robbed && `taken out of ${nameIn(kits, robbed)}`,
      drawn && `off the shelf at ${nameIn(places, drawn.place)}`,
    ),
  "item-robbed": ({ item, quantity, note, to }, { pattern, kits }) =>
    listed(`${itemNamed(pattern, item)?.name ?? item}, ${quantity}, for ${nameIn(kits, to)}`, note),
  "date-read": ({ item, of, date }, { pattern }) =>
    listed(itemNamed(pattern, item)?.name ?? item, date === undefined ? "cannot be read" : `${of} ${date}`),
  "finding-raised": ({ item, mode, note }, { pattern }) =>
    listed(modeNamed(pattern, mode)?.name ?? itemNamed(pattern, item)?.name ?? item, note),
  "remedy-made": tellRemedy,
  sealed: ({ seal, note }) => listed(`seal ${seal}`, note),
  "closed-grounded": ({ reason }) => reason,
  settled: ({ reason }) => reason,
  "work-taken": ({ work, person }) => listed(WORK_WORDS[work], person === undefined ? "laid down" : undefined),
  "work-dated": ({ work, day }) => listed(WORK_WORDS[work], day === undefined ? "its day taken back" : `for ${day}`),
  "work-put-off": ({ work, until, reason }) => listed(WORK_WORDS[work], `until ${until}`, reason),
  "openings-planned": ({ openings }) =>
    openings.length === 0 ? "none" : `weeks of ${openings.map(({ week }) => sayDay(week)).join(", ")}`,
  "second-named": ({ second }, { people }) => nameIn(people, second),
  "second-confirmed": ({ byPin }) => (byPin ? "by their PIN" : "on a device of their own"),
  "gone-on-alone": ({ note }) => note,
  "drill-begun": ({ trainees, note }, { people }) =>
    listed(`for ${trainees.map((one) => nameIn(people, one)).join(" and ")}`, note),
  "faults-planted": ({ seal }) => listed("what they are is not shown", seal && `seal ${seal}`),
  "drill-revealed": ({ faults }, { pattern }) =>
    faults.map(({ item, mode, how }) => `${tellMode(item, mode, pattern)} (${how})`).join(", "),
  "planted-removed": ({ fault }) => `fault ${fault} of those planted`,
  "drill-finding-judged": ({ real, note }) => listed(real ? "it is real" : "nothing was wrong there", note),
  "drill-ended": ({ how, reason }) => listed(how === "compared" ? "compared" : "not compared", reason),
  struck: ({ reason }) => reason,
};

const WORK_WORDS: Readonly<Record<Bodies["work-taken"]["work"], string>> = {
  opening: "opening",
  muster: "muster",
  return: "fetching it",
  settle: "settling a difference",
};

const VERDICT_WORDS: Readonly<Record<Bodies["delivery-measured"]["verdict"], string>> = {
  "as-expected": "as expected",
  noted: "noted",
  grounds: "grounds the kit",
  unclear: "unclear",
};

function tellAnswer({ step, check, answer, why, note }: Bodies["step-answered"], telling: Telling): string {
  const asked = check === undefined ? undefined : checkNamed(telling.pattern, check)?.ask;
  const words = { seen: "found right", wrong: "found wrong", "not-possible": "not possible" }[answer];
  return listed(tellLine(step, telling), asked?.replace(/\.$/, ""), words, why, note);
}

function tellReturn({ exposure, note, counted = [], lent = [] }: Bodies["returned"], { pattern }: Telling): string {
  const amiss = counted.filter(({ as }) => as !== "there");
  const names = amiss.map(({ item, as }) => `${itemNamed(pattern, item)?.name ?? item} ${as}`);
  const count = counted.length === 0 ? undefined : names.length === 0 ? "all there" : names.join(", ");
  const back = lent.length > 0 ? `back of what was lent: ${lent.map(sayLent).join(", ")}` : undefined;
  return listed(exposure.length > 0 ? `seen ${exposure.join(", ")}` : undefined, count, back, note);
}

function tellMode(item: string, mode: string, pattern: Pattern): string {
  const name = itemNamed(pattern, item)?.name ?? item;
  return titleOfMode(name, modeNamed(pattern, mode)?.name ?? mode);
}

function tellRemedy(remedy: Remedy): string {
  switch (remedy.how) {
    case "mended":
      return `mended: ${remedy.note}`;
    case "replaced":
      return `replaced with ${remedy.part}, ${remedy.quantity}`;
    case "lived-with":
      return `lived with by ${remedy.name} until ${remedy.until}: ${remedy.limit}`;
  }
}

function tellLine(step: string, { pattern }: Telling): string {
  const line = stepNamed(pattern, step)?.line;
  return line === undefined ? step : `line ${line}`;
}

function nameIn(all: readonly { readonly id: string; readonly name: string }[] | undefined, id: string): string {
  return all?.find((one) => one.id === id)?.name ?? id;
}

function saySealRead(seal: string): string {
  return seal === "" ? "no seal found" : `seal read ${seal}`;
}

function listed(...parts: readonly (string | undefined)[]): string {
  return parts.filter((part) => part !== undefined && part !== "").join(", ");
}

/** Kinds written line by line in a turnaround; its record shows them better. */
const STEP_KINDS: ReadonlySet<string> = new Set<EntryKind>([
  "step-answered",
  "timer-started",
  "timer-stopped",
  "pulls-counted",
  "prime-timed",
]);

/** True for a line that a turnaround's record shows: an answer, a clock, an item fitted at a step. */
export function isStepLine({ kind, body }: Pick<Entry, "kind" | "body">): boolean {
  if (STEP_KINDS.has(kind)) return true;
  const mayBeAtStep = kind === "item-fitted" || kind === "date-read";
  return mayBeAtStep && (body as Bodies["item-fitted"] | Bodies["date-read"]).turnaround !== undefined;
}
