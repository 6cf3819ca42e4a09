import { useWords } from "#web/language/index.ts";
import { flowFigure, flowUnit, sayFlow, sayLength, type Words } from "#words";
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
  const words = useWords("delivery");
  const rig = useWords("rig");
  const { units } = about;
  const head = units === "us" ? "ft" : "m";
  const axes = {
    flow: { symbol: flowUnit(units), of: (si: number) => inUnit(si, flowUnit(units), "flow") },
    head: { symbol: head, of: (si: number) => inUnit(si, head, "length") },
  };
  return (
    <div className="delivery-curve">
      <DeliveryCurve
        label={words.curveLabel({ answer: sayAnswer(answer, about, rig), binding: sayBinding(answer, about, rig) })}
        drawn={answer.curve}
        units={axes}
        sayPoint={sayFlow(answer.delivery.flow, units)}
      />
      <details className="extras">
        <summary>{words.curveTable()}</summary>
        <Table
          caption={words.curveCaption()}
          isCaptionHidden
          columns={curveColumns(about, words)}
          rows={answer.curve.points.filter((_, at) => at % 6 === 0)}
          rowKey={({ flow }) => String(flow)}
        />
      </details>
    </div>
  );
}

type CurvePoint = Answered["curve"]["points"][number];

function curveColumns({ units, pattern }: Setting, words: Words["delivery"]): readonly Column<CurvePoint>[] {
  const length = (si: number) => formatQuantity(si, "length", { unit: units === "us" ? "ft" : "m", digits: 2 });
  const column = (key: string, head: string, read: (point: CurvePoint) => string): Column<CurvePoint> => ({
    key,
    head,
    align: "figures",
    cell: read,
  });
  return [
    column("flow", words.flow(), ({ flow }) => sayFlow(flow, units)),
    column("pump", words.pumpGives(), ({ pumpHead }) => length(Math.max(0, pumpHead))),
    column("rig", words.rigNeeds(), ({ rigHead }) => length(rigHead)),
    ...(standsInWater(pattern)
      ? []
      : [
          column("has", words.inletHas(), ({ npshAvailable }) => length(npshAvailable)),
          column("wants", words.inletWants(), ({ npshRequired }) => length(npshRequired)),
        ]),
  ];
}

/** What binds and what to do about it, the change that gains most first. */
export function BindingPanel({ answer, about }: PanelProps) {
  const words = useWords("delivery");
  const rig = useWords("rig");
  const second = saySecondPoint(answer, about.units, rig);
  const { advice } = answer.delivery;
  if (isTooShort(about)) {
    return (
      <Section title={words.binds()}>
        <Notice tone="wrong" title={words.hoseShort()}>
          <p>{words.hoseShortMore()}</p>
        </Notice>
      </Section>
    );
  }
  return (
    <Section title={words.binds()}>
      <p>{sayBinding(answer, about, rig)}</p>
      {second !== undefined && (
        <Notice tone="attention" title={words.twoPoints()}>
          <p>{second}</p>
        </Notice>
      )}
      {advice.length > 0 && (
        <>
          <h3>{words.whatToDo()}</h3>
          <ol className="delivery-advice">
            {advice.map((one) => (
              <li key={one.kind}>{sayAdvice(one, about, rig)}</li>
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
  const words = useWords("delivery");
  const { units, pattern } = about;
  const inWater = standsInWater(pattern);
  const columns: readonly Column<TableRow>[] = [
    { key: "lift", head: inWater ? words.height() : words.suctionLift(), cell: ({ lift }) => sayLength(lift, units) },
    {
      key: "flow",
      head: words.deliversAbout(),
      align: "figures",
      cell: ({ flow }) => (flow > 0 ? sayFlow(flow, units) : words.nothing()),
    },
    {
      key: "band",
      head: words.likelyBetween(),
      align: "figures",
      cell: ({ flow, band }) =>
        flow > 0
          ? words.band({ low: flowFigure(band.low, units, Math.floor), high: flowFigure(band.high, units, Math.ceil) })
          : words.noBand(),
    },
    { key: "because", head: words.binds(), cell: ({ because }) => because },
  ];
  return (
    <Section title={inWater ? words.atEachHeight() : words.atEachLift()}>
      <Table
        caption={inWater ? words.heightCaption() : words.liftCaption()}
        columns={columns}
        rows={answer.table.rows}
        rowKey={({ lift }) => String(lift)}
      />
      <p className="quiet">{words.onCard()}</p>
    </Section>
  );
}
