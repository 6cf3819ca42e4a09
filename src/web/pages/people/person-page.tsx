import { formatDate } from "#base";
import type { JudgedDoing, Person } from "#readiness";
import { mayWrite, sayCounts, sayWhere, trainingOf, type TrainingLine } from "#station";
import { useMemo } from "react";
import { useParams } from "wouter";
import { useStation } from "#web/device/index.ts";
import { ButtonRow, EmptyState, Page, ROLE_WORDS, Section } from "#web/parts/index.ts";
import { PaperLink } from "#web/parts/paper-link.tsx";
import { Table, type Column } from "#web/parts/table.tsx";
import { StrikeTold } from "./strike-told.tsx";
import { TellPractice } from "./tell-practice.tsx";
import { usePractising } from "./use-practising.ts";

/** So many of the things done are shown; the paper has all. */
const SHOWN = 30;

/** One person: what they hold and until when, who could bring them on, and what they did. */
export default function PersonPage() {
  const { person: id = "" } = useParams<{ readonly person: string }>();
  const { people } = useStation();
  const person = people.find((one) => one.id === id);
  const back = { to: "/people", label: "People" };
  if (!person) {
    return (
      <Page title="No such person" back={back}>
        <EmptyState title="Nobody of this station has this address" />
      </Page>
    );
  }
  return (
    <Page title={person.name} back={back}>
      <p>{ROLE_WORDS[person.role]}</p>
      <TrainingRecord person={person} />
    </Page>
  );
}

function TrainingRecord({ person }: { readonly person: Person }) {
  const { today, me } = useStation();
  const practising = usePractising();
  const { lines, doings } = useMemo(() => trainingOf(practising, person.id, today), [practising, person.id, today]);
  return (
    <>
      <Section title="Training record">
        {lines.length === 0 ? (
          <EmptyState title="The station has set no qualification" />
        ) : (
          <Table
            caption={`What ${person.name} holds`}
            isCaptionHidden
            columns={LINES}
            rows={lines}
            rowKey={({ qualification }) => qualification.id}
          />
        )}
        <ButtonRow>
          <PaperLink href={`/api/paper/training/${person.id}.pdf`} name={`training record of ${person.name}`}>
            Print the training record
          </PaperLink>
        </ButtonRow>
      </Section>
      {mayWrite(me.role, "practice-told") && lines.length > 0 && <TellPractice person={person} />}
      <Done doings={doings} lines={lines} />
    </>
  );
}

const LINES: readonly Column<TrainingLine>[] = [
  { key: "name", head: "Qualification", cell: ({ qualification }) => qualification.name },
  { key: "until", head: "Holds it until", cell: (line) => <Until line={line} /> },
  {
    key: "last",
    head: "Last counted",
    cell: ({ holding }) => (holding ? formatDate(holding.last.day) : "nothing yet"),
  },
  { key: "by", head: "May be seen doing it by", cell: ({ by }) => by.map(({ name }) => name).join(", ") || "nobody" },
];

function Until({ line: { holding, isHeld } }: { readonly line: TrainingLine }) {
  if (!holding) return <>never held</>;
  return isHeld ? <strong>{formatDate(holding.until)}</strong> : <>lapsed on {formatDate(holding.until)}</>;
}

function Done({ doings, lines }: { readonly doings: readonly JudgedDoing[]; readonly lines: readonly TrainingLine[] }) {
  const view = useStation();
  if (doings.length === 0) return null;
  const mayStrike = mayWrite(view.me.role, "practice-told");
  const names = new Map(lines.map(({ qualification: { id, name } }) => [id, name]));
  const say = (one: (typeof doings)[number]) =>
    `${formatDate(one.day)}: ${names.get(one.qualification)}. ${sayWhere(one, view)}, ${sayCounts(one, view)}.`;
  return (
    <Section title="Done">
      {doings.length > SHOWN && (
        <p className="quiet">
          The newest {SHOWN} of {doings.length}; the paper has all.
        </p>
      )}
      <ul>
        {doings.slice(0, SHOWN).map((one) => (
          <li key={`${one.qualification} ${one.at}`}>
            {say(one)}{" "}
            {mayStrike && one.in.kind === "told" && (
              <StrikeTold person={one.person} entry={one.in.entry} told={say(one)} />
            )}
          </li>
        ))}
      </ul>
    </Section>
  );
}
