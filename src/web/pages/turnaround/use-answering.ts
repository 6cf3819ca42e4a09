import { useState } from "react";
import type { Entry } from "#log";
import type { Answer } from "#readiness";
import { readTimer } from "../../timing/index.ts";
import type { AnswerDetails, KitActs, Where } from "./acts.ts";
import type { OpenKit } from "./at-hand.ts";
import type { Ask, Line } from "./lines.ts";
import { whyNotYet } from "./step-gate.ts";
import type { Reading } from "./typed-reading.ts";
import type { AskDraft, KeptDraft } from "./use-ask-draft.ts";
import { useSaving, type Saving } from "./use-saving.ts";

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
export function useAnswering(about: Answering, reading: Reading, kept: KeptDraft): Answers {
  const saving = useSaving();
  const [sheet, setSheet] = useState<Answers["sheet"]>();
  const [refusal, setRefusal] = useState<string>();
  const give = useGive(about, reading, kept, saving);
  const onSeen = async () => {
    const held = holdsBack(reading) ?? whyNotYet(about.line.step, timerOf(about), Date.now());
    setRefusal(held);
    if (held === undefined && (await give("seen"))) about.onAnswered();
  };
  const onWrong = async () => {
    const entry = await give("wrong");
    if (entry) setSheet({ entry });
  };
  const onNotPossible = async (why: string) => {
    if (await give("not-possible", { why })) about.onAnswered();
  };
  const [openSheet, closeSheet] = [() => setSheet({}), () => setSheet(undefined)];
  return { saving, refusal, sheet, openSheet, closeSheet, onSeen, onWrong, onNotPossible };
}

function useGive(about: Answering, reading: Reading, kept: KeptDraft, saving: Saving) {
  const where = { turnaround: about.open.turnaround.id, step: about.line.step.id };
  return async (answer: Answer, more: AnswerDetails = {}): Promise<Entry | undefined> => {
    let entry: Entry | undefined;
    const done = await saving.save(async () => {
      await stopClock(about, where);
      entry = await about.acts.answer(where, about.ask, answer, { ...detailsOf(reading, kept.draft), ...more });
    });
    if (done) kept.clear();
    return done ? entry : undefined;
  };
}

function timerOf({ open, line }: Answering) {
  return open.turnaround.timers[line.step.id];
}

/** A wait or run that still runs ends with the answer to its line; a prime or timed check has its own stop. */
async function stopClock(about: Answering, where: Where): Promise<void> {
  const wanted = about.line.step.timer;
  const started = timerOf(about)?.started;
  if (started === undefined || (wanted?.kind !== "wait" && wanted?.kind !== "run")) return;
  const { seconds, reached } = readTimer(started, Date.now(), wanted.atLeast);
  await about.acts.stopTimer(where, { started, seconds, reached });
}

function detailsOf(reading: Reading, draft: AskDraft): AnswerDetails {
  return {
    ...(reading.kind === "read" && { value: reading.value }),
    ...(draft.note.trim() !== "" && { note: draft.note.trim() }),
    ...(draft.photos.length > 0 && { photos: draft.photos }),
  };
}

/** Why an answer of "seen" cannot be taken: something is not read yet, or reads outside what is allowed. */
function holdsBack(reading: Reading): string | undefined {
  if (reading.kind === "incomplete") return reading.missing;
  return reading.kind === "read" && !reading.judgement.right ? reading.judgement.words : undefined;
}
