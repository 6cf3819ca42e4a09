import { addDays, formatDate } from "#base";
import type { PlanInput } from "#station";
import { useStation } from "#web/device/index.ts";
import { Button, ButtonRow, Section } from "#web/parts/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import "#web/kit-view/work.css";
import type { Planned, PlanAnswer } from "./use-plan.ts";

interface PlanLinesProps {
  readonly planned: Planned;
  readonly isBusy: boolean;
  readonly onFix: (fixed: PlanInput["fixed"]) => void;
}

/** The openings in order of weeks; each is moved by a week, kept where it is, or let go, and the plan goes round it. */
export function PlanLines({ planned, isBusy, onFix }: PlanLinesProps) {
  const { answer } = planned;
  return (
    <Section title="Openings of this plan">
      <ul className="work-plan">
        {answer.openings.map((one) => (
          <PlanLine key={`${one.kit} ${one.week}`} opening={one} planned={planned} isBusy={isBusy} onFix={onFix} />
        ))}
      </ul>
    </Section>
  );
}

function PlanLine({
  opening,
  planned,
  isBusy,
  onFix,
}: PlanLinesProps & { readonly opening: PlanAnswer["openings"][number] }) {
  const view = useStation();
  const { input } = planned;
  const { kit, week, renews, by } = opening;
  const name = view.kits.find(({ id }) => id === kit)?.name ?? kit;
  const others = input.fixed.filter((one) => one.kit !== kit || one.week !== week);
  const isFixed = others.length < input.fixed.length;
  const move = (to: number) => onFix([...others, { kit, week: to }]);
  return (
    <li>
      <p>
        <strong>
          Week of {formatDate(addDays(input.start, 7 * week))}: {name}
        </strong>
        {isFixed && " (fixed)"}. {renews.join(", ")}. By {by.map((person) => nameOf(view, person)).join(", ")}.
      </p>
      <ButtonRow>
        <Button
          isDisabled={week === 0}
          isBusy={isBusy}
          onPress={() => move(week - 1)}
          label={`A week earlier: ${name}`}
        >
          Earlier
        </Button>
        <Button
          isDisabled={week + 1 >= input.weeks}
          isBusy={isBusy}
          onPress={() => move(week + 1)}
          label={`A week later: ${name}`}
        >
          Later
        </Button>
        <Button isBusy={isBusy} isPressed={isFixed} onPress={() => (isFixed ? onFix(others) : move(week))}>
          {isFixed ? "Let it move" : "Keep it there"}
        </Button>
      </ButtonRow>
    </li>
  );
}
