import { AboutHer } from "../boat/about-her.tsx";
import { AdviceList } from "../word/advice-list.tsx";
import { ToldByRadio } from "../launch/before-launch-told.tsx";
import { ClosePart } from "../close/close-part.tsx";
import { Estimate } from "../word/estimate.tsx";
import { FuelSmelt } from "./fuel-part.tsx";
import { HolePart } from "../boat/hole-part.tsx";
import { JoinPart } from "../join/join-part.tsx";
import { LeftOut } from "../word/left-out.tsx";
import { NotesPart } from "./notes-part.tsx";
import { Papers } from "./papers.tsx";
import { PicturePart } from "../boat/picture-part.tsx";
import { PumpsPart } from "../pumps/pumps-part.tsx";
import { ScreenNote } from "./screen-note.tsx";
import { FootBar } from "../seen/foot-bar.tsx";
import { SeenPart } from "../seen/seen-part.tsx";
import { SheetEntries } from "./sheet-entries.tsx";
import { SoundHazards, SoundNow } from "../soundings/sound-now.tsx";
import { SoundingsPart } from "../soundings/soundings-part.tsx";
import { SpaceTabs } from "../soundings/space-tabs.tsx";
import { Clocks } from "../top/clocks.tsx";
import { Gravest, OtherWarnings } from "../top/gravest.tsx";
import { VerdictLine } from "../top/verdict-line.tsx";
import { UndoBar } from "./undo-bar.tsx";
import type { Scene } from "../word/use-scene.ts";
import { useSheet } from "./use-sheet.ts";

interface SceneProps {
  readonly scene: Scene;
}

interface LiveSheetProps extends SceneProps {
  readonly onSpace: (id: string) => void;
}

/** An open sheet: how it stands, what to do, what it looks like, what else to write; side by side where there is room. */
export function LiveSheet({ scene, onSpace }: LiveSheetProps) {
  return (
    <div className="casualty sheet">
      <div className="sheet-column sheet-now">
        <VerdictLine scene={scene} />
        <Clocks />
        <Gravest answer={scene.live.answer} />
      </div>
      <Doing scene={scene} onSpace={onSpace} />
      <Seeing scene={scene} />
      <Telling scene={scene} />
      <FootBar />
    </div>
  );
}

/** While fuel is smelt there is one thing to do, and nothing here invites another. */
function Doing({ scene, onSpace }: LiveSheetProps) {
  const { casualty, space } = useSheet();
  const isClear = casualty.fuelSmelt === undefined;
  return (
    <div className="sheet-column sheet-do">
      {!isClear && <FuelSmelt />}
      <SpaceTabs onSpace={onSpace} />
      <UndoBar />
      {isClear && <SoundNow key={space} />}
      <PumpsPart answer={scene.live.answer} />
      <LeftOut />
      <OtherWarnings answer={scene.live.answer} />
      {isClear && <SoundHazards isAtHand={false} />}
      {isClear && <HolePart />}
      <ToldByRadio />
    </div>
  );
}

function Seeing({ scene }: SceneProps) {
  const { casualty } = useSheet();
  const { answer } = scene.shown;
  const isAdvised = !scene.isHistory && casualty.fuelSmelt === undefined;
  return (
    <div className="sheet-column sheet-see">
      <SoundingsPart scene={scene} />
      {isAdvised && answer && <AdviceList answer={answer} />}
      {answer && <PicturePart answer={answer} asOf={scene.isHistory ? scene.freshness.last : undefined} />}
    </div>
  );
}

function Telling({ scene }: SceneProps) {
  const { answer } = scene.shown;
  return (
    <div className="sheet-column sheet-tell">
      <SeenPart />
      <NotesPart />
      <AboutHer answer={answer} />
      {answer && <Estimate assumptions={answer.assumptions} />}
      <ScreenNote />
      <Papers />
      <JoinPart />
      <SheetEntries />
      <ClosePart answer={scene.live.answer} />
    </div>
  );
}
