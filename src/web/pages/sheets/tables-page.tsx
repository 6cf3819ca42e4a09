import { mayWrite } from "#station";
import { TABLES } from "#store/sheets";
import { useStation } from "#web/device/index.ts";
import { Button, ButtonLink, ButtonRow, ErrorBox, Notice, Page, Section, useDoing } from "#web/parts/index.ts";
import { saveTable } from "#web/kit-view/sheet/save-table.ts";
import "./sheets.css";
import { useWords } from "#web/language/index.ts";

/** Every table as a file for a spreadsheet, and the way in from one. */
export default function TablesPage() {
  const frame = useWords("frame");
  const words = useWords("sheets");
  const view = useStation();
  const doing = useDoing();
  const mayTakeIn = mayWrite(view.me.role, "part-set");
  return (
    <Page title={frame.tables()}>
      {mayTakeIn && (
        <Section title={words.in()}>
          <p>{words.inMore()}</p>
          <ButtonRow>
            <ButtonLink to="/tables/import">{words.takeIn()}</ButtonLink>
            <ButtonLink to="/enrol/many">{words.enrolMany()}</ButtonLink>
          </ButtonRow>
        </Section>
      )}
      <Section title={words.out()}>
        <p>{words.outMore()}</p>
        {view.early && (
          <Notice tone="attention" title={words.early()}>
            <p>{words.earlyOut()}</p>
          </Notice>
        )}
        <ErrorBox error={doing.error} title={words.notSaved()} />
        <ul className="sheet-tables">
          {TABLES.map(({ id, name, note }) => (
            <li key={id}>
              <Button label={words.saveAs({ table: name })} onPress={() => void doing.run(() => saveTable(id, view))}>
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
