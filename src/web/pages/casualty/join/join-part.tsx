import { useWords, withParts } from "#web/language/index.ts";
import type { Entry } from "#log";
import { isSheetOf, type CasualtyState } from "#readiness";
import { mayWrite, strikeEntry } from "#station";
import { useState } from "react";
import { doingOf, useDeviceState, useRecorder } from "#web/device/index.ts";
import { Button, ButtonLink, ButtonRow, Notice, Section, Timestamp } from "#web/parts/index.ts";
import { StrikeDialog } from "#web/kit-view/strike-dialog.tsx";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { useSheet } from "../sheet/use-sheet.ts";
import { JoinForm } from "./join-form.tsx";
import { NotProved } from "./not-proved.tsx";

/** Another device's lines of this sheet, and another sheet of this same casualty. */
export function JoinPart() {
  const words = useWords("sheetJoin");
  const { casualty } = useSheet();
  return (
    <Section title={words.two()}>
      <HandedHere />
      <ButtonRow>
        <ButtonLink to={`/casualty/${casualty.id}/hand`}>{words.byCode()}</ButtonLink>
      </ButtonRow>
      <Joined />
      <Others />
    </Section>
  );
}

/** Lines of this sheet that came from another device and that the station is not known to have. */
function HandedHere() {
  const words = useWords("sheetJoin");
  const { casualty, view } = useSheet();
  const state = useDeviceState();
  if (state.kind !== "signed-in") return null;
  const lines = state.handed.filter(({ entry }) => isSheetOf(casualty, entry.subject.slice("casualty:".length)));
  const last = lines.at(-1);
  if (last === undefined) return null;
  return (
    <Notice title={words.handedLines({ count: lines.length })}>
      <p>
        {withParts(words.lastTaken, {
          at: <Timestamp at={last.taken} as="time" />,
          person: nameOf(view, last.from.by),
        })}
      </p>
      <NotProved />
    </Notice>
  );
}

/** The sheets that are read as one, and the way to part them. */
function Joined() {
  const words = useWords("sheetJoin");
  const { casualty, view } = useSheet();
  const recorder = useRecorder();
  const [parting, setParting] = useState<Entry>();
  const { sheets = [], joins = [] } = casualty;
  if (sheets.length === 0) return null;
  const lines = view.entriesOf(`casualty:${casualty.id}`);
  const mine = joins
    .flatMap(({ entry }) => lines.filter(({ id }) => id === entry))
    .filter((entry) => strikeEntry(doingOf(view), entry, "asked").kind === "entry");
  return (
    <>
      <p>{words.oneCasualty({ count: sheets.length })}</p>
      <ul className="casualty-list">
        {sheets.map(({ id, name, opened, closed }) => (
          <li key={id}>
            {withParts(closed ? words.sheetLineClosed : words.sheetLine, {
              name,
              at: <Timestamp at={opened.at} />,
              person: nameOf(view, opened.by),
            })}
          </li>
        ))}
      </ul>
      {mine.map((entry) => (
        <Button key={entry.id} onPress={() => setParting(entry)}>
          {words.part()}
        </Button>
      ))}
      {parting && (
        <StrikeDialog
          what={words.joinedWith()}
          judge={(reason) => strikeEntry(doingOf(view), parting, reason)}
          onStrike={(reason) => recorder.strike(parting, reason)}
          onClose={() => setParting(undefined)}
        />
      )}
    </>
  );
}

/** So long after it was opened another sheet may still be hers [ms]. */
const RECENT_MS = 12 * 3_600_000;

function Others() {
  const words = useWords("sheetJoin");
  const { casualty, view } = useSheet();
  const [chosen, setChosen] = useState<CasualtyState>();
  if (!mayWrite(view.me.role, "casualty-joined")) return null;
  const others = view.casualties.filter((one) => one.id !== casualty.id && isNear(casualty, one));
  const other = others.find(({ id }) => id === chosen?.id);
  if (other) return <JoinForm key={other.id} other={other} onDone={() => setChosen(undefined)} />;
  return others.map((one) => (
    <Button key={one.id} wide onPress={() => setChosen(one)}>
      <span>
        {withParts(one.closed ? words.sameAsClosed : words.sameAs, {
          name: one.name,
          at: <Timestamp at={one.opened.at} as="time" />,
        })}
      </span>
    </Button>
  ));
}

function isNear(one: CasualtyState, other: CasualtyState): boolean {
  return Math.abs(Date.parse(one.opened.at) - Date.parse(other.opened.at)) < RECENT_MS;
}
