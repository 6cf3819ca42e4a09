import { formatSpan } from "#base";
import type { ToBringOn } from "#readiness";
import { mayWrite, qualificationsOf, sayCounts, sayTies, sayWhere, type QualificationStanding } from "#station";
import { useMemo } from "react";
import { Link } from "wouter";
import { useStation } from "#web/device/index.ts";
import { ButtonLink, ButtonRow, EmptyState, Page, sayDate, Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { usePractising } from "./use-practising.ts";
import type { Words } from "#words";
import { useWords, withParts } from "#web/language/index.ts";

/** Every qualification of the station: who holds it until when, who could be brought on by whom, what was done unseen. */
export default function QualificationsPage() {
  const frame = useWords("frame");
  const words = useWords("qualifications");
  const { today, me } = useStation();
  const practising = usePractising();
  const all = useMemo(() => qualificationsOf(practising, today), [practising, today]);
  const maySet = mayWrite(me.role, "qualification-set");
  return (
    <Page title={words.title()} back={{ to: "/people", label: frame.people() }}>
      <p>{words.what()}</p>
      {maySet && (
        <ButtonRow>
          <ButtonLink to="/qualifications/new">{words.setAnother()}</ButtonLink>
        </ButtonRow>
      )}
      {all.length === 0 && <EmptyState title={words.noneSet()} />}
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
  const words = useWords("qualifications");
  const view = useStation();
  const practice = useWords("practice");
  const { qualification, held, others } = standing;
  return (
    <Section title={qualification.name}>
      <p>
        {words.heldFor({
          ties: sayTies(qualification, view, practice).join(", "),
          span: formatSpan(qualification.every),
        })}{" "}
        {words[SEEN_BY[qualification.seenBy]]()} {words[ALONE[qualification.alone]]()}
      </p>
      {held.length === 0 ? (
        <p>
          <strong>{words.nobodyHolds()}</strong>
        </p>
      ) : (
        <Table
          caption={words.whoHolds({ qualification: qualification.name })}
          isCaptionHidden
          columns={columns(words)}
          rows={held}
          rowKey={({ person }) => person.id}
        />
      )}
      <BringOn others={others} />
      <Unseen standing={standing} />
      {maySet && (
        <ButtonRow>
          <ButtonLink to={`/qualifications/${qualification.id}/setting`}>{words.changeThis()}</ButtonLink>
        </ButtonRow>
      )}
    </Section>
  );
}

const SEEN_BY = {
  holders: "seenByHolders",
  keepers: "seenByKeepers",
} as const;
const ALONE = {
  "with-note": "aloneWithNote",
  never: "aloneNever",
} as const;

type Held = QualificationStanding["held"][number];

const columns = (words: Words["qualifications"]): readonly Column<Held>[] => [
  { key: "who", head: words.holds(), cell: ({ person }) => <Link to={`/people/${person.id}`}>{person.name}</Link> },
  { key: "last", head: words.lastDone(), cell: ({ holding }) => sayDate(holding.last.day) },
  { key: "where", head: words.where(), cell: ({ holding }) => <Where holding={holding} /> },
  { key: "until", head: words.holdsUntil(), cell: ({ holding }) => <strong>{sayDate(holding.until)}</strong> },
];

function Where({ holding }: Pick<Held, "holding">) {
  const words = useWords("qualifications");
  const practice = useWords("practice");
  const view = useStation();
  return words.whereCounts({
    where: sayWhere(holding.last, view, practice),
    counts: sayCounts(holding.last, view, practice),
  });
}

function BringOn({ others }: { readonly others: readonly ToBringOn[] }) {
  const words = useWords("qualifications");
  if (others.length === 0) return null;
  return (
    <ul>
      {others.map(({ person, by }) => (
        <li key={person.id}>
          {withParts(
            (mark) =>
              by.length === 0
                ? words.notHeldNobody(mark)
                : words.notHeldBy({ ...mark, by: by.map(({ name }) => name).join(", ") }),
            { person: <Link to={`/people/${person.id}`}>{person.name}</Link> },
          )}
        </li>
      ))}
    </ul>
  );
}

/** So many are shown. */
const SHOWN = 5;

function Unseen({ standing: { unseen } }: Pick<OneProps, "standing">) {
  const words = useWords("qualifications");
  const practice = useWords("practice");
  const view = useStation();
  if (unseen.length === 0) return null;
  const name = (id: string) => view.people.find((one) => one.id === id)?.name ?? id;
  return (
    <details>
      <summary>{words.unseen({ count: unseen.length })}</summary>
      <ul>
        {unseen.slice(0, SHOWN).map((one) => (
          <li key={`${one.person} ${one.at}`}>
            {words.unseenLine({
              day: sayDate(one.day),
              person: name(one.person),
              where: sayWhere(one, view, practice),
              counts: sayCounts(one, view, practice),
            })}
          </li>
        ))}
      </ul>
    </details>
  );
}
