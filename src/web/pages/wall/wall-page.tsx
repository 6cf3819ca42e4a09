import { formatDate } from "#base";
import type { WallKit, WallView, WallWork } from "#station";
import { useEffect, useState } from "react";
import { useThisDevice } from "#web/device/index.ts";
import type { Reply } from "#web/device/sync/server-door.ts";
import { NightToggle, STANDING_WORDS, StandingShape } from "#web/parts/index.ts";
import { sayStrength } from "#web/kit-view/board-words.ts";
import { sayWork } from "#web/kit-view/work-words.ts";
import { sayTime } from "#web/parts/words/say-time.ts";
import "./wall.css";

const EVERY_MS = 60_000;
/** So many rows fit a screen at four metres; more are counted. */
const ROWS = 6;

/** The wall of a place, for a screen that nobody signs in on: read from four metres, asked anew every minute. */
export default function WallPage() {
  const { wall, because } = useWall();
  useEffect(() => {
    document.title = `${wall?.placeName ?? "Wall"} - Drykeel`;
  }, [wall]);
  return (
    <main id="main" className="wall">
      <header className="wall-head">
        <h1>{wall ? wall.placeName : "Wall of a place"}</h1>
        <NightToggle />
      </header>
      {wall === undefined ? <p>{because ?? "Asking the station."}</p> : <Wall wall={wall} because={because} />}
    </main>
  );
}

interface Shown {
  readonly wall?: WallView;
  /** Why what is shown is not of now, or why nothing is shown. */
  readonly because?: string | undefined;
}

function useWall(): Shown {
  const { door } = useThisDevice();
  const [secret] = useState(() => location.hash.slice(1));
  const [shown, setShown] = useState<Shown>(
    secret === "" ? { because: "Open the whole link that the keeper made for this screen." } : {},
  );
  useEffect(() => {
    if (secret === "") return undefined;
    const ask = async () => {
      const reply = await door.ask<WallView>({ method: "GET", path: "/api/wall", bearer: secret });
      setShown((before) => next(before, reply));
    };
    void ask();
    const asking = setInterval(() => void ask(), EVERY_MS);
    return () => clearInterval(asking);
  }, [door, secret]);
  return shown;
}

/** What was shown stays while the station cannot be reached, with its time; a link that was withdrawn shows nothing. */
function next({ wall }: Shown, reply: Reply<WallView>): Shown {
  if (reply.kind === "answered") return { wall: reply.value };
  if (reply.kind === "refused" && reply.status === 404) {
    return { because: "This link opens nothing: it was withdrawn, or is not whole. Ask the keeper for another." };
  }
  const because = wall
    ? `The station is not reached. This was so at ${sayTime(Date.parse(wall.at))}.`
    : "The station is not reached. This screen keeps trying.";
  return { ...(wall && { wall }), because };
}

function Wall({ wall, because }: Shown & { readonly wall: WallView }) {
  const { strength, kits, notReady, work } = wall;
  return (
    <>
      {because !== undefined && <output className="wall-short">{because}</output>}
      <p className={strength.short > 0 ? "wall-strength wall-short" : "wall-strength"}>{sayStrength(strength)}</p>
      <div className="wall-columns">
        <section>
          <h2>Take in this order</h2>
          <ol>
            {kits.slice(0, ROWS).map((kit) => (
              <KitRow key={kit.name} kit={kit} />
            ))}
          </ol>
          <More count={kits.length - ROWS} />
          {notReady.length > 0 && (
            <p>
              Not: <NotReady kits={notReady} />
            </p>
          )}
        </section>
        <section>
          <h2>Work of this week</h2>
          {work.length === 0 && <p>None is due.</p>}
          <ul>
            {work.slice(0, ROWS).map((line) => (
              <WorkRow key={`${line.kit} ${sayWork(asLine(line))}`} line={line} />
            ))}
          </ul>
          <More count={work.length - ROWS} />
        </section>
      </div>
      <p className="wall-foot">
        {wall.stationName}, {formatDate(wall.day)}. Estimates; what is seen goes before them.
      </p>
    </>
  );
}

function KitRow({ kit }: { readonly kit: WallKit }) {
  return (
    <li>
      <StandingShape standing={kit.standing} /> <strong>{kit.name}</strong>{" "}
      {kit.because.length > 0 && <span className="wall-limit">{kit.because.join(" ")}</span>}
    </li>
  );
}

function NotReady({ kits }: { readonly kits: readonly WallKit[] }) {
  return kits.map(({ name, standing }) => `${name} (${STANDING_WORDS[standing].toLowerCase()})`).join(", ");
}

function WorkRow({ line }: { readonly line: WallWork }) {
  return (
    <li>
      <strong>{line.kit}</strong> {sayWork(asLine(line))}. {sayWhen(line)}
      {line.takers.length > 0 && ` ${line.takers.join(", ")}.`}
    </li>
  );
}

function asLine({ tasks, planned }: WallWork): Parameters<typeof sayWork>[0] {
  const whole = tasks.map(({ sort }) => ({ sort, rule: "sound", what: "", why: "", effect: "notes" }) as const);
  return { tasks: whole, ...(planned !== undefined && { planned }) };
}

function sayWhen({ by, flushBy }: WallWork): string {
  if (flushBy !== undefined) return `Flush by ${sayTime(flushBy)}.`;
  return by === undefined ? "Now." : `By ${formatDate(by)}.`;
}

function More({ count }: { readonly count: number }) {
  return count > 0 ? <p>And {count} more.</p> : null;
}
