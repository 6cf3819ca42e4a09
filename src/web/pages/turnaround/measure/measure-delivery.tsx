import { useState } from "react";
import type { Pattern } from "#kit";
import { useReady, useWords } from "#web/language/index.ts";
import { Button, ErrorBox } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import type { KitActs, Where } from "#web/act/acts.ts";
import type { Line } from "#web/act/lines.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import {
  boxesOf,
  hasSuction,
  NO_DRAFT,
  READ_BY,
  readMeasure,
  type Box,
  type MeasureDraft,
  type Measuring,
} from "./measure-draft.ts";
import { DraftBox, type DraftProps } from "./measure-box.tsx";
import { MeasuredPanel, ResultPanel, type MeasureProps } from "./measure-result.tsx";
import { VacuumTest } from "./measure-vacuum.tsx";
import { methodChoices, ratioAsk, sayRiseFromWater, sayShare } from "./measure-words.ts";
import { usePreferences } from "#web/theme/index.ts";
import { lastRig } from "./as-last.ts";
import { useKept } from "#web/act/use-kept.ts";
import { useSaving } from "#web/act/use-saving.ts";
import "./measure.css";

/** The proof run as a measurement: how, where, what was read, what it comes to; then it is written down. */
export default function MeasureDelivery(props: MeasureProps) {
  useReady("turnaroundMeasure", "prime");
  const { open, line } = props;
  const recorded = open.turnaround.measured.findLast(({ step }) => step === line.step.id);
  const [again, setAgain] = useState(false);
  const words = useWords("turnaroundMeasure");
  if (!open.pattern.hydraulics) return null;
  return (
    <section className="measure" aria-label={words.section()}>
      <h2>{words.title()}</h2>
      {recorded && !again ? (
        <MeasuredPanel {...props} measured={recorded} onAgain={() => setAgain(true)} />
      ) : (
        <MeasureForm {...props} onRecorded={() => setAgain(false)} />
      )}
    </section>
  );
}

function MeasureForm(props: MeasureProps & { readonly onRecorded: () => void }) {
  const { open, line } = props;
  const kept = useKept<MeasureDraft>(`measure.${open.turnaround.id}.${line.step.id}`, NO_DRAFT);
  const draft = kept.value;
  const measuring = readMeasure(open.pattern, draft);
  const change = (part: Partial<MeasureDraft>) => kept.change({ ...draft, ...part });
  const isDoubtful = measuring.kind === "measured" && measuring.answer.verdict !== "as-expected";
  const { units } = usePreferences();
  const words = useWords("turnaroundMeasure");
  const last = draft === NO_DRAFT ? lastRig(open.kit, open.pattern, line.step.id, { units, words }) : undefined;
  return (
    <>
      {last && (
        <Button wide onPress={() => kept.change(last.draft)}>
          {words.asLast({ rig: last.said })}
        </Button>
      )}
      <Around open={open} draft={draft} onChange={change} />
      <Readings open={open} draft={draft} onChange={change} />
      <Outcome measuring={measuring} pattern={open.pattern} />
      {hasSuction(open.pattern) && <VacuumTest isWanted={isDoubtful} draft={draft} onChange={change} />}
      <WriteDown {...props} measuring={measuring} onRecorded={() => (kept.clear(), props.onRecorded())} />
    </>
  );
}

/** What the draft comes to so far: what is missing, what stands against it, or the measurement. */
function Outcome({ measuring, pattern }: { readonly measuring: Measuring; readonly pattern: Pattern }) {
  const words = useWords("turnaroundMeasure");
  switch (measuring.kind) {
    case "incomplete":
      return <p className="quiet">{words[measuring.missing]()}</p>;
    case "refused":
      return <ErrorBox error={measuring.error} title={words.cannotCompute()} />;
    case "measured":
      return <ResultPanel answer={measuring.answer} pattern={pattern} />;
  }
}

interface WriteDownProps extends MeasureProps {
  readonly measuring: Measuring;
  readonly onRecorded: () => void;
}

/** Writes a measurement down; one with nothing to hold it against is not one. */
function WriteDown({ open, acts, line, measuring, onRecorded, onAnswered }: WriteDownProps) {
  const saving = useSaving();
  const words = useWords("turnaroundMeasure");
  const body = measuring.kind === "measured" && measuring.body.expected > 0 ? measuring.body : undefined;
  const record = async () => {
    if (!body) return;
    const where = { turnaround: open.turnaround.id, step: line.step.id };
    const isWritten = await saving.save(() => acts.measureDelivery(where, body));
    if (!isWritten) return;
    onRecorded();
    if (body.verdict !== "as-expected") return;
    if (await saving.save(() => answerRatio(acts, line, where, body.ratio))) onAnswered();
  };
  return (
    <>
      <ErrorBox error={saving.error} title={words.notSaved()} />
      <Button kind="primary" wide isDisabled={!body} onPress={() => void record()}>
        {body?.verdict === "as-expected" ? words.writeDownRight({ share: sayShare(body.ratio) }) : words.writeDown()}
      </Button>
    </>
  );
}

/** The line's check answered with the measured share, where it is as expected and not answered yet. */
async function answerRatio(acts: KitActs, line: Line, where: Where, ratio: number): Promise<void> {
  const ask = ratioAsk(line);
  if (!ask || ask.answered) return;
  const value = { kind: "quantity", si: ratio, dimension: "ratio", text: sayShare(ratio) } as const;
  await acts.answer(where, ask, "seen", { value });
}

/** Heights, hoses and throttle as they were. */
function Around({ open, draft, onChange }: DraftProps & { readonly open: OpenKit }) {
  const { pattern } = open;
  const words = useWords("turnaroundMeasure");
  const hoses = [
    { value: "packed", label: words.hosesPacked() },
    { value: "other", label: words.hosesOther() },
  ] as const;
  const speeds = [
    { value: "full", label: words.throttleFull() },
    { value: "less", label: words.throttleLess() },
  ] as const;
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
          {...(box === "rise" && !hasSuction(pattern) && { said: sayRiseFromWater(words) })}
        />
      ));
  return (
    <>
      {show(["lift", "rise"])}
      <Choice
        label={words.hoses()}
        options={hoses}
        value={draft.hoses}
        onChange={(chosen) => onChange({ hoses: chosen })}
      />
      {show(["suctionLength", "dischargeLength"])}
      {pattern.engine && (
        <Choice
          label={words.throttle()}
          options={speeds}
          value={draft.speed}
          onChange={(speed) => onChange({ speed })}
        />
      )}
      {show(["throttle"])}
    </>
  );
}

/** How it was measured, and what was read. */
function Readings({ open, draft, onChange }: DraftProps & { readonly open: OpenKit }) {
  const suction = hasSuction(open.pattern);
  const words = useWords("turnaroundMeasure");
  const methods = methodChoices(words).filter(({ value }) => suction || value !== "suction-vacuum");
  const read = draft.method ? READ_BY[draft.method] : [];
  const asksBeside = suction && draft.method !== undefined && draft.method !== "suction-vacuum";
  return (
    <>
      <Choice label={words.how()} options={methods} value={draft.method} onChange={(method) => onChange({ method })} />
      {[...read, ...(asksBeside ? (["beside"] as const) : [])].map((box) => (
        <DraftBox key={box} box={box} draft={draft} onChange={onChange} />
      ))}
    </>
  );
}
