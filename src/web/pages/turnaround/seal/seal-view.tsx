import { useState } from "react";
import { sealingRefusals } from "#readiness";
import { useWords } from "#web/language/index.ts";
import { Button, GloveRow, Notice, Section } from "#web/parts/index.ts";
import type { KitActs } from "#web/act/acts.ts";
import { openAsk, type Line } from "#web/act/lines.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { GroundedForm } from "../answer/grounded-form.tsx";
import { RefusalList } from "../runner/refusal-list.tsx";
import { SealForm } from "./seal-form.tsx";
import { SecondPanel } from "../second/second-panel.tsx";
import { useSecondsAtSealing } from "../second/use-seconds.ts";
import { StepHeading } from "../runner/step-heading.tsx";
import type { Place } from "../runner/use-place.ts";

interface SealViewProps {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly lines: readonly Line[];
  readonly place: Place;
}

/** The end of a turnaround: what still stands in the way, then the new seal, or closed as grounded. */
export function SealView({ open, acts, lines, place }: SealViewProps) {
  const { kit, turnaround, pattern, view } = open;
  const words = useWords("turnaroundEnd");
  const isAsked = place.shown.kind === "grounded";
  const seconds = useSecondsAtSealing(open);
  const refusals = sealingRefusals({ kit, turnaround, pattern, allKits: view.kits });
  return (
    <main className="runner-main">
      <StepHeading>{words.closeAndSeal({ kit: kit.name })}</StepHeading>
      {isAsked && <AsGrounded open={open} acts={acts} refusals={refusals} isAsked />}
      <LeftOut lines={lines} />
      {refusals.length > 0 ? (
        <RefusalList open={open} refusals={refusals} place={place} />
      ) : (
        <Section title={words.newSeal()}>
          <SecondPanel open={open} acts={acts} seconds={seconds} />
          <SealForm open={open} acts={acts} />
        </Section>
      )}
      {!isAsked && <AsGrounded open={open} acts={acts} refusals={refusals} isAsked={false} />}
    </main>
  );
}

interface AsGroundedProps extends Pick<SealViewProps, "open" | "acts"> {
  readonly refusals: ReturnType<typeof sealingRefusals>;
  /** Its form stands open: somebody came here for it. */
  readonly isAsked: boolean;
}

function AsGrounded({ open, acts, refusals, isAsked }: AsGroundedProps) {
  const words = useWords("turnaroundEnd");
  const [isFilling, setFilling] = useState(isAsked);
  return (
    <Section title={isAsked ? words.asGrounded() : words.orAsGrounded()}>
      <p>{words.asGroundedMore()}</p>
      {isFilling ? (
        <GroundedForm open={open} acts={acts} refusals={refusals} onLeave={() => setFilling(false)} />
      ) : (
        <GloveRow>
          <Button tone="grave" wide onPress={() => setFilling(true)}>
            {words.closeAsGrounded()}
          </Button>
        </GloveRow>
      )}
    </Section>
  );
}

/** Optional lines nobody answered; said, never left out in silence. */
function LeftOut({ lines }: { readonly lines: readonly Line[] }) {
  const words = useWords("turnaroundEnd");
  const left = lines.filter((line) => line.step.optional && openAsk(line));
  if (left.length === 0) return null;
  return (
    <Notice title={words.leftOut()}>
      <p>{words.leftOutLines({ lines: left.map(({ step }) => step.line).join(", ") })}</p>
    </Notice>
  );
}
