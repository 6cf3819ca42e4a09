import { PAD, type Point, type Stroke } from "#station";
import { useWords } from "#web/language/index.ts";
import { useState, type PointerEvent } from "react";
import { Button } from "#web/parts/index.ts";
import "./hand-over.css";

interface SignaturePadProps {
  readonly strokes: readonly Stroke[];
  readonly onStrokes: (strokes: readonly Stroke[]) => void;
}

/** Where whoever takes the kit signs with a finger. Nothing hangs on it: a name alone will do. */
export function SignaturePad({ strokes, onStrokes }: SignaturePadProps) {
  const words = useWords("handOver");
  const [drawing, setDrawing] = useState<Stroke>();
  const begin = (event: PointerEvent<SVGSVGElement>) => {
    event.currentTarget.setPointerCapture(event.pointerId);
    setDrawing([pointAt(event)]);
  };
  const go = (event: PointerEvent<SVGSVGElement>) => {
    if (drawing !== undefined) setDrawing([...drawing, pointAt(event)]);
  };
  const end = () => {
    if (drawing !== undefined) onStrokes([...strokes, drawing]);
    setDrawing(undefined);
  };
  const all = drawing === undefined ? strokes : [...strokes, drawing];
  return (
    <div className="field">
      <p className="field-label">{words.signature()}</p>
      <svg
        className="signature-pad"
        viewBox={`0 0 ${PAD.width} ${PAD.height}`}
        role="img"
        aria-label={strokes.length === 0 ? words.signEmpty() : words.signed()}
        onPointerDown={begin}
        onPointerMove={go}
        onPointerUp={end}
        onPointerCancel={end}
      >
        {all.map((stroke, at) => (
          <polyline key={at} points={pointsOf(stroke)} />
        ))}
      </svg>
      {strokes.length > 0 && (
        <div>
          <Button kind="quiet" isQuick onPress={() => onStrokes([])}>
            {words.signAgain()}
          </Button>
        </div>
      )}
    </div>
  );
}

/** A tap alone is a dot. */
function pointsOf([first, ...more]: Stroke): string {
  const rest = more.length === 0 ? [[first[0] + 1, first[1]]] : more;
  return [first, ...rest].map(([x, y]) => `${x},${y}`).join(" ");
}

function pointAt({ currentTarget, clientX, clientY }: PointerEvent<SVGSVGElement>): Point {
  const { left, top, width, height } = currentTarget.getBoundingClientRect();
  return [((clientX - left) / width) * PAD.width, ((clientY - top) / height) * PAD.height];
}
