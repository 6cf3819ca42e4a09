import { useReady, useWords } from "#web/language/index.ts";
import { useMemo, useState } from "react";
import { useParams } from "wouter";
import { useStation } from "#web/device/index.ts";
import { EmptyState, ErrorBox, MoreOnPhone, Page, Section, useIsPhone } from "#web/parts/index.ts";
import { ShortCautions } from "#web/parts/caution-box.tsx";
import { usePreferences } from "#web/theme/index.ts";
import { findKit, type KitAtHand } from "#web/kit-view/at-hand.ts";
import { NoSuchKit } from "#web/kit-view/no-such-kit.tsx";
import { BindingPanel, CurvePanel, LiftTable } from "./answer-panels.tsx";
import { AssumptionList } from "#web/rig/assumption-list.tsx";
import { sayAnswer, type Answered, type Setting } from "#web/rig/delivery-words.ts";
import { fuelCautions, FuelPanel } from "./fuel-panel.tsx";
import { PrimePanel } from "./prime-panel.tsx";
import { HeightSteppers, RestOfRig } from "./rig-form.tsx";
import { askRig, firstSetting, pumpPattern, type PumpPattern, type RigSetting } from "#web/rig/rig-setting.ts";
import "#web/kit-view/extras.css";
import "./delivery.css";

/** What one kit really moves at this lift through these hoses, how it primes, and how long its fuel lasts. */
export default function DeliveryPage() {
  useReady("delivery", "drawing", "rig", "prime");
  const words = useWords("delivery");
  const { id = "" } = useParams<{ readonly id: string }>();
  const at = findKit(useStation(), id);
  if (!at) return <NoSuchKit />;
  const pattern = pumpPattern(at.pattern);
  return (
    <Page title={words.title({ kit: at.kit.name })} back={{ to: `/kit/${at.kit.id}`, label: at.kit.name }}>
      {pattern ? (
        <Delivery key={at.kit.id} at={at} pattern={pattern} />
      ) : (
        <EmptyState title={words.notSaid()}>
          <p>{words.notSaidMore()}</p>
        </EmptyState>
      )}
    </Page>
  );
}

function Delivery({ at, pattern }: { readonly at: KitAtHand; readonly pattern: PumpPattern }) {
  const words = useWords("delivery");
  const rig = useWords("rig");
  const { units } = usePreferences();
  const isPhone = useIsPhone();
  const [setting, setSetting] = useState(() => firstSetting(pattern, units));
  const answer = useMemo(() => askRig(pattern, setting, units), [pattern, setting, units]);
  const about: Setting = { pattern, setting, units };
  const change = (part: Partial<RigSetting>) => setSetting((before) => ({ ...before, ...part }));
  return (
    <div className="delivery">
      <div className="delivery-set">
        <output className="delivery-answer">
          {answer.kind === "answered" ? sayAnswer(answer, about, rig) : words.noAnswer()}
        </output>
        {answer.kind === "refused" && <ErrorBox error={answer.error} title={words.notComputed()} />}
        <div className="delivery-rig">
          <div className="delivery-steppers">
            <HeightSteppers about={about} onChange={change} />
            <RestOfRig about={about} onChange={change} />
          </div>
          {answer.kind === "answered" && !isPhone && <CurvePanel answer={answer} about={about} />}
        </div>
      </div>
      {answer.kind === "answered" && <Findings answer={answer} about={about} />}
      <PrimePanel about={about} />
      <FuelPanel at={at} about={about} />
    </div>
  );
}

function Findings({ answer, about }: { readonly answer: Answered; readonly about: Setting }) {
  const words = useWords("delivery");
  const { assumptions, cautions } = answer.delivery;
  const isPhone = useIsPhone();
  return (
    <>
      <Section title={words.beforeRun()}>
        <div className="delivery-cautions">
          <ShortCautions ids={cautions.filter((id) => !fuelCautions(about.pattern).includes(id))} />
        </div>
      </Section>
      <MoreOnPhone title={words.moreFolded()}>
        {isPhone && <CurvePanel answer={answer} about={about} />}
        <BindingPanel answer={answer} about={about} />
        <Section title={words.granted()}>
          <AssumptionList assumptions={assumptions} />
        </Section>
        <LiftTable answer={answer} about={about} />
      </MoreOnPhone>
    </>
  );
}
