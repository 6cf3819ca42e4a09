import { InputError } from "#base";
import type { Effect } from "#kit";
import { holdersOf, isSameLot, recallNote, type LotInKit, type Recall, type Stock, type StockPart } from "#readiness";
import { mayWrite, raiseFinding, recallLot } from "#station";
import { useState } from "react";
import { uuidv7 } from "uuidv7";
import { Link, useParams, useSearchParams } from "wouter";
import { doingOf, useRecorder, useStation, type StationView } from "#web/device/index.ts";
import { sayEffect } from "#web/act/finding-choice.ts";
import { perform } from "#web/act/acts.ts";
import { sayThere, stockIn } from "#web/kit-view/stock-view.ts";
import { Button, ErrorBox, Notice, Page, Section, TextField, useDoing } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { NoSuchPart } from "./no-such-part.tsx";
import "./stock.css";
import { useWords } from "#web/language/index.ts";

const EFFECTS: readonly Effect[] = ["grounds", "limits", "notes"];

/** A lot that may not be used: which kits and shelves hold it, and the finding on each kit, raised in one act. */
export default function RecallPage() {
  const words = useWords("stockPart");
  const { part: wanted = "" } = useParams<{ readonly part: string }>();
  const [search] = useSearchParams();
  const view = useStation();
  const stock = stockIn(view);
  const part = view.parts.find(({ id }) => id === wanted);
  if (!part) return <NoSuchPart />;
  return (
    <Page title={words.recallTitle({ part: part.name })} back={{ to: `/stock/${part.id}`, label: part.name }}>
      <RecallForm key={part.id} part={part} view={view} stock={stock} first={search.get("lot") ?? ""} />
    </Page>
  );
}

interface RecallFormProps {
  readonly part: StockPart;
  readonly view: StationView;
  readonly stock: Stock;
  readonly first: string;
}

type Said = Pick<Recall, "lot" | "reason" | "effect" | "limit">;

function RecallForm({ part, view, stock, first }: RecallFormProps) {
  const words = useWords("stockPart");
  const lineWords = useWords("kitLine");
  const recorder = useRecorder();
  const doing = useDoing();
  const [lot, setLot] = useState(first);
  const [reason, setReason] = useState("");
  const [effect, setEffect] = useState<Effect>();
  const [limit, setLimit] = useState("");
  const mark = lot.trim();
  const made = part.recalls.findLast((recall) => mark !== "" && isSameLot(recall.lot, mark));
  const holders = holdersOf({ part, lot: mark, kits: view.kits, stock });
  const open = holders.kits.filter(({ finding }) => finding === undefined);
  const said = made ?? saidOf(mark, reason, effect, limit);
  const isDone = made !== undefined && open.length === 0;
  const raise = () =>
    doing.run(async () => {
      if (!said) return;
      const now = doingOf(view);
      const findings = open.map((one) => findingOf(view, part, said, one));
      const recall = made ? [] : [recallLot(now, part.id, saidBody(said))];
      const refused = [...recall, ...findings].flatMap((act) => (act.kind === "refused" ? act.because : []));
      if (refused.length > 0) throw new InputError(refused);
      for (const act of recall) await perform(recorder, act);
      for (const act of findings) await perform(recorder, act);
    });
  return (
    <div className="stock-form">
      <TextField label={words.lotAsMarked()} value={lot} onChange={setLot} isShort limit={40} />
      {mark !== "" && <Holders view={view} holders={holders} />}
      {made ? (
        <Notice tone="wrong" title={words.recalledBecause({ reason: made.reason })} />
      ) : (
        <>
          <TextField label={words.whyRecalled()} value={reason} onChange={setReason} isLong limit={900} />
          <Choice
            label={words.effectOnKit()}
            options={EFFECTS.map((one) => ({ value: one, label: sayEffect(one, lineWords) }))}
            value={effect}
            onChange={setEffect}
          />
          {effect === "limits" && <TextField label={words.limit()} value={limit} onChange={setLimit} limit={300} />}
        </>
      )}
      <ErrorBox error={doing.error} title={words.notRaised()} />
      {isDone ? (
        <Notice title={words.allRaised()} isNews />
      ) : (
        mayWrite(view.me.role, "lot-recalled") && (
          <Button kind="primary" isDisabled={!said || mark === ""} isBusy={doing.isBusy} onPress={() => void raise()}>
            {open.length === 0 ? words.recallLot() : words.recallRaise({ count: open.length })}
          </Button>
        )
      )}
    </div>
  );
}

function saidOf(lot: string, reason: string, effect: Effect | undefined, limit: string): Said | undefined {
  if (reason.trim() === "" || effect === undefined || (effect === "limits" && limit.trim() === "")) return undefined;
  return { lot, reason: reason.trim(), effect, ...(effect === "limits" && { limit: limit.trim() }) };
}

function saidBody({ lot, reason, effect, limit }: Said) {
  return { lot, reason, effect, ...(limit !== undefined && { limit }) };
}

/** "Other" than the pattern's modes: that a lot is recalled is no way in which an item fails. */
function findingOf(view: StationView, part: StockPart, said: Said, { kit, item }: LotInKit) {
  const { effect, limit } = said;
  const words = { mode: "other", effect, note: recallNote(part, said), ...(limit !== undefined && { limit }) };
  return raiseFinding(doingOf(view), kit, { finding: uuidv7(), item, ...words, photos: [] });
}

interface HoldersProps {
  readonly view: StationView;
  readonly holders: ReturnType<typeof holdersOf>;
}

function Holders({ view, holders: { kits, shelves } }: HoldersProps) {
  const words = useWords("stockPart");
  const kitView = useWords("kitView");
  return (
    <Section title={words.holders()}>
      {kits.length + shelves.length === 0 && <p>{words.noHolders()}</p>}
      <ul className="stock-lots">
        {kits.map(({ kit, item, finding }) => (
          <li key={`${kit.id} ${item}`}>
            <Link to={`/kit/${kit.id}`}>{kit.name}</Link>, {itemName(view, kit.pattern, item)}
            {kit.custody.kind === "away" && words.holderAway({ who: kit.custody.to })}
            {finding && (finding.closed ? words.findingClosed() : words.findingRaised())}
          </li>
        ))}
        {shelves.map(({ shelf, count }) => (
          <li key={shelf.place}>
            {words.shelfHolds({
              place: view.places.find(({ id }) => id === shelf.place)?.name ?? shelf.place,
              there: sayThere(count, kitView),
            })}
          </li>
        ))}
      </ul>
    </Section>
  );
}

function itemName({ patterns }: StationView, pattern: string, item: string): string {
  return patterns.get(pattern)?.items.find(({ id }) => id === item)?.name ?? item;
}
