import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import { Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import type { Planned } from "./use-plan.ts";

interface Figure {
  readonly name: string;
  readonly lastDay: string;
  readonly plan: string;
}

const columns = (words: Words["year"]): readonly Column<Figure>[] => [
  { key: "name", head: words.wholeTime(), cell: ({ name }) => name },
  { key: "last-day", head: words.lastDay(), align: "figures", cell: ({ lastDay }) => lastDay },
  { key: "plan", head: words.thisPlan(), align: "figures", cell: ({ plan }) => plan },
];

/** The plan beside doing each thing on its last day. */
export function PlanFigures({ planned: { answer } }: { readonly planned: Planned }) {
  const { naive, openings, hours, short, wasted, gap } = answer;
  const words = useWords("year");
  const sayHours = (figure: number) => words.hours({ hours: figure.toFixed(1) });
  const sayDays = (figure: number) => words.days({ count: Math.round(figure) });
  const rows: readonly Figure[] = [
    { name: words.openings(), lastDay: String(naive.openings), plan: String(openings.length) },
    { name: words.worstWeek(), lastDay: sayHours(naive.worstHours), plan: sayHours(Math.max(0, ...hours)) },
    { name: words.weeksShort(), lastDay: String(naive.shortWeeks), plan: String(short.length) },
    { name: words.lifeLost(), lastDay: sayDays(naive.wasted), plan: sayDays(wasted) },
  ];
  return (
    <Section title={words.compared()}>
      <Table
        caption={words.comparedTable()}
        isCaptionHidden
        columns={columns(words)}
        rows={rows}
        rowKey={({ name }) => name}
      />
      <p>{sayGap(gap, words)}</p>
    </Section>
  );
}

/** A gap of all of it is no bound at all. */
function sayGap(gap: number, words: Words["year"]): string {
  if (gap === 0) return words.best();
  return gap >= 1 ? words.notProved() : words.notProvedBest({ percent: Math.ceil(gap * 100) });
}
