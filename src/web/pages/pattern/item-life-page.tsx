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
import { sayAges, sayLaw, sayOthers } from "./lives/law-words.ts";
import { sayLasting, sayLifeVerdict, sayRests, saySpan, type LivesWords } from "./lives/lives-words.ts";
import { useLivesWords } from "./lives/use-lives-words.ts";
import { ToldOfPattern } from "#web/kit-view/starts/told-of.tsx";
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
  const words = useLivesWords();
  const view = useStation();
  const close = useMemo(() => itemLife(pattern, item, livesLogOf(view)), [pattern, item, view]);
  const back = { to: `/pattern/${pattern.id}/lives`, label: words.lives.title() };
  if (view.early) return <NotAllHere back={back} />;
  if (!close) {
    return (
      <Page title={words.lives.nobodyLooked()} back={back}>
        <EmptyState title={words.lives.nothing()}>
          <p>{words.lives.nothingItem()}</p>
          <ToldOfPattern pattern={pattern} />
        </EmptyState>
      </Page>
    );
  }
  return (
    <Page title={words.lives.titleItem({ item: close.item.name })} back={back}>
      <p className="interval-verdict">
        {words.lives.verdictLine({ verdict: sayLifeVerdict(close.told.verdict, close.isStated, words) })}
      </p>
      <p>
        {words.lives.itemLine({
          span: saySpan(close, words),
          lasting: sayLasting(close.told.lasts, words),
          rests: sayRests(close.told, words),
          beyond: close.told.beyond,
        })}
      </p>
      <ToldOfPattern pattern={pattern} />
      <Lasting close={close} />
      <Modes close={close} />
      <Renewed close={close} />
    </Page>
  );
}

function Lasting({ close }: { readonly close: ItemLifeClose }) {
  const words = useLivesWords();
  const { curve, law, told, span, isStated } = close;
  const others = sayOthers(told, words);
  const mark = isStated ? words.lives.statedLife() : words.lives.openingToNext();
  return (
    <Section id="good" title={words.lives.stillGood()}>
      <AgeChart
        label={words.lives.chart({ rests: sayRests(told, words) })}
        reading={words.lives.ofTenGood()}
        across={words.lives.sinceNew()}
        steps={[{ at: 0, value: 10 }, ...curve.map(({ at, survival }) => ({ at, value: 10 * survival }))]}
        law={law.map(({ at, survival }) => ({ at, value: 10 * survival }))}
        most={10}
        mark={{ at: span, words: mark }}
      />
      <p className="quiet">{words.lives.chartMore()}</p>
      <p>{sayAges(told, words).join(" ")}</p>
      <details>
        <summary>{words.law.inFigures()}</summary>
        <p>{sayLaw(told, words)}</p>
        {others && <p>{others}</p>}
      </details>
      <details className="kit-table">
        <summary>{words.lives.asTable()}</summary>
        <Table
          caption={words.lives.goodTable()}
          isCaptionHidden
          columns={curveColumns(words)}
          rows={curve}
          rowKey={({ at }) => `${at}`}
        />
      </details>
    </Section>
  );
}

const curveColumns = (words: LivesWords): readonly Column<ItemLifeClose["curve"][number]>[] => [
  { key: "age", head: words.lives.age(), cell: ({ at }) => sayLong(at, words.interval) },
  { key: "good", head: words.lives.ofTenGood(), align: "figures", cell: ({ survival }) => (10 * survival).toFixed(1) },
];

function Modes({ close: { modes, isStated } }: { readonly close: ItemLifeClose }) {
  const words = useLivesWords();
  const columns: readonly Column<ItemLifeClose["modes"][number]>[] = [
    { key: "mode", head: words.lives.mode(), cell: ({ mode }) => mode.name },
    { key: "rests", head: words.lives.seen(), cell: ({ told }) => sayRests(told, words) },
    {
      key: "lasts",
      head: words.lives.notWithin(),
      align: "figures",
      cell: ({ told }) => sayLasting(told.lasts, words),
    },
    { key: "verdict", head: words.lives.so(), cell: ({ told }) => sayLifeVerdict(told.verdict, isStated, words) },
  ];
  return (
    <Section id="modes" title={words.lives.byMode()}>
      <Table
        caption={words.lives.modes()}
        isCaptionHidden
        columns={columns}
        rows={modes}
        rowKey={({ mode }) => mode.id}
      />
    </Section>
  );
}

function Renewed({ close: { renewed } }: { readonly close: ItemLifeClose }) {
  const words = useLivesWords();
  const last = renewed.at(-1);
  if (!last) {
    return (
      <Section id="renewed" title={words.lives.renewed()}>
        <p>{words.lives.noneRenewed()}</p>
      </Section>
    );
  }
  const most = Math.max(1, ...renewed.map(({ high }) => Math.min(high, 3 * last.count)));
  return (
    <Section id="renewed" title={words.lives.renewed()}>
      <AgeChart
        label={words.lives.renewedChart({ count: last.count.toFixed(1), age: sayLong(last.at, words.interval) })}
        reading={words.lives.renewedReading()}
        across={words.lives.sinceCharge()}
        steps={[
          { at: 0, value: 0 },
          ...renewed.map((one) => ({ at: one.at, value: one.count, low: one.low, high: Math.min(one.high, most) })),
        ]}
        most={most}
      />
      <details className="kit-table">
        <summary>{words.lives.renewedAsTable()}</summary>
        <Table
          caption={words.lives.renewedTable()}
          isCaptionHidden
          columns={renewedColumns(words)}
          rows={renewed}
          rowKey={({ at }) => `${at}`}
        />
      </details>
    </Section>
  );
}

const renewedColumns = (words: LivesWords): readonly Column<ItemLifeClose["renewed"][number]>[] => [
  { key: "age", head: words.lives.sinceChargeHead(), cell: ({ at }) => sayLong(at, words.interval) },
  {
    key: "count",
    head: words.lives.newOnes(),
    align: "figures",
    cell: ({ count, low, high }) =>
      words.lives.countRange({ count: count.toFixed(1), low: low.toFixed(1), high: high.toFixed(1) }),
  },
];
