import { useState } from "react";
import { useWords } from "../language/index.ts";
import { findShelf, findTyped, readLabel } from "#station";
import { LazyReader, sayNoCamera, useCamera } from "../camera/index.ts";
import { useStation } from "../device/index.ts";
import { Button, ButtonRow, Notice, TextField } from "../parts/index.ts";
import "./read-label.css";

interface ReadLabelProps {
  readonly hint: string;
  /** A kit that this device knows was read. @returns why it cannot be meant here */
  readonly onKit: (kit: string) => string | undefined;
  /** A shelf was read; without it a shelf's label is said not to be meant here. */
  readonly onShelf?: (place: string, shelf: string) => string | undefined;
}

/** A label read by the camera, or its number typed: the camera is asked for only once it is wanted. */
export function ReadLabel({ hint, onKit, onShelf }: ReadLabelProps) {
  const words = useWords("kitView");
  const { kits, places } = useStation();
  const [isOpen, setOpen] = useState(false);
  const [typed, setTyped] = useState("");
  const [fault, setFault] = useState<string>();
  const done = (why: string | undefined) => {
    setFault(why);
    if (why === undefined) setOpen(false);
  };
  const take = (texts: readonly string[]) => {
    const [label] = texts.flatMap((text) => readLabel(text) ?? []);
    if (label === undefined) return setFault(words.notLabel());
    if (label.kind === "shelf") return done(onShelf ? onShelf(label.place, label.shelf) : words.shelfLabel());
    const kit = kits.find(({ id }) => id === label.kit);
    done(kit ? onKit(kit.id) : words.unknownLabel());
  };
  const find = () => {
    const kit = findTyped(kits, typed);
    const shelf = kit ? undefined : findShelf(places, typed);
    if (shelf) return done(onShelf ? onShelf(shelf.place, shelf.shelf) : words.shelfLabel());
    done(kit ? onKit(kit.id) : onShelf ? words.noneFound() : words.notFound());
  };
  if (!isOpen) {
    return (
      <div>
        <Button onPress={() => setOpen(true)}>{words.readLabel()}</Button>
      </div>
    );
  }
  return (
    <section className="label-reader" aria-label={words.readLabel()}>
      <p>{hint}</p>
      <LabelCamera onCodes={take} />
      <TextField
        label={onShelf ? words.typeAny() : words.typeIt()}
        value={typed}
        onChange={setTyped}
        isShort
        limit={80}
      />
      {fault !== undefined && <Notice tone="attention" title={fault} isNews />}
      <ButtonRow>
        <Button isDisabled={typed.trim() === ""} onPress={find}>
          {words.find()}
        </Button>
        <Button kind="quiet" onPress={() => setOpen(false)}>
          {words.leave()}
        </Button>
      </ButtonRow>
    </section>
  );
}

/** What the camera sees; without one it says why, and the number is typed. */
function LabelCamera({ onCodes }: { readonly onCodes: (texts: readonly string[]) => void }) {
  const words = useWords("kitView");
  const parts = useWords("parts");
  const [reader] = useState(() => new LazyReader());
  const { video, state } = useCamera(async (picture) => {
    const texts = await reader.read(picture);
    if (texts.length > 0) onCodes(texts);
  });
  if (state.kind === "none") return <p className="quiet">{sayNoCamera(state.because, parts)}</p>;
  return <video ref={video} className="label-video" muted playsInline aria-label={words.camera()} />;
}
