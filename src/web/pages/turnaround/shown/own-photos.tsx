import { useState } from "react";
import type { LinePhotos, PhotoRef } from "#readiness";
import { useWords } from "#web/language/index.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { Button, Dialog, Timestamp } from "#web/parts/index.ts";
import { usePhotoUrl } from "#web/parts/use-photo-url.ts";

interface OwnPhotosProps {
  readonly open: OpenKit;
  readonly own: readonly LinePhotos[];
}

/** The station's own photos of what is right and what is wrong at a line, told apart by word and shape. */
export function OwnPhotos({ open, own }: OwnPhotosProps) {
  return own.flatMap((one) =>
    one.photos.map((photo) => <OwnPhoto key={`${one.entry} ${photo.hash}`} open={open} one={one} photo={photo} />),
  );
}

interface OwnPhotoProps {
  readonly open: OpenKit;
  readonly one: LinePhotos;
  readonly photo: PhotoRef;
}

function OwnPhoto({ open, one, photo }: OwnPhotoProps) {
  const url = usePhotoUrl(photo.hash);
  const [isWhole, setWhole] = useState(false);
  const words = useWords("turnaroundFit");
  const side = words[one.shows]();
  const noted = (what: string) => (one.note === undefined ? what : words.withNote({ what, note: one.note }));
  const what = noted(words.ownPhoto({ side: one.shows }));
  if (url === undefined) return <p className="photo-missing">{words.photoAway({ what })}</p>;
  const image = <img src={url} alt={what} width={photo.width} height={photo.height} />;
  return (
    <figure className={`line-picture own-photo own-photo-${one.shows}`}>
      <Button label={words.enlarge({ what })} onPress={() => setWhole(true)}>
        {image}
      </Button>
      <figcaption>
        <SideMark shows={one.shows} /> <strong>{side}</strong>
        {one.note !== undefined && <span> {one.note}</span>}
      </figcaption>
      <Dialog title={noted(side)} isOpen={isWhole} onClose={() => setWhole(false)} isWhole>
        <div className="whole-photo">{image}</div>
        <p className="quiet">
          {nameOf(open.view, one.by)}, <Timestamp at={one.at} as="day" />
        </p>
        <div className="dialog-ways">
          <Button onPress={() => setWhole(false)}>{words.closePhoto()}</Button>
        </div>
      </Dialog>
    </figure>
  );
}

/** A tick or a cross: seen without colour. */
function SideMark({ shows }: Pick<LinePhotos, "shows">) {
  return (
    <svg className="side-mark" viewBox="0 0 20 20" aria-hidden="true">
      <path d={shows === "right" ? "M3 11L8 16L17 4" : "M4 4L16 16M16 4L4 16"} />
    </svg>
  );
}
