import { useReady, useWords } from "#web/language/index.ts";
import { isSheetOf, namesApart, type CasualtyState } from "#readiness";
import { useMemo } from "react";
import { useLocation, useParams, useSearch } from "wouter";
import { useStation } from "#web/device/index.ts";
import { EmptyState, Page } from "#web/parts/index.ts";
import { believableOf } from "#questions";
import { ClosedSheet } from "./close/closed-sheet.tsx";
import { LiveSheet } from "./sheet/live-sheet.tsx";
import { spaceAt } from "#questions";
import { sheetPath } from "./soundings/sounding-place.ts";
import { useScene } from "./word/use-scene.ts";
import { SheetContext, useSheetOf } from "./sheet/use-sheet.ts";
import "./casualty.css";
import "./sheet.css";

/** Groups that some part of a sheet speaks from: all are here before she is shown, and no part waits for its own. */
const SPOKEN = [
  "casualty",
  "casualtyTold",
  "entryKinds",
  "hazards",
  "launchTold",
  "sheet",
  "sheetBoat",
  "sheetJoin",
  "sheetPumps",
  "sheetSeen",
  "sheetTop",
  "sheetWord",
  "soundings",
] as const;

/** The sheet of one casualty: are we gaining, what to do next, and everything written down. */
export default function SheetPage() {
  useReady(...SPOKEN);
  const words = useWords("casualty");
  const frame = useWords("frame");
  const { id = "" } = useParams<{ readonly id: string }>();
  const casualty = useStation().casualties.find((one) => isSheetOf(one, id));
  const back = { to: "/casualty", label: frame.casualty() };
  if (!casualty) {
    return (
      <Page title={words.noCasualty()} back={back}>
        <EmptyState title={words.noCasualtyNews()}>
          <p>{words.noCasualtyMore()}</p>
        </EmptyState>
      </Page>
    );
  }
  return (
    <Page title={casualty.name} back={back} frame="work">
      <SheetBody key={casualty.id} casualty={casualty} />
    </Page>
  );
}

function SheetBody({ casualty: given }: { readonly casualty: CasualtyState }) {
  const told = useMemo(() => ({ ...given, pumps: namesApart(given.pumps) }), [given]);
  const believable = useMemo(() => believableOf(told), [told]);
  const { casualty } = believable;
  const chosen = new URLSearchParams(useSearch()).get("space") ?? undefined;
  const [, navigate] = useLocation();
  const choose = (space: string) => navigate(sheetPath(casualty.id, space), { replace: true });
  const scene = useScene(casualty, chosen);
  const sheet = useSheetOf(told, believable, spaceAt(casualty, chosen)?.id ?? "");
  return (
    <SheetContext value={sheet}>
      {casualty.closed ? <ClosedSheet scene={scene} /> : <LiveSheet scene={scene} onSpace={choose} />}
    </SheetContext>
  );
}
