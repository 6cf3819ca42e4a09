import { useMemo, useState } from "react";
import { useParams } from "wouter";
import { useStation } from "../../device/index.ts";
import { EmptyState, ErrorBox, Page, Section } from "../../parts/index.ts";
import { Cautions } from "../../parts/caution-box.tsx";
import { usePreferences } from "../../theme/index.ts";
import { findKit, type KitAtHand } from "../../kit-view/at-hand.ts";
import { NoSuchKit } from "../../kit-view/no-such-kit.tsx";
import { BindingPanel, CurvePanel, LiftTable } from "./answer-panels.tsx";
import { AssumptionList } from "../../rig/assumption-list.tsx";
import { sayAnswer, type Answered, type Setting } from "../../rig/delivery-words.ts";
import { FUEL_CAUTIONS, FuelPanel } from "./fuel-panel.tsx";
import { PrimePanel } from "./prime-panel.tsx";
import { HeightSteppers, RestOfRig } from "./rig-form.tsx";
import { askRig, firstSetting, pumpPattern, type PumpPattern, type RigSetting } from "../../rig/rig-setting.ts";
import "../../kit-view/extras.css";
import "./delivery.css";

/** What one kit really moves at this lift through these hoses, how it primes, and how long its fuel lasts. */
export default function DeliveryPage() {
  const { id = "" } = useParams<{ readonly id: string }>();
  const at = findKit(useStation(), id);
  if (!at) return <NoSuchKit />;
  const pattern = pumpPattern(at.pattern);
  return (
    <Page title={`Delivery of ${at.kit.name}`} back={{ to: `/kit/${at.kit.id}`, label: at.kit.name }}>
      {pattern ? (
        <Delivery key={at.kit.id} at={at} pattern={pattern} />
      ) : (
        <EmptyState title="The pattern does not say what this pump does">
          <p>Add the pump's points and hoses to the pattern, and this page has an answer.</p>
        </EmptyState>
      )}
    </Page>
  );
}

function Delivery({ at, pattern }: { readonly at: KitAtHand; readonly pattern: PumpPattern }) {
  const { units } = usePreferences();
  const [setting, setSetting] = useState(() => firstSetting(pattern, units));
  const answer = useMemo(() => askRig(pattern, setting, units), [pattern, setting, units]);
  const about: Setting = { pattern, setting, units };
  const change = (part: Partial<RigSetting>) => setSetting((before) => ({ ...before, ...part }));
  return (
    <div className="delivery">
      <div className="delivery-set">
        <output className="delivery-answer">
          {answer.kind === "answered" ? sayAnswer(answer, about) : "No answer for this rig."}
        </output>
        {answer.kind === "refused" && <ErrorBox error={answer.error} title="This rig cannot be computed" />}
        <div className="delivery-rig">
          <div className="delivery-steppers">
            <HeightSteppers about={about} onChange={change} />
            <RestOfRig about={about} onChange={change} />
          </div>
          {answer.kind === "answered" && <CurvePanel answer={answer} about={about} />}
        </div>
      </div>
      {answer.kind === "answered" && <Findings answer={answer} about={about} />}
      <PrimePanel about={about} />
      <FuelPanel at={at} about={about} />
    </div>
  );
}

function Findings({ answer, about }: { readonly answer: Answered; readonly about: Setting }) {
  const { assumptions, cautions } = answer.delivery;
  return (
    <>
      <BindingPanel answer={answer} about={about} />
      <Section title="Before it runs">
        <div className="delivery-cautions">
          <Cautions ids={cautions.filter((id) => !FUEL_CAUTIONS.includes(id))} />
        </div>
      </Section>
      <Section title="What was taken for granted">
        <AssumptionList assumptions={assumptions} />
      </Section>
      <LiftTable answer={answer} about={about} />
    </>
  );
}
