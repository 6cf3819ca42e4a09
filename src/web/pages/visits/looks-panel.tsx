import type { Visit } from "#readiness";
import { mayWrite } from "#station";
import { useState } from "react";
import { sum } from "#base";
import { useStation } from "#web/device/index.ts";
import { Button, Notice } from "#web/parts/index.ts";
import { EndPanel } from "./end-panel.tsx";
import { LookAtLine } from "./look-at-line.tsx";
import { hiddenLeft, linesToLook, type HiddenOf, type LineToLook } from "./visit-at-hand.ts";
import { useWords } from "#web/language/index.ts";

/** A visit that is on: one line at a time, blind. Nothing here knows what the keeper wrote. */
export function LooksPanel({ visit }: { readonly visit: Visit }) {
  const words = useWords("visit");
  const view = useStation();
  const [chosen, setChosen] = useState<string>();
  const lines = linesToLook(view, visit);
  const hidden = hiddenLeft(view, visit);
  const next = lines.find(({ seen }) => !seen);
  const line = lines.find(({ key }) => key === chosen) ?? next;
  if (!mayWrite(view.me.role, "line-reexamined")) {
    return (
      <div className="visit-line">
        <Notice title={words.isOn()} />
        <HiddenLines hidden={hidden} />
      </div>
    );
  }
  const left = sum([...lines.map(({ seen }) => (seen ? 0 : 1)), ...hidden.map((one) => one.left)]);
  return (
    <div className="visit-line">
      {line === undefined && hidden.length > 0 && <Notice title={words.isOn()} />}
      {line ? (
        <LookAtLine
          key={line.key}
          visit={visit}
          line={line}
          progress={words.progress({ at: lines.indexOf(line) + 1, all: lines.length })}
          onDone={() => setChosen(undefined)}
          onLater={() => setChosen(lineAfter(lines, line)?.key)}
        />
      ) : (
        left === 0 && <Notice title={words.allLooked()} />
      )}
      {lines.length > 0 && <AllLines lines={lines} at={line} onChoose={setChosen} />}
      <HiddenLines hidden={hidden} />
      <EndPanel visit={visit} left={left} />
    </div>
  );
}

/** Who wrote lines or keeps the kits is told how many are left, and not which. */
function HiddenLines({ hidden }: { readonly hidden: readonly HiddenOf[] }) {
  const words = useWords("visit");
  if (hidden.length === 0) return null;
  return (
    <>
      <p>{words.notShown()}</p>
      <ul>
        {hidden.map(({ kit, name, left }) => (
          <li key={kit}>{words.leftOfKit({ kit: name, left })}</li>
        ))}
      </ul>
    </>
  );
}

/** The next line that was not looked at, from the one at hand on, then from the first. */
function lineAfter(lines: readonly LineToLook[], line: LineToLook): LineToLook | undefined {
  const at = lines.indexOf(line);
  return [...lines.slice(at + 1), ...lines.slice(0, at)].find(({ seen }) => !seen);
}

interface AllLinesProps {
  readonly lines: readonly LineToLook[];
  readonly at: LineToLook | undefined;
  readonly onChoose: (key: string) => void;
}

/** Every line by kit, with what was seen of it in this visit: any can be taken next, or again. */
function AllLines({ lines, at, onChoose }: AllLinesProps) {
  const words = useWords("visit");
  const kits = [...new Set(lines.map(({ ofKit }) => ofKit))];
  return (
    <details>
      <summary>{words.allLines()}</summary>
      {kits.map((kit) => (
        <section key={kit.id} aria-label={kit.name}>
          <h3>{kit.name}</h3>
          <ul className="visit-lines">
            {lines
              .filter(({ ofKit }) => ofKit === kit)
              .map((line) => (
                <li key={line.key}>
                  <Button wide isPressed={line === at} onPress={() => onChoose(line.key)}>
                    {words.lineAsk({ line: line.atStep.line, ask: line.ofCheck.ask })}{" "}
                    {words[SEEN[line.seen?.answer ?? "left"]]()}
                  </Button>
                </li>
              ))}
          </ul>
        </section>
      ))}
    </details>
  );
}

const SEEN = {
  seen: "sawRight",
  wrong: "sawWrong",
  "not-possible": "notPossible",
  left: "notYet",
} as const;
