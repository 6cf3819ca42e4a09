import { InputError } from "#base";
import { newestOfEach, patternKey } from "#kit";
import { mayWrite } from "#station";
import { useState } from "react";
import { useLocation } from "wouter";
import { uuidv7 } from "uuidv7";
import { deviceAmbient } from "#web/device/clock.ts";
import { doingOf, useRecorder, useStation } from "#web/device/index.ts";
import { Button, ButtonRow, EmptyState, ErrorBox, Notice, Page, sayCount, useDoing } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { useKept } from "#web/act/use-kept.ts";
import { EMPTY_MANY, EMPTY_ROW, isBlank, judgeMany, type ManyDraft, type ManyFaults } from "./enrol/enrol-many.ts";
import { ManyRows } from "./enrol/many-rows.tsx";
import "#web/kit-view/kit.css";

/** Takes several kits of one pattern on charge: all of them, or none. */
export default function EnrolManyPage() {
  const { me } = useStation();
  return (
    <Page title="Enrol several kits" back={{ to: "/tables", label: "Tables" }}>
      {mayWrite(me.role, "kit-enrolled") ? (
        <ManyForm />
      ) : (
        <EmptyState title="A keeper or an administrator enrols kits" />
      )}
    </Page>
  );
}

function ManyForm() {
  const view = useStation();
  const recorder = useRecorder();
  const [, go] = useLocation();
  const { value: draft, change, clear } = useKept<ManyDraft>("enrol-many", EMPTY_MANY);
  const [faults, setFaults] = useState<ManyFaults>(new Map());
  const doing = useDoing();
  const count = draft.rows.filter((row) => !isBlank(row)).length;
  const enrol = async () => {
    const now = { ...doingOf(recorder.station() ?? view), now: deviceAmbient.now() };
    const judged = judgeMany(draft, now, uuidv7);
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
        label="All built to the pattern"
        options={newestOfEach([...view.patterns.values()]).map((one) => ({
          value: patternKey(one),
          label: `${one.name}, version ${one.version}`,
          note: one.summary,
        }))}
        value={draft.pattern || undefined}
        onChange={(pattern) => change({ ...draft, pattern })}
      />
      <p>
        Dates and contents are left for the first turnaround of each, where the things are in your hand. Enter, in the
        last row, adds a row. What you write is kept on this device.
      </p>
      <ManyRows rows={draft.rows} faults={faults} onChange={(rows) => change({ ...draft, rows })} />
      <ButtonRow>
        <Button onPress={() => change({ ...draft, rows: [...draft.rows, nextRow(draft)] })}>Add a row</Button>
      </ButtonRow>
      {faults.size > 0 && (
        <Notice tone="wrong" title={`${sayCount(faults.size, "row")} to put right; none is enrolled yet`} isNews />
      )}
      <ErrorBox error={doing.error} title="Not enrolled" />
      <div>
        <Button
          kind="primary"
          isDisabled={count === 0 || draft.pattern === ""}
          isBusy={doing.isBusy}
          onPress={() => void enrol()}
        >
          {`Enrol ${sayCount(count, "kit")}`}
        </Button>
      </div>
    </div>
  );
}

/** The place is mostly that of the row above. */
function nextRow({ rows }: ManyDraft) {
  return { ...EMPTY_ROW, place: rows.at(-1)?.place ?? "" };
}
