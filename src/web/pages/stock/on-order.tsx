import { formatDate } from "#base";
import { arrivalOf, type OpenOrder } from "#readiness";
import { closeOrder, mayWrite } from "#station";
import { useState } from "react";
import { useCarryOut, type StationView } from "#web/device/index.ts";
import { Button, ButtonRow, Section, TextField, useDoing } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { FormFoot } from "./form-foot.tsx";
import { ReceiveForm } from "./receive-form.tsx";

interface OnOrderProps {
  readonly view: StationView;
  readonly orders: readonly OpenOrder[];
}

type Chosen = { readonly how: "receive" | "close"; readonly one: OpenOrder };

/** What is waited for: received against its order, or waited for no longer. */
export function OnOrder({ view, orders }: OnOrderProps) {
  const [chosen, setChosen] = useState<Chosen>();
  if (orders.length === 0) return null;
  const done = () => setChosen(undefined);
  return (
    <Section title="On order">
      <Table
        caption="On order"
        isCaptionHidden
        columns={columns(view, setChosen)}
        rows={orders}
        rowKey={({ order }) => order.id}
      />
      {chosen?.how === "receive" && (
        <ReceiveForm
          key={chosen.one.order.id}
          part={chosen.one.part}
          place={chosen.one.order.place}
          order={chosen.one.order.id}
          onDone={done}
        />
      )}
      {chosen?.how === "close" && <CloseForm key={chosen.one.order.id} one={chosen.one} onDone={done} />}
    </Section>
  );
}

function columns(view: StationView, choose: (chosen: Chosen) => void): readonly Column<OpenOrder>[] {
  return [
    { key: "part", head: "Part", cell: ({ part }) => part.name },
    { key: "for", head: "For", cell: ({ order }) => view.places.find(({ id }) => id === order.place)?.name ?? "" },
    {
      key: "count",
      head: "To come",
      align: "figures",
      cell: ({ order, outstanding }) => `${outstanding} of ${order.count}`,
    },
    { key: "day", head: "Ordered", cell: ({ order }) => formatDate(order.day) },
    {
      key: "due",
      head: "Counted on",
      cell: ({ part, order }) => <Due day={arrivalOf(part, order)} today={view.today} />,
    },
    {
      key: "acts",
      isAct: true,
      head: "What came of it",
      cell: (one) => (
        <ButtonRow>
          {mayWrite(view.me.role, "stock-received") && (
            <Button kind="quiet" label={`It came: ${one.part.name}`} onPress={() => choose({ how: "receive", one })}>
              It came
            </Button>
          )}
          {mayWrite(view.me.role, "order-closed") && (
            <Button
              kind="quiet"
              label={`No longer waited for: ${one.part.name}`}
              onPress={() => choose({ how: "close", one })}
            >
              No longer waited for
            </Button>
          )}
        </ButtonRow>
      ),
    },
  ];
}

function Due({ day, today }: { readonly day: string; readonly today: string }) {
  if (day >= today) return formatDate(day);
  return <strong className="stock-wrong">{formatDate(day)}: late</strong>;
}

function CloseForm({ one: { part, order }, onDone }: { readonly one: OpenOrder; readonly onDone: () => void }) {
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [reason, setReason] = useState("");
  const save = async () => {
    if (await doing.run(() => carryOut((now) => closeOrder(now, part.id, order.id, reason.trim())))) onDone();
  };
  return (
    <section className="stock-form" aria-label={`Order of ${part.name}`}>
      <TextField
        label={`The rest of the order of ${part.name} will not come, because`}
        value={reason}
        onChange={setReason}
      />
      <FormFoot
        doing={doing}
        failure="Not closed"
        does="Wait for it no longer"
        isReady={reason.trim() !== ""}
        onSave={save}
        onLeave={onDone}
      />
    </section>
  );
}
