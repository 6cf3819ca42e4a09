import { Link } from "wouter";
import { stepNamed } from "#kit";
import { barsAt, sayBarred, type Bar } from "#readiness";
import { useWords } from "#web/language/index.ts";
import { Button, Notice } from "#web/parts/index.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import type { Line } from "#web/act/lines.ts";
import type { Place } from "../runner/use-place.ts";
import { FaultBehindBar } from "../clocks/fault-at-line.tsx";
import { nextFree } from "./free-line.ts";
import { whereFound } from "./where-found.ts";

interface HeldPanelProps {
  readonly open: OpenKit;
  readonly lines: readonly Line[];
  readonly line: Line;
  readonly bars: readonly Bar[];
  readonly place: Place;
}

/** Stands where the answers would: what was found wrong, or is half done, forbids this line; with the ways out. */
export function HeldPanel({ open, lines, line, bars, place }: HeldPanelProps) {
  const words = useWords("turnaroundFit");
  const held = useWords("held");
  const onward = nextFree(lines, line.step.line, (one) => barsAt(open, one.step.id).length > 0);
  return (
    <section className="held" aria-label={words.stoppedHere()}>
      <Notice tone="wrong" title={words.stop()} isNews>
        {bars.map((bar) => (
          <p key={`${bar.finding} ${bar.step}`}>{sayBarred(bar, held)}</p>
        ))}
        {bars.some(isOfRunning) && <p>{words.stopFirst()}</p>}
      </Notice>
      <div className="sheet-ways">
        {bars.map((bar) => (
          <MendWay key={`${bar.finding} ${bar.step}`} open={open} bar={bar} place={place} />
        ))}
        {bars.map((bar) => (
          <FaultBehindBar key={`${bar.finding} ${bar.step}`} open={open} bar={bar} line={line.step.line} />
        ))}
        {onward !== undefined && (
          <Button wide onPress={() => place.goTo({ line: onward })}>
            {words.onward({ line: onward })}
          </Button>
        )}
        <SetAside place={place} />
      </div>
    </section>
  );
}

/** The way to close the kit as grounded, from wherever a finding grounds it: its form stands open there. */
export function SetAside({ place }: { readonly place: Place }) {
  const words = useWords("turnaroundFit");
  return (
    <Button wide tone="grave" onPress={() => place.show("grounded")}>
      {words.setAside()}
    </Button>
  );
}

/** To the line that is half done, to the line where it was found, or to the finding where no line of this turnaround found it. */
function MendWay({ open, bar, place }: Pick<HeldPanelProps, "open" | "place"> & { readonly bar: Bar }) {
  const words = useWords("turnaroundFit");
  const line = bar.step === undefined ? undefined : stepNamed(open.pattern, bar.step)?.line;
  if (line !== undefined && bar.open !== undefined) {
    const ask = `${bar.step}/${bar.open}`;
    return (
      <Button kind="primary" wide onPress={() => place.goTo({ line, ask })}>
        {words.finishFirst({ line })}
      </Button>
    );
  }
  if (line !== undefined && bar.hangs) {
    return (
      <Button kind="primary" wide onPress={() => place.goTo({ line })}>
        {words.goToHanging({ line })}
      </Button>
    );
  }
  const found = open.kit.findings.find((one) => one.id === bar.finding);
  const isHere = found === undefined || found.turnaround === open.turnaround.id;
  if (line !== undefined && isHere) {
    return (
      <Button kind="primary" wide onPress={() => place.goTo(whereFound(bar, line))}>
        {found === undefined ? words.goToWrong({ line }) : words.mendAt({ line })}
      </Button>
    );
  }
  return (
    <Link className="button button-primary button-wide" to={`/findings?kit=${open.kit.id}&finding=${bar.finding}`}>
      {words.mend()}
    </Link>
  );
}

function isOfRunning({ works }: Bar): boolean {
  return works.includes("start") || works.includes("water");
}
