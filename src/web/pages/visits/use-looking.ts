import { InputError } from "#base";
import type { Bodies, PhotoRef, Visit } from "#readiness";
import { raiseFinding, reexamineLine, type Act, type ActContext } from "#station";
import { useState } from "react";
import { uuidv7 } from "uuidv7";
import { useRecorder, useStation, type StationView } from "#web/device/index.ts";
import { doingOf } from "#web/device/act.ts";
import { deviceAmbient } from "#web/device/clock.ts";
import { OTHER, type PickedMode } from "#web/act/finding-choice.ts";
import type { OneTap } from "#web/act/one-tap.ts";
import { holdsBack, type Reading } from "#web/act/typed-reading.ts";
import type { KeptDraft } from "#web/act/use-ask-draft.ts";
import { useSaving } from "#web/act/use-saving.ts";
import type { LineToLook } from "./visit-at-hand.ts";

interface About {
  readonly visit: Visit;
  readonly line: LineToLook;
  readonly reading: Reading;
  readonly kept: KeptDraft;
  readonly oneTap: OneTap | undefined;
  /** Called once the answer is on the disk. */
  readonly onDone: () => void;
}

/** The three answers at a line of a visit. */
export interface Looking {
  readonly error: unknown;
  /** Why the last "seen" was not taken. */
  readonly refusal: string | undefined;
  readonly onSeen: () => Promise<void>;
  readonly onWrong: (picked: PickedMode, note: string) => Promise<void>;
  readonly onNotPossible: (why: string) => Promise<void>;
}

type Said = Pick<Bodies["line-reexamined"], "answer" | "value" | "why" | "finding">;

/** Writes down what was seen; what is wrong is raised on the kit first, unless the same finding is open there already. */
export function useLooking(about: About): Looking {
  const { visit, line, reading, kept, oneTap, onDone } = about;
  const saving = useSaving();
  const write = useWrite();
  const [tried, setTried] = useState(false);
  const unread = oneTap ? undefined : holdsBack(reading);
  const value = oneTap?.value ?? (reading.kind === "read" ? reading.value : undefined);
  const note = kept.draft.note.trim();
  const say = async (said: Said) => {
    const body = { ...lineOf(line), ...said, ...(note !== "" && { note }) };
    await write((doing, view) => reexamineLine(doing, visitIn(view, visit), body));
  };
  const give = async (work: () => Promise<void>) => {
    if (!(await saving.save(work))) return;
    kept.clear();
    onDone();
  };
  return {
    error: saving.error,
    refusal: tried ? unread : undefined,
    onSeen: async () => {
      setTried(unread !== undefined);
      if (unread === undefined) await give(() => say({ answer: "seen", ...(value && { value }) }));
    },
    onNotPossible: (why) => give(() => say({ answer: "not-possible", why })),
    onWrong: (picked, words) =>
      give(async () => {
        const finding = await raise(write, line, picked, words);
        await say({ answer: "wrong", finding, ...(reading.kind === "read" && { value: reading.value }) });
      }),
  };
}

type Write = (act: (doing: ActContext, view: StationView) => Act) => Promise<void>;

/** Writes by the station as it stands now: one line may follow another before anything is drawn anew. */
function useWrite(): Write {
  const recorder = useRecorder();
  const shown = useStation();
  return async (want) => {
    const view = recorder.station() ?? shown;
    const act = want({ ...doingOf(view), now: deviceAmbient.now() }, view);
    if (act.kind === "refused") throw new InputError(act.because);
    await recorder.record(act.draft);
  };
}

const NO_PHOTOS: readonly PhotoRef[] = [];

/** The same mode open on the kit already is named and not raised again; that it was known is shown only at the end. */
async function raise(write: Write, line: LineToLook, picked: PickedMode, note: string): Promise<string> {
  const known = openAlready(line, picked);
  if (known !== undefined) return known;
  const finding = uuidv7();
  await write((doing, view) => {
    const kit = view.kits.find((one) => one.id === line.kit) ?? line.ofKit;
    const more = { step: line.step, check: line.check, photos: NO_PHOTOS, ...(note !== "" && { note }) };
    return raiseFinding(doing, kit, { finding, ...picked, ...more });
  });
  return finding;
}

function openAlready({ ofKit }: LineToLook, { item, mode }: PickedMode): string | undefined {
  if (mode === OTHER) return undefined;
  return ofKit.findings.find((one) => !one.closed && one.item === item && one.mode === mode)?.id;
}

function lineOf({ kit, step, check }: LineToLook) {
  return { kit, step, check };
}

function visitIn({ visits }: StationView, { id }: Visit): Visit | undefined {
  return visits.find((one) => one.id === id);
}
