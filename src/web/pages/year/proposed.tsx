import { addDays } from "#base";
import { planOpenings, type PlanInput } from "#station";
import type { Words } from "#words";
import { uuidv7 } from "uuidv7";
import { useCarryOut, useStation, type StationView } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, ErrorBox, Notice, sayDate, useDoing } from "#web/parts/index.ts";
import { acceptedOpenings, isChanged } from "./accepting.ts";
import { doubtOf, type Doubt } from "./doubts.ts";
import { PlanFigures } from "./plan-figures.tsx";
import { PlanLines } from "./plan-lines.tsx";
import { sayBecause } from "./say-because.ts";
import type { Planned, PlanFrom } from "./use-plan.ts";

/** Weeks named one by one at most. */
const SHORT_NAMED = 12;

interface ProposedProps {
  readonly planned: Planned;
  readonly isBusy: boolean;
  readonly onFix: (fixed: PlanInput["fixed"]) => void;
}

/** A plan beside doing each thing on its last day: what falls short and why, where it is from, to accept and to move. */
export function Proposed({ planned, isBusy, onFix }: ProposedProps) {
  const { kits, places, people, qualifications } = useStation();
  const words = useWords("year");
  const { answer, assumed, from, input } = planned;
  const whence = sayFrom(from, words);
  return (
    <>
      <PlanFigures planned={planned} />
      <Short planned={planned} />
      {answer.because !== undefined && (
        <p>{sayBecause(answer.because, [...kits, ...places, ...people, ...qualifications], input.start)}</p>
      )}
      {whence !== undefined && <p>{whence}</p>}
      {assumed.map((text) => (
        <p key={text} className="quiet">
          {text}
        </p>
      ))}
      <Accept planned={planned} isPlanning={isBusy} />
      <PlanLines planned={planned} isBusy={isBusy} onFix={onFix} />
    </>
  );
}

function Short({ planned: { answer, input } }: { readonly planned: Planned }) {
  const { places } = useStation();
  const words = useWords("year");
  const more = answer.short.length - SHORT_NAMED;
  if (answer.short.length === 0) return null;
  return (
    <Notice tone="attention" title={words.shortIn({ count: answer.short.length })}>
      <ul>
        {answer.short.slice(0, SHORT_NAMED).map(({ place, week, by }) => (
          <li key={`${place} ${week}`}>
            {words.shortAt({ place: nameIn(places, place), day: weekOf(input, week), count: by })}
          </li>
        ))}
        {more > 0 && <li>{words.andMore({ count: more })}</li>}
      </ul>
    </Notice>
  );
}

function nameIn(places: StationView["places"], place: string): string {
  return places.find(({ id }) => id === place)?.name ?? place;
}

/** The Monday of a week of the plan, in words. */
function weekOf({ start }: PlanInput, week: number): string {
  return sayDate(addDays(start, 7 * week));
}

function sayFrom(from: PlanFrom, words: Words["year"]): string | undefined {
  if (from.kind === "station") return undefined;
  if (from.kind === "asking") return words.quickSoFar();
  if (from.kind === "no-time") return words.quickNoTime();
  return from.kind === "refused" ? words.quickRefused({ because: from.because }) : words.quickPlan();
}

function sayDoubt(doubt: Doubt, { answer }: Planned, words: Words["year"]): string {
  const { naive, openings, short } = answer;
  if (doubt === "opens-nothing") return words.opensNothing();
  if (doubt === "shorter") return words.worseShort({ plan: short.length, lastDay: naive.shortWeeks });
  return words.worseOpenings({ plan: openings.length, lastDay: naive.openings });
}

function Accept({ planned, isPlanning }: { readonly planned: Planned; readonly isPlanning: boolean }) {
  const { kits } = useStation();
  const words = useWords("year");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const { answer, input } = planned;
  const doubt = doubtOf(answer);
  const inPlan = kits.filter(({ id }) => input.kits.some((one) => one.id === id));
  const changes = inPlan
    .map((kit) => ({ kit, openings: acceptedOpenings(kit, answer, input, uuidv7) }))
    .filter(({ kit, openings }) => isChanged(kit, openings));
  const accept = () =>
    doing.run(async () => {
      for (const { kit, openings } of changes) await carryOut((at) => planOpenings(at, kit, openings));
    });
  return (
    <>
      {doubt && <Notice tone="attention" title={sayDoubt(doubt, planned, words)} />}
      <ErrorBox error={doing.error} title={words.notAllWritten()} />
      {changes.length === 0 ? (
        <p>{words.standsAccepted()}</p>
      ) : (
        <div>
          <Button
            {...(doubt === undefined && { kind: "primary" as const })}
            isBusy={doing.isBusy}
            isDisabled={isPlanning}
            onPress={() => void accept()}
          >
            {doubt ? words.acceptAllTheSame() : words.accept()}
          </Button>
          {isPlanning && <p className="quiet">{words.acceptLater()}</p>}
        </div>
      )}
    </>
  );
}
