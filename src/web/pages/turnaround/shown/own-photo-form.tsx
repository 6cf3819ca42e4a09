import { useState } from "react";
import type { LinePhotos, PhotoRef } from "#readiness";
import { mayWrite, pictureLine, strikeEntry } from "#station";
import { useWords } from "#web/language/index.ts";
import { doingOf, useCarryOut, useRecorder } from "#web/device/index.ts";
import { useSaving } from "#web/act/use-saving.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { StrikeDialog } from "#web/kit-view/strike-dialog.tsx";
import { Button, ButtonRow, ErrorBox, TextField } from "#web/parts/index.ts";
import { TakePhoto } from "#web/parts/photo-strip.tsx";

interface OwnPhotoFormProps {
  readonly open: OpenKit;
  /** The step, and the check where one is asked by itself. */
  readonly at: { readonly step: string; readonly check?: string };
  /** What stands here now, from any of the station's keepers. */
  readonly own: readonly LinePhotos[];
  /** Of the whole pattern, to judge by. */
  readonly all: readonly LinePhotos[];
}

type Side = LinePhotos["shows"];

/** For keepers: a photo of one's own of what is right, or wrong, at this line; and striking one. */
export function OwnPhotoForm({ open, at, own, all }: OwnPhotoFormProps) {
  const carryOut = useCarryOut();
  const words = useWords("turnaroundFit");
  const saving = useSaving();
  const [side, setSide] = useState<Side>();
  const [note, setNote] = useState("");
  if (!mayWrite(open.view.me.role, "line-pictured")) return null;
  const add = async (shows: Side, photo: PhotoRef) => {
    const said = note.trim() === "" ? {} : { note: note.trim() };
    const body = { ...at, shows, photos: [photo], ...said };
    if (!(await saving.save(() => carryOut((doing) => pictureLine(doing, open.pattern, body, all))))) return;
    setSide(undefined);
    setNote("");
  };
  return (
    <details className="extras">
      <summary>{words.ownPhotos()}</summary>
      <p className="quiet">{words.ownPhotosMore()}</p>
      <ButtonRow>
        {(["right", "wrong"] as const).map((one) => (
          <Button key={one} isPressed={side === one} onPress={() => setSide(one)}>
            {words.showsSide({ side: one })}
          </Button>
        ))}
      </ButtonRow>
      {side && (
        <>
          <TextField label={words.whatToLookAt()} value={note} onChange={setNote} />
          <TakePhoto onAdd={(photo) => void add(side, photo)} />
        </>
      )}
      <ErrorBox error={saving.error} title={words.photoNotPut()} />
      {own.map((one) => (
        <StrikeOwn key={one.entry} open={open} one={one} />
      ))}
    </details>
  );
}

function StrikeOwn({ open, one }: { readonly open: OpenKit; readonly one: LinePhotos }) {
  const recorder = useRecorder();
  const words = useWords("turnaroundFit");
  const [isAsked, setAsked] = useState(false);
  const { view, pattern } = open;
  const entry = view.entriesOf(`pattern:${pattern.id}`).find(({ id }) => id === one.entry);
  if (!entry) return null;
  const struck = words.ownPhotoStruck({ side: one.shows });
  const what = one.note === undefined ? struck : words.withNote({ what: struck, note: one.note });
  return (
    <>
      <Button tone="grave" onPress={() => setAsked(true)}>
        {words.strike({ what })}
      </Button>
      {isAsked && (
        <StrikeDialog
          what={what}
          judge={(reason) => strikeEntry(doingOf(view), entry, reason)}
          onStrike={(reason) => recorder.strike(entry, reason)}
          onClose={() => setAsked(false)}
        />
      )}
    </>
  );
}
