// The word at the top against the truth: GAINING, HOLDING, LOSING; how soon it is right; whether it flickers.
import { drawAgain, median, sum } from "./intervals.ts";
import { casualtyRow, shareRow, type Row } from "./rows.ts";
import type { Moment, Watched } from "./watching.ts";

const MM_A_MINUTE = 1e-3 / 60;
/** Falls or rises at all [m/s]. */
const AT_ALL = 0.1 * MM_A_MINUTE;
/** As much as a stick good to 20 mm shows in 20 minutes [m/s]. */
const SHOWN = MM_A_MINUTE;
/** Steady: true level within so much since the last change [m]. */
const STEADY = 0.02;
const ENOUGH_SOUNDINGS = 4;
/** No more water than the stick can tell from none [m]. */
const DRY = 0.03;

const GROUP = "word";
const DECIDED = ["gaining", "holding", "losing"];

export function isFalling({ truth }: Moment): boolean {
  return truth.rise < -AT_ALL;
}

/** Rises by 20 mm or more in 20 minutes. */
export function isLosing({ truth }: Moment): boolean {
  return truth.rise > SHOWN;
}

/** Has not moved by 20 mm since the last change, and does not move as fast as would show in 20 minutes. */
export function isSteady({ truth }: Moment): boolean {
  return Math.abs(truth.rise) <= SHOWN && truth.swing <= STEADY && truth.level >= DRY;
}

/** As dry as her pumps can make her, and not filling again. */
function isPumpedDown({ truth }: Moment): boolean {
  return truth.pumpedDown === 0 && truth.rise <= SHOWN;
}

/** The word is right: for HOLDING, as far as the stick can tell in the time it had. */
function isRight(moment: Moment): boolean {
  const { truth, sheet } = moment;
  if (sheet.word === "gaining") return isFalling(moment) || isPumpedDown(moment);
  if (sheet.word === "losing") return truth.rise > AT_ALL;
  return sheet.word === "holding" && Math.abs(truth.rise) <= Math.max(SHOWN, STEADY / Math.max(60, truth.since));
}

function is(word: string): (moment: Moment) => boolean {
  return (moment) => moment.sheet.word === word;
}

/** Nothing has happened that is not written down. */
function told({ truth }: Moment): boolean {
  return !truth.untold;
}

export function wordRows(all: readonly Watched[]): readonly Row[] {
  const gaining = is("gaining");
  return [
    shareRow(
      GROUP,
      "of words GAINING, truly falling",
      all,
      (m) => (gaining(m) && !isPumpedDown(m) ? isFalling(m) : undefined),
      { atLeast: 0.95 },
    ),
    shareRow(GROUP, "of truly losing, called GAINING", all, (m) => (isLosing(m) ? gaining(m) : undefined), {
      atMost: 0.02,
    }),
    shareRow(GROUP, "the same, nothing untold", all, (m) => (isLosing(m) && told(m) ? gaining(m) : undefined), {
      atMost: 0.003,
    }),
    shareRow(
      GROUP,
      "of steady, 4 soundings since the change: HOLDING",
      all,
      (m) => (isSteady(m) && isSettled(m) ? is("holding")(m) : undefined),
      { atLeast: 0.6 },
    ),
    casualtyRow(GROUP, "boats losing at some sounding, ever then called GAINING", all, ({ moments }) =>
      everCalled(moments.filter(isLosing), gaining),
    ),
    casualtyRow(GROUP, "the same, nothing untold", all, ({ moments }) =>
      everCalled(
        moments.filter((m) => isLosing(m) && told(m)),
        gaining,
      ),
    ),
    shareRow(GROUP, "of words LOSING, truly rising", all, (m) => (is("losing")(m) ? m.truth.rise > AT_ALL : undefined)),
    shareRow(GROUP, "of words HOLDING, right", all, (m) => (is("holding")(m) ? isRight(m) : undefined)),
    shareRow(GROUP, "of falling by 1 mm/min or more, 4 soundings since: GAINING", all, (m) =>
      m.truth.rise < -SHOWN && isSettled(m) && !isPumpedDown(m) ? gaining(m) : undefined,
    ),
    shareRow(GROUP, "of losing, 4 soundings since the change: LOSING", all, (m) =>
      isLosing(m) && isSettled(m) ? is("losing")(m) : undefined,
    ),
    shareRow(GROUP, "of steady, 4 soundings since: called GAINING", all, (m) =>
      isSteady(m) && isSettled(m) && !isPumpedDown(m) ? gaining(m) : undefined,
    ),
    shareRow(GROUP, "answers that do not fit", all, (m) => m.sheet.misfit),
    shareRow(GROUP, "what was written is refused", all, (m) => m.sheet.word === "refused"),
    ...speedRows(all),
    ...flickerRows(all),
  ];
}

