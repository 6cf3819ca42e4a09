import type { PhotoRef } from "#readiness";
import { useId, useState } from "react";
import { useWords } from "../language/index.ts";
import { useRecorder } from "../device/index.ts";
import { ErrorBox } from "./error-box.tsx";
import { usePhotoUrl } from "./use-photo-url.ts";
import "./photo-strip.css";

export interface PhotoStripProps {
  readonly photos: readonly PhotoRef[];
  /** What the photos show, for readers: "Finding on the fuel hose". */
  readonly label: string;
  /** Given: shows the button that takes a photo; called once it is kept on this device. */
  readonly onAdd?: (photo: PhotoRef) => void;
}

/** Photos in a row, and where wanted a button that takes another. */
export function PhotoStrip({ photos, label, onAdd }: PhotoStripProps) {
  const words = useWords("parts");
  return (
    <div className="photos">
      {photos.map((photo, at) => (
        <Photo key={photo.hash} photo={photo} alt={words.photoOf({ label, at: at + 1, count: photos.length })} />
      ))}
      {onAdd && <TakePhoto onAdd={onAdd} />}
    </div>
  );
}

function Photo({ photo, alt }: { readonly photo: PhotoRef; readonly alt: string }) {
  const words = useWords("parts");
  const url = usePhotoUrl(photo.hash);
  if (url === undefined) return <p className="photo photo-missing">{words.photoAway()}</p>;
  return (
    <a className="photo" href={url} target="_blank" rel="noreferrer">
      <img src={url} alt={alt} width={photo.width} height={photo.height} />
    </a>
  );
}

/** A button that takes a photo; told once it is kept on this device. */
export function TakePhoto({ onAdd }: { readonly onAdd: (photo: PhotoRef) => void }) {
  const words = useWords("parts");
  const recorder = useRecorder();
  const id = useId();
  const [error, setError] = useState<unknown>();
  const [isBusy, setBusy] = useState(false);
  const take = async (files: FileList | null) => {
    const file = files?.[0];
    if (!file) return;
    setBusy(true);
    setError(undefined);
    await recorder.keepPhoto(file).then(onAdd, setError);
    setBusy(false);
  };
  return (
    <div className="photo-take">
      <label htmlFor={id} className="button button-plain" data-pending={isBusy || undefined}>
        {isBusy ? words.keepingPhoto() : words.takePhoto()}
      </label>
      <input
        id={id}
        className="for-readers-only"
        type="file"
        accept="image/*"
        capture="environment"
        onChange={(event) => void take(event.target.files)}
      />
      <ErrorBox error={error} title={words.photoNotKept()} />
    </div>
  );
}
