import { useWords } from "#web/language/index.ts";
import { isSheetOf, type CasualtyState } from "#readiness";
import { useState } from "react";
import { useParams } from "wouter";
import { useStation, type StationView, type TakenSheet } from "#web/device/index.ts";
import { Page } from "#web/parts/index.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { ReadTheirs } from "./read-theirs.tsx";
import { ShowOurs } from "./show-ours.tsx";
import "../casualty.css";
import "./join.css";

type Way = "show" | "read";

/** Two devices without a network make one sheet: each shows its lines to the other, by code or by file. */
export default function HandSheetPage() {
  const words = useWords("sheetJoin");
  const frame = useWords("frame");
  const ways: readonly { readonly id: Way; readonly words: string }[] = [
    { id: "show", words: words.showOurs() },
    { id: "read", words: words.readTheirs() },
  ];
  const { id } = useParams<{ readonly id?: string }>();
  const view = useStation();
  const [taken, setTaken] = useState<TakenSheet>();
  const [way, setWay] = useState<Way>(id === undefined ? "read" : "show");
  const sheet = sheetOf(view, id ?? taken?.sheet);
  const back = sheet
    ? { to: `/casualty/${sheet.id}`, label: sheet.name }
    : { to: "/casualty", label: frame.casualty() };
  return (
    <Page title={sheet ? words.handOver() : words.readSheet()} back={back} frame="work">
      <div className="casualty join">
        {sheet && <PickRow label={words.between()} options={ways} picked={way} onPick={setWay} />}
        {sheet && way === "show" ? (
          <ShowOurs key={sheet.id} sheet={sheet} theirs={taken?.ids} />
        ) : (
          <ReadTheirs taken={taken} onTaken={setTaken} onShow={() => setWay("show")} />
        )}
      </div>
    </Page>
  );
}

function sheetOf({ casualties }: StationView, id: string | undefined): CasualtyState | undefined {
  return id === undefined ? undefined : casualties.find((one) => isSheetOf(one, id));
}
