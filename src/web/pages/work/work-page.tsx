import { addDays, formatDate, lastDayOf } from "#base";
import { AHEAD_DAYS, sundayOf } from "#readiness";
import type { DueLine } from "#station";
import { useMemo, useState } from "react";
import { useStation } from "#web/device/index.ts";
import { Button, ButtonLink, ButtonRow, EmptyState, Page, Section } from "#web/parts/index.ts";
import { PaperLink } from "#web/parts/paper-link.tsx";
import { shelfCount } from "#web/kit-view/stock-view.ts";
import { useWorkDue } from "#web/kit-view/work-short.tsx";
import { sayCounts } from "#web/kit-view/work-words.ts";
import { ToConfirm } from "./to-confirm.tsx";
import { WorkRow } from "./work-row.tsx";
import "./work.css";

/** Everything that is to be done: kits back and wet first, then overdue, this week and within a month. */
export default function WorkPage() {
  const view = useStation();
  const { today, me } = view;
  const [isMine, setMine] = useState(false);
  const shelf = useMemo(() => shelfCount(view), [view]);
  const { lines, now } = useWorkDue(undefined, shelf);
  const shown = isMine ? lines.filter(({ said }) => said.takers.some(({ person }) => person === me.id)) : lines;
  return (
    <Page title="Work due">
      <p>{sayCounts(shown)}.</p>
      <ToConfirm />
      <ButtonRow>
        <Button isPressed={!isMine} onPress={() => setMine(false)}>
          All work
        </Button>
        <Button isPressed={isMine} onPress={() => setMine(true)}>
          Work I took
        </Button>
        <ButtonLink to="/year">The year planned</ButtonLink>
      </ButtonRow>
      <ButtonRow>
        {[today, addDays(lastDayOf(today.slice(0, 7)), 1)].map((day, at) => (
          <PaperLink key={day} href={`/api/paper/month.pdf?month=${day.slice(0, 7)}`} name={`month ${day.slice(0, 7)}`}>
            Print {at === 0 ? "this" : "next"} month
          </PaperLink>
        ))}
      </ButtonRow>
      {shown.length === 0 && <EmptyState title={isMine ? "You took no work" : "Nothing is due within a month"} />}
      {groupsOf(today).map(({ bucket, title }) => (
        <Group key={bucket} title={title} lines={shown.filter((one) => one.bucket === bucket)} now={now} />
      ))}
    </Page>
  );
}

function groupsOf(today: string): readonly { readonly bucket: DueLine["bucket"]; readonly title: string }[] {
  return [
    { bucket: "wet", title: "Back and not flushed" },
    { bucket: "overdue", title: "Overdue" },
    { bucket: "week", title: `This week, to ${formatDate(sundayOf(today))}` },
    { bucket: "month", title: `This month, to ${formatDate(addDays(today, AHEAD_DAYS))}` },
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
