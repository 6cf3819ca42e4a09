import type { Words } from "#words";
import { arrivalOf, isLeadSupposed, type OpenOrder } from "#readiness";
import { closeOrder, mayWrite } from "#station";
import { useState } from "react";
import { useCarryOut, type StationView } from "#web/device/index.ts";
import { Button, ButtonRow, sayDate, Section, TextField, useDoing } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { FormFoot } from "./form-foot.tsx";
import { ReceiveForm } from "./receive-form.tsx";
import { useWords } from "#web/language/index.ts";

interface OnOrderProps {
  readonly view: StationView;
  readonly orders: readonly OpenOrder[];
}

type Chosen = { readonly how: "receive" | "close"; readonly one: OpenOrder };

/** What is waited for: received against its order, or waited for no longer. */
export function OnOrder({ view, orders }: OnOrderProps) {
  const words = useWords("stock");
  const [chosen, setChosen] = useState<Chosen>();
  if (orders.length === 0) return null;
  const done = () => setChosen(undefined);
  return (
    <Section title={words.onOrder()}>
      <div className="stock-acts">
        <Table
          caption={words.onOrder()}
          isCaptionHidden
          columns={columns(view, words, setChosen)}
          rows={orders}
          rowKey={({ order }) => order.id}
        />
      </div>
      {chosen?.how === "receive" && (
        <ReceiveForm
          key={chosen.one.order.id}
          part={chosen.one.part}
          place={chosen.one.order.place}
          order={chosen.one.order.id}
          toCome={chosen.one.outstanding}
          onDone={done}
        />
      )}
      {chosen?.how === "close" && <CloseForm key={chosen.one.order.id} one={chosen.one} onDone={done} />}
    </Section>
  );
}

function columns(
  view: StationView,
  words: Words["stock"],
  choose: (chosen: Chosen) => void,
): readonly Column<OpenOrder>[] {
  return [
    { key: "part", head: words.part(), cell: ({ part }) => part.name },
    {
      key: "for",
      head: words.for(),
      cell: ({ order }) => view.places.find(({ id }) => id === order.place)?.name ?? "",
    },
    {
      key: "count",
      head: words.toCome(),
      align: "figures",
      cell: ({ order, outstanding }) => words.outstanding({ count: outstanding, ordered: order.count }),
    },
    { key: "day", head: words.orderedOn(), cell: ({ order }) => sayDate(order.day) },
    {
      key: "due",
      head: words.countedOn(),
      cell: ({ part, order }) => (
        <Due
          day={arrivalOf(part, order)}
          today={view.today}
          isSupposed={order.expected === undefined && isLeadSupposed(part)}
        />
      ),
    },
    {
      key: "acts",
      isAct: true,
      head: words.outcome(),
      cell: (one) => (
        <ButtonRow>
          {mayWrite(view.me.role, "stock-received") && (
            <Button
              kind="quiet"
              label={words.partCame({ part: one.part.name })}
              onPress={() => choose({ how: "receive", one })}
            >
              {words.came()}
            </Button>
          )}
          {mayWrite(view.me.role, "order-closed") && (
            <Button
              kind="quiet"
              label={words.partWaitNoLonger({ part: one.part.name })}
              onPress={() => choose({ how: "close", one })}
            >
              {words.waitNoLonger()}
            </Button>
          )}
        </ButtonRow>
      ),
    },
  ];
}

interface DueProps {
  readonly day: string;
  readonly today: string;
  /** Counted by the lead time that is supposed, as nobody gave one. */
  readonly isSupposed: boolean;
}

function Due({ day, today, isSupposed }: DueProps) {
  const words = useWords("stock");
  const said = isSupposed ? words.supposedDay({ day: sayDate(day) }) : sayDate(day);
  if (day >= today) return said;
  return <strong className="stock-wrong">{words.late({ day: said })}</strong>;
}

function CloseForm({ one: { part, order }, onDone }: { readonly one: OpenOrder; readonly onDone: () => void }) {
  const words = useWords("stock");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [reason, setReason] = useState("");
  const save = async () => {
    if (await doing.run(() => carryOut((now) => closeOrder(now, part.id, order.id, reason.trim())))) onDone();
  };
  return (
    <section className="stock-form" aria-label={words.orderOf({ part: part.name })}>
      <TextField label={words.restWillNotCome({ part: part.name })} value={reason} onChange={setReason} />
      <FormFoot
        doing={doing}
        failure={words.notClosed()}
        does={words.stopWaiting()}
        isReady={reason.trim() !== ""}
        onSave={save}
        onLeave={onDone}
      />
    </section>
  );
}
