import type { OnSceneAnswer } from "#questions";
import type { CasualtyState } from "#readiness";
import { useState } from "react";
import { useParams } from "wouter";
import { useStation } from "../../device/index.ts";
import { EmptyState, Page } from "../../parts/index.ts";
import { AboutHer } from "./about-her.tsx";
import { AdviceList } from "./advice-list.tsx";
import { ClosePart } from "./close-part.tsx";
import { DueAlarm } from "./due-alarm.tsx";
import { DueStrip } from "./due-strip.tsx";
import { Estimate } from "./estimate.tsx";
import { FuelPart } from "./fuel-part.tsx";
import { HolePart } from "./hole-part.tsx";
import { NotesPart } from "./notes-part.tsx";
import { onSceneQuestion, spaceAt } from "./on-scene-question.ts";
import { Papers } from "./papers.tsx";
import { PicturePart } from "./picture-part.tsx";
import { PumpsPart } from "./pumps-part.tsx";
import { SheetEntries } from "./sheet-entries.tsx";
import { SoundNow } from "./sound-now.tsx";
import { SoundingsPart } from "./soundings-part.tsx";
import { SpaceTabs } from "./space-tabs.tsx";
import { StabilityPart } from "./stability-part.tsx";
import { UndoBar } from "./undo-bar.tsx";
import { useAsked, type Asked } from "./use-asked.ts";
import { useMinute } from "./use-minute.ts";
import { SheetContext, useSheet, useSheetOf } from "./use-sheet.ts";
import { VerdictLine } from "./verdict-line.tsx";
import { WarningList } from "./warning-list.tsx";
import "../turnaround/runner.css";
import "./casualty.css";

/** The sheet of one casualty: are we gaining, what to do next, and everything written down. */
export default function SheetPage() {
  const { id = "" } = useParams<{ readonly id: string }>();
  const casualty = useStation().casualties.find((one) => one.id === id);
  const back = { to: "/casualty", label: "Casualty" };
  if (!casualty) {
    return (
      <Page title="No such casualty" back={back}>
        <EmptyState title="This device knows no casualty at this address">
          <p>It may not have been sent yet from where it was opened.</p>
        </EmptyState>
      </Page>
    );
  }
  return (
    <Page title={casualty.name} back={back} frame="full">
      <SheetBody key={casualty.id} casualty={casualty} />
    </Page>
  );
}

function SheetBody({ casualty }: { readonly casualty: CasualtyState }) {
  const [chosen, choose] = useState<string>();
  const minute = useMinute();
  const asked = useAsked<OnSceneAnswer>("on-scene", onSceneQuestion(casualty, askedAt(casualty, minute), chosen));
  const sheet = useSheetOf(casualty, spaceAt(casualty, chosen)?.id ?? "");
  return (
    <SheetContext value={sheet}>
      <div className="casualty">
        {casualty.closed ? <ClosedSheet asked={asked} /> : <OpenSheet asked={asked} onSpace={choose} minute={minute} />}
      </div>
    </SheetContext>
  );
}

/** A closed sheet stands as it was last written: nothing is forecast from it, however long ago it was [ms]. */
function askedAt({ closed, opened }: CasualtyState, minute: number): number {
  return closed ? Date.parse(opened.at) : minute;
}

interface PartsProps {
  readonly asked: Asked<OnSceneAnswer>;
}

function OpenSheet({
  asked,
  onSpace,
  minute,
}: PartsProps & { readonly onSpace: (id: string) => void; readonly minute: number }) {
  const { answer } = asked;
  return (
    <>
      <VerdictLine asked={asked} now={minute} />
      <DueStrip answer={answer} />
      <DueAlarm />
      <SpaceTabs onSpace={onSpace} />
      <SoundNow />
      <UndoBar />
      <FuelPart />
      {answer && <WarningList answer={answer} />}
      <PumpsPart />
      <HolePart />
      {answer && <AdviceList answer={answer} />}
      {answer && <PicturePart answer={answer} />}
      <SoundingsPart answer={answer} now={minute} />
      <StabilityPart />
      <NotesPart />
      <AboutHer />
      {answer && <Estimate assumptions={answer.assumptions} />}
      <Papers />
      <SheetEntries />
      <ClosePart />
    </>
  );
}

/** A closed sheet is read, not written. */
function ClosedSheet({ asked }: PartsProps) {
  const { casualty } = useSheet();
  return (
    <>
      <ClosePart />
      <Papers />
      <SoundingsPart answer={undefined} now={Date.parse(casualty.closed!.at)} />
      {asked.answer && <PicturePart answer={asked.answer} />}
      <SheetEntries />
    </>
  );
}
