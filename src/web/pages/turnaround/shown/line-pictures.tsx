import { useState } from "react";
import { picturesAt, type Picture, type PictureAsked } from "#kit";
import type { LinePhotos } from "#readiness";
import { useWords } from "#web/language/index.ts";
import { KitDrawing } from "#web/drawing/kit-drawing.tsx";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { Button, Dialog } from "#web/parts/index.ts";
import { OwnPhotos } from "./own-photos.tsx";
import { sayPicture } from "./picture-words.ts";
import "./line-pictures.css";

interface LinePicturesProps {
  readonly open: OpenKit;
  /** What the screen asks: one check, or all that one look shows, or lines done together. */
  readonly asked: readonly PictureAsked[];
  /** The station's own photos of it. */
  readonly own: readonly LinePhotos[];
}

/** What the line is about, lit in its drawing: beside the line's number on a phone, beside its words where there is room. */
export function LinePictures({ open, asked, own }: LinePicturesProps) {
  const words = useWords("turnaroundFit");
  const pictures = picturesAt(open.pattern, asked);
  if (pictures.length + own.length === 0) return null;
  return (
    <aside className="line-pictures" aria-label={words.pictures()}>
      {pictures.map((picture) => (
        <OnePicture key={picture.id} picture={picture} />
      ))}
      <OwnPhotos open={open} own={own} />
    </aside>
  );
}

/** The drawing of one line among others that are done together: beside that line's own words. */
export function MemberPictures({ open, step }: { readonly open: OpenKit; readonly step: string }) {
  return picturesAt(open.pattern, [{ step }]).map((picture) => <OnePicture key={picture.id} picture={picture} />);
}

/** Small, and the whole screen on a tap. */
function OnePicture({ picture }: { readonly picture: Picture }) {
  const [isWhole, setWhole] = useState(false);
  const { drawing, lit, names, layer } = picture;
  const words = useWords("turnaroundFit");
  return (
    <figure className="line-picture">
      <Button label={words.enlargeDrawing({ picture: sayPicture(picture, words) })} onPress={() => setWhole(true)}>
        <KitDrawing drawing={drawing} lit={lit} />
      </Button>
      <figcaption>
        {layer && <span className="quiet">{words.goesHere()} </span>}
        {names.join(", ")}
      </figcaption>
      <Dialog title={drawing.title} isOpen={isWhole} onClose={() => setWhole(false)} isWhole>
        <KitDrawing className="whole-picture" drawing={drawing} lit={lit} label={sayPicture(picture, words)} />
        {names.length > 0 && <p className="line-picture-lit">{words.lit({ names: names.join(", ") })}</p>}
        <div className="dialog-ways">
          <Button onPress={() => setWhole(false)}>{words.closeDrawing()}</Button>
        </div>
      </Dialog>
    </figure>
  );
}
