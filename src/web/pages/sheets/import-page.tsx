import { fieldsOf, withCells, type SheetOf } from "#store/sheets";
import { mayWrite } from "#station";
import { useMemo } from "react";
import { useSearchParams } from "wouter";
import { useStation } from "#web/device/index.ts";
import { Button, ButtonLink, ButtonRow, EmptyState, ErrorBox, Notice, Page, Section } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { ChooseFile } from "./import/choose-file.tsx";
import { ColumnPicks } from "./import/column-picks.tsx";
import { BadRows, ColumnFaults, LeftOutRows, OrderChoice, Preview } from "./import/judged-rows.tsx";
import { sayOfSheet, SHEET_KINDS, SHEET_PAGES } from "./import/sheet-words.ts";
import { planNow, saidOf, useSheet, type SheetNow } from "./import/use-sheet.ts";
import "./sheets.css";
import { useWords } from "#web/language/index.ts";

const SORTS: readonly SheetOf[] = ["people", "kits", "parts", "turnarounds"];

/** Takes people, kits, parts and past turnarounds in from a spreadsheet: all rows of it, or none. */
export default function ImportPage() {
  const frame = useWords("frame");
  const words = useWords("sheets");
  const { me, early } = useStation();
  const [search, setSearch] = useSearchParams();
  const sorts = SORTS.filter((of) => mayWrite(me.role, SHEET_KINDS[of]));
  const of = sorts.find((one) => one === search.get("of"));
  return (
    <Page title={words.takeIn()} back={{ to: "/tables", label: frame.tables() }}>
      {sorts.length === 0 ? (
        <EmptyState title={words.whoTakesIn()} />
      ) : early ? (
        <Notice tone="attention" title={words.early()}>
          <p>{words.earlyIn()}</p>
        </Notice>
      ) : (
        <div className="sheet-form">
          <Choice
            label={words.whatIsOn()}
            options={sorts.map((one) => ({ value: one, ...sayOfSheet(one, words) }))}
            value={of}
            onChange={(one) => setSearch({ of: one }, { replace: true })}
          />
          {sorts.length < SORTS.length && <LeftOut sorts={SORTS.filter((one) => !sorts.includes(one))} />}
          {of && <OneSheet key={of} of={of} />}
        </div>
      )}
    </Page>
  );
}

/** Said where it would be looked for: what is not offered needs somebody else. */
function LeftOut({ sorts }: { readonly sorts: readonly SheetOf[] }) {
  const words = useWords("sheets");
  const names = sorts.map((one) => sayOfSheet(one, words).label).join(words.sortsBetween());
  return <p className="quiet">{words.administratorOnly({ sorts: names })}</p>;
}

function OneSheet({ of }: { readonly of: SheetOf }) {
  const words = useWords("sheets");
  const sheet = useSheet(of);
  return (
    <>
      {sheet.written !== undefined && <Written of={of} rows={sheet.written} />}
      <Section title={words.file()}>
        <ChooseFile sheet={sheet} />
      </Section>
      {sheet.chosen && <Judged of={of} sheet={sheet} chosen={sheet.chosen} />}
    </>
  );
}

function Written({ of, rows }: { readonly of: SheetOf; readonly rows: number }) {
  const words = useWords("sheets");
  return (
    <Notice title={words.taken({ count: rows })} isNews>
      <p>{words.takenMore()}</p>
      <ButtonRow>
        <ButtonLink to={SHEET_PAGES[of]}>{words.see()}</ButtonLink>
      </ButtonRow>
    </Notice>
  );
}

interface JudgedProps {
  readonly of: SheetOf;
  readonly sheet: SheetNow;
  readonly chosen: NonNullable<SheetNow["chosen"]>;
}

function Judged({ of, sheet, chosen }: JudgedProps) {
  const words = useWords("sheets");
  const view = useStation();
  const { mapping, order, mends } = chosen;
  const said = useMemo(() => saidOf(of, chosen), [of, chosen]);
  const { table } = said;
  const plan = useMemo(() => planNow(said, view), [said, view]);
  const either = useMemo(() => planNow({ of, table, mapping }, view).either, [of, table, mapping, view]);
  const mending = {
    table,
    onCells: (row: number, texts: ReadonlyMap<number, string>) => sheet.change({ mends: withCells(mends, row, texts) }),
    onLeaveOut: (row: number) => sheet.change({ mends: { ...mends, leftOut: [...mends.leftOut, row] } }),
  };
  const isGood = plan.columns.length === 0 && plan.bad.length === 0;
  return (
    <>
      <ColumnPicks of={of} table={table} mapping={mapping} onChange={(next) => sheet.change({ mapping: next })} />
      <ColumnFaults plan={plan} />
      {either && <OrderChoice either={either} order={order} onChoose={(next) => sheet.change({ order: next })} />}
      {plan.bad.length > 0 && <BadRows bad={plan.bad} {...mending} />}
      <LeftOutRows rows={mends.leftOut} onPutBack={() => sheet.change({ mends: { ...mends, leftOut: [] } })} />
      {plan.rows.length > 0 && <Preview rows={plan.rows} fields={fieldsOf(of, view)} {...mending} />}
      <ErrorBox error={sheet.writing.error} title={words.nothingTaken()} />
      {isGood && plan.drafts.length === 0 && <Notice title={words.nothingNew()} isNews />}
      {isGood && plan.drafts.length > 0 && (
        <div>
          <Button kind="primary" isBusy={sheet.writing.isBusy} onPress={() => void sheet.takeIn()}>
            {words.takeRows({ count: plan.rows.length })}
          </Button>
        </div>
      )}
    </>
  );
}
