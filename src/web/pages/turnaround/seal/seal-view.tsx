import { useState } from "react";
import { sealingRefusals } from "#readiness";
import { Button, GloveRow, Section } from "../../../parts/index.ts";
import type { KitActs } from "../../../act/acts.ts";
import type { OpenKit } from "../../../kit-view/at-hand.ts";
import { GroundedForm } from "../answer/grounded-form.tsx";
import { RefusalList } from "../runner/refusal-list.tsx";
import { SealForm } from "./seal-form.tsx";
import { SecondPanel } from "../second/second-panel.tsx";
import { useSeconds } from "../second/use-seconds.ts";
import { StepHeading } from "../runner/step-heading.tsx";
import type { Place } from "../runner/use-place.ts";

interface SealViewProps {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly place: Place;
}

/** The end of a turnaround: what still stands in the way, then the new seal, or closed as grounded. */
export function SealView({ open, acts, place }: SealViewProps) {
  const { kit, turnaround, pattern, view } = open;
  const [grounding, setGrounding] = useState(false);
  const seconds = useSeconds(open);
  const refusals = sealingRefusals({ kit, turnaround, pattern, allKits: view.kits });
  return (
    <main className="runner-main">
      <StepHeading>Close and seal {kit.name}</StepHeading>
      {refusals.length > 0 ? (
        <RefusalList open={open} refusals={refusals} place={place} />
      ) : (
        <Section title="New seal">
          <SecondPanel open={open} acts={acts} wanted={seconds} />
          <SealForm open={open} acts={acts} />
        </Section>
      )}
      <Section title="Or close it as grounded">
        <p>The container is closed and the kit may not go, until another turnaround puts it right.</p>
        {grounding ? (
          <GroundedForm open={open} acts={acts} refusals={refusals} onLeave={() => setGrounding(false)} />
        ) : (
          <GloveRow>
            <Button tone="grave" wide onPress={() => setGrounding(true)}>
              Close as grounded
            </Button>
          </GloveRow>
        )}
      </Section>
    </main>
  );
}
