import { mayWrite } from "#station";
import type { KitsNeededAnswer } from "#questions";
import { useState } from "react";
import { useStation } from "../../device/index.ts";
import { Notice, Page, Section } from "../../parts/index.ts";
import { kitsQuestion, type Call } from "./before-launch.ts";
import { TakeLine, TOLD_PLACE } from "./before-launch-take.tsx";
import { sayKits } from "./before-launch-words.ts";
import { KitsAnswer } from "./kits-answer.tsx";
import { OpenSheet } from "./open-sheet.tsx";
import { readyKits, useOwnKits } from "./own-kits.ts";
import { PickRow } from "./pick-row.tsx";
import {
  BOATS,
  DISTANCES,
  lengthPicks,
  sizeFault,
  sizePicks,
  type Pick,
  type SizeKind,
  type TypedSizeKind,
} from "./sizes.ts";
import { boatUnit, SizeField } from "./size-field.tsx";
import { usePreferences } from "../../theme/index.ts";
import { useAsked } from "./use-asked.ts";
import "./casualty.css";
import "./launch.css";

/** Before launching: three taps to a first answer, more as the skipper tells more. */
export default function BeforeLaunchPage() {
  const view = useStation();
  const [call, setCall] = useState<Call>({});
  const own = useOwnKits(view);
  const asked = useAsked<KitsNeededAnswer>("kits-needed", kitsQuestion(call, own?.pattern.id, own?.flow));
  const change = (part: Partial<Call>) => setCall({ ...call, ...part });
  const ready = readyKits(view);
  const words = asked.answer && asked.error === undefined ? sayKits(asked.answer, ready) : undefined;
  const may = mayWrite(view.me.role, "casualty-opened");
  return (
    <Page title="Before launch: how many kits?" back={{ to: "/casualty", label: "Casualty" }}>
      <div className="casualty launch">
        <BoatPart call={call} onChange={change} />
        <div className="launch-found">
          {words && <TakeLine words={words} />}
          <KitsAnswer asked={asked} words={words} own={own} ready={ready} />
        </div>
        <MorePart call={call} onChange={change} />
        {may && call.kind !== undefined && call.length !== undefined && <OpenSheet call={call} />}
        {!may && <Notice title="Your role reads sheets and does not open them." />}
      </div>
    </Page>
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
      <SizePicks
        label="How long?"
        picks={lengthPicks(units)}
        si={call.length}
        onPick={(length) => onChange({ length })}
      />
      <SizePicks
        label="How far away?"
        picks={DISTANCES}
        si={call.distance}
        onPick={(distance) => onChange({ distance })}
      />
      <details className="casualty-more">
        <summary>Another length or distance</summary>
        <TypedSize size="length" label="Length" unit={boatUnit(units)} onRead={(length) => onChange({ length })} />
        <TypedSize size="distance" label="Distance" unit="nmi" onRead={(distance) => onChange({ distance })} />
      </details>
    </Section>
  );
}

const TOLD: readonly { readonly kind: SizeKind; readonly label: string }[] = [
  { kind: "hole", label: "Hole, across" },
  { kind: "holeDepth", label: "Hole, below the waterline" },
  { kind: "water", label: "Water inside" },
  { kind: "rising", label: "Rising, at one mark" },
];

function MorePart({ call, onChange }: PartProps) {
  const { units } = usePreferences();
  return (
    <Section id={TOLD_PLACE} title="What is known" beside={<span className="quiet">leave out what nobody knows</span>}>
      {TOLD.map(({ kind, label }) => (
        <SizePicks
          key={kind}
          label={label}
          picks={sizePicks(kind, units)}
          si={call[kind]}
          onPick={(si) => onChange({ [kind]: si })}
        />
      ))}
    </Section>
  );
}

interface SizePicksProps {
  readonly label: string;
  readonly picks: readonly Pick[];
  readonly si: number | undefined;
  readonly onPick: (si: number | undefined) => void;
}

/** Nothing told is the same as "not known", where that is one of the answers. */
function SizePicks({ label, picks, si, onPick }: SizePicksProps) {
  const picked = picks.find((pick) => pick.si === si)?.id;
  const choose = (id: string) => onPick(picks.find((pick) => pick.id === id)?.si);
  return <PickRow label={label} options={picks} picked={picked} onPick={choose} />;
}

interface TypedSizeProps {
  readonly size: TypedSizeKind;
  readonly label: string;
  readonly unit: string;
  readonly onRead: (si: number | undefined) => void;
}

/** A size that cannot be is not told on. */
function TypedSize({ size, label, unit, onRead }: TypedSizeProps) {
  const faultOf = (si: number) => sizeFault(size, si);
  const read = (si: number | undefined) => onRead(si !== undefined && faultOf(si) === undefined ? si : undefined);
  return <SizeField label={label} unit={unit} faultOf={faultOf} onRead={read} />;
}
