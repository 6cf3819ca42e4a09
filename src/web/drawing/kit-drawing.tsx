import { useId } from "react";
import { DRAWING_FIELD, litShapes, type Drawing, type LitShape } from "#kit";
import "./kit-drawing.css";

interface KitDrawingProps {
  readonly drawing: Drawing;
  /** Parts that stand out. */
  readonly lit?: readonly string[];
  readonly className?: string;
  /** What readers hear; hidden from them where absent. */
  readonly label?: string;
}

const NOTHING_LIT: readonly string[] = [];
/** Hatching: lines so far apart in the field of a drawing. */
const HATCH = 8;

/** A drawing of a kit as it is drawn by day and by night, with the parts told of outlined and hatched. */
export function KitDrawing({ drawing, lit = NOTHING_LIT, className = "", label }: KitDrawingProps) {
  const hatch = useId();
  const shapes = litShapes(drawing, lit);
  const isLit = shapes.some((one) => one.lit !== "plain");
  return (
    <svg
      className={`kit-drawing ${isLit ? "kit-drawing-lit" : ""} ${className}`}
      viewBox={`0 0 ${DRAWING_FIELD.width} ${DRAWING_FIELD.height}`}
      {...(label === undefined ? { "aria-hidden": true } : { role: "img", "aria-label": label })}
    >
      {isLit && <Hatch id={hatch} />}
      {shapes.map((one, index) => (
        <OneShape key={`${index} ${one.shape.d}`} one={one} hatch={hatch} />
      ))}
    </svg>
  );
}

function Hatch({ id }: { readonly id: string }) {
  return (
    <defs>
      <pattern id={id} width={HATCH} height={HATCH} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path className="look-hatching" d={`M0 0L0 ${HATCH}`} />
      </pattern>
    </defs>
  );
}

function OneShape({ one, hatch }: { readonly one: LitShape; readonly hatch: string }) {
  const { d, as, part } = one.shape;
  if (one.lit === "plain") return <path className={`look look-${as}`} data-part={part} d={d} />;
  if (one.lit === "line") return <path className="look look-heavy" data-part={part} d={d} />;
  return (
    <>
      <path className="look look-lit" data-part={part} d={d} />
      <path className="look-hatch" d={d} fill={`url(#${hatch})`} />
    </>
  );
}
