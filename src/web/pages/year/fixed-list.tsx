import { addDays } from "#base";
import { firstMonday, type PlanInput } from "#station";
import { useStation } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, sayDate } from "#web/parts/index.ts";
import { without } from "./moving.ts";

interface FixedWeeksProps {
  readonly fixed: PlanInput["fixed"];
  readonly isBusy: boolean;
  readonly onFix: (fixed: PlanInput["fixed"]) => void;
}

/** What no plan could go round, kit by kit, each to be let go. */
export function FixedWeeks({ fixed, isBusy, onFix }: FixedWeeksProps) {
  const { kits, today } = useStation();
  const words = useWords("year");
  if (fixed.length === 0) return null;
  const start = firstMonday(today);
  return (
    <>
      <p>{words.fixedNow()}</p>
      <ul className="work-plan">
        {fixed.map((one) => {
          const kit = kits.find(({ id }) => id === one.kit)?.name ?? one.kit;
          return (
            <li key={`${one.kit} ${one.week}`}>
              {words.weekAndKit({ day: sayDate(addDays(start, 7 * one.week)), kit })}{" "}
              <Button isBusy={isBusy} onPress={() => onFix(without(fixed, one))} label={words.kitLetMove({ kit })}>
                {words.letMove()}
              </Button>
            </li>
          );
        })}
      </ul>
    </>
  );
}
