import { addDays } from "#base";
import type { PlanInput } from "#station";
import { useStation } from "#web/device/index.ts";
import { useWords, withParts } from "#web/language/index.ts";
import { Button, ButtonRow, sayDate, Section } from "#web/parts/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import "#web/kit-view/work.css";
import { moved, roomOf, without } from "./moving.ts";
import type { Planned, PlanAnswer } from "./use-plan.ts";

interface PlanLinesProps {
  readonly planned: Planned;
  readonly isBusy: boolean;
  readonly onFix: (fixed: PlanInput["fixed"]) => void;
}

/** The openings in order of weeks; each is moved by a week, kept where it is, or let go, and the plan goes round it. */
export function PlanLines({ planned, isBusy, onFix }: PlanLinesProps) {
  const { answer } = planned;
  const words = useWords("year");
  return (
    <Section title={words.openingsOfPlan()}>
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
  const words = useWords("year");
  const { input, answer } = planned;
  const { kit, week, renews, by, beside = [], lacking = 0 } = opening;
  const name = view.kits.find(({ id }) => id === kit)?.name ?? kit;
  const others = without(input.fixed, opening);
  const isFixed = others.length < input.fixed.length;
  const { after, before } = roomOf(answer.openings, opening, input.weeks);
  const names = (people: readonly string[]) => people.map((person) => nameOf(view, person)).join(", ");
  const said = { renews: renews.join(", "), people: names(by) };
  const move = (to: number) => onFix(moved(planned, opening, to));
  return (
    <li>
      <p>
        {withParts((part) => (isFixed ? words.openingFixed : words.openingFree)({ ...part, ...said }), {
          week: <strong>{words.weekAndKit({ day: sayDate(addDays(input.start, 7 * week)), kit: name })}</strong>,
        })}
        {beside.length > 0 && ` ${words.beside({ people: names(beside) })}`}
        {lacking > 0 && <strong> {words.handsLacking({ count: lacking })}</strong>}
      </p>
      <ButtonRow>
        <Button
          isDisabled={week - 1 <= after}
          isBusy={isBusy}
          onPress={() => move(week - 1)}
          label={words.kitEarlier({ kit: name })}
        >
          {words.earlier()}
        </Button>
        <Button
          isDisabled={week + 1 >= before}
          isBusy={isBusy}
          onPress={() => move(week + 1)}
          label={words.kitLater({ kit: name })}
        >
          {words.later()}
        </Button>
        <Button
          isBusy={isBusy}
          isPressed={isFixed}
          onPress={() => onFix(isFixed ? others : [...others, { kit, week }])}
          label={(isFixed ? words.kitLetMove : words.kitKeepThere)({ kit: name })}
        >
          {isFixed ? words.letMove() : words.keepThere()}
        </Button>
      </ButtonRow>
    </li>
  );
}