function isSettled({ truth }: Moment): boolean {
  return truth.soundingsSince >= ENOUGH_SOUNDINGS;
}

function everCalled(moments: readonly Moment[], is: (moment: Moment) => boolean): boolean | undefined {
  return moments.length === 0 ? undefined : moments.some(is);
}

/** Answers between two changes. */
function stretchesOf({ moments }: Watched): readonly (readonly Moment[])[] {
  const counts = [...new Set(moments.map(({ truth }) => truth.changes))];
  return counts.map((count) => moments.filter(({ truth }) => truth.changes === count));
}

type StretchSort = "from the first sounding" | "after a told change" | "after an untold change";

function sortOf({ changes }: Watched, [first]: readonly Moment[]): StretchSort {
  const last = changes.filter(({ at }) => at <= first!.at).at(-1);
  if (last === undefined) return "from the first sounding";
  return last.told ? "after a told change" : "after an untold change";
}

/** A stretch counts where a right word came, or there was time for four soundings. */
function soundingsToRight(stretch: readonly Moment[]): number | undefined {
  const right = stretch.find(isRight);
  if (right !== undefined) return right.truth.soundingsSince;
  return stretch.length >= ENOUGH_SOUNDINGS ? Number.POSITIVE_INFINITY : undefined;
}

function speedRows(all: readonly Watched[]): readonly Row[] {
  const sorts: readonly StretchSort[] = ["from the first sounding", "after a told change", "after an untold change"];
  return sorts.map((sort) => {
    const perCasualty = all.map((watched) =>
      stretchesOf(watched)
        .filter((stretch) => sortOf(watched, stretch) === sort)
        .flatMap((stretch) => soundingsToRight(stretch) ?? []),
    );
    const found = perCasualty.filter((one) => one.length > 0);
    const counted = found.flat();
    const interval = drawAgain(found, (drawn) => median(drawn.flat()));
    const never = counted.filter((one) => !Number.isFinite(one)).length;
    const counts = `${counted.length} stretches, ${never} without`;
    return {
      group: "speed",
      name: `soundings to the first right word, ${sort}, median`,
      value: median(counted),
      ...interval,
      counts,
    };
  });
}

/** The word turns, and turns back, with no change between. */
function flickersIn(stretch: readonly Moment[]): number {
  const words = stretch.map(({ sheet }) => sheet.word).filter((word) => DECIDED.includes(word));
  const turns = words.filter((word, n) => n === 0 || word !== words[n - 1]);
  return turns.filter((word, n) => n >= 2 && word === turns[n - 2]).length;
}

/** The word is taken away without a change, and comes again. */
function withdrawnIn(stretch: readonly Moment[]): number {
  const decided = stretch.map(({ sheet }) => DECIDED.includes(sheet.word));
  return decided.filter((is, n) => !is && decided.slice(0, n).includes(true) && decided.slice(n).includes(true)).length;
}

function count(watched: Watched, of: (stretch: readonly Moment[]) => number): number {
  return sum(stretchesOf(watched).map(of));
}

function flickerRows(all: readonly Watched[]): readonly Row[] {
  const answers = sum(all.map(({ moments }) => moments.length));
  const total = (of: (stretch: readonly Moment[]) => number): number => sum(all.map((one) => count(one, of)));
  const per = (name: string, of: (stretch: readonly Moment[]) => number): Row => {
    const interval = drawAgain(
      all,
      (drawn) => (100 * sum(drawn.map((one) => count(one, of)))) / sum(drawn.map(({ moments }) => moments.length)),
    );
    return {
      group: "flicker",
      name,
      value: (100 * total(of)) / answers,
      ...interval,
      counts: `${total(of)} in ${answers} answers`,
    };
  };
  return [
    per("word turns and turns back without a change, in 100 answers", flickersIn),
    per("word withdrawn and said again, answers without it in 100", withdrawnIn),
  ];
}
