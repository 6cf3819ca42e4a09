import { useReady, useWords } from "#web/language/index.ts";
import { mayWrite } from "#station";
import type { KitsNeededAnswer } from "#questions";
import { useState } from "react";
import { useStation } from "#web/device/index.ts";
import { AskingButton, Notice, Page, Section } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { atOddsIn } from "./launch/told/at-odds.ts";
import { useKeptCall } from "./launch/before-launch-kept.ts";
import { RisePicksOrTyped, SizePicksOrTyped } from "./launch/before-launch-size.tsx";
import { TakeLine, TOLD_PLACE } from "./launch/before-launch-take.tsx";
import { sayKits } from "./launch/before-launch-words.ts";
import { kitsQuestion, tell, type Call, type Told } from "./launch/before-launch.ts";
import { KitsAnswer } from "./launch/kits-answer.tsx";
import { OpenSheet } from "./sheet/open-sheet.tsx";
import { OurBoatPart } from "./launch/our-boat-part.tsx";
import { boatPicked, wayOf } from "./launch/our-boat.ts";
import { SituationPart } from "./launch/situation/situation-part.tsx";
import { SoonerBoatLine } from "./launch/sooner-boat-line.tsx";
import { soonerBoat } from "./launch/sooner-boat.ts";
import { ToldLevels } from "./launch/told/told-levels.tsx";
import { kitsAtHand } from "./launch/usable-kits.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { distancePicks, kindPicks, lengthPicks, sizePicks } from "./launch/sizes.ts";
import { useAsked } from "./word/use-asked.ts";
import { useMinute } from "#web/timing/use-minute.ts";
import "./casualty.css";
import "./launch/launch.css";

/** Before launching: three taps to a first answer, more as the skipper tells more. */
export default function BeforeLaunchPage() {
  useReady("casualtyTold", "launch", "launchKits", "launchTold", "sheet", "sheetWord", "standing");
  const words = useWords("launch");
  const frame = useWords("frame");
  const { call, change, clear } = useKeptCall();
  const [boats, setBoats] = useState(0);
  const another = () => {
    clear();
    setBoats(boats + 1);
    scrollTo({ top: 0 });
  };
  return (
    <Page title={words.title()} back={{ to: "/casualty", label: frame.casualty() }}>
      <Launch
        key={boats}
        call={call}
        onChange={(part) => change(tell(call, part, Date.now(), "water" in part))}
        onAnother={another}
        onOpened={clear}
      />
    </Page>
  );
}

interface LaunchProps extends PartProps {
  readonly onAnother: () => void;
  readonly onOpened: () => void;
}

function Launch({ call, onChange, onAnother, onOpened }: LaunchProps) {
  const words = useWords("launch");
  const view = useStation();
  const may = mayWrite(view.me.role, "casualty-opened");
  const [refused, setRefused] = useState<readonly string[]>([]);
  const onRefused = (label: string, isRefused: boolean) =>
    setRefused((before) => [...before.filter((one) => one !== label), ...(isRefused ? [label] : [])]);
  const isBegun = call.distance !== undefined || call.kind !== undefined;
  return (
    <div className="casualty launch">
      <BoatPart call={call} onChange={onChange} onRefused={onRefused} />
      <Found call={call} refused={refused} onChange={onChange} />
      <MorePart call={call} onChange={onChange} onRefused={onRefused} />
      <OurBoatPart call={call} way={wayOf(view, call)} onChange={onChange} />
      <SituationPart call={call} onChange={onChange} />
      {may && isBegun && <OpenSheet call={call} onOpened={onOpened} />}
      {!may && <Notice title={words.readsOnly()} />}
      {isBegun && <BeginAgain onAgain={onAnother} />}
    </div>
  );
}

/** Asked once more: all that was told of her goes with it. */
function BeginAgain({ onAgain }: { readonly onAgain: () => void }) {
  const words = useWords("launch");
  return (
    <AskingButton
      kind="quiet"
      words={words.again()}
      title={words.againAsk()}
      confirm={words.againDo()}
      cancel={words.againKeep()}
      onConfirm={onAgain}
    >
      <p>{words.againMore()}</p>
    </AskingButton>
  );
}

