import { lookedAtFirst, type Visit } from "#readiness";
import { useWords } from "#web/language/index.ts";
import { useStation } from "#web/device/index.ts";
import { ButtonLink, Notice } from "#web/parts/index.ts";

/** On the board: that a visit is on, and which kits wait to be opened for it. */
export function VisitOn() {
  const { visits } = useStation();
  const on = visits.filter(({ ended }) => ended === undefined);
  return on.length === 0 ? null : (
    <>
      {on.map((visit) => (
        <OneVisitOn key={visit.id} visit={visit} />
      ))}
    </>
  );
}

function OneVisitOn({ visit }: { readonly visit: Visit }) {
  const words = useWords("visits");
  const { kits } = useStation();
  const waiting = kits.filter(({ id }) => lookedAtFirst([visit], id).length > 0);
  const names = waiting.map(({ name }) => name).join(", ");
  return (
    <Notice title={words.on()}>
      <p>{waiting.length === 0 ? words.onAllSeen() : words.onToOpen({ kits: names })}</p>
      <ButtonLink to={`/visits/${visit.id}`}>{words.goOn()}</ButtonLink>
    </Notice>
  );
}

/** Before a kit is opened: that a visit drew it. */
export function VisitAtOpening({ kit }: { readonly kit: string }) {
  const lines = lookedAtFirst(useStation().visits, kit).length;
  return lines === 0 ? null : <OpenForVisit lines={lines} />;
}

function OpenForVisit({ lines }: { readonly lines: number }) {
  const words = useWords("visits");
  return (
    <Notice tone="attention" title={words.drawn()}>
      <p>{words.drawnMore({ lines })}</p>
    </Notice>
  );
}

interface VisitAtLineProps {
  /** Id. */
  readonly kit: string;
  readonly step: string;
  /** Those asked on the screen. */
  readonly checks: readonly string[];
}

/** At a line that a visit drew: the assessor looks before the keeper answers. */
export function VisitAtLine({ kit, step, checks }: VisitAtLineProps) {
  const first = lookedAtFirst(useStation().visits, kit);
  return first.some((one) => one.step === step && checks.includes(one.check)) ? <LooksFirst /> : null;
}

function LooksFirst() {
  const words = useWords("visits");
  return (
    <Notice tone="attention" title={words.looksFirst()}>
      <p>{words.looksFirstMore()}</p>
    </Notice>
  );
}
