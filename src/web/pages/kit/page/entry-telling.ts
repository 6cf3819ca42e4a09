import { sayDuration, type Words } from "#words";
import { checkNamed, itemNamed, modeNamed, stepNamed, titleOfMode, type Pattern } from "#kit";
import type { Entry } from "#log";
import { methodWords } from "#station";
import { isSomeOf, sayLent, type Bodies, type EntryKind, type Place, type Remedy } from "#readiness";

import { sayDay } from "#web/parts/words/say-time.ts";
import { saySheet } from "#web/kit-view/sheet/sheet-words.ts";
import { sayShare } from "./trend-words.ts";

type TellingWords = Words["telling"];

/** What is needed to tell entries of a kit by name. */
export interface Telling {
  readonly words: TellingWords;
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
  "kit-enrolled": ({ serial, seal, sheet }, { words }) =>
    listed(
      words.serial({ serial }),
      seal === undefined ? words.noSealRead() : sheet ? words.sealTold({ seal }) : words.sealRead({ seal }),
      saySheet(sheet, words),
    ),
  "turnaround-told": ({ day, doneBy, result, note, sheet }, { words }) =>
    listed(sayDay(day), doneBy && words.by({ name: doneBy }), result, note, saySheet(sheet, words)),
  "kit-renamed": ({ name }) => name,
  "kit-rebuilt": ({ reason }) => reason,
  "kit-moved": ({ to }, { places, words }) => words.to({ place: nameIn(places, to) }),
  "kit-retired": ({ reason }) => reason,
  "handed-over": ({ to, method, sealBroken, note, back, taken, briefed, lent = [] }, { words }) =>
    listed(
      words.toVessel({ vessel: to }),
      methodWords(method),
      sealBroken ? words.sealBroken() : words.sealWhole(),
      taken && words.takenBy({ name: taken.name ?? words.whoeverSigned() }),
      briefed === undefined ? undefined : briefed ? words.briefed() : words.noBriefing(),
      back && words.backBy({ day: sayDay(back) }),
      lent.length === 0 ? undefined : words.with({ things: lent.map(sayLent).join(", ") }),
      note,
    ),
  returned: tellReturn,
  flushed: ({ note }) => note ?? "",
  "lent-settled": ({ name, how, count, note }, { words }) =>
    listed(
      count === undefined ? name : sayLent({ name, count }),
      how === "came-back" ? words.cameBack() : words.givenUp(),
      note,
    ),
  mustered: ({ sealSeen, containerSound, note }, { words }) =>
    listed(saySealRead(sealSeen, words), containerSound ? words.containerSound() : words.containerUnsound(), note),
  "turnaround-opened": ({ sealSeen, sealReadBefore = [] }, { words }) =>
    listed(
      saySealRead(sealSeen, words),
      ...sealReadBefore.map((one) => words.sealReadBefore({ seal: saySealRead(one, words) })),
    ),
  "step-answered": tellAnswer,
  "timer-started": ({ step }, telling) => tellLine(step, telling),
  "timer-stopped": ({ step, seconds, reached }, telling) =>
    listed(tellLine(step, telling), sayDuration(seconds), reached ? undefined : telling.words.notWhole()),
  "pulls-counted": ({ step, pulls, started }, telling) =>
    listed(
      tellLine(step, telling),
      telling.words.pulls({ count: pulls }),
      telling.words[started ? "started" : "notStarted"](),
    ),
  "prime-timed": ({ seconds, primed }, { words }) =>
    listed(sayDuration(seconds), primed ? words.water() : words.noWater()),
  "delivery-measured": ({ ratio, verdict }, { words }) =>
    listed(words.ofExpected({ share: sayShare(ratio) }), words[VERDICTS[verdict]]()),
  "item-fitted": ({ item, quantity, printed, batch, robbed, drawn }, { pattern, kits, places, words }) =>
    listed(
      words.itemCount({ item: itemNamed(pattern, item)?.name ?? item, count: quantity }),
      printed && words.printed({ day: sayDay(printed) }),
      batch && words.batch({ batch }),
      robbed && words.robbedOf({ kit: nameIn(kits, robbed) }),
      drawn && words.offShelf({ place: nameIn(places, drawn.place) }),
    ),
  "item-robbed": ({ item, quantity, note, to }, { pattern, kits, words }) =>
    listed(
      words.itemCountFor({
        item: itemNamed(pattern, item)?.name ?? item,
        count: quantity,
        kit: nameIn(kits, to),
      }),
      note,
    ),
  "date-read": ({ item, of, date }, { pattern, words }) =>
    listed(
      itemNamed(pattern, item)?.name ?? item,
      date === undefined ? words.cannotRead() : words[DATES[of]]({ date }),
    ),
  "finding-raised": ({ item, mode, note }, { pattern }) =>
    listed(modeNamed(pattern, mode)?.name ?? itemNamed(pattern, item)?.name ?? item, note),
  "remedy-made": tellRemedy,
  sealed: ({ seal, note }, { words }) => listed(words.sealNumber({ seal }), note),
  "closed-grounded": ({ reason }) => reason,
  settled: ({ reason }) => reason,
  "work-taken": ({ work, person }, { words }) =>
    listed(words[work](), person === undefined ? words.laidDown() : undefined),
  "work-dated": ({ work, day }, { words }) =>
    listed(words[work](), day === undefined ? words.dayTakenBack() : words.forDay({ day })),
  "work-put-off": ({ work, until, reason }, { words }) => listed(words[work](), words.until({ day: until }), reason),
  "openings-planned": ({ openings }, { words }) =>
    openings.length === 0 ? words.none() : words.weeksOf({ days: openings.map(({ week }) => sayDay(week)).join(", ") }),
  "second-named": ({ second }, { people }) => nameIn(people, second),
  "second-confirmed": ({ byPin }, { words }) => (byPin ? words.byPin() : words.ownDevice()),
  "gone-on-alone": ({ note }) => note,
  "drill-begun": ({ trainees, note }, { people, words }) => {
    const names = trainees
      .map((one) => nameIn(people, one))
      .reduce((first, next) => (first === "" ? next : words.and({ first, next })), "");
    return listed(words.forPeople({ names }), note);
  },
  "faults-planted": ({ seal }, { words }) => listed(words.notShown(), seal && words.sealNumber({ seal })),
  "drill-revealed": ({ faults }, { pattern, words }) =>
    faults.map(({ item, mode, how }) => words.faultHow({ fault: tellMode(item, mode, pattern), how })).join(", "),
  "planted-removed": ({ fault }, { words }) => words.faultOf({ number: fault }),
  "drill-finding-judged": ({ real, note }, { words }) => listed(real ? words.isReal() : words.nothingWrong(), note),
  "drill-ended": ({ how, reason }, { words }) =>
    listed(how === "compared" ? words.compared() : words.notCompared(), reason),
  struck: ({ reason }) => reason,
};

