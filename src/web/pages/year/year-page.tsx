import { fixedWeeks, mayWrite } from "#station";
import { familyOf, newestOfEach } from "#kit";
import { useState } from "react";
import { useStation } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, ButtonLink, ButtonRow, ErrorBox, Page, Section } from "#web/parts/index.ts";
import { AcceptedPlan } from "./accepted-plan.tsx";
import { FixedWeeks } from "./fixed-list.tsx";
import { FlushFirst } from "./flush-first.tsx";
import { Proposed } from "./proposed.tsx";
import { usePlan } from "./use-plan.ts";

const WEEKS = [52, 78] as const;

/** The year planned: what stands accepted, a new plan beside doing each thing on its last day, and its lines to move. */
export default function YearPage() {
  const view = useStation();
  const words = useWords("year");
  const frame = useWords("frame");
  const { planned, tried, plan, isBusy, error } = usePlan();
  const [weeks, setWeeks] = useState<number>(52);
  const fixed = tried ?? fixedWeeks(view, { today: view.today, weeks });
  return (
    <Page title={words.title()} back={{ to: "/work", label: frame.work() }}>
      <FlushFirst />
      <AcceptedPlan />
      <HowOften />
      {mayWrite(view.me.role, "openings-planned") && (
        <Section title={words.plan()}>
          <ButtonRow>
            {WEEKS.map((count) => (
              <Button key={count} isPressed={weeks === count} onPress={() => setWeeks(count)}>
                {words.weeks({ count })}
              </Button>
            ))}
            <Button isBusy={isBusy} onPress={() => void plan(weeks, fixed)}>
              {planned === undefined ? words.planYear() : words.planAgain()}
            </Button>
          </ButtonRow>
          {isBusy && <output>{planned?.from.kind === "asking" ? words.askingStation() : words.planning()}</output>}
          <ErrorBox error={error} title={words.notPlanned()} />
          {error !== undefined && <FixedWeeks fixed={fixed} isBusy={isBusy} onFix={(next) => void plan(weeks, next)} />}
        </Section>
      )}
      {planned && <Proposed planned={planned} isBusy={isBusy} onFix={(next) => void plan(weeks, next)} />}
    </Page>
  );
}

/** To what the log says of each pattern in use: how often to open it, and what its lines found. */
function HowOften() {
  const { kits, patterns } = useStation();
  const words = useWords("year");
  const used = newestOfEach([...patterns.values()]).filter(({ id }) =>
    kits.some(({ pattern }) => familyOf(pattern) === id),
  );
  if (used.length === 0) return null;
  return (
    <Section title={words.howOften()}>
      <ButtonRow>
        {used.map(({ id, name }) => (
          <ButtonLink key={id} to={`/pattern/${id}/interval`}>
            {name}
          </ButtonLink>
        ))}
      </ButtonRow>
    </Section>
  );
}
