import type { Words } from "#words";
import type { JudgedDoing, Person } from "#readiness";
import { mayWrite, sayCounts, sayWhere, trainingOf, type TrainingLine } from "#station";
import { useMemo } from "react";
import { useParams } from "wouter";
import { useStation } from "#web/device/index.ts";
import { ButtonRow, EmptyState, Page, sayDate, Section } from "#web/parts/index.ts";
import { PaperLink } from "#web/parts/paper-link.tsx";
import { Table, type Column } from "#web/parts/table.tsx";
import { StrikeTold } from "./strike-told.tsx";
import { TellPractice } from "./tell-practice.tsx";
import { usePractising } from "./use-practising.ts";
import { useWords } from "#web/language/index.ts";

/** So many of the things done are shown; the paper has all. */
const SHOWN = 30;

/** One person: what they hold and until when, who could bring them on, and what they did. */
export default function PersonPage() {
  const frame = useWords("frame");
  const words = useWords("people");
  const { person: id = "" } = useParams<{ readonly person: string }>();
  const { people } = useStation();
  const person = people.find((one) => one.id === id);
  const back = { to: "/people", label: frame.people() };
  if (!person) {
    return (
      <Page title={words.noPerson()} back={back}>
        <EmptyState title={words.noPersonNews()} />
      </Page>
    );
  }
  return (
    <Page title={person.name} back={back}>
      <p>{words[person.role]()}</p>
      <TrainingRecord person={person} />
    </Page>
  );
}

function TrainingRecord({ person }: { readonly person: Person }) {
  const words = useWords("people");
  const { today, me } = useStation();
  const practising = usePractising();
  const { lines, doings } = useMemo(() => trainingOf(practising, person.id, today), [practising, person.id, today]);
  return (
    <>
      <Section title={words.record()}>
        {lines.length === 0 ? (
          <EmptyState title={words.noneSet()} />
        ) : (
          <Table
            caption={words.whatHolds({ name: person.name })}
            isCaptionHidden
            columns={columns(words)}
            rows={lines}
            rowKey={({ qualification }) => qualification.id}
          />
        )}
        <ButtonRow>
          <PaperLink href={`/api/paper/training/${person.id}.pdf`} name={words.recordFile({ name: person.name })}>
            {words.printRecord()}
          </PaperLink>
        </ButtonRow>
      </Section>
      {mayWrite(me.role, "practice-told") && lines.length > 0 && <TellPractice person={person} />}
      <Done doings={doings} lines={lines} />
    </>
  );
}

const columns = (words: Words["people"]): readonly Column<TrainingLine>[] => [
  { key: "name", head: words.qualification(), cell: ({ qualification }) => qualification.name },
  { key: "until", head: words.holdsUntil(), cell: (line) => <Until line={line} /> },
  {
    key: "last",
    head: words.lastCounted(),
    cell: ({ holding }) => (holding ? sayDate(holding.last.day) : words.nothingYet()),
  },
  { key: "by", head: words.seenBy(), cell: ({ by }) => by.map(({ name }) => name).join(", ") || words.nobody() },
];

function Until({ line: { holding, isHeld } }: { readonly line: TrainingLine }) {
  const words = useWords("people");
  if (!holding) return words.neverHeld();
  return isHeld ? <strong>{sayDate(holding.until)}</strong> : words.lapsedOn({ day: sayDate(holding.until) });
}

function Done({ doings, lines }: { readonly doings: readonly JudgedDoing[]; readonly lines: readonly TrainingLine[] }) {
  const words = useWords("people");
  const practice = useWords("practice");
  const view = useStation();
  if (doings.length === 0) return null;
  const mayStrike = mayWrite(view.me.role, "practice-told");
  const names = new Map(lines.map(({ qualification: { id, name } }) => [id, name]));
  const say = (one: (typeof doings)[number]) =>
    words.doneLine({
      day: sayDate(one.day),
      qualification: names.get(one.qualification) ?? "",
      where: sayWhere(one, view, practice),
      counts: sayCounts(one, view, practice),
    });
  return (
    <Section title={words.done()}>
      {doings.length > SHOWN && <p className="quiet">{words.newestOf({ shown: SHOWN, count: doings.length })}</p>}
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
