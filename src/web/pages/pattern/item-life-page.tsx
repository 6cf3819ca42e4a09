import { newestOf, type Pattern } from "#kit";
import { itemLife, type ItemLifeClose } from "#station";
import { useMemo } from "react";
import { useParams } from "wouter";
import { useStation } from "#web/device/index.ts";
import { AgeChart } from "#web/drawing/age-chart.tsx";
import { EmptyState, Page, Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { sayLong } from "./interval/interval-words.ts";
import { NotAllHere } from "./lives/not-all-here.tsx";
import { livesLogOf } from "./lives/lives-log.ts";
import { sayLasting, sayLaw, sayLifeVerdict, sayOthers, sayRests, saySpan } from "./lives/lives-words.ts";
import { NoSuchPattern } from "./no-such-pattern.tsx";
import "#web/kit-view/kit.css";
import "./pattern.css";

/** How long one item lasts: with and without a law, mode by mode, and how often it is renewed. */
export default function ItemLifePage() {
  const { pattern: id = "", item = "" } = useParams<{ readonly pattern: string; readonly item: string }>();
  const pattern = newestOf([...useStation().patterns.values()], id);
  return pattern ? <ItemLife pattern={pattern} item={item} /> : <NoSuchPattern />;
}

function ItemLife({ pattern, item }: { readonly pattern: Pattern; readonly item: string }) {
  const view = useStation();
  const close = useMemo(() => itemLife(pattern, item, livesLogOf(view)), [pattern, item, view]);
  const back = { to: `/pattern/${pattern.id}/lives`, label: "How long things last" };
  if (view.early) return <NotAllHere back={back} />;
  if (!close) {
    return (
      <Page title="Nobody looked at one yet" back={back}>
        <EmptyState title="Nothing to go by yet">
          <p>No opening of a kit of this pattern has looked at such an item, or the pattern has none.</p>
        </EmptyState>
      </Page>
    );
  }
  return (
    <Page title={`${close.item.name}: how long it lasts`} back={back}>
      <p className="interval-verdict">{sayLifeVerdict(close.told.verdict, close.isStated)}.</p>
      <p>
        Held against {saySpan(close)}: {sayLasting(close.told.lasts)} (the range holds nine times in ten).{" "}
        {sayRests(close.told)}; looked at beyond that age{" "}
        {close.told.beyond === 1 ? "once" : `${close.told.beyond} times`}.
      </p>
      <Lasting close={close} />
      <Modes close={close} />
      <Renewed close={close} />
    </Page>
  );
}

function Lasting({ close }: { readonly close: ItemLifeClose }) {
  const { curve, law, told, span, isStated } = close;
  const others = sayOthers(told);
  const words = isStated ? "stated life" : "next opening";
  return (
    <Section id="good" title="Still good, by age">
      <AgeChart
        label={`Of ten, how many are still good at each age, as seen and by a law. ${sayRests(told)}. The figures are in the table below.`}
        reading="Of ten, still good"
        across="since it was new"
        steps={[{ at: 0, value: 10 }, ...curve.map(({ at, survival }) => ({ at, value: 10 * survival }))]}
        law={law.map(({ at, survival }) => ({ at, value: 10 * survival }))}
        most={10}
        mark={{ at: span, words }}
      />
      <p className="quiet">
        Steps: as seen, without any law; where between two looks an end fell nobody can know. Dotted line: the law that
        the chances are told by.
      </p>
      <p>{sayLaw(told)}</p>
      {others && <p>{others}</p>}
      <details className="kit-table">
        <summary>Still good, as a table</summary>
        <Table
          caption="Still good at each age of a look"
          isCaptionHidden
          columns={CURVE}
          rows={curve}
          rowKey={({ at }) => `${at}`}
        />
      </details>
    </Section>
  );
}

const CURVE: readonly Column<ItemLifeClose["curve"][number]>[] = [
  { key: "age", head: "Age", cell: ({ at }) => sayLong(at) },
  { key: "good", head: "Of ten, still good", align: "figures", cell: ({ survival }) => (10 * survival).toFixed(1) },
];

function Modes({ close: { modes, isStated } }: { readonly close: ItemLifeClose }) {
  const columns: readonly Column<ItemLifeClose["modes"][number]>[] = [
    { key: "mode", head: "Mode", cell: ({ mode }) => mode.name },
    { key: "rests", head: "Seen", cell: ({ told }) => sayRests(told) },
    {
      key: "lasts",
      head: "Does not come within that time",
      align: "figures",
      cell: ({ told }) => sayLasting(told.lasts),
    },
    { key: "verdict", head: "So", cell: ({ told }) => sayLifeVerdict(told.verdict, isStated) },
  ];
  return (
    <Section id="modes" title="Mode by mode">
      <Table caption="Modes" isCaptionHidden columns={columns} rows={modes} rowKey={({ mode }) => mode.id} />
    </Section>
  );
}

function Renewed({ close: { renewed } }: { readonly close: ItemLifeClose }) {
  const last = renewed.at(-1);
  if (!last) {
    return (
      <Section id="renewed" title="Renewed again and again">
        <p>None was renewed since its kit came on charge.</p>
      </Section>
    );
  }
  const most = Math.max(1, ...renewed.map(({ high }) => Math.min(high, 3 * last.count)));
  return (
    <Section id="renewed" title="Renewed again and again">
      <AgeChart
        label={`How often one kit has had a new one, on average: ${last.count.toFixed(1)} by ${sayLong(last.at)} on charge. The figures are in the table below.`}
        reading="New ones of one kit, on average, with the range of nine in ten"
        across="since the kit came on charge"
        steps={[
          { at: 0, value: 0 },
          ...renewed.map((one) => ({ at: one.at, value: one.count, low: one.low, high: Math.min(one.high, most) })),
        ]}
        most={most}
      />
      <details className="kit-table">
        <summary>Renewals as a table</summary>
        <Table
          caption="Renewals by age of the kit"
          isCaptionHidden
          columns={RENEWED}
          rows={renewed}
          rowKey={({ at }) => `${at}`}
        />
      </details>
    </Section>
  );
}

const RENEWED: readonly Column<ItemLifeClose["renewed"][number]>[] = [
  { key: "age", head: "Since on charge", cell: ({ at }) => sayLong(at) },
  {
    key: "count",
    head: "New ones of one kit",
    align: "figures",
    cell: ({ count, low, high }) => `${count.toFixed(1)} (${low.toFixed(1)} to ${high.toFixed(1)})`,
  },
];
