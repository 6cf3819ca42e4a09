import type { PartShelf, StockPart } from "#readiness";
import { mayWrite } from "#station";
import { useState } from "react";
import { useStation } from "#web/device/index.ts";
import { Button, ButtonRow } from "#web/parts/index.ts";
import { CountForm } from "./count-form.tsx";
import { OrderForm } from "./order-form.tsx";
import { ReceiveForm } from "./receive-form.tsx";
import { TakeForm } from "./take-form.tsx";
import { useWords } from "#web/language/index.ts";

interface ShelfActsProps {
  readonly part: StockPart;
  readonly place: string;
  readonly shelf: PartShelf;
}

const ACTS = [
  { act: "count", words: "count", kind: "stock-counted" },
  { act: "receive", words: "somethingCame", kind: "stock-received" },
  { act: "use", words: "takeSome", kind: "stock-used" },
  { act: "move", words: "moveSome", kind: "stock-moved" },
  { act: "scrap", words: "scrapSome", kind: "stock-scrapped" },
  { act: "order", words: "orderSome", kind: "stock-ordered" },
] as const;

type ActName = (typeof ACTS)[number]["act"];

/** What can be done with a part on one shelf: one form at a time. */
export function ShelfActs({ part, place, shelf }: ShelfActsProps) {
  const words = useWords("stockForms");
  const { me } = useStation();
  const [act, setAct] = useState<ActName>();
  const done = () => setAct(undefined);
  return (
    <>
      <div className="stock-acts">
        <ButtonRow>
          {ACTS.filter(({ kind }) => mayWrite(me.role, kind)).map((one) => (
            <Button
              key={one.act}
              isOpen={act === one.act}
              onPress={() => setAct(act === one.act ? undefined : one.act)}
            >
              {words[one.words]()}
            </Button>
          ))}
        </ButtonRow>
      </div>
      {act === "count" && <CountForm key={place} part={part} shelf={shelf} onDone={done} />}
      {act === "receive" && <ReceiveForm key={place} part={part} place={place} onDone={done} />}
      {act === "order" && <OrderForm key={place} line={{ part, place, count: 1 }} onDone={done} />}
      {(act === "use" || act === "move" || act === "scrap") && (
        <TakeForm key={`${act} ${place}`} how={act} part={part} shelf={shelf} onDone={done} />
      )}
    </>
  );
}
