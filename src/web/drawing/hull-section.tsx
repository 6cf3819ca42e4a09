import { useId } from "react";
import { placeProfile, placeStern, type HullDrawn } from "./hull-section-places.ts";
import { useWords } from "../language/index.ts";
import { WideDrawing } from "./wide-drawing.tsx";
import "./drawing.css";
import "./hull-section.css";

export interface HullSectionProps {
  /** The whole in one sentence; the figures stand in words beside it. */
  readonly label: string;
  readonly drawn: HullDrawn;
  /** "0.69 m to the deck", and the level inside. */
  readonly sayDeck: string;
  readonly sayInside: string;
}

/** Between the two views [px]. */
const GAP = 16;

/** The boat from the side and from astern, with the water outside and in. Heights in the side view are stretched. */
export function HullSection(props: HullSectionProps) {
  return <WideDrawing>{(width) => <Views {...props} width={width} />}</WideDrawing>;
}

function Views({ width, ...props }: HullSectionProps & { readonly width: number }) {
  const isWide = width > 520;
  const side = isWide ? Math.floor(width * 0.72) : width;
  return (
    <div className={isWide ? "hull-views" : ""}>
      <Side {...props} width={side} />
      <Stern drawn={props.drawn} width={isWide ? width - side - GAP : Math.min(width, 240)} />
    </div>
  );
}

function Side({ label, drawn, sayDeck, sayInside, width }: HullSectionProps & { readonly width: number }) {
  const id = useId();
  const height = Math.min(250, Math.max(190, Math.round(width * 0.5)));
  const frame = { left: 8, right: width - 8, top: 26, bottom: height - 22 };
  const places = placeProfile(drawn, frame);
  return (
    <svg width={width} height={height} role="img" aria-label={label}>
      <defs>
        <clipPath id={`${id}-hull`}>
          <path d={places.outline} />
        </clipPath>
      </defs>
      <rect className="hull-sea" x={0} y={places.sea} width={width} height={height - places.sea} />
      <path className="hull-body" d={places.outline} />
      <g clipPath={`url(#${id}-hull)`}>
        {places.water.map(({ name, path }) => (
          <path key={name} className="hull-water" d={path} />
        ))}
        {places.bulkheads.map((path) => (
          <path key={path} className="hull-bulkhead" d={path} />
        ))}
      </g>
      <path className="hull-shell" d={places.outline} />
      <path className="hull-sea-line" d={`M0 ${places.sea}H${width}`} />
      <SideWords places={places} width={width} height={height} sayDeck={sayDeck} sayInside={sayInside} />
    </svg>
  );
}

interface SideWordsProps extends Pick<HullSectionProps, "sayDeck" | "sayInside"> {
  readonly places: ReturnType<typeof placeProfile>;
  readonly width: number;
  readonly height: number;
}

function SideWords({ places, width, height, sayDeck, sayInside }: SideWordsProps) {
  const words = useWords("sheetBoat");
  const { freeboard, water } = places;
  const isRight = freeboard.x > width / 2;
  const inside = water[0];
  return (
    <g>
      <text className="hull-end" x={2} y={18}>
        {words.bow()}
      </text>
      <text className="hull-end" x={width - 2} y={18} textAnchor="end">
        {words.stern()}
      </text>
      <path className="hull-freeboard" d={`M${freeboard.x} ${freeboard.deck}V${freeboard.sea}`} />
      <text
        className="hull-word"
        x={isRight ? width - 2 : 2}
        y={Math.max(40, freeboard.clear - 10)}
        textAnchor={isRight ? "end" : "start"}
      >
        {sayDeck}
      </text>
      {inside && (
        <text className="hull-word" x={clamp(inside.x, 60, width - 60)} y={height - 6} textAnchor="middle">
          {sayInside}
        </text>
      )}
    </g>
  );
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}

function Stern({ drawn, width }: Pick<HullSectionProps, "drawn"> & { readonly width: number }) {
  const words = useWords("sheetBoat");
  const id = useId();
  const height = 170;
  const places = placeStern(drawn, { left: 0, right: width, top: 0, bottom: height });
  const turn = `rotate(${places.turn.degrees} ${places.turn.x} ${places.turn.y})`;
  return (
    <svg width={width} height={height} role="img" aria-label={words.fromAstern()}>
      <defs>
        <clipPath id={`${id}-stern`}>
          <path d={places.outline} transform={turn} />
        </clipPath>
      </defs>
      <rect className="hull-sea" x={0} y={places.sea} width={width} height={height - places.sea} />
      <path className="hull-body" d={places.outline} transform={turn} />
      <rect
        className="hull-water"
        clipPath={`url(#${id}-stern)`}
        x={0}
        y={places.inside}
        width={width}
        height={Math.max(0, height - places.inside)}
      />
      <path className="hull-shell" d={places.outline} transform={turn} />
      <path className="hull-sea-line" d={`M0 ${places.sea}H${width}`} />
      <text className="hull-end" x={2} y={16}>
        {words.port()}
      </text>
      <text className="hull-end" x={width - 2} y={16} textAnchor="end">
        {words.starboard()}
      </text>
    </svg>
  );
}
