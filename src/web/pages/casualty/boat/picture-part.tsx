import type { UnitSystem } from "#base";
import type { OnSceneAnswer } from "#questions";
import type { HullDrawn } from "../../../drawing/hull-section-places.ts";
import { HullSection } from "../../../drawing/hull-section.tsx";
import { Notice, Section } from "../../../parts/index.ts";
import { usePreferences } from "../../../theme/index.ts";
import { GuessedNote } from "../word/guessed-note.tsx";
import { sayLength } from "./say-length.ts";
import { sayClock, sayLevelAbout, sayList } from "../sheet/say.ts";
import { useSheet } from "../sheet/use-sheet.ts";

interface PicturePartProps {
  readonly answer: OnSceneAnswer;
  /** When she lay so [ms]; undefined for now. */
  readonly asOf: number | undefined;
}

/** How she lies: water outside and in, freeboard left, list and trim; in a picture and in words. */
export function PicturePart({ answer, asOf }: PicturePartProps) {
  const { casualty } = useSheet();
  const { units } = usePreferences();
  const { lying } = answer;
  if (lying.kind !== "afloat") {
    return (
      <Section title="How she lies">
        <Notice tone="wrong" title="By this estimate she does not stay afloat and upright">
          <p>{lying.because}</p>
        </Notice>
      </Section>
    );
  }
  const drawn = drawnOf(answer, lying, casualty.stability.list ?? 0);
  const level = Math.min(answer.reading?.levelNow.p50 ?? 0, answer.hull.depth);
  const freeboard = sayLength(Math.max(0, lying.freeboard), units);
  return (
    <Section title={asOf === undefined ? "How she lies" : `How she lay when sounded, at ${sayClock(asOf)}`}>
      <HullSection
        drawn={drawn}
        label={`The boat from the side. ${freeboard} of freeboard left, ${sayLevelAbout(level, units)} of water inside.`}
        sayFreeboard={freeboard}
        sayInside={sayLevelAbout(level, units)}
      />
      <GuessedNote hull={answer.hull} />
      <Facts answer={answer} lying={lying} list={casualty.stability.list} units={units} />
    </Section>
  );
}

type Afloat = Extract<OnSceneAnswer["lying"], { kind: "afloat" }>;

function drawnOf({ hull }: OnSceneAnswer, { aft, forward, inside }: Afloat, list: number): HullDrawn {
  return { ...hull, aft, forward, inside, list };
}

interface FactsProps {
  readonly answer: OnSceneAnswer;
  readonly lying: Afloat;
  readonly list: number | undefined;
  readonly units: UnitSystem;
}

function Facts({ answer, lying, list, units }: FactsProps) {
  const trim = lying.aft - lying.forward;
  return (
    <dl className="casualty-facts">
      <dt>Freeboard left</dt>
      <dd>
        {sayLength(Math.max(0, lying.freeboard), units)} of {sayLength(answer.dryFreeboard, units)}
      </dd>
      <dt>Trim</dt>
      <dd>
        {Math.abs(trim) < 0.02 ? "level" : `${sayLength(Math.abs(trim), units)} by the ${trim > 0 ? "stern" : "bow"}`}
      </dd>
      <dt>List</dt>
      <dd>{list === undefined ? "not written down" : `${sayList(list)}, as seen`}</dd>
      <dt>GM by the model</dt>
      <dd>{sayLength(lying.gm, units)}, a guess: trust her roll</dd>
    </dl>
  );
}
