import { sayLength, sayLevelAbout } from "#words";
import type { UnitSystem } from "#base";
import type { OnSceneAnswer } from "#questions";
import type { HullDrawn } from "#web/drawing/hull-section-places.ts";
import { HullSection } from "#web/drawing/hull-section.tsx";
import { Notice, Section } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { GuessedNote } from "../word/guessed-note.tsx";
import { sayClock, sayList } from "../sheet/say.ts";
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
  const freeboard = sayLength(Math.max(0, lying.freeboard), units, "hull");
  const isSounded = answer.reading !== undefined;
  const inside = isSounded ? `${sayLevelAbout(level, units)} inside` : "water not sounded";
  return (
    <Section title={titleOf(isSounded, asOf)}>
      {!isSounded && <p className="quiet">The water in her is not known. Until it is sounded this is the boat dry.</p>}
      <HullSection
        drawn={drawn}
        label={`The boat from the side. ${freeboard} of freeboard ${isSounded ? "left" : "were she dry"}, ${inside}.`}
        sayFreeboard={freeboard}
        sayInside={inside}
      />
      <GuessedNote hull={answer.hull} />
      <Facts answer={answer} lying={lying} list={casualty.stability.list} units={units} />
    </Section>
  );
}

function titleOf(isSounded: boolean, asOf: number | undefined): string {
  if (!isSounded) return "How she floats dry";
  return asOf === undefined ? "How she lies" : `How she lay when sounded, at ${sayClock(asOf)}`;
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
      <dt>{answer.reading === undefined ? "Freeboard, were she dry" : "Freeboard left"}</dt>
      <dd>
        {answer.reading === undefined
          ? sayLength(answer.dryFreeboard, units, "hull")
          : `${sayLength(Math.max(0, lying.freeboard), units, "hull")} of ${sayLength(answer.dryFreeboard, units, "hull")}`}
      </dd>
      <dt>Trim</dt>
      <dd>
        {Math.abs(trim) < 0.02
          ? "level"
          : `${sayLength(Math.abs(trim), units, "hull")} by the ${trim > 0 ? "stern" : "bow"}`}
      </dd>
      <dt>List</dt>
      <dd>{list === undefined ? "not written down" : `${sayList(list)}, as seen`}</dd>
      <dt>GM by the model</dt>
      <dd>{sayLength(lying.gm, units, "hull")}, a guess: trust her roll</dd>
    </dl>
  );
}
