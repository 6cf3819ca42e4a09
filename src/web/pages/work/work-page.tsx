import { addDays, lastDayOf } from "#base";
import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import { AHEAD_DAYS, sundayOf } from "#readiness";
import type { DueLine } from "#station";
import { useMemo, useState } from "react";
import { useStation } from "#web/device/index.ts";
import { Button, ButtonLink, ButtonRow, EmptyState, Page, sayDate, Section } from "#web/parts/index.ts";
import { PaperLink } from "#web/parts/paper-link.tsx";
import { shelfCount } from "#web/kit-view/stock-view.ts";
import { useWorkDue } from "#web/kit-view/work-short.tsx";
import { sayCounts } from "#web/kit-view/work-words.ts";
import { ToConfirm } from "./to-confirm.tsx";
import { WorkRow } from "./work-row.tsx";
import "./work.css";

/** Everything that is to be done: kits back and wet first, then overdue, this week and within a month. */
export default function WorkPage() {
  const words = useWords("work");
  const lineWords = useWords("kitLine");
  const view = useStation();
  const { today, me } = view;
  const [isMine, setMine] = useState(false);
  const shelf = useMemo(() => shelfCount(view), [view]);
  const { lines, now } = useWorkDue(undefined, shelf);
  const shown = isMine ? lines.filter(({ said }) => said.takers.some(({ person }) => person === me.id)) : lines;
  return (
    <Page title={words.title()}>
      <p>{sayCounts(shown, lineWords)}.</p>
      <ToConfirm />
      <ButtonRow>
        <Button isPressed={!isMine} onPress={() => setMine(false)}>
          {words.all()}
        </Button>
        <Button isPressed={isMine} onPress={() => setMine(true)}>
          {words.mine()}
        </Button>
        <ButtonLink to="/year">{words.year()}</ButtonLink>
      </ButtonRow>
      <ButtonRow>
        {[today, addDays(lastDayOf(today.slice(0, 7)), 1)].map((day, at) => (
          <PaperLink key={day} href={`/api/paper/month.pdf?month=${day.slice(0, 7)}`} name={`month ${day.slice(0, 7)}`}>
            {at === 0 ? words.printThis() : words.printNext()}
          </PaperLink>
        ))}
      </ButtonRow>
      {shown.length === 0 && <EmptyState title={isMine ? words.tookNone() : words.noneDue()} />}
      {groupsOf(today, words).map(({ bucket, title }) => (
        <Group key={bucket} title={title} lines={shown.filter((one) => one.bucket === bucket)} now={now} />
      ))}
    </Page>
  );
}

function groupsOf(
  today: string,
  words: Words["work"],
): readonly { readonly bucket: DueLine["bucket"]; readonly title: string }[] {
  return [
    { bucket: "wet", title: words.wet() },
    { bucket: "overdue", title: words.overdue() },
    { bucket: "week", title: words.week({ day: sayDate(sundayOf(today)) }) },
    { bucket: "month", title: words.month({ day: sayDate(addDays(today, AHEAD_DAYS)) }) },
  ];
}

interface GroupProps {
  readonly title: string;
  readonly lines: readonly DueLine[];
  readonly now: number;
}

function Group({ title, lines, now }: GroupProps) {
  if (lines.length === 0) return null;
  return (
    <Section title={title}>
      <ul className="work-lines">
        {lines.map((line) => (
          <WorkRow key={`${line.kit.id} ${line.work}`} line={line} now={now} />
        ))}
      </ul>
    </Section>
  );
}