interface FoundProps extends PartProps {
  /** What stands typed and cannot be, by its label. */
  readonly refused: readonly string[];
}

function Found({ call, refused, onChange }: FoundProps) {
  const launch = useWords("launch");
  const standing = useWords("standing");
  const messages = useWords("launchKits");
  const view = useStation();
  const now = useMinute();
  const way = wayOf(view, call);
  const atHand = kitsAtHand(view, way, { light: call.light, herMains: call.herMains }, { launch, standing });
  const sooner = soonerBoat(view, call, { launch, standing });
  // A device that knows of no kit counts with a usual one.
  const kits = view.kits.length === 0 ? undefined : atHand.usable;
  const isFuelKnown = kits?.[0] !== undefined;
  const asked = useAsked<KitsNeededAnswer>("kits-needed", kitsQuestion(call, now, way, kits));
  const words = asked.answer && asked.error === undefined ? sayKits(asked.answer, messages, isFuelKnown) : undefined;
  return (
    <div className="launch-found">
      <output className="launch-odd">{refused.length > 0 && launch.typedRefused({ what: refused.join(", ") })}</output>
      {words && <TakeLine words={words} />}
      <SoonerBoatLine sooner={sooner} onChoose={(boat) => onChange(boatPicked(boat))} />
      <KitsAnswer asked={asked} words={words} way={way} atHand={atHand} />
    </div>
  );
}

interface PartProps {
  readonly call: Call;
  readonly onChange: (part: Told) => void;
}

interface SizesProps extends PartProps {
  readonly onRefused: (label: string, isRefused: boolean) => void;
}

function BoatPart({ call, onChange, onRefused }: SizesProps) {
  const words = useWords("launch");
  const told = useWords("launchTold");
  const { units } = usePreferences();
  return (
    <Section title={words.boat()}>
      <PickRow
        label={words.whatIsShe()}
        options={kindPicks(told)}
        picked={call.kind ?? "unknown"}
        onPick={(kind) => onChange({ kind: kind === "unknown" ? undefined : kind })}
      />
      <SizePicksOrTyped
        kind="length"
        label={words.howLong()}
        picks={lengthPicks(units, told)}
        si={call.length}
        onPick={(length) => onChange({ length })}
        onRefused={(isRefused) => onRefused(words.howLong(), isRefused)}
      />
      <SizePicksOrTyped
        kind="distance"
        label={words.howFar()}
        picks={distancePicks(told)}
        si={call.distance}
        onPick={(distance) => onChange({ distance })}
        onRefused={(isRefused) => onRefused(words.howFar(), isRefused)}
      />
    </Section>
  );
}

const TOLD = [
  { kind: "hole", says: "holeAcross" },
  { kind: "holeDepth", says: "holeBelow" },
  { kind: "water", says: "waterInside" },
] as const;

function MorePart({ call, onChange, onRefused }: SizesProps) {
  const words = useWords("launch");
  const told = useWords("launchTold");
  const { units } = usePreferences();
  const odds = atOddsIn(call, units, told);
  return (
    <Section id={TOLD_PLACE} title={words.whatIsKnown()} beside={<span className="quiet">{words.leaveOut()}</span>}>
      {TOLD.map(({ kind, says }) => (
        <SizePicksOrTyped
          key={kind}
          kind={kind}
          label={words[says]()}
          picks={sizePicks(kind, units, told)}
          si={kind === "water" ? call.tellings?.at(-1)?.water : call[kind]}
          onPick={(si) => onChange({ [kind]: si })}
          onRefused={(isRefused) => onRefused(words[says](), isRefused)}
        />
      ))}
      <ToldLevels of={call.tellings ?? []} />
      <Remark words={odds.water} />
      <RisePicksOrTyped
        label={words.rising()}
        picks={sizePicks("rising", units, told)}
        si={call.rising}
        onPick={(rising) => onChange({ rising })}
        onRefused={(isRefused) => onRefused(words.rising(), isRefused)}
      />
      <Remark words={odds.rising} />
    </Section>
  );
}

/** What does not go together, at its field; in the page before it has words, so that they are read out. */
function Remark({ words }: { readonly words: string | undefined }) {
  return <output className="launch-odd">{words}</output>;
}
