import type { Finding } from "#readiness";
import { judgeDrillFinding, removePlanted } from "#station";
import { useCarryOut } from "#web/device/index.ts";
import { CautionBox } from "#web/parts/caution-box.tsx";
import { Button, ButtonRow, ErrorBox, Section, useDoing } from "#web/parts/index.ts";
import type { DrillAtHand } from "./drill-at-hand.ts";
import { FaultWords, nameOfFault } from "./fault-list.tsx";
import { FoundMark } from "./results.tsx";

/** Found, missed and not planted, with what is left to be done about each. */
export function ComparedPanel({ at }: { readonly at: DrillAtHand }) {
  const { faults } = at.comparison;
  const doing = useDoing();
  const carryOut = useCarryOut();
  const remove = (plant: string, fault: number) =>
    void doing.run(() => carryOut((one) => removePlanted(one, at.kit, { drill: at.drill.id, plant, fault })));
  const left = faults.filter(({ removed }) => !removed).length;
  return (
    <>
      <Section title="What was planted">
        {left > 0 && (
          <CautionBox signal="WARNING" hazard="Planted faults are in this kit">
            <p>A pump with a fault in it fails on the boat that needs it. Take each one out, then name it here.</p>
          </CautionBox>
        )}
        <ol className="drill-faults">
          {faults.map((fault) => (
            <li key={`${fault.plant} ${fault.number}`}>
              <FaultWords pattern={at.pattern} fault={fault} />
              <FoundMark at={at} fault={fault} />
              {fault.removed ? (
                <span>Taken out.</span>
              ) : (
                <Button
                  kind="primary"
                  label={`Taken out: ${nameOfFault(at.pattern, fault)}`}
                  isBusy={doing.isBusy}
                  onPress={() => remove(fault.plant, fault.number)}
                >
                  It is taken out
                </Button>
              )}
            </li>
          ))}
        </ol>
        <ErrorBox error={doing.error} title="Not written down" />
      </Section>
      <NotPlanted at={at} />
    </>
  );
}

function NotPlanted({ at }: { readonly at: DrillAtHand }) {
  const { unjudged, wrong, real } = at.comparison;
  if (unjudged.length + wrong.length + real.length === 0) return null;
  return (
    <Section title="Found, and not planted">
      <ul className="drill-faults">
        {unjudged.map((finding) => (
          <li key={finding.id}>
            <FindingWords at={at} finding={finding} />
            <Judge at={at} finding={finding} />
          </li>
        ))}
        {wrong.map((finding) => (
          <li key={finding.id}>
            <FindingWords at={at} finding={finding} /> Nothing was wrong there.
          </li>
        ))}
        {real.map((finding) => (
          <li key={finding.id}>
            <FindingWords at={at} finding={finding} /> It is real, and is put right like any other.
          </li>
        ))}
      </ul>
    </Section>
  );
}

function FindingWords({ at, finding }: { readonly at: DrillAtHand; readonly finding: Finding }) {
  return (
    <span>
      <strong>{nameOfFault(at.pattern, finding)}</strong>
      {finding.note !== undefined && `. ${finding.note}`}
    </span>
  );
}

/** The second person looks, and says whether it is real. */
function Judge({ at: { kit, drill, view }, finding }: { readonly at: DrillAtHand; readonly finding: Finding }) {
  const doing = useDoing();
  const carryOut = useCarryOut();
  const judge = (real: boolean) =>
    void doing.run(() =>
      carryOut((one) => judgeDrillFinding(one, kit, { drill: drill.id, finding: finding.id, real })),
    );
  if (drill.begun.trainees.includes(view.me.id)) return <span>The second person says whether it is real.</span>;
  return (
    <>
      <ButtonRow>
        <Button isBusy={doing.isBusy} onPress={() => judge(true)}>
          It is real
        </Button>
        <Button isBusy={doing.isBusy} onPress={() => judge(false)}>
          Nothing is wrong there
        </Button>
      </ButtonRow>
      <ErrorBox error={doing.error} title="Not written down" />
    </>
  );
}
