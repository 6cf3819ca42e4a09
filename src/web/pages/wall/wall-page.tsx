import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import type { WallKit, WallView, WallWork } from "#station";
import { useEffect, useState } from "react";
import { useThisDevice } from "#web/device/index.ts";
import type { Reply } from "#web/device/sync/server-door.ts";
import { NightToggle, sayDate, sayStanding, StandingShape } from "#web/parts/index.ts";
import { sayStrength } from "#web/kit-view/board-words.ts";
import { sayWork } from "#web/kit-view/work-words.ts";
import { sayTime } from "#web/parts/words/say-time.ts";
import "./wall.css";

const EVERY_MS = 60_000;
/** So many rows fit a screen at four metres; more are counted. */
const ROWS = 6;

/** The wall of a place, for a screen that nobody signs in on: read from four metres, asked anew every minute. */
export default function WallPage() {
  const words = useWords("wall");
  const { wall, because } = useWall(words);
  useEffect(() => {
    document.title = `${wall?.placeName ?? words.short()} - Drykeel`;
  }, [wall, words]);
  return (
    <main id="main" className="wall">
      <header className="wall-head">
        <h1>{wall ? wall.placeName : words.title()}</h1>
        <NightToggle />
      </header>
      {wall === undefined ? <p>{because ?? words.asking()}</p> : <Wall wall={wall} because={because} />}
    </main>
  );
}

type WallWords = Words["wall"];

interface Shown {
  readonly wall?: WallView;
  /** Why what is shown is not of now, or why nothing is shown. */
  readonly because?: string | undefined;
}

function useWall(words: WallWords): Shown {
  const { door } = useThisDevice();
  const [secret] = useState(() => location.hash.slice(1));
  const [shown, setShown] = useState<Shown>(secret === "" ? { because: words.noLink() } : {});
  useEffect(() => {
    if (secret === "") return undefined;
    const ask = async () => {
      const reply = await door.ask<WallView>({ method: "GET", path: "/api/wall", bearer: secret });
      setShown((before) => next(before, reply, words));
    };
    void ask();
    const asking = setInterval(() => void ask(), EVERY_MS);
    return () => clearInterval(asking);
  }, [door, secret, words]);
  return shown;
}

/** What was shown stays while the station cannot be reached, with its time; a link that was withdrawn shows nothing. */
function next({ wall }: Shown, reply: Reply<WallView>, words: WallWords): Shown {
  if (reply.kind === "answered") return { wall: reply.value };
  if (reply.kind === "refused" && reply.status === 404) {
    return { because: words.withdrawn() };
  }
  const because = wall ? words.wasSo({ time: sayTime(Date.parse(wall.at)) }) : words.notReached();
  return { ...(wall && { wall }), because };
}

function Wall({ wall, because }: Shown & { readonly wall: WallView }) {
  const words = useWords("wall");
  const lineWords = useWords("kitLine");
  const { strength, kits, notReady, work } = wall;
  return (
    <>
      {because !== undefined && <output className="wall-short">{because}</output>}
      <p className={strength.short > 0 ? "wall-strength wall-short" : "wall-strength"}>
        {sayStrength(strength, lineWords)}
      </p>
      <div className="wall-columns">
        <section>
          <h2>{words.order()}</h2>
          <ol>
            {kits.slice(0, ROWS).map((kit) => (
              <KitRow key={kit.name} kit={kit} />
            ))}
          </ol>
          <More count={kits.length - ROWS} />
          {notReady.length > 0 && (
            <p>
              <NotReady kits={notReady} />
            </p>
          )}
        </section>
        <section>
          <h2>{words.week()}</h2>
          {work.length === 0 && <p>{words.none()}</p>}
          <ul>
            {work.slice(0, ROWS).map((line) => (
              <WorkRow key={`${line.kit} ${sayWork(asLine(line), lineWords)}`} line={line} />
            ))}
          </ul>
          <More count={work.length - ROWS} />
        </section>
      </div>
      <p className="wall-foot">{words.foot({ station: wall.stationName, day: sayDate(wall.day) })}</p>
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
  const words = useWords("wall");
  const parts = useWords("parts");
  const named = kits.map(({ name, standing }) =>
    words.kitIs({ kit: name, standing: sayStanding(standing, parts).toLowerCase() }),
  );
  return words.not({ kits: named.join(", ") });
}

function WorkRow({ line }: { readonly line: WallWork }) {
  const words = useWords("wall");
  const lineWords = useWords("kitLine");
  return (
    <li>
      <strong>{line.kit}</strong> {words.work({ what: sayWork(asLine(line), lineWords), when: sayWhen(line, words) })}
      {line.takers.length > 0 && ` ${words.takers({ names: line.takers.join(", ") })}`}
    </li>
  );
}

function asLine({ tasks, planned }: WallWork): Parameters<typeof sayWork>[0] {
  const nothing = { say: "sound" } as const;
  const whole = tasks.map(
    ({ sort }) => ({ sort, rule: "sound", what: nothing, why: nothing, effect: "notes" }) as const,
  );
  return { tasks: whole, ...(planned !== undefined && { planned }) };
}

function sayWhen({ by, flushBy }: WallWork, words: WallWords): string {
  if (flushBy !== undefined) return words.flushBy({ time: sayTime(flushBy) });
  return by === undefined ? words.now() : words.by({ day: sayDate(by) });
}

function More({ count }: { readonly count: number }) {
  const words = useWords("wall");
  return count > 0 ? <p>{words.more({ count })}</p> : null;
}
