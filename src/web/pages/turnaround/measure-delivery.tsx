import { useState } from "react";
import { Button, Choice, ErrorBox } from "../../parts/index.ts";
import type { OpenKit } from "./at-hand.ts";
import { boxesOf, hasSuction, NO_DRAFT, READ_BY, readMeasure, type Box, type MeasureDraft } from "./measure-draft.ts";
import { DraftBox, type DraftProps } from "./measure-box.tsx";
import { MeasuredPanel, ResultPanel, type MeasureProps } from "./measure-result.tsx";
import { VacuumTest } from "./measure-vacuum.tsx";
import { METHODS, RISE_FROM_WATER } from "./measure-words.ts";
import { useKept } from "./use-kept.ts";
import { useSaving } from "./use-saving.ts";
import "./measure.css";

/** The proof run as a measurement: how, where, what was read, what it comes to; then it is written down. */
export default function MeasureDelivery(props: MeasureProps) {
  const { open, line } = props;
  const recorded = open.turnaround.measured.findLast(({ step }) => step === line.step.id);
  const [again, setAgain] = useState(false);
  if (!open.pattern.hydraulics) return null;
  return (
    <section className="measure" aria-label="Delivery measured">
      <h2>Measure the delivery</h2>
      {recorded && !again ? (
        <MeasuredPanel {...props} measured={recorded} onAgain={() => setAgain(true)} />
      ) : (
        <MeasureForm {...props} onRecorded={() => setAgain(false)} />
      )}
    </section>
  );
}

function MeasureForm({ open, acts, line, onRecorded }: MeasureProps & { readonly onRecorded: () => void }) {
  const { pattern, turnaround } = open;
  const kept = useKept<MeasureDraft>(`measure.${turnaround.id}.${line.step.id}`, NO_DRAFT);
  const saving = useSaving();
  const draft = kept.value;
  const measuring = readMeasure(pattern, draft);
  const change = (part: Partial<MeasureDraft>) => kept.change({ ...draft, ...part });
  const record = async () => {
    if (measuring.kind !== "measured") return;
    const where = { turnaround: turnaround.id, step: line.step.id };
    if (!(await saving.save(() => acts.measureDelivery(where, measuring.body)))) return;
    kept.clear();
    onRecorded();
  };
  return (
    <>
      <Around open={open} draft={draft} onChange={change} />
      <Readings open={open} draft={draft} onChange={change} />
      {measuring.kind === "incomplete" && <p className="quiet">{measuring.missing}</p>}
      {measuring.kind === "refused" && <ErrorBox error={measuring.error} title="That cannot be computed" />}
      {measuring.kind === "measured" && <ResultPanel answer={measuring.answer} pattern={pattern} />}
      {hasSuction(pattern) && (
        <VacuumTest
          isWanted={measuring.kind === "measured" && measuring.answer.verdict !== "as-expected"}
          draft={draft}
          onChange={change}
        />
      )}
      <ErrorBox error={saving.error} title="Not saved" />
      <Button
        kind="primary"
        wide
        isDisabled={measuring.kind !== "measured" || measuring.answer.expected <= 0}
        onPress={() => void record()}
      >
        Write the measurement down
      </Button>
    </>
  );
}

const HOSES = [
  { value: "packed", label: "The kit's own, as packed" },
  { value: "other", label: "Others, or other lengths" },
] as const;
const SPEEDS = [
  { value: "full", label: "Full throttle" },
  { value: "less", label: "Less than full" },
] as const;

/** Heights, hoses and throttle as they were. */
function Around({ open, draft, onChange }: DraftProps & { readonly open: OpenKit }) {
  const { pattern } = open;
  const boxes = boxesOf(pattern, draft);
  const show = (wanted: readonly Box[]) =>
    wanted
      .filter((box) => boxes.includes(box))
      .map((box) => (
        <DraftBox
          key={box}
          box={box}
          draft={draft}
          onChange={onChange}
          {...(box === "rise" && !hasSuction(pattern) && { words: RISE_FROM_WATER })}
        />
      ));
  return (
    <>
      {show(["lift", "rise"])}
      <Choice label="Hoses" options={HOSES} value={draft.hoses} onChange={(hoses) => onChange({ hoses })} />
      {show(["suctionLength", "dischargeLength"])}
      {pattern.engine && (
        <Choice label="Throttle" options={SPEEDS} value={draft.speed} onChange={(speed) => onChange({ speed })} />
      )}
      {show(["throttle"])}
    </>
  );
}

/** How it was measured, and what was read. */
function Readings({ open, draft, onChange }: DraftProps & { readonly open: OpenKit }) {
  const suction = hasSuction(open.pattern);
  const methods = METHODS.filter(({ value }) => suction || value !== "suction-vacuum");
  const read = draft.method ? READ_BY[draft.method] : [];
  const asksBeside = suction && draft.method !== undefined && draft.method !== "suction-vacuum";
  return (
    <>
      <Choice
        label="How was it measured?"
        options={methods}
        value={draft.method}
        onChange={(method) => onChange({ method })}
      />
      {[...read, ...(asksBeside ? (["beside"] as const) : [])].map((box) => (
        <DraftBox key={box} box={box} draft={draft} onChange={onChange} />
      ))}
    </>
  );
}
