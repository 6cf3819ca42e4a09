import { formatDate, formatSpan } from "#base";
import type { ToBringOn } from "#readiness";
import { mayWrite, qualificationsOf, sayCounts, sayTies, sayWhere, type QualificationStanding } from "#station";
import { useMemo } from "react";
import { Link } from "wouter";
import { useStation } from "#web/device/index.ts";
import { ButtonLink, ButtonRow, EmptyState, Page, Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { usePractising } from "./use-practising.ts";

/** Every qualification of the station: who holds it until when, who could be brought on by whom, what was done unseen. */
export default function QualificationsPage() {
  const { today, me } = useStation();
  const practising = usePractising();
  const all = useMemo(() => qualificationsOf(practising, today), [practising, today]);
  const maySet = mayWrite(me.role, "qualification-set");
  return (
    <Page title="Qualifications" back={{ to: "/people", label: "People" }}>
      <p>
        What a person may do alone, shown by doing it. Who does not hold one is asked for a second person at the line
        that needs it. A call never waits for one.
      </p>
      {maySet && (
        <ButtonRow>
          <ButtonLink to="/qualifications/new">Set another qualification</ButtonLink>
        </ButtonRow>
      )}
      {all.length === 0 && <EmptyState title="None is set: every line is open to whoever may work on kits" />}
      {all.map((one) => (
        <OneQualification key={one.qualification.id} standing={one} maySet={maySet} />
      ))}
    </Page>
  );
}

interface OneProps {
  readonly standing: QualificationStanding;
  readonly maySet: boolean;
}

function OneQualification({ standing, maySet }: OneProps) {
  const view = useStation();
  const { qualification, held, others } = standing;
  return (
    <Section title={qualification.name}>
      <p>
        For {sayTies(qualification, view).join(", ")}. Held for {formatSpan(qualification.every)} after it was last
        done. {SEEN_BY[qualification.seenBy]} {ALONE[qualification.alone]}
      </p>
      {held.length === 0 ? (
        <p>
          <strong>Nobody holds it.</strong>
        </p>
      ) : (
        <Table
          caption={`Who holds ${qualification.name}`}
          isCaptionHidden
          columns={HOLDERS}
          rows={held}
          rowKey={({ person }) => person.id}
        />
      )}
      <BringOn others={others} />
      <Unseen standing={standing} />
      {maySet && (
        <ButtonRow>
          <ButtonLink to={`/qualifications/${qualification.id}/setting`}>Change this qualification</ButtonLink>
        </ButtonRow>
      )}
    </Section>
  );
}

const SEEN_BY = {
  holders: "Who holds it may see it done.",
  keepers: "Who holds it, or a keeper, may see it done.",
} as const;
const ALONE = {
  "with-note": "Where nobody can come, a note is enough.",
  never: "Nobody goes on alone while somebody who may see it is at the station.",
} as const;

type Held = QualificationStanding["held"][number];

const HOLDERS: readonly Column<Held>[] = [
  { key: "who", head: "Holds it", cell: ({ person }) => <Link to={`/people/${person.id}`}>{person.name}</Link> },
  { key: "last", head: "Last done", cell: ({ holding }) => formatDate(holding.last.day) },
  { key: "where", head: "Where", cell: ({ holding }) => <Where holding={holding} /> },
  { key: "until", head: "Holds it until", cell: ({ holding }) => <strong>{formatDate(holding.until)}</strong> },
];

function Where({ holding }: Pick<Held, "holding">) {
  const view = useStation();
  return (
    <>
      {sayWhere(holding.last, view)}, {sayCounts(holding.last, view)}
    </>
  );
}

function BringOn({ others }: { readonly others: readonly ToBringOn[] }) {
  if (others.length === 0) return null;
  return (
    <ul>
      {others.map(({ person, by }) => (
        <li key={person.id}>
          <Link to={`/people/${person.id}`}>{person.name}</Link> does not hold it:{" "}
          {by.length === 0
            ? "nobody may see it done, so a note is enough until a keeper tells of a course."
            : `could be brought on by ${by.map(({ name }) => name).join(", ")}.`}
        </li>
      ))}
    </ul>
  );
}

/** So many are shown. */
const SHOWN = 5;

function Unseen({ standing: { unseen } }: Pick<OneProps, "standing">) {
  const view = useStation();
  if (unseen.length === 0) return null;
  const name = (id: string) => view.people.find((one) => one.id === id)?.name ?? id;
  return (
    <details>
      <summary>Done by who did not hold it: {unseen.length}</summary>
      <ul>
        {unseen.slice(0, SHOWN).map((one) => (
          <li key={`${one.person} ${one.at}`}>
            {formatDate(one.day)}, {name(one.person)}: {sayWhere(one, view)}, {sayCounts(one, view)}.
          </li>
        ))}
      </ul>
    </details>
  );
}
