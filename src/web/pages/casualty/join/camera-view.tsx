import { useWords } from "#web/language/index.ts";
import { useState } from "react";
import { Notice } from "#web/parts/index.ts";
import { LazyReader, sayNoCamera, useCamera } from "#web/camera/index.ts";

/** What was gathered so far, as the screen says it. */
export interface Progress {
  readonly of: number;
  readonly missing: readonly number[];
}

interface CameraViewProps {
  readonly progress: Progress;
  readonly onCodes: (texts: readonly string[]) => Promise<unknown>;
}

/** What the camera sees, and which codes are still wanted. */
export function CameraView({ progress, onCodes }: CameraViewProps) {
  const words = useWords("sheetJoin");
  const parts = useWords("parts");
  const [reader] = useState(() => new LazyReader());
  const { video, state } = useCamera(async (picture) => {
    const texts = await reader.read(picture);
    if (texts.length > 0) await onCodes(texts);
  });
  if (state.kind === "none") {
    return (
      <Notice tone="attention" title={words.noCamera()}>
        <p>{words.noCameraMore({ because: sayNoCamera(state.because, parts) })}</p>
      </Notice>
    );
  }
  return (
    <figure className="code">
      <video ref={video} className="code-video" muted playsInline aria-label={words.cameraSees()} />
      <figcaption className="code-words" aria-live="polite">
        <Said progress={progress} />
      </figcaption>
    </figure>
  );
}

/** "3 of 7 read. Missing: 2, 5, 6, 7." */
function Said({ progress: { of, missing } }: { readonly progress: Progress }) {
  const words = useWords("sheetJoin");
  const pieces = missing.slice(0, 12).join(", ");
  if (of === 0) return <>{words.holdCamera()}</>;
  return (
    <>
      <strong>{words.readOf({ count: of - missing.length, of })}</strong>{" "}
      {missing.length > 12 ? words.missingMore({ pieces }) : words.missing({ pieces })}
    </>
  );
}
