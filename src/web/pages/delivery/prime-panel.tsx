import { useState } from "react";
import { ErrorBox, MoreOnPhone, Section } from "#web/parts/index.ts";
import { ShortCautions } from "#web/parts/caution-box.tsx";
import { QuantityField } from "#web/parts/fields/quantity-field.tsx";
import { AssumptionList } from "#web/rig/assumption-list.tsx";
import { isTooShort, type Setting } from "#web/rig/delivery-words.ts";
import { PrimeReadingNotice } from "#web/rig/prime-reading.tsx";
import { askPrime, readPrime, sayGreatest, sayPrime } from "#web/rig/prime-words.ts";
import { surroundingsOf } from "#web/rig/rig-setting.ts";

/** How the kit primes at this lift, and what a slow prime says. */
export function PrimePanel({ about }: { readonly about: Setting }) {
  const { pattern, setting, units } = about;
  const [typed, setTyped] = useState("");
  const [observed, setObserved] = useState<number>();
  if (isTooShort(about)) return null;
  const answer = askPrime(pattern, {
    lift: setting.lift,
    hoseLength: setting.suctionLength,
    ...(observed !== undefined && { observed }),
    surroundings: surroundingsOf(setting),
  });
  if (!answer) return null;
  if ("error" in answer) return <ErrorBox error={answer.error} title="The prime cannot be computed" />;
  const reading = readPrime(answer, units);
  return (
    <Section title="Priming">
      <p className="delivery-line">{sayPrime(answer, setting.lift, units)}</p>
      <ShortCautions ids={["never-run-dry"]} />
      <MoreOnPhone title="How high it primes, and what a slow prime says">
        <p>{sayGreatest(answer, pattern.hydraulics.pump.greatestLift, setting.lift, units)}</p>
        <QuantityField
          label="How long it really took"
          hint="From the first stroke to water. It says whether air leaks in, and how much."
          dimension="time"
          unit="s"
          value={typed}
          onChange={(text, read) => (setTyped(text), setObserved(read?.si))}
        />
        {reading && <PrimeReadingNotice reading={reading} />}
        <details className="extras">
          <summary>What was taken for granted</summary>
          <AssumptionList assumptions={answer.assumptions} />
        </details>
      </MoreOnPhone>
    </Section>
  );
}
