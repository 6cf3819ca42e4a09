import { newestOf, type Pattern } from "#kit";
import { patternLives, type ItemLives } from "#station";
import { useMemo } from "react";
import { useParams, useSearchParams } from "wouter";
import { useStation } from "#web/device/index.ts";
import { ButtonLink, ButtonRow, EmptyState, Page, Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { ItemLink } from "./lives/item-link.tsx";
import { KitLives } from "./lives/kit-lives.tsx";
import { NotAllHere } from "./lives/not-all-here.tsx";
import { livesLogOf } from "./lives/lives-log.ts";
import { sayLasting, sayLifeVerdict, sayRests, saySpan, type LivesWords } from "./lives/lives-words.ts";
import { useLivesWords } from "./lives/use-lives-words.ts";
import { withParts } from "#web/language/index.ts";
import { ToldOfPattern } from "#web/kit-view/starts/told-of.tsx";
import { NoSuchPattern } from "./no-such-pattern.tsx";
import { WordsFirst } from "./words-first.tsx";
import "#web/kit-view/kit.css";
import "./pattern.css";

/** How long the items of a pattern last, by what was found at looks; of one kit, what lasts to its next opening. */
export default function LivesPage() {
  const { pattern: id = "" } = useParams<{ readonly pattern: string }>();
  const pattern = newestOf([...useStation().patterns.values()], id);
  if (!pattern) return <NoSuchPattern />;
  return (
    <WordsFirst words={<Counting pattern={pattern} />}>
      <Lives pattern={pattern} />
    </WordsFirst>
  );
}

function Counting({ pattern }: { readonly pattern: Pattern }) {
  const { lives: words } = useLivesWords();
  const back = { to: `/pattern/${pattern.id}`, label: words.reportCard() };
  return (
    <Page title={words.titleOf({ pattern: pattern.name })} back={back}>
      <output>{words.counting()}</output>
    </Page>
  );
}

function Lives({ pattern }: { readonly pattern: Pattern }) {
  const words = useLivesWords();
  const view = useStation();
  const [search] = useSearchParams();
  const kit = view.kits.find((one) => one.id === search.get("kit"));
  const log = useMemo(() => livesLogOf(view), [view]);
  const lives = useMemo(() => patternLives(pattern, log), [pattern, log]);
  const own = log.kits.find((one) => one.kit.id === kit?.id);
  const back = kit
    ? { to: `/kit/${kit.id}`, label: kit.name }
    : { to: `/pattern/${pattern.id}`, label: words.lives.reportCard() };
  if (view.early) return <NotAllHere back={back} />;
  if (lives.length === 0) {
    return (
      <Page title={words.lives.titleOf({ pattern: pattern.name })} back={back}>
        <EmptyState title={words.lives.nothing()}>
          <p>{words.lives.nothingMore()}</p>
          <ToldOfPattern pattern={pattern} />
        </EmptyState>
      </Page>
    );
  }
  return (
    <Page title={words.lives.titleOf({ pattern: pattern.name })} back={back}>
      <p>{words.lives.basis()}</p>
      <ToldOfPattern pattern={pattern} />
      {kit && own && <KitLives own={own} pattern={pattern} lives={lives} log={log} />}
      <Earned lives={lives} pattern={pattern} />
      <AllItems lives={lives} pattern={pattern} />
      <p className="quiet">{words.lives.ranges()}</p>
      <ButtonRow>
        <ButtonLink to={`/pattern/${pattern.id}`}>{words.lives.reportCardOf()}</ButtonLink>
        <ButtonLink to={`/pattern/${pattern.id}/interval`}>{words.lives.howOften()}</ButtonLink>
      </ButtonRow>
    </Page>
  );
}

interface PartProps {
  readonly lives: readonly ItemLives[];
  readonly pattern: Pattern;
}

/** Items that earn a shorter or a longer life, with what that rests on. */
function Earned({ lives, pattern }: PartProps) {
  const words = useLivesWords();
  const earned = lives.filter(({ told }) => told.verdict.kind === "shorter" || told.verdict.kind === "longer");
  return (
    <Section id="earned" title={words.lives.earned()}>
      {earned.length === 0 ? (
        <p>{words.lives.nothingEarned()}</p>
      ) : (
        <ul className="proposals">
          {earned.map((one) => (
            <li key={one.item.id}>
              <strong>
                {withParts(
                  ({ item }) =>
                    words.lives.itemVerdict({
                      item,
                      verdict: sayLifeVerdict(one.told.verdict, one.isStated, words),
                    }),
                  { item: <ItemLink pattern={pattern} item={one.item} /> },
                )}
              </strong>
              <p>
                {words.lives.earnedLine({
                  span: saySpan(one, words),
                  lasting: sayLasting(one.told.lasts, words),
                  rests: sayRests(one.told, words),
                })}
              </p>
            </li>
          ))}
        </ul>
      )}
    </Section>
  );
}

function AllItems({ lives, pattern }: PartProps) {
  const words = useLivesWords();
  const ended = lives.filter(({ told }) => told.ended > 0);
  const never = lives.filter(({ told }) => told.ended === 0);
  return (
    <Section id="items" title={words.lives.everyItem()}>
      {ended.length === 0 ? (
        <p>{words.lives.noneBad()}</p>
      ) : (
        <Table caption={words.lives.badTable()} columns={columnsOf(pattern, words)} rows={ended} rowKey={keyOf} />
      )}
      {never.length > 0 && (
        <details className="kit-table">
          <summary>{words.lives.neverBad({ count: never.length })}</summary>
          <Table
            caption={words.lives.neverBadTable()}
            isCaptionHidden
            columns={columnsOf(pattern, words)}
            rows={never}
            rowKey={keyOf}
          />
        </details>
      )}
    </Section>
  );
}

const keyOf = ({ item }: { readonly item: { readonly id: string } }) => item.id;

function columnsOf(pattern: Pattern, words: LivesWords): readonly Column<ItemLives>[] {
  return [
    { key: "item", head: words.lives.item(), cell: ({ item }) => <ItemLink pattern={pattern} item={item} /> },
    { key: "rests", head: words.lives.seen(), cell: ({ told }) => sayRests(told, words) },
    { key: "span", head: words.lives.heldAgainst(), cell: (one) => saySpan(one, words) },
    { key: "lasts", head: words.lives.lastsIt(), align: "figures", cell: ({ told }) => sayLasting(told.lasts, words) },
    {
      key: "verdict",
      head: words.lives.so(),
      cell: ({ told, isStated }) => sayLifeVerdict(told.verdict, isStated, words),
    },
  ];
}