const DATES = { printed: "datePrinted", fitted: "dateFitted", made: "dateMade" } as const;

const VERDICTS = {
  "as-expected": "asExpected",
  noted: "noted",
  grounds: "grounds",
  unclear: "unclear",
} as const;

const ANSWERS = { seen: "foundRight", wrong: "foundWrong", "not-possible": "notPossible" } as const;

function tellAnswer({ step, check, answer, why, note }: Bodies["step-answered"], telling: Telling): string {
  const asked = check === undefined ? undefined : checkNamed(telling.pattern, check)?.ask;
  const said = telling.words[ANSWERS[answer]]();
  return listed(tellLine(step, telling), asked?.replace(/\.$/, ""), said, why, note);
}

function tellReturn(
  { exposure, note, counted = [], lent = [] }: Bodies["returned"],
  { pattern, words }: Telling,
): string {
  const names = counted.flatMap(({ item, as }) =>
    as === "there" ? [] : [words[as]({ item: itemNamed(pattern, item)?.name ?? item })],
  );
  const count = counted.length === 0 ? undefined : names.length === 0 ? words.allThere() : names.join(", ");
  const back = lent.length > 0 ? words.backOfLent({ things: lent.map(sayLent).join(", ") }) : undefined;
  const met = exposure.map((what) => words[what]()).join(", ");
  return listed(met === "" ? undefined : words.seen({ what: met }), count, back, note);
}

function tellMode(item: string, mode: string, pattern: Pattern): string {
  const name = itemNamed(pattern, item)?.name ?? item;
  return titleOfMode(name, modeNamed(pattern, mode)?.name ?? mode);
}

function tellRemedy(remedy: Remedy, { pattern, words }: Telling): string {
  switch (remedy.how) {
    case "mended":
      return words.mended({ note: remedy.note });
    case "replaced":
      return tellReplaced(remedy, pattern, words);
    case "lived-with":
      return words.livedWith({ name: remedy.name, day: remedy.until, limit: remedy.limit });
  }
}

function tellReplaced(remedy: Remedy & { readonly how: "replaced" }, pattern: Pattern, words: TellingWords): string {
  const { part, quantity: count, fitted } = remedy;
  const whole = itemNamed(pattern, fitted?.item ?? "")?.quantity ?? count;
  return isSomeOf(remedy, whole) ? words.replacedSome({ part, count, whole }) : words.replaced({ part, count });
}

function tellLine(step: string, { pattern, words }: Telling): string {
  const line = stepNamed(pattern, step)?.line;
  return line === undefined ? step : words.line({ line });
}

function nameIn(all: readonly { readonly id: string; readonly name: string }[] | undefined, id: string): string {
  return all?.find((one) => one.id === id)?.name ?? id;
}

function saySealRead(seal: string, words: TellingWords): string {
  return seal === "" ? words.noSealFound() : words.sealRead({ seal });
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
