import { useWords } from "#web/language/index.ts";
import { sayLength, sayLevelAbout, type Words } from "#words";
import type { UnitSystem } from "#base";
import type { OnSceneAnswer } from "#questions";
import type { HullDrawn } from "#web/drawing/hull-section-places.ts";
import type { StabilitySeen } from "#readiness";
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
  const words = useWords("sheetBoat");
  const { casualty } = useSheet();
  const { units } = usePreferences();
  const { lying } = answer;
  if (lying.kind !== "afloat") {
    return (
      <Section title={words.lies()}>
        <Notice tone="wrong" title={words.notUpright()}>
          <p>{lying.because}</p>
        </Notice>
      </Section>
    );
  }
  const drawn = drawnOf(answer, lying, casualty.stability.list ?? 0);
  const level = Math.min(answer.reading?.levelNow.p50 ?? 0, answer.hull.depth);
  const freeboard = sayLength(Math.max(0, lying.freeboard), units, "hull");
  const edge = atWater(casualty.stability.deckEdge, words);
  const isSounded = answer.reading !== undefined;
  const inside = isSounded ? words.inside({ level: sayLevelAbout(level, units) }) : words.insideUnknown();
  return (
    <Section title={titleOf(isSounded, asOf, words)}>
      {!isSounded && <p className="quiet">{words.notSounded()}</p>}
      <HullSection
        drawn={drawn}
        label={
          edge === undefined ? sayPicture({ isSounded, freeboard, inside }, words) : words.pictureEdge({ edge, inside })
        }
        sayDeck={edge ?? words.toTheDeck({ freeboard })}
        sayInside={inside}
      />
      <GuessedNote hull={answer.hull} />
      <Facts answer={answer} lying={lying} seen={casualty.stability} units={units} />
    </Section>
  );
}

interface Pictured {
  readonly isSounded: boolean;
  readonly freeboard: string;
  readonly inside: string;
}

function sayPicture({ isSounded, freeboard, inside }: Pictured, words: Words["sheetBoat"]): string {
  return isSounded ? words.pictureLeft({ freeboard, inside }) : words.pictureDry({ freeboard, inside });
}

function titleOf(isSounded: boolean, asOf: number | undefined, words: Words["sheetBoat"]): string {
  if (!isSounded) return words.liesDry();
  return asOf === undefined ? words.lies() : words.layAt({ time: sayClock(asOf) });
}

/** A deck edge seen at the water outranks every freeboard that is computed. */
function atWater(deckEdge: StabilitySeen["deckEdge"], words: Words["sheetBoat"]): string | undefined {
  if (deckEdge === "awash") return words.edgeAwash();
  return deckEdge === "under" ? words.edgeUnder() : undefined;
}

type Afloat = Extract<OnSceneAnswer["lying"], { kind: "afloat" }>;

function drawnOf({ hull }: OnSceneAnswer, { aft, forward, inside }: Afloat, list: number): HullDrawn {
  return { ...hull, aft, forward, inside, list };
}

interface FactsProps {
  readonly answer: OnSceneAnswer;
  readonly lying: Afloat;
  readonly seen: StabilitySeen;
  readonly units: UnitSystem;
}

function Facts({ answer, lying, seen: { list, deckEdge }, units }: FactsProps) {
  const words = useWords("sheetBoat");
  const told = useWords("casualtyTold");
  const left = sayLength(Math.max(0, lying.freeboard), units, "hull");
  const dry = sayLength(answer.dryFreeboard, units, "hull");
  const trim = lying.aft - lying.forward;
  const amount = sayLength(Math.abs(trim), units, "hull");
  return (
    <dl className="casualty-facts">
      <dt>{answer.reading === undefined ? words.freeboardWere() : words.freeboardLeft()}</dt>
      <dd>{atWater(deckEdge, words) ?? (answer.reading === undefined ? dry : words.leftOf({ left, dry }))}</dd>
      <dt>{words.trim()}</dt>
      <dd>{Math.abs(trim) < 0.02 ? words.level() : trim > 0 ? told.byStern({ amount }) : told.byBow({ amount })}</dd>
      <dt>{words.list()}</dt>
      <dd>{list === undefined ? words.listUnknown() : words.asSeen({ list: sayList(list, told) })}</dd>
      <dt>{words.gm()}</dt>
      <dd>{words.gmGuess({ gm: sayLength(lying.gm, units, "hull") })}</dd>
    </dl>
  );
}
