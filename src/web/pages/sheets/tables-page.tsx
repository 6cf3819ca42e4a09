import { mayWrite } from "#station";
import { TABLES } from "#store/sheets";
import { useStation } from "#web/device/index.ts";
import { Button, ButtonLink, ButtonRow, ErrorBox, Notice, Page, Section, useDoing } from "#web/parts/index.ts";
import { saveTable } from "#web/kit-view/sheet/save-table.ts";
import "./sheets.css";

/** Every table as a file for a spreadsheet, and the way in from one. */
export default function TablesPage() {
  const view = useStation();
  const doing = useDoing();
  const mayTakeIn = mayWrite(view.me.role, "part-set");
  return (
    <Page title="Tables">
      {mayTakeIn && (
        <Section title="In">
          <p>People, kits, parts and past turnarounds from a CSV file or a workbook: all rows of it, or none.</p>
          <ButtonRow>
            <ButtonLink to="/tables/import">Take in from a sheet</ButtonLink>
            <ButtonLink to="/enrol/many">Enrol several kits on one page</ButtonLink>
          </ButtonRow>
        </Section>
      )}
      <Section title="Out">
        <p>
          Each as CSV, made of what this device holds, also without a network. Days are written as 2027-03-14. A cell
          that a spreadsheet would take for a formula is led by an apostrophe.
        </p>
        {view.early && (
          <Notice tone="attention" title="Not all lines are on this device yet">
            <p>A table saved now is of what is here.</p>
          </Notice>
        )}
        <ErrorBox error={doing.error} title="Not saved" />
        <ul className="sheet-tables">
          {TABLES.map(({ id, name, note }) => (
            <li key={id}>
              <Button label={`Save ${name} as CSV`} onPress={() => void doing.run(() => saveTable(id, view))}>
                {name}
              </Button>
              <span className="quiet">{note}</span>
            </li>
          ))}
        </ul>
      </Section>
    </Page>
  );
}
