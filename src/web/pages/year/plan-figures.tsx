import { sayCount } from "#base";
import { Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import type { Planned } from "./use-plan.ts";

interface Figure {
  readonly name: string;
  readonly lastDay: string;
  readonly plan: string;
}

const COLUMNS: readonly Column<Figure>[] = [
  { key: "name", head: "Of the whole time", cell: ({ name }) => name },
  { key: "last-day", head: "Each on its last day", align: "figures", cell: ({ lastDay }) => lastDay },
  { key: "plan", head: "This plan", align: "figures", cell: ({ plan }) => plan },
];

/** The plan beside doing each thing on its last day. */
export function PlanFigures({ planned: { answer } }: { readonly planned: Planned }) {
  const { naive, openings, hours, short, wasted, gap } = answer;
  const rows: readonly Figure[] = [
    { name: "Openings", lastDay: String(naive.openings), plan: String(openings.length) },
    { name: "Hours of the worst week", lastDay: sayHours(naive.worstHours), plan: sayHours(Math.max(0, ...hours)) },
    { name: "Weeks short, each place counted", lastDay: String(naive.shortWeeks), plan: String(short.length) },
    { name: "Life thrown away", lastDay: sayDays(naive.wasted), plan: sayDays(wasted) },
  ];
  return (
    <Section title="Compared">
      <Table
        caption="The plan beside doing each thing on its last day"
        isCaptionHidden
        columns={COLUMNS}
        rows={rows}
        rowKey={({ name }) => name}
      />
      <p>
        {gap === 0
          ? "No plan has fewer kits short, fewer lapsed weeks or fewer openings."
          : `Not proved best: what it could not bring to the least may be up to ${Math.ceil(gap * 100)} % from it.`}
      </p>
    </Section>
  );
}

function sayHours(hours: number): string {
  return `${hours.toFixed(1)} h`;
}

function sayDays(days: number): string {
  return sayCount(Math.round(days), "day");
}
