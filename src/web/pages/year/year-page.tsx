import { planOpenings, mayWrite, type PlanInput } from "#station";
import { addDays, daysBetween, formatDate } from "#base";
import { familyOf, newestOfEach } from "#kit";
import { useState } from "react";
import { uuidv7 } from "uuidv7";
import { useCarryOut, useStation, type StationView } from "#web/device/index.ts";
import {
  Button,
  ButtonLink,
  ButtonRow,
  ErrorBox,
  Notice,
  Page,
  sayCount,
  Section,
  useDoing,
} from "#web/parts/index.ts";
import { acceptedOpenings, isChanged } from "./accepting.ts";
import { AcceptedPlan } from "./accepted-plan.tsx";
import { sayBecause } from "./say-because.ts";
import { PlanFigures } from "./plan-figures.tsx";
import { PlanLines } from "./plan-lines.tsx";
import { usePlan, type Planned } from "./use-plan.ts";

const WEEKS = [52, 78] as const;

/** The year planned: what stands accepted, a new plan beside doing each thing on its last day, and its lines to move. */
export default function YearPage() {
  const view = useStation();
  const { planned, plan, isBusy, error } = usePlan();
  const [weeks, setWeeks] = useState<number>(52);
  const fixed = planned?.input.fixed ?? fixedOf(view);
  return (
    <Page title="The year planned" back={{ to: "/work", label: "Work due" }}>
      <AcceptedPlan />
      <HowOften />
      {mayWrite(view.me.role, "openings-planned") && (
        <Section title="Plan">
          <ButtonRow>
            {WEEKS.map((count) => (
              <Button key={count} isPressed={weeks === count} onPress={() => setWeeks(count)}>
                {count} weeks
              </Button>
            ))}
            <Button isBusy={isBusy} onPress={() => void plan(weeks, fixed)}>
              {planned === undefined ? "Plan the year" : "Plan again"}
            </Button>
          </ButtonRow>
          <ErrorBox error={error} title="Not planned" />
        </Section>
      )}
      {planned && <Proposed planned={planned} isBusy={isBusy} onFix={(next) => void plan(weeks, next)} />}
    </Page>
  );
}

/** To what the log says of each pattern in use: how often to open it, and what its lines found. */
function HowOften() {
  const { kits, patterns } = useStation();
  const used = newestOfEach([...patterns.values()]).filter(({ id }) =>
    kits.some(({ pattern }) => familyOf(pattern) === id),
  );
  if (used.length === 0) return null;
  return (
    <Section title="How often to open">
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

/** Weeks that a person chose when the plan was accepted. */
function fixedOf({ kits, today }: StationView): PlanInput["fixed"] {
  return kits.flatMap((kit) =>
    (kit.planned?.openings ?? []).flatMap(({ week, fixed }) => {
      const days = daysBetween(today, week);
      return fixed === true ? [{ kit: kit.id, week: Math.ceil(days / 7) }] : [];
    }),
  );
}

/** Weeks named one by one at most. */
const SHORT_NAMED = 12;

interface ProposedProps {
  readonly planned: Planned;
  readonly isBusy: boolean;
  readonly onFix: (fixed: PlanInput["fixed"]) => void;
}

function Proposed({ planned, isBusy, onFix }: ProposedProps) {
  const { kits, places, people, qualifications } = useStation();
  const { answer, assumed, isSolved, input } = planned;
  return (
    <>
      <PlanFigures planned={planned} />
      {answer.short.length > 0 && (
        <Notice tone="attention" title={`Falls short in ${sayCount(answer.short.length, "week")}`}>
          <ul>
            {answer.short.slice(0, SHORT_NAMED).map(({ place, week, by }) => (
              <li key={`${place} ${week}`}>
                {places.find(({ id }) => id === place)?.name ?? place}, week of {weekOf(input, week)}: {by} short
              </li>
            ))}
            {answer.short.length > SHORT_NAMED && <li>and {answer.short.length - SHORT_NAMED} more</li>}
          </ul>
        </Notice>
      )}
      {answer.because !== undefined && (
        <p>{sayBecause(answer.because, [...kits, ...places, ...people, ...qualifications], input.start)}</p>
      )}
      {!isSolved && <p>This is the quick plan of this device. With a network the station looks for a better one.</p>}
      {assumed.map((text) => (
        <p key={text} className="quiet">
          {text}
        </p>
      ))}
      <Accept planned={planned} />
      <PlanLines planned={planned} isBusy={isBusy} onFix={onFix} />
    </>
  );
}

/** The Monday of a week of the plan, in words. */
function weekOf({ start }: PlanInput, week: number): string {
  return formatDate(addDays(start, 7 * week));
}

function Accept({ planned }: { readonly planned: Planned }) {
  const { kits } = useStation();
  const carryOut = useCarryOut();
  const doing = useDoing();
  const { answer, input } = planned;
  const inPlan = kits.filter(({ id }) => input.kits.some((one) => one.id === id));
  const changes = inPlan
    .map((kit) => ({ kit, openings: acceptedOpenings(kit, answer, input, uuidv7) }))
    .filter(({ kit, openings }) => isChanged(kit, openings));
  const accept = () =>
    doing.run(async () => {
      for (const { kit, openings } of changes) await carryOut((at) => planOpenings(at, kit, openings));
    });
  if (changes.length === 0) return <p>This plan stands accepted.</p>;
  return (
    <>
      <ErrorBox error={doing.error} title="Not all of it was written down" />
      <div>
        <Button kind="primary" isBusy={doing.isBusy} onPress={() => void accept()}>
          Accept this plan
        </Button>
      </div>
    </>
  );
}
