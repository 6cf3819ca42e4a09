import { InputError } from "#base";
import { useWords } from "#web/language/index.ts";
import { newestOfEach, patternKey } from "#kit";
import { mayWrite } from "#station";
import { useState } from "react";
import { useLocation } from "wouter";
import { uuidv7 } from "uuidv7";
import { deviceAmbient } from "#web/device/clock.ts";
import { doingOf, useRecorder, useStation } from "#web/device/index.ts";
import { Button, ButtonRow, EmptyState, ErrorBox, Notice, Page, useDoing } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { useKept } from "#web/act/use-kept.ts";
import { EMPTY_MANY, EMPTY_ROW, isBlank, judgeMany, type ManyDraft, type ManyFaults } from "./enrol/enrol-many.ts";
import { ManyRows } from "./enrol/many-rows.tsx";
import "#web/kit-view/kit.css";

/** Takes several kits of one pattern on charge: all of them, or none. */
export default function EnrolManyPage() {
  const words = useWords("enrol");
  const { me } = useStation();
  return (
    <Page title={words.manyTitle()} back={{ to: "/tables", label: words.tables() }}>
      {mayWrite(me.role, "kit-enrolled") ? <ManyForm /> : <EmptyState title={words.notYou()} />}
    </Page>
  );
}

function ManyForm() {
  const words = useWords("enrol");
  const view = useStation();
  const recorder = useRecorder();
  const [, go] = useLocation();
  const { value: draft, change, clear } = useKept<ManyDraft>("enrol-many", EMPTY_MANY);
  const [faults, setFaults] = useState<ManyFaults>(new Map());
  const doing = useDoing();
  const count = draft.rows.filter((row) => !isBlank(row)).length;
  const enrol = async () => {
    const now = { ...doingOf(recorder.station() ?? view), now: deviceAmbient.now() };
    const judged = judgeMany(draft, now, { newId: uuidv7, words });
    setFaults(judged.faults);
    if (judged.faults.size > 0) return doing.clear();
    const isDone = await doing.run(async () => {
      if (judged.other.length > 0) throw new InputError(judged.other);
      await recorder.recordAll(judged.drafts);
    });
    if (!isDone) return;
    clear();
    go("/");
  };
  return (
    <div className="kit-form-wide">
      <Choice
        label={words.manyPattern()}
        options={newestOfEach([...view.patterns.values()]).map((one) => ({
          value: patternKey(one),
          label: words.version({ name: one.name, version: one.version }),
          note: one.summary,
        }))}
        value={draft.pattern || undefined}
        onChange={(pattern) => change({ ...draft, pattern })}
      />
      <p>{words.manyMore()}</p>
      <ManyRows rows={draft.rows} faults={faults} onChange={(rows) => change({ ...draft, rows })} />
      <ButtonRow>
        <Button onPress={() => change({ ...draft, rows: [...draft.rows, nextRow(draft)] })}>{words.addRow()}</Button>
      </ButtonRow>
      {faults.size > 0 && <Notice tone="wrong" title={words.rowsWrong({ count: faults.size })} isNews />}
      <ErrorBox error={doing.error} title={words.notEnrolled()} />
      <div>
        <Button
          kind="primary"
          isDisabled={count === 0 || draft.pattern === ""}
          isBusy={doing.isBusy}
          onPress={() => void enrol()}
        >
          {words.enrolMany({ count })}
        </Button>
      </div>
    </div>
  );
}

/** The place is mostly that of the row above. */
function nextRow({ rows }: ManyDraft) {
  return { ...EMPTY_ROW, place: rows.at(-1)?.place ?? "" };
}
