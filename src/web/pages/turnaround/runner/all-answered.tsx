import { Button, Notice } from "../../../parts/index.ts";
import { openAsk, type Line } from "../../../act/lines.ts";
import { StepHeading } from "./step-heading.tsx";
import type { Place } from "./use-place.ts";

/** Nothing is left to answer: the way to the sealing, and what optional lines were left out. */
export function AllAnswered({ lines, place }: { readonly lines: readonly Line[]; readonly place: Place }) {
  const left = lines.filter((line) => openAsk(line));
  return (
    <main className="runner-main">
      <StepHeading>Every line is answered</StepHeading>
      {left.length > 0 && (
        <Notice title="Left out, as they may be">
          <p>Lines {left.map((line) => line.step.line).join(", ")}</p>
        </Notice>
      )}
      <Button kind="primary" wide onPress={() => place.show("seal")}>
        Go on to close and seal
      </Button>
    </main>
  );
}
