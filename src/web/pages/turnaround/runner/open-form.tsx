import { useState } from "react";
import { lastClosed, type Bodies } from "#readiness";
import { useWords } from "#web/language/index.ts";
import { useRecorder } from "#web/device/index.ts";
import { Button, ButtonLink, ErrorBox, Notice, Section, TextField } from "#web/parts/index.ts";
import { BringList } from "./bring-list.tsx";
import { KitActs } from "#web/act/acts.ts";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import { VisitAtOpening } from "#web/kit-view/visit/visit-on.tsx";
import { compareSeal, NO_SEAL, type SealComparison } from "#web/act/seal-reading.ts";
import { useSaving } from "#web/act/use-saving.ts";

type Because = Bodies["turnaround-opened"]["because"];

const REASONS: readonly Because[] = ["routine", "returned", "finding", "lapse", "seal"];

/** Opens a turnaround, where the kit is here to be opened. */
export function OpenForm({ at }: { readonly at: KitAtHand }) {
  const { custody } = at.kit;
  return custody.kind === "away" ? <IsAway at={at} to={custody.to} /> : <Opening at={at} />;
}

/** Said before anything is asked: a kit that is not here cannot be opened here. */
function IsAway({ at, to }: { readonly at: KitAtHand; readonly to: string }) {
  const { id, name } = at.kit;
  const words = useWords("turnaround");
  return (
    <Notice tone="attention" title={words.isWith({ kit: name, keeper: to })}>
      <p>{words.isWithMore()}</p>
      <ButtonLink to={`/kit/${id}/return`}>{words.writeReturn()}</ButtonLink>
    </Notice>
  );
}

/** Readings of a seal that are kept beside the one a kit is opened by. */
const MOST_BEFORE = 10;

/** The seal as it is read off the container, then why it is opened: that tap opens it. Every reading is kept. */
function Opening({ at }: { readonly at: KitAtHand }) {
  const acts = new KitActs(useRecorder(), at.view, at.kit);
  const saving = useSaving();
  const words = useWords("turnaround");
  const act = useWords("act");
  const [seal, setSeal] = useState("");
  const [hasNone, setHasNone] = useState(false);
  const [missing, setMissing] = useState(false);
  const [differs, setDiffers] = useState<Differing>();
  const [before, setBefore] = useState<readonly string[]>([]);
  const open = (because: Because, sealSeen: string) => {
    const others = before.filter((one) => one !== sealSeen);
    const body = { because, sealSeen, ...(others.length > 0 && { sealReadBefore: others }) };
    void saving.save(() => acts.open(body));
  };
  const doubt = (sealSeen: string, found: Differing) => {
    setBefore([...before.filter((one) => one !== sealSeen), sealSeen].slice(-MOST_BEFORE));
    setDiffers(found);
  };
  const read = (because: Because) => {
    const sealSeen = hasNone ? NO_SEAL : seal.trim() || undefined;
    setMissing(sealSeen === undefined);
    if (sealSeen === undefined) return;
    const compared = compareSeal(sealSeen, at.kit.seal?.number, act);
    if (compared.agrees) open(because, sealSeen);
    else doubt(sealSeen, { ...compared, because });
  };
  const change = (text: string, none: boolean) => {
    setSeal(text);
    setHasNone(none);
    setDiffers(undefined);
  };
  return (
    <>
      <VisitAtOpening kit={at.kit.id} />
      <BringList at={at} />
      <TextField
        label={words.sealRead()}
        hint={words.sealReadHint()}
        value={seal}
        onChange={(text) => change(text, false)}
        isShort
        {...(missing && !hasNone && { fault: words.sealMissing() })}
      />
      <Button wide isPressed={hasNone} onPress={() => change("", !hasNone)}>
        {words.noSeal()}
      </Button>
      {differs && <SealDiffers differs={differs} onOpen={() => open(differs.because, differs.seen)} />}
      <ErrorBox error={saving.error} title={words.notOpened()} />
      {!differs && <Reasons isFirst={lastClosed(at.kit) === undefined} onPick={read} />}
    </>
  );
}

interface ReasonsProps {
  /** It was never turned round here: what is due is its first turnaround. */
  readonly isFirst: boolean;
  readonly onPick: (because: Because) => void;
}

/** Why it is opened; the tap goes to the first line. The seal stays whole until a line says to cut it. */
function Reasons({ isFirst, onPick }: ReasonsProps) {
  const words = useWords("turnaround");
  const due = isFirst ? "first" : "routine";
  return (
    <Section title={words.whyOpened()}>
      <p>{words.whyOpenedMore()}</p>
      <div className="open-reasons">
        {REASONS.map((because) => {
          const said = because === "routine" ? due : because;
          return (
            <Button key={because} kind="primary" wide onPress={() => onPick(because)}>
              <span className="open-reason">
                {words[said]()} <span className="open-note">{words[`${said}Note`]()}</span>
              </span>
            </Button>
          );
        })}
      </div>
    </Section>
  );
}

type Differing = SealComparison & { readonly because: Because };

interface SealDiffersProps {
  readonly differs: Differing;
  readonly onOpen: () => void;
}

/** The seal read is not the one on record: said plainly, and written down as read. */
function SealDiffers({ differs, onOpen }: SealDiffersProps) {
  const words = useWords("turnaround");
  return (
    <Notice tone="wrong" title={words.sealDiffers()} isNews>
      <p>{differs.words}</p>
      <p>{words.sealDiffersMore()}</p>
      <Button kind="primary" tone="grave" onPress={onOpen}>
        {differs.seen === NO_SEAL ? words.openNoSeal() : words.openReads({ seal: differs.seen })}
      </Button>
    </Notice>
  );
}
