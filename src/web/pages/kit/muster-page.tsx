import { useEffect, useRef, useState } from "react";
import { useParams, useSearchParams } from "wouter";
import type { KitState, Place } from "#readiness";
import { useStation } from "#web/device/index.ts";
import { Button, EmptyState, Notice, Page, Progress, Timestamp } from "#web/parts/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { ReadLabel } from "#web/kit-view/read-label.tsx";
import { compareSeal, type SealComparison } from "#web/act/seal-reading.ts";
import { MusterForm } from "./muster/muster-form.tsx";
import { musterLines, musterProgress, type MusterLine } from "./muster/muster-lines.ts";
import "#web/kit-view/kit.css";
import "./muster/muster.css";

/** See every kit of a place with your own eyes. What the record says of a seal shows only once the seal was read. */
export default function MusterPage() {
  const { place: wanted = "" } = useParams<{ readonly place: string }>();
  const [search] = useSearchParams();
  const view = useStation();
  const place = view.places.find(({ id }) => id === wanted);
  if (!place) {
    return (
      <Page title="No such place" back={{ to: "/", label: "Board" }}>
        <EmptyState title="This device knows no such place" />
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
  const { kits, today } = useStation();
  const [atHand, setAtHand] = useState(first);
  const [read, setRead] = useState<ReadonlyMap<string, SealComparison>>(new Map());
  const lines = musterLines(kits, place, today);
  const { seen, of } = musterProgress(lines);
  const done = (kit: KitState, sealSeen: string) => {
    setRead(new Map(read).set(kit.id, compareSeal(sealSeen, kit.seal?.number)));
    setAtHand(undefined);
  };
  const back = first === undefined ? { to: "/", label: "Board" } : { to: `/kit/${first}`, label: "The kit" };
  return (
    <Page title={`Muster ${place.name}`} back={back}>
      <p>Go to each kit. Read its seal off the container, not off a list.</p>
      <ReadLabel
        hint="Read the label on the kit in front of you: its line opens."
        onKit={(id) => {
          if (lines.some(({ kit, kind }) => kit.id === id && kind !== "not-here")) setAtHand(id);
          else return "That kit is not on this muster: it is of another place, away or open.";
          return undefined;
        }}
      />
      <Progress label="Seen today" value={seen} of={of} />
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
          {line.shelf !== undefined && <span className="quiet">, {line.shelf}</span>}
        </h2>
        <Seen line={line} />
      </div>
      {read && (
        <Notice tone={read.agrees ? "plain" : "wrong"} isNews>
          <p>{read.words}</p>
          {!read.agrees && <p>Open the kit and examine every item; until then it does not stand ready.</p>}
        </Notice>
      )}
      {line.kind !== "not-here" &&
        (isAtHand ? (
          <MusterForm kit={kit} onDone={onDone} onLeave={onLeave} />
        ) : (
          <div>
            <Button kind={line.kind === "to-see" ? "primary" : "plain"} onPress={onTake}>
              {line.kind === "to-see" ? `I am at ${kit.name}` : "See it again"}
            </Button>
          </div>
        ))}
    </section>
  );
}

function Seen({ line }: { readonly line: MusterLine }) {
  const view = useStation();
  switch (line.kind) {
    case "seen":
      return (
        <p>
          Seen today at <Timestamp at={line.at} as="time" /> by {nameOf(view, line.by)}
        </p>
      );
    case "not-here":
      return <p className="quiet">{line.why}: not mustered.</p>;
    case "to-see":
      return <p>Not seen today</p>;
  }
}
