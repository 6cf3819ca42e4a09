import { useState } from "react";
import type { Entry } from "#log";
import { clockAt, type Answer } from "#readiness";
import { useWords } from "#web/language/index.ts";
import { readTimer, useNow } from "#web/timing/index.ts";
import type { AnswerDetails, KitActs, Where } from "#web/act/acts.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import type { Ask, Line } from "#web/act/lines.ts";
import { itemToRead } from "./dates-at-line.tsx";
import type { OneTap } from "#web/act/one-tap.ts";
import { fittedPlainly, renewedWith } from "./renewals.ts";
import { whyNotAnswered } from "../runner/step-gate.ts";
import { holdsBack, type Reading } from "#web/act/typed-reading.ts";
import type { AskDraft, KeptDraft } from "#web/act/use-ask-draft.ts";
import { secondsNamed } from "../second/use-seconds.ts";
import { useSaving, type Saving } from "#web/act/use-saving.ts";

/** What is being answered, and where it leads. */
export interface Answering {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly line: Line;
  readonly ask: Ask;
  /** Called once the answer is on the disk and nothing more is wanted here. */
  readonly onAnswered: () => void;
}

/** The three answers of an ask, and what stands open because of them. */
export interface Answers {
  readonly saving: Saving;
  /** Why it cannot be seen yet: its clock comes first. Goes when the wait ends. */
  readonly held: string | undefined;
  /** Why the last "seen" was not taken. */
  readonly refusal: string | undefined;
  /** A finding is to be raised; from the found-wrong answer just given, where there is one. */
  readonly sheet: { readonly entry?: Entry } | undefined;
  readonly openSheet: () => void;
  readonly closeSheet: () => void;
  readonly onSeen: () => Promise<void>;
  readonly onWrong: () => Promise<void>;
  readonly onNotPossible: (why: string) => Promise<void>;
}

/** Gives answers: each is on this device's disk before the next line is shown. */
export function useAnswering(about: Answering, reading: Reading, kept: KeptDraft, oneTap?: OneTap): Answers {
  const saving = useSaving(secondsNamed(about.open.turnaround));
  const words = useWords("turnaroundLine");
  const fit = useWords("turnaroundFit");
  const [sheet, setSheet] = useState<Answers["sheet"]>();
  const [tried, setTried] = useState(false);
  const give = useGive(about, reading, kept, saving);
  const now = useNow(timerOf(about)?.started !== undefined);
  const heldAt = (instant: number) => whyNotAnswered(about.open, about.line.step, { now: instant, words });
  const undated = itemToRead(about.open, about.line.step);
  const unread = (oneTap ? undefined : holdsBack(reading)) ?? (undated && fit.readDateFirst({ item: undated.name }));
  const [held, refusal] = [heldAt(now), tried ? unread : undefined];
  const onSeen = async () => {
    setTried(unread !== undefined);
    if (unread !== undefined || heldAt(Date.now()) !== undefined) return;
    if (await give("seen", oneTap?.value ? { value: oneTap.value } : {})) about.onAnswered();
  };
  const onWrong = async () => {
    const entry = await give("wrong");
    if (entry) setSheet({ entry });
  };
  const onNotPossible = async (why: string) => {
    if (await give("not-possible", { why })) about.onAnswered();
  };
  const [openSheet, closeSheet] = [() => setSheet({}), () => setSheet(undefined)];
  return { saving, refusal, held, sheet, openSheet, closeSheet, onSeen, onWrong, onNotPossible };
}

function useGive(about: Answering, reading: Reading, kept: KeptDraft, saving: Saving) {
  const where = { turnaround: about.open.turnaround.id, step: about.line.step.id };
  return async (answer: Answer, more: AnswerDetails = {}): Promise<Entry | undefined> => {
    let entry: Entry | undefined;
    const done = await saving.save(async () => {
      await stopClock(about, where);
      if (answer === "seen") await fitPlain(about, where);
      entry = await about.acts.answer(where, about.ask, answer, { ...detailsOf(reading, kept.draft), ...more });
    });
    if (done) kept.clear();
    return done ? entry : undefined;
  };
}

function timerOf({ open, line }: Pick<Answering, "open" | "line">) {
  return clockAt(open, line.step.id);
}

/** A wait or run that still runs ends with the answer to its line; a prime or timed check has its own stop. */
export async function stopClock(about: Pick<Answering, "open" | "acts" | "line">, where: Where): Promise<void> {
  const wanted = about.line.step.timer;
  const started = timerOf(about)?.started;
  if (started === undefined || (wanted?.kind !== "wait" && wanted?.kind !== "run")) return;
  const { seconds, reached } = readTimer(started, Date.now(), wanted.atLeast);
  await about.acts.stopTimer(where, { started, seconds, reached });
}

/** What a step renews is fitted new with its last answer, as the button says, where nothing of it has to be read. */
async function fitPlain({ open, acts, line, ask }: Answering, where: Where): Promise<void> {
  for (const item of renewedWith(open, line, [ask])) await acts.fit(where, fittedPlainly(open, item));
}

function detailsOf(reading: Reading, draft: AskDraft): AnswerDetails {
  return {
    ...(reading.kind === "read" && { value: reading.value }),
    ...(draft.note.trim() !== "" && { note: draft.note.trim() }),
    ...(draft.photos.length > 0 && { photos: draft.photos }),
  };
}
