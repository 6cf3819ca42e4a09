import { useId } from "react";
import { line } from "d3-shape";
import {
  placeDelivery,
  type AxisUnit,
  type DeliveryDrawn,
  type DeliveryFrame,
  type DeliveryPlaces,
} from "./delivery-scales.ts";
import { useWords } from "../language/index.ts";
import type { Words } from "#words";
import { Axes } from "./axes.tsx";
import { WideDrawing } from "./wide-drawing.tsx";
import "./drawing.css";
import "./delivery-curve.css";

export interface DeliveryCurveProps {
  /** The whole in one sentence; the figures are in a table beside it. */
  readonly label: string;
  readonly drawn: DeliveryDrawn;
  readonly units: { readonly flow: AxisUnit; readonly head: AxisUnit };
  /** Written beside the point: "440 L/min". */
  readonly sayPoint: string;
}

/** Pump curve and what height and hoses need, the point where the pump works, its band, and where the suction ends. */
export function DeliveryCurve(props: DeliveryCurveProps) {
  const words = useWords("drawing");
  return (
    <div className="curve">
      <WideDrawing>{(width) => <Curve {...props} words={words} width={width} />}</WideDrawing>
      <CurveLegend drawn={props.drawn} words={words} />
    </div>
  );
}

interface Spoken {
  readonly words: Words["drawing"];
}

interface PartProps {
  readonly placed: DeliveryPlaces;
  readonly frame: DeliveryFrame;
}

function Curve({
  label,
  drawn,
  units,
  sayPoint,
  words,
  width,
}: DeliveryCurveProps & Spoken & { readonly width: number }) {
  const id = useId();
  const height = width < 560 ? 290 : 380;
  const frame: DeliveryFrame = { left: 40, right: width - 12, top: 32, bottom: height - 52 };
  const placed = placeDelivery(drawn, units, frame);
  return (
    <svg width={width} height={height} role="img" aria-label={label}>
      <Fills id={id} frame={frame} />
      <text x={0} y={18}>
        {words.head({ unit: units.head.symbol })}
      </text>
      <text x={frame.right} y={height - 6} textAnchor="end">
        {words.flow({ unit: units.flow.symbol })}
      </text>
      <Axes field={frame} up={placed.up} across={placed.across} />
      <g clipPath={`url(#${id}-field)`}>
        <Unfed placed={placed} frame={frame} fill={`url(#${id}-unfed)`} />
        <Band placed={placed} frame={frame} />
        <Lines placed={placed} />
      </g>
      <Points placed={placed} frame={frame} sayPoint={sayPoint} />
    </svg>
  );
}

/** The field's edge, and the hatching of what the suction does not feed. */
function Fills({ id, frame }: { readonly id: string; readonly frame: DeliveryFrame }) {
  return (
    <defs>
      <clipPath id={`${id}-field`}>
        <rect x={frame.left} y={frame.top} width={frame.right - frame.left} height={frame.bottom - frame.top} />
      </clipPath>
      <pattern id={`${id}-unfed`} width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path className="curve-hatch" d="M0 0V9" />
      </pattern>
    </defs>
  );
}

/** Flows the suction does not feed, hatched, with their edge. */
function Unfed({ placed: { limit }, frame, fill }: PartProps & { readonly fill: string }) {
  if (limit === undefined) return null;
  return (
    <g>
      <rect
        x={limit}
        y={frame.top}
        width={Math.max(0, frame.right - limit)}
        height={frame.bottom - frame.top}
        fill={fill}
      />
      <path className="curve-limit" d={`M${limit} ${frame.top}V${frame.bottom}`} />
    </g>
  );
}

function Band({ placed: { band }, frame }: PartProps) {
  if (!band) return null;
  return (
    <rect
      className="curve-band"
      x={band.from}
      y={frame.top}
      width={Math.max(1, band.to - band.from)}
      height={frame.bottom - frame.top}
    />
  );
}

const draw = line<{ readonly x: number; readonly y: number }>(
  (point) => point.x,
  (point) => point.y,
);

function Lines({ placed: { pump, rig } }: Pick<PartProps, "placed">) {
  return (
    <g>
      <path className="curve-rig" d={draw([...rig]) ?? ""} />
      <path className="curve-pump" d={draw([...pump]) ?? ""} />
    </g>
  );
}

function Points({ placed: { point, others }, frame, sayPoint }: PartProps & { readonly sayPoint: string }) {
  return (
    <g>
      {others.map(({ x, y, why }) => (
        <circle key={why} className={`curve-other curve-${why}`} cx={x} cy={y} r={6} />
      ))}
      {point && (
        <>
          <path className="curve-drop" d={`M${point.x} ${point.y}V${frame.bottom}`} />
          <circle className="curve-point" cx={point.x} cy={point.y} r={7} />
          <text
            className="curve-point-name"
            x={point.x + (isRight(point.x, frame) ? -12 : 12)}
            y={frame.bottom - 12}
            textAnchor={isRight(point.x, frame) ? "end" : "start"}
          >
            {sayPoint}
          </text>
        </>
      )}
    </g>
  );
}

function isRight(x: number, { left, right }: DeliveryFrame): boolean {
  return x > left + 0.6 * (right - left);
}

/** What each line and mark means, in words; only what is in the picture. */
function CurveLegend({ drawn, words }: Pick<DeliveryCurveProps, "drawn"> & Spoken) {
  const has = (why: "unstable" | "not-fed") =>
    drawn.operating.some(
      (one) => one.stable === (why === "not-fed") && Math.abs(one.flow - drawn.flow) > 1e-6 * one.flow,
    );
  return (
    <ul className="curve-legend">
      <Mark words={words.pumpGives()} mark={<path className="curve-pump" d="M1 9H39" />} />
      <Mark words={words.rigNeeds()} mark={<path className="curve-rig" d="M1 9H39" />} />
      {drawn.flow > 0 && (
        <>
          <Mark words={words.worksHere()} mark={<circle className="curve-point" cx="20" cy="9" r="6" />} />
          <Mark words={words.likelyFlow()} mark={<rect className="curve-band" x="6" y="1" width="28" height="16" />} />
        </>
      )}
      {drawn.suctionLimit !== undefined && (
        <Mark words={words.suctionEnds()} mark={<path className="curve-limit" d="M20 0V18" />} />
      )}
      {has("not-fed") && (
        <Mark words={words.curveAlone()} mark={<circle className="curve-other" cx="20" cy="9" r="6" />} />
      )}
      {has("unstable") && (
        <Mark words={words.notStable()} mark={<circle className="curve-other curve-unstable" cx="20" cy="9" r="6" />} />
      )}
    </ul>
  );
}

function Mark({ words, mark }: { readonly words: string; readonly mark: React.ReactNode }) {
  return (
    <li>
      <svg width="40" height="18" aria-hidden="true">
        {mark}
      </svg>
      {words}
    </li>
  );
}
