import { formatQuantity } from "#base";
import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import { sayLifting } from "#kit";
import { useParams } from "wouter";
import { useRecorder, useStation } from "#web/device/index.ts";
import { MoreOnPhone, Page, StandingMark } from "#web/parts/index.ts";
import { KitActs } from "#web/act/acts.ts";
import { findKitEver, type KitAtHand } from "#web/kit-view/at-hand.ts";
import { Differences } from "#web/kit-view/differences.tsx";
import { NoSuchKit } from "#web/kit-view/no-such-kit.tsx";
import { saySheet } from "#web/kit-view/sheet/sheet-words.ts";
import { FlushPanel } from "#web/kit-view/flush-panel.tsx";
import { KitActions } from "./page/kit-actions.tsx";
import { KitContents } from "./page/kit-contents.tsx";
import { KitDates } from "./page/kit-dates.tsx";
import { KitEntries } from "./page/kit-entries.tsx";
import { KitFindings } from "./page/kit-findings.tsx";
import { KitLent } from "./page/kit-lent.tsx";
import { KitRuns } from "./page/kit-runs.tsx";
import { KitSeals } from "./page/kit-seals.tsx";
import { KitStanding } from "./page/kit-standing.tsx";
import { KitTurnarounds } from "./page/kit-turnarounds.tsx";
import { KitYear } from "./page/kit-year.tsx";
import "#web/kit-view/kit.css";

/** One kit: what it is good for and why, what can be done with it, and all that the log knows of it. */
export default function KitPage() {
  const words = useWords("kitPage");
  // Of the dialog that strikes a line: nothing waits once the page is in use.
  useWords("kitView");
  const { id = "" } = useParams<{ readonly id: string }>();
  const at = findKitEver(useStation(), id);
  if (!at) return <NoSuchKit />;
  const { kit, view } = at;
  const standing = view.standings.get(kit.id);
  const parts = kit.retired ? PARTS.filter((part) => part !== "year" && part !== "dates") : PARTS;
  return (
    <Page
      title={kit.name}
      back={{ to: "/", label: words.board() }}
      {...(standing && { beside: <StandingMark standing={standing.standing} size="large" /> })}
    >
      <FlushPanel at={at} />
      {standing && <KitStanding standing={standing} at={at} />}
      <KitLent at={at} />
      <ToSettle at={at} />
      {!kit.retired && <KitActions at={at} />}
      <KitFacts at={at} />
      <div className="kit-page">
        <KitFindings at={at} />
      </div>
      <MoreOnPhone title={words.more()} parts={parts}>
        <Contained parts={parts} />
        <div className="kit-page">
          {!kit.retired && <KitYear at={at} />}
          {!kit.retired && <KitDates at={at} />}
          <KitRuns at={at} />
          <KitTurnarounds at={at} />
          <KitSeals at={at} />
          <KitContents at={at} />
          <KitEntries key={kit.id} at={at} />
        </div>
      </MoreOnPhone>
    </Page>
  );
}

function ToSettle({ at }: { readonly at: KitAtHand }) {
  const recorder = useRecorder();
  if (at.kit.toSettle.length === 0) return null;
  return <Differences open={at} acts={new KitActs(recorder, at.view, at.kit)} />;
}

function KitFacts({ at: { kit, pattern, view } }: { readonly at: KitAtHand }) {
  const words = useWords("kitPage");
  const telling = useWords("telling");
  const place = view.places.find(({ id }) => id === kit.place)?.name ?? kit.place;
  return (
    <dl className="kit-facts">
      <dt>{words.serial()}</dt>
      <dd className="tabular">{kit.serial}</dd>
      <dt>{words.place()}</dt>
      <dd>{kit.custody.kind === "away" ? words.placeAway({ place, vessel: kit.custody.to }) : place}</dd>
      <dt>{words.pattern()}</dt>
      <dd>{words.version({ name: pattern.name, version: pattern.version })}</dd>
      {kit.sheet && (
        <>
          <dt>{words.onList()}</dt>
          <dd>{saySheet(kit.sheet, telling)}</dd>
        </>
      )}
      <dt>{words.container()}</dt>
      <dd>
        {words.containerIs({
          name: pattern.container.name,
          mass: formatQuantity(pattern.container.mass, "mass", { system: view.units }),
          lifting: sayLifting(pattern.container),
        })}
      </dd>
    </dl>
  );
}

const PARTS = ["year", "dates", "runs", "turnarounds", "seals", "contents", "entries"] as const;

const JUMPS = {
  year: "jumpYear",
  dates: "jumpDates",
  runs: "jumpRuns",
  turnarounds: "jumpTurnarounds",
  seals: "jumpSeals",
  contents: "jumpContents",
  entries: "jumpEntries",
} as const satisfies Readonly<Record<Part, keyof Words["kitPage"]>>;

type Part = (typeof PARTS)[number];

/** Links to the parts of this page, for a small screen. */
function Contained({ parts }: { readonly parts: readonly Part[] }) {
  const words = useWords("kitPage");
  return (
    <nav className="kit-jumps" aria-label={words.onPage()}>
      {parts.map((part) => (
        <a key={part} href={`#${part}`}>
          {words[JUMPS[part]]()}
        </a>
      ))}
    </nav>
  );
}
