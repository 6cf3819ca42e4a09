import type { Visit } from "#readiness";
import { mayWrite } from "#station";
import { useState } from "react";
import { useStation } from "#web/device/index.ts";
import { Button, Notice } from "#web/parts/index.ts";
import { EndPanel } from "./end-panel.tsx";
import { LookAtLine } from "./look-at-line.tsx";
import { linesToLook, type LineToLook } from "./visit-at-hand.ts";
import { useWords } from "#web/language/index.ts";

/** A visit that is on: one line at a time, blind. Nothing here knows what the keeper wrote. */
export function LooksPanel({ visit }: { readonly visit: Visit }) {
  const words = useWords("visit");
  const view = useStation();
  const [chosen, setChosen] = useState<string>();
  const lines = linesToLook(view, visit);
  const next = lines.find(({ seen }) => !seen);
  const line = lines.find(({ key }) => key === chosen) ?? next;
  if (!mayWrite(view.me.role, "line-reexamined")) {
    return <Notice title={words.isOn()} />;
  }
  return (
    <div className="visit-line">
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
        <Notice title={words.allLooked()} />
      )}
      <AllLines lines={lines} at={line} onChoose={setChosen} />
      <EndPanel visit={visit} left={lines.filter(({ seen }) => !seen).length} />
    </div>
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
