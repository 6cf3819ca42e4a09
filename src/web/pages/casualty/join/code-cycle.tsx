import { useWords } from "#web/language/index.ts";
import { useEffect, useState } from "react";
import { Button, ErrorBox } from "#web/parts/index.ts";
import type { QrPath } from "./qr-path.ts";

/** How long each code stands [ms]: a phone's camera takes several pictures of it meanwhile. */
const STANDS_MS = 900;
/** Fields of nothing around a code, as the standard asks for. */
const QUIET = 4;

/** Every piece in turn, as large as the screen allows, until somebody holds one. */
export function CodeCycle({ pieces }: { readonly pieces: readonly string[] }) {
  const words = useWords("sheetJoin");
  const [at, setAt] = useState(0);
  const [isHeld, setHeld] = useState(false);
  const { draw, error } = useDrawing();
  const count = pieces.length;
  useEffect(() => {
    if (isHeld || count < 2) return undefined;
    const turn = setInterval(() => setAt((now) => (now + 1) % count), STANDS_MS);
    return () => clearInterval(turn);
  }, [isHeld, count]);
  const step = (by: number) => {
    setHeld(true);
    setAt((now) => (now + by + count) % count);
  };
  return (
    <figure className="code">
      <ErrorBox error={error} title={words.noCode()} />
      {draw && <Code drawn={draw(pieces[at]!)} label={words.codeLabel({ at: at + 1, count })} />}
      <figcaption className="code-words">
        <strong>{words.codeOf({ at: at + 1, count })}</strong> {words.codeMore()}
      </figcaption>
      {count > 1 && (
        <div className="code-ways">
          <Button onPress={() => step(-1)} label={words.codeBefore()}>
            {words.before()}
          </Button>
          <Button onPress={() => setHeld(!isHeld)} isPressed={isHeld}>
            {isHeld ? words.goOn() : words.hold()}
          </Button>
          <Button onPress={() => step(1)} label={words.codeNext()}>
            {words.next()}
          </Button>
        </div>
      )}
    </figure>
  );
}

function Code({ drawn: { path, fields }, label }: { readonly drawn: QrPath; readonly label: string }) {
  const side = fields + 2 * QUIET;
  return (
    <svg className="code-picture" viewBox={`${-QUIET} ${-QUIET} ${side} ${side}`} role="img" aria-label={label}>
      <rect className="code-ground" x={-QUIET} y={-QUIET} width={side} height={side} />
      <path className="code-fields" d={path} fillRule="evenodd" shapeRendering="crispEdges" />
    </svg>
  );
}

type Draw = (text: string) => QrPath;

/** What draws codes is fetched when one is first shown. */
function useDrawing(): { readonly draw?: Draw; readonly error?: unknown } {
  const [found, setFound] = useState<{ readonly draw?: Draw; readonly error?: unknown }>({});
  useEffect(() => {
    import("./qr-path.ts").then(
      ({ qrPathOf }) => setFound({ draw: qrPathOf }),
      (error: unknown) => setFound({ error }),
    );
  }, []);
  return found;
}
