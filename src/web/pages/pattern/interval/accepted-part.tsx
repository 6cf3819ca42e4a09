import type { Pattern } from "#kit";
import type { Entry } from "#log";
import type { Bodies } from "#readiness";
import { mayWrite, withdrawOpenings } from "#station";
import { useSaving } from "#web/act/use-saving.ts";
import { useCarryOut, useStation, type StationView } from "#web/device/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { Button, ErrorBox, Section, Timestamp } from "#web/parts/index.ts";
import { sayEvery } from "./interval-words.ts";
import { useWords, withParts } from "#web/language/index.ts";

type Accepted = Entry<string, Bodies["opening-interval-set"]>;

/** What was accepted for the plan, by whom and when; a keeper may go back to the manual. */
export function AcceptedPart({ pattern }: { readonly pattern: Pattern }) {
  const words = useWords("patternInterval");
  const view = useStation();
  const carryOut = useCarryOut();
  const saving = useSaving();
  const every = view.policy.openings?.[pattern.id];
  const line = lastLine(view, pattern.id);
  if (every === undefined || !line) return null;
  return (
    <Section title={words.accepted()}>
      <p>
        {withParts(
          ({ day }) => words.acceptedMore({ every: sayEvery(every, words), who: nameOf(view, line.by), day }),
          { day: <Timestamp at={line.at} as="day" /> },
        )}
      </p>
      <ErrorBox error={saving.error} title={words.notWritten()} />
      {mayWrite(view.me.role, "opening-interval-set") && (
        <div>
          <Button onPress={() => void saving.save(() => carryOut((doing) => withdrawOpenings(doing, pattern.id)))}>
            {words.backToManual()}
          </Button>
        </div>
      )}
    </Section>
  );
}

function lastLine(view: StationView, pattern: string): Accepted | undefined {
  const lines = view.entriesOf("station").filter(({ kind }) => kind === "opening-interval-set") as readonly Accepted[];
  return lines.findLast(({ body }) => body.pattern === pattern);
}
