import type { Visit } from "#readiness";
import { endVisit } from "#station";
import { useState } from "react";
import { useCarryOut } from "#web/device/index.ts";
import { Button, ErrorBox, Section, TextField, useDoing } from "#web/parts/index.ts";
import { useWords } from "#web/language/index.ts";

interface EndProps {
  readonly visit: Visit;
  readonly left: number;
}

/** Ends the visit: from then on what the keeper wrote is shown, and nothing more is looked at blind. */
export function EndPanel({ visit, left }: EndProps) {
  const words = useWords("visit");
  const { error, isBusy, run } = useDoing();
  const carryOut = useCarryOut();
  const [reason, setReason] = useState("");
  const why = reason.trim();
  const end = () => run(() => carryOut((one) => endVisit(one, visit, why === "" ? {} : { reason: why })));
  return (
    <Section title={words.end()}>
      <p>
        {left === 0 ? words.allDone() : words.leftLines({ count: left })} {words.endMore()}
      </p>
      {left > 0 && <TextField label={words.whyLeft()} value={reason} onChange={setReason} limit={1000} />}
      <ErrorBox error={error} title={words.notEnded()} />
      <Button
        {...(left === 0 && { kind: "primary" as const })}
        isDisabled={left > 0 && why === ""}
        isBusy={isBusy}
        onPress={() => void end()}
      >
        {words.endAndCompare()}
      </Button>
    </Section>
  );
}
