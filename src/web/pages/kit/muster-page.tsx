import { useEffect, useRef, useState } from "react";
import { useWords } from "#web/language/index.ts";
import { useParams, useSearchParams } from "wouter";
import type { KitState, Place } from "#readiness";
import { useStation } from "#web/device/index.ts";
import { Button, EmptyState, Notice, Page, Progress, sayTime } from "#web/parts/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { ReadLabel } from "#web/kit-view/read-label.tsx";
import { compareSeal, type SealComparison } from "#web/act/seal-reading.ts";
import { MusterForm } from "./muster/muster-form.tsx";
import { musterLines, musterProgress, type MusterLine } from "./muster/muster-lines.ts";
import "#web/kit-view/kit.css";
import "./muster/muster.css";

/** See every kit of a place with your own eyes. What the record says of a seal shows only once the seal was read. */
export default function MusterPage() {
  const words = useWords("muster");
  const { place: wanted = "" } = useParams<{ readonly place: string }>();
  const [search] = useSearchParams();
  const view = useStation();
  const place = view.places.find(({ id }) => id === wanted);
  if (!place) {
    return (
      <Page title={words.noPlace()} back={{ to: "/", label: words.board() }}>
        <EmptyState title={words.noPlaceNews()} />
      </Page>
    );
  }
  return <Muster key={place.id} place={place} first={search.get("kit") ?? undefined} />;
}

interface MusterProps {
  readonly place: Place;
  /** Kit whose form stands open at first. */
  readonly first: string | undefined;
}

function Muster({ place, first }: MusterProps) {
  const words = useWords("muster");
  const act = useWords("act");
  const { kits, today } = useStation();
  const [atHand, setAtHand] = useState(first);
  const [read, setRead] = useState<ReadonlyMap<string, SealComparison>>(new Map());
  const lines = musterLines(kits, place, today, words);
  const { seen, of } = musterProgress(lines);
  const done = (kit: KitState, sealSeen: string) => {
    setRead(new Map(read).set(kit.id, compareSeal(sealSeen, kit.seal?.number, act)));
    setAtHand(undefined);
  };
  const back = first === undefined ? { to: "/", label: words.board() } : { to: `/kit/${first}`, label: words.theKit() };
  return (
    <Page title={words.title({ place: place.name })} back={back}>
      <p>{words.goToEach()}</p>
      <ReadLabel
        hint={words.labelHint()}
        onKit={(id) => {
          if (lines.some(({ kit, kind }) => kit.id === id && kind !== "not-here")) setAtHand(id);
          else return words.notHere();
          return undefined;
        }}
      />
      <Progress label={words.seenToday()} value={seen} of={of} />
      <ul className="muster">
        {lines.map((line) => (
          <li key={line.kit.id}>
            <MusterRow
              line={line}
              read={read.get(line.kit.id)}
              isAtHand={atHand === line.kit.id}
              onTake={() => setAtHand(line.kit.id)}
              onDone={(sealSeen) => done(line.kit, sealSeen)}
              onLeave={() => setAtHand(undefined)}
            />
          </li>
        ))}
      </ul>
    </Page>
  );
}

interface MusterRowProps {
  readonly line: MusterLine;
  /** The seal as read in this sitting, against the record. */
  readonly read: SealComparison | undefined;
  readonly isAtHand: boolean;
  readonly onTake: () => void;
  readonly onDone: (sealSeen: string) => void;
  readonly onLeave: () => void;
}

function MusterRow({ line, read, isAtHand, onTake, onDone, onLeave }: MusterRowProps) {
  const words = useWords("muster");
  const { kit } = line;
  const row = useRef<HTMLElement>(null);
  useEffect(() => {
    if (read) row.current?.focus();
  }, [read]);
  return (
    <section ref={row} tabIndex={-1} className="muster-kit" aria-label={kit.name}>
      <div className="muster-head">
        <h2>
          {kit.name} <span className="quiet">{kit.serial}</span>
          {line.shelf !== undefined && <span className="quiet">{words.onShelf({ shelf: line.shelf })}</span>}
        </h2>
        <Seen line={line} />
      </div>
      {read && (
        <Notice tone={read.agrees ? "plain" : "wrong"} isNews>
          <p>{read.words}</p>
          {!read.agrees && <p>{words.examine()}</p>}
        </Notice>
      )}
      {line.kind !== "not-here" &&
        (isAtHand ? (
          <MusterForm kit={kit} onDone={onDone} onLeave={onLeave} />
        ) : (
          <div>
            <Button kind={line.kind === "to-see" ? "primary" : "plain"} onPress={onTake}>
              {line.kind === "to-see" ? words.iAmAt({ kit: kit.name }) : words.seeAgain()}
            </Button>
          </div>
        ))}
    </section>
  );
}

function Seen({ line }: { readonly line: MusterLine }) {
  const words = useWords("muster");
  const view = useStation();
  switch (line.kind) {
    case "seen":
      return <p>{words.seenAt({ time: sayTime(line.at), name: nameOf(view, line.by) })}</p>;
    case "not-here":
      return <p className="quiet">{words.notMustered({ why: line.why })}</p>;
    case "to-see":
      return <p>{words.notSeen()}</p>;
  }
}
