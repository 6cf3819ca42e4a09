import { mayWrite } from "#station";
import type { KitsNeededAnswer } from "#questions";
import { useState } from "react";
import { useStation } from "../../device/index.ts";
import { Button, Notice, Page, Section } from "../../parts/index.ts";
import { usePreferences } from "../../theme/index.ts";
import { useKeptCall } from "./before-launch-kept.ts";
import { SizePicks, SizePicksOrTyped } from "./before-launch-size.tsx";
import { TakeLine, TOLD_PLACE } from "./before-launch-take.tsx";
import { sayKits } from "./before-launch-words.ts";
import { kitsQuestion, tell, type Call } from "./before-launch.ts";
import { KitsAnswer } from "./kits-answer.tsx";
import { OpenSheet } from "./open-sheet.tsx";
import { readyKits, useOwnKits } from "./own-kits.ts";
import { PickRow } from "./pick-row.tsx";
import { BOATS, DISTANCES, lengthPicks, sizePicks } from "./sizes.ts";
import { useAsked } from "./use-asked.ts";
import "./casualty.css";
import "./launch.css";

/** Before launching: three taps to a first answer, more as the skipper tells more. */
export default function BeforeLaunchPage() {
  const { call, change, clear } = useKeptCall();
  const [boats, setBoats] = useState(0);
  const another = () => {
    clear();
    setBoats(boats + 1);
    scrollTo({ top: 0 });
  };
  return (
    <Page title="Before launch: how many kits?" back={{ to: "/casualty", label: "Casualty" }}>
      <Launch
        key={boats}
        call={call}
        onChange={(part) => change(tell(call, part, Date.now()))}
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
  const view = useStation();
  const may = mayWrite(view.me.role, "casualty-opened");
  return (
    <div className="casualty launch">
      <BoatPart call={call} onChange={onChange} />
      <Found call={call} />
      <MorePart call={call} onChange={onChange} />
      {may && call.kind !== undefined && call.length !== undefined && <OpenSheet call={call} onOpened={onOpened} />}
      {!may && <Notice title="Your role reads sheets and does not open them." />}
      {call.kind !== undefined && (
        <Button kind="quiet" onPress={onAnother}>
          Another boat: begin again
        </Button>
      )}
    </div>
  );
}

function Found({ call }: { readonly call: Call }) {
  const view = useStation();
  const own = useOwnKits(view);
  const asked = useAsked<KitsNeededAnswer>("kits-needed", kitsQuestion(call, own?.pattern.id, own?.flow));
  const ready = readyKits(view);
  const words = asked.answer && asked.error === undefined ? sayKits(asked.answer, ready) : undefined;
  return (
    <div className="launch-found">
      {words && <TakeLine words={words} />}
      <KitsAnswer asked={asked} words={words} own={own} ready={ready} />
    </div>
  );
}

interface PartProps {
  readonly call: Call;
  readonly onChange: (part: Partial<Call>) => void;
}

function BoatPart({ call, onChange }: PartProps) {
  const { units } = usePreferences();
  return (
    <Section title="The boat">
      <PickRow label="What is she?" options={BOATS} picked={call.kind} onPick={(kind) => onChange({ kind })} />
      <SizePicksOrTyped
        kind="length"
        label="How long?"
        picks={lengthPicks(units)}
        si={call.length}
        onPick={(length) => onChange({ length })}
      />
      <SizePicksOrTyped
        kind="distance"
        label="How far away?"
        picks={DISTANCES}
        si={call.distance}
        onPick={(distance) => onChange({ distance })}
      />
    </Section>
  );
}

const TOLD = [
  { kind: "hole", label: "Hole, across" },
  { kind: "holeDepth", label: "Hole, below the waterline" },
  { kind: "water", label: "Water inside" },
] as const;

function MorePart({ call, onChange }: PartProps) {
  const { units } = usePreferences();
  return (
    <Section id={TOLD_PLACE} title="What is known" beside={<span className="quiet">leave out what nobody knows</span>}>
      {TOLD.map(({ kind, label }) => (
        <SizePicksOrTyped
          key={kind}
          kind={kind}
          label={label}
          picks={sizePicks(kind, units)}
          si={call[kind]}
          onPick={(si) => onChange({ [kind]: si })}
        />
      ))}
      <SizePicks
        label="Rising, at one mark"
        picks={sizePicks("rising", units)}
        si={call.rising}
        onPick={(rising) => onChange({ rising })}
      />
    </Section>
  );
}
