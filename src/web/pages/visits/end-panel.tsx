import type { Visit } from "#readiness";
import { endVisit } from "#station";
import { useState } from "react";
import { useCarryOut } from "#web/device/index.ts";
import { Button, ErrorBox, Section, TextField, sayCount, useDoing } from "#web/parts/index.ts";

interface EndProps {
  readonly visit: Visit;
  readonly left: number;
}

/** Ends the visit: from then on what the keeper wrote is shown, and nothing more is looked at blind. */
export function EndPanel({ visit, left }: EndProps) {
  const { error, isBusy, run } = useDoing();
  const carryOut = useCarryOut();
  const [reason, setReason] = useState("");
  const why = reason.trim();
  const end = () => run(() => carryOut((one) => endVisit(one, visit, why === "" ? {} : { reason: why })));
  return (
    <Section title="End the visit">
      <p>
        {left === 0
          ? "Every line has been looked at."
          : `${sayCount(left, "line")} of this visit not looked at yet: say why they are left out, or go on.`}{" "}
        Once it has ended what the keeper wrote is shown, and no line is looked at again.
      </p>
      {left > 0 && <TextField label="Why lines are left out" value={reason} onChange={setReason} limit={1000} />}
      <ErrorBox error={error} title="Not ended" />
      <Button
        {...(left === 0 && { kind: "primary" as const })}
        isDisabled={left > 0 && why === ""}
        isBusy={isBusy}
        onPress={() => void end()}
      >
        End the visit and compare
      </Button>
    </Section>
  );
}
