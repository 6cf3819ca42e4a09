import { newestOf, type Pattern } from "#kit";
import { kitLasts, patternLives, type ItemLives, type KitLasts } from "#station";
import { useMemo } from "react";
import { Link, useParams, useSearchParams } from "wouter";
import { useStation } from "#web/device/index.ts";
import { ButtonLink, ButtonRow, EmptyState, Page, Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { sayLong } from "./interval/interval-words.ts";
import { NotAllHere } from "./lives/not-all-here.tsx";
import { livesLogOf } from "./lives/lives-log.ts";
import { sayLasting, sayLifeVerdict, sayRests, saySpan } from "./lives/lives-words.ts";
import { NoSuchPattern } from "./no-such-pattern.tsx";
import "#web/kit-view/kit.css";
import "./pattern.css";

/** How long the items of a pattern last, by what was found at looks; of one kit, what lasts to its next opening. */
export default function LivesPage() {
  const { pattern: id = "" } = useParams<{ readonly pattern: string }>();
  const pattern = newestOf([...useStation().patterns.values()], id);
  return pattern ? <Lives pattern={pattern} /> : <NoSuchPattern />;
}

function Lives({ pattern }: { readonly pattern: Pattern }) {
  const view = useStation();
  const [search] = useSearchParams();
  const kit = view.kits.find((one) => one.id === search.get("kit"));
  const log = useMemo(() => livesLogOf(view), [view]);
  const lives = useMemo(() => patternLives(pattern, log), [pattern, log]);
  const own = log.kits.find((one) => one.kit.id === kit?.id);
  const back = kit ? { to: `/kit/${kit.id}`, label: kit.name } : { to: `/pattern/${pattern.id}`, label: "Report card" };
  if (view.early) return <NotAllHere back={back} />;
  if (lives.length === 0) {
    return (
      <Page title={`How long things last: ${pattern.name}`} back={back}>
        <EmptyState title="Nothing to go by yet">
          <p>No item of a kit of this pattern has been looked at in an opening. One opening of each is a beginning.</p>
        </EmptyState>
      </Page>
    );
  }
  return (
    <Page title={`How long things last: ${pattern.name}`} back={back}>
      <p>
        From all kits of this pattern, whatever its version. A life begins when a thing is fitted or proved mended, or
        the kit comes on charge; it is looked at in openings, and ends at the first finding.
      </p>
      {kit && own && <KitPart name={kit.name} pattern={pattern} lasting={kitLasts(own, pattern, lives, log)} />}
      <Earned lives={lives} pattern={pattern} />
      <AllItems lives={lives} pattern={pattern} />
      <p className="quiet">
        Ranges hold nine times in ten. Nothing changes by itself: whoever keeps the pattern decides, and the unit&apos;s
        own manual and a printed date stand first.
      </p>
      <ButtonRow>
        <ButtonLink to={`/pattern/${pattern.id}`}>Report card of the pattern</ButtonLink>
        <ButtonLink to={`/pattern/${pattern.id}/interval`}>How often to open it</ButtonLink>
      </ButtonRow>
    </Page>
  );
}

/** So many of those least likely to last are shown at once. */
const SHOWN = 8;

interface KitPartProps {
  readonly name: string;
  readonly pattern: Pattern;
  readonly lasting: readonly KitLasts[];
}

function KitPart({ name, pattern, lasting }: KitPartProps) {
  const columns = kitColumns(pattern);
  const [first] = lasting;
  return (
    <Section id="kit" title={`${name} until its next opening`}>
      {!first ? (
        <p>
          It is due for opening or was never closed, or nothing of it was looked at: there is no next opening to last
          to.
        </p>
      ) : (
        <>
          <p>Due in {sayLong(first.left)}. Least likely to last first; what is found bad and not mended is left out.</p>
          <Table
            caption="Lasts to the next opening"
            isCaptionHidden
            columns={columns}
            rows={lasting.slice(0, SHOWN)}
            rowKey={keyOf}
          />
          {lasting.length > SHOWN && (
            <details className="kit-table">
              <summary>{lasting.length - SHOWN} other items</summary>
              <Table
                caption="Other items of it"
                isCaptionHidden
                columns={columns}
                rows={lasting.slice(SHOWN)}
                rowKey={keyOf}
              />
            </details>
          )}
        </>
      )}
    </Section>
  );
}

function kitColumns(pattern: Pattern): readonly Column<KitLasts>[] {
  return [
    { key: "item", head: "Item", cell: ({ item }) => <ItemLink pattern={pattern} item={item} /> },
    { key: "age", head: "Age", align: "figures", cell: ({ age }) => sayLong(age) },
    { key: "lasts", head: "Lasts to the next opening", align: "figures", cell: ({ lasts }) => sayLasting(lasts) },
  ];
}

interface PartProps {
  readonly lives: readonly ItemLives[];
  readonly pattern: Pattern;
}

/** Items that earn a shorter or a longer life, with what that rests on. */
function Earned({ lives, pattern }: PartProps) {
  const earned = lives.filter(({ told }) => told.verdict.kind === "shorter" || told.verdict.kind === "longer");
  return (
    <Section id="earned" title="What earns another life">
      {earned.length === 0 ? (
        <p>Nothing earns a shorter or a longer life by what was seen so far. What it would take stands at each item.</p>
      ) : (
        <ul className="proposals">
          {earned.map((one) => (
            <li key={one.item.id}>
              <strong>
                <ItemLink pattern={pattern} item={one.item} />: {sayLifeVerdict(one.told.verdict, one.isStated)}
              </strong>
              <p>
                Held against {saySpan(one)}: {sayLasting(one.told.lasts)}. {sayRests(one.told)}.
              </p>
            </li>
          ))}
        </ul>
      )}
    </Section>
  );
}

function AllItems({ lives, pattern }: PartProps) {
  const ended = lives.filter(({ told }) => told.ended > 0);
  const never = lives.filter(({ told }) => told.ended === 0);
  return (
    <Section id="items" title="Every item">
      {ended.length === 0 ? (
        <p>None was ever found bad.</p>
      ) : (
        <Table caption="Items found bad at some time" columns={columnsOf(pattern)} rows={ended} rowKey={keyOf} />
      )}
      {never.length > 0 && (
        <details className="kit-table">
          <summary>{never.length} never found bad</summary>
          <Table
            caption="Items never found bad"
            isCaptionHidden
            columns={columnsOf(pattern)}
            rows={never}
            rowKey={keyOf}
          />
        </details>
      )}
    </Section>
  );
}

const keyOf = ({ item }: { readonly item: { readonly id: string } }) => item.id;

function columnsOf(pattern: Pattern): readonly Column<ItemLives>[] {
  return [
    { key: "item", head: "Item", cell: ({ item }) => <ItemLink pattern={pattern} item={item} /> },
    { key: "rests", head: "Seen", cell: ({ told }) => sayRests(told) },
    { key: "span", head: "Held against", cell: saySpan },
    { key: "lasts", head: "Lasts it", align: "figures", cell: ({ told }) => sayLasting(told.lasts) },
    { key: "verdict", head: "So", cell: ({ told, isStated }) => sayLifeVerdict(told.verdict, isStated) },
  ];
}

function ItemLink({
  pattern,
  item,
}: {
  readonly pattern: Pattern;
  readonly item: { readonly id: string; readonly name: string };
}) {
  return <Link to={`/pattern/${pattern.id}/lives/${item.id}`}>{item.name}</Link>;
}
