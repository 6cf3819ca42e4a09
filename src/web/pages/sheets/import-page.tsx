import { fieldsOf, withCells, type SheetOf } from "#store/sheets";
import { mayWrite } from "#station";
import { useMemo } from "react";
import { useSearchParams } from "wouter";
import { useStation } from "#web/device/index.ts";
import {
  Button,
  ButtonLink,
  ButtonRow,
  EmptyState,
  ErrorBox,
  Notice,
  Page,
  sayCount,
  Section,
} from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { ChooseFile } from "./import/choose-file.tsx";
import { ColumnPicks } from "./import/column-picks.tsx";
import { BadRows, ColumnFaults, LeftOutRows, OrderChoice, Preview } from "./import/judged-rows.tsx";
import { SHEET_KINDS, SHEET_WORDS } from "./import/sheet-words.ts";
import { planNow, saidOf, useSheet, type SheetNow } from "./import/use-sheet.ts";
import "./sheets.css";

const SORTS: readonly SheetOf[] = ["people", "kits", "parts", "turnarounds"];

/** Takes people, kits, parts and past turnarounds in from a spreadsheet: all rows of it, or none. */
export default function ImportPage() {
  const { me, early } = useStation();
  const [search, setSearch] = useSearchParams();
  const sorts = SORTS.filter((of) => mayWrite(me.role, SHEET_KINDS[of]));
  const of = sorts.find((one) => one === search.get("of"));
  return (
    <Page title="Take in from a sheet" back={{ to: "/tables", label: "Tables" }}>
      {sorts.length === 0 ? (
        <EmptyState title="A keeper or an administrator takes sheets in" />
      ) : early ? (
        <Notice tone="attention" title="Not all lines are on this device yet">
          <p>A sheet is judged by what the station has already. Wait until all of it is here.</p>
        </Notice>
      ) : (
        <div className="sheet-form">
          <Choice
            label="What is on the sheet"
            options={sorts.map((one) => ({ value: one, label: SHEET_WORDS[one].many, note: SHEET_WORDS[one].note }))}
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
  const names = sorts.map((one) => SHEET_WORDS[one].many).join(" and ");
  return <p className="quiet">{names}: only an administrator takes those in.</p>;
}

function OneSheet({ of }: { readonly of: SheetOf }) {
  const sheet = useSheet(of);
  return (
    <>
      {sheet.written !== undefined && <Written of={of} rows={sheet.written} />}
      <Section title="The file">
        <ChooseFile sheet={sheet} />
      </Section>
      {sheet.chosen && <Judged of={of} sheet={sheet} chosen={sheet.chosen} />}
    </>
  );
}

function Written({ of, rows }: { readonly of: SheetOf; readonly rows: number }) {
  return (
    <Notice title={`${sayCount(rows, "row")} taken in, all of them`} isNews>
      <p>They are on this device, marked as told by the sheet and taken in by you. The station gets them next.</p>
      <ButtonRow>
        <ButtonLink to={SHEET_WORDS[of].to}>See them</ButtonLink>
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
      <ErrorBox error={sheet.writing.error} title="Nothing was taken in" />
      {isGood && (
        <div>
          <Button kind="primary" isBusy={sheet.writing.isBusy} onPress={() => void sheet.takeIn()}>
            {plan.rows.length === 1 ? "Take in the 1 row" : `Take in all ${plan.rows.length} rows`}
          </Button>
        </div>
      )}
    </>
  );
}
