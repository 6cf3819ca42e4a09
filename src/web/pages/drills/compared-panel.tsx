import type { Finding } from "#readiness";
import { judgeDrillFinding, removePlanted } from "#station";
import { useCarryOut } from "#web/device/index.ts";
import { CautionBox } from "#web/parts/caution-box.tsx";
import { Button, ButtonRow, ErrorBox, Section, useDoing } from "#web/parts/index.ts";
import type { DrillAtHand } from "./drill-at-hand.ts";
import { FaultWords, nameOfFault } from "./fault-list.tsx";
import { FoundMark } from "./results.tsx";
import { useWords } from "#web/language/index.ts";

/** Found, missed and not planted, with what is left to be done about each. */
export function ComparedPanel({ at }: { readonly at: DrillAtHand }) {
  const drills = useWords("drills");
  const words = useWords("drill");
  const { faults } = at.comparison;
  const doing = useDoing();
  const carryOut = useCarryOut();
  const remove = (plant: string, fault: number) =>
    void doing.run(() => carryOut((one) => removePlanted(one, at.kit, { drill: at.drill.id, plant, fault })));
  const left = faults.filter(({ removed }) => !removed).length;
  return (
    <>
      <Section title={words.whatPlanted()}>
        {left > 0 && (
          <CautionBox signal="WARNING" hazard={words.inKit()}>
            <p>{words.inKitMore()}</p>
          </CautionBox>
        )}
        <ol className="drill-faults">
          {faults.map((fault) => (
            <li key={`${fault.plant} ${fault.number}`}>
              <FaultWords pattern={at.pattern} fault={fault} />
              <FoundMark at={at} fault={fault} />
              {fault.removed ? (
                <span>{words.takenOut()}</span>
              ) : (
                <Button
                  kind="primary"
                  label={words.takenOutNamed({ fault: nameOfFault(at.pattern, fault, drills) })}
                  isBusy={doing.isBusy}
                  onPress={() => remove(fault.plant, fault.number)}
                >
                  {words.isTakenOut()}
                </Button>
              )}
            </li>
          ))}
        </ol>
        <ErrorBox error={doing.error} title={words.notWritten()} />
      </Section>
      <NotPlanted at={at} />
    </>
  );
}

function NotPlanted({ at }: { readonly at: DrillAtHand }) {
  const words = useWords("drill");
  const { unjudged, wrong, real } = at.comparison;
  if (unjudged.length + wrong.length + real.length === 0) return null;
  return (
    <Section title={words.notPlanted()}>
      <ul className="drill-faults">
        {unjudged.map((finding) => (
          <li key={finding.id}>
            <FindingWords at={at} finding={finding} />
            <Judge at={at} finding={finding} />
          </li>
        ))}
        {wrong.map((finding) => (
          <li key={finding.id}>
            <FindingWords at={at} finding={finding} /> {words.nothingWrong()}
          </li>
        ))}
        {real.map((finding) => (
          <li key={finding.id}>
            <FindingWords at={at} finding={finding} /> {words.isRealPutRight()}
          </li>
        ))}
      </ul>
    </Section>
  );
}

function FindingWords({ at, finding }: { readonly at: DrillAtHand; readonly finding: Finding }) {
  const words = useWords("drills");
  return (
    <span>
      <strong>{nameOfFault(at.pattern, finding, words)}</strong>
      {finding.note !== undefined && `. ${finding.note}`}
    </span>
  );
}

/** The second person looks, and says whether it is real. */
function Judge({ at: { kit, drill, view }, finding }: { readonly at: DrillAtHand; readonly finding: Finding }) {
  const words = useWords("drill");
  const doing = useDoing();
  const carryOut = useCarryOut();
  const judge = (real: boolean) =>
    void doing.run(() =>
      carryOut((one) => judgeDrillFinding(one, kit, { drill: drill.id, finding: finding.id, real })),
    );
  if (drill.begun.trainees.includes(view.me.id)) return <span>{words.secondSays()}</span>;
  return (
    <>
      <ButtonRow>
        <Button isBusy={doing.isBusy} onPress={() => judge(true)}>
          {words.isReal()}
        </Button>
        <Button isBusy={doing.isBusy} onPress={() => judge(false)}>
          {words.isNothing()}
        </Button>
      </ButtonRow>
      <ErrorBox error={doing.error} title={words.notWritten()} />
    </>
  );
}
