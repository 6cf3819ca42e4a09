import { flowFigure, flowUnit, sayFlow, sayLength } from "#words";
import { formatQuantity, inUnit } from "#base";
import { DeliveryCurve } from "#web/drawing/delivery-curve.tsx";
import { Notice, Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import {
  isTooShort,
  sayAdvice,
  sayAnswer,
  sayBinding,
  saySecondPoint,
  type Answered,
  type Setting,
} from "#web/rig/delivery-words.ts";
import { standsInWater } from "#web/rig/rig-setting.ts";

interface PanelProps {
  readonly answer: Answered;
  readonly about: Setting;
}

/** The curve with today's point on it, and its figures as a table. */
export function CurvePanel({ answer, about }: PanelProps) {
  const { units } = about;
  const head = units === "us" ? "ft" : "m";
  const axes = {
    flow: { symbol: flowUnit(units), of: (si: number) => inUnit(si, flowUnit(units), "flow") },
    head: { symbol: head, of: (si: number) => inUnit(si, head, "length") },
  };
  return (
    <div className="delivery-curve">
      <DeliveryCurve
        label={`${sayAnswer(answer, about)}. ${sayBinding(answer, about)} The figures are in the table below.`}
        drawn={answer.curve}
        units={axes}
        sayPoint={sayFlow(answer.delivery.flow, units)}
      />
      <details className="extras">
        <summary>The curve as a table</summary>
        <Table
          caption="Head against flow"
          isCaptionHidden
          columns={curveColumns(about)}
          rows={answer.curve.points.filter((_, at) => at % 6 === 0)}
          rowKey={({ flow }) => String(flow)}
        />
      </details>
    </div>
  );
}

type CurvePoint = Answered["curve"]["points"][number];

function curveColumns({ units, pattern }: Setting): readonly Column<CurvePoint>[] {
  const length = (si: number) => formatQuantity(si, "length", { unit: units === "us" ? "ft" : "m", digits: 2 });
  const column = (key: string, head: string, read: (point: CurvePoint) => string): Column<CurvePoint> => ({
    key,
    head,
    align: "figures",
    cell: read,
  });
  return [
    column("flow", "Flow", ({ flow }) => sayFlow(flow, units)),
    column("pump", "The pump gives", ({ pumpHead }) => length(Math.max(0, pumpHead))),
    column("rig", "Height and hoses need", ({ rigHead }) => length(rigHead)),
    ...(standsInWater(pattern)
      ? []
      : [
          column("has", "At the inlet there is", ({ npshAvailable }) => length(npshAvailable)),
          column("wants", "The pump wants there", ({ npshRequired }) => length(npshRequired)),
        ]),
  ];
}

/** What binds and what to do about it, the change that gains most first. */
export function BindingPanel({ answer, about }: PanelProps) {
  const second = saySecondPoint(answer, about.units);
  const { advice } = answer.delivery;
  if (isTooShort(about)) {
    return (
      <Section title="What binds">
        <Notice tone="wrong" title="The hose ends above the water">
          <p>Lay in a longer suction hose, or put the pump lower and let the discharge hose do the lifting.</p>
        </Notice>
      </Section>
    );
  }
  return (
    <Section title="What binds">
      <p>{sayBinding(answer, about)}</p>
      {second !== undefined && (
        <Notice tone="attention" title="Two operating points">
          <p>{second}</p>
        </Notice>
      )}
      {advice.length > 0 && (
        <>
          <h3>What to do about it</h3>
          <ol className="delivery-advice">
            {advice.map((one) => (
              <li key={one.kind}>{sayAdvice(one, about)}</li>
            ))}
          </ol>
        </>
      )}
    </Section>
  );
}

type TableRow = Answered["table"]["rows"][number];

/** The same rig at one lift after another. */
export function LiftTable({ answer, about }: PanelProps) {
  const { units, pattern } = about;
  const inWater = standsInWater(pattern);
  const columns: readonly Column<TableRow>[] = [
    { key: "lift", head: inWater ? "Height" : "Suction lift", cell: ({ lift }) => sayLength(lift, units) },
    {
      key: "flow",
      head: "Delivers about",
      align: "figures",
      cell: ({ flow }) => (flow > 0 ? sayFlow(flow, units) : "nothing"),
    },
    {
      key: "band",
      head: "Likely between",
      align: "figures",
      cell: ({ flow, band }) =>
        flow > 0 ? `${flowFigure(band.low, units, Math.floor)} and ${flowFigure(band.high, units, Math.ceil)}` : "none",
    },
    { key: "because", head: "What binds", cell: ({ because }) => because },
  ];
  return (
    <Section title={inWater ? "At each height" : "At each lift"}>
      <Table
        caption={`Delivery at each ${inWater ? "height of the hose's end above the water" : "suction lift"}, all else as set above`}
        columns={columns}
        rows={answer.table.rows}
        rowKey={({ lift }) => String(lift)}
      />
      <p className="quiet">The pattern's card, as PDF on the kit's page, carries this table for its hoses as packed.</p>
    </Section>
  );
}
