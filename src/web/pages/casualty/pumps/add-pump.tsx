import { useWords } from "#web/language/index.ts";
import { type Bodies, type CasualtyState, type KitState, standingInWords } from "#readiness";
import { HAND_OVER_METHODS, handOver, mayWrite, methodChoice, setPump, type HandOverMethod } from "#station";
import { useState } from "react";
import { uuidv7 } from "uuidv7";
import { useCarryOut } from "#web/device/index.ts";
import { Button, Notice, TextField } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { HazardsNow } from "../hazards/hazards-now.tsx";
import { kitChoices } from "./kit-choices.ts";
import { sayKitDoubt } from "./kit-doubt.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { otherFlowPicks } from "./pump-figures.ts";
import { useIntoView } from "../sheet/use-into-view.ts";
import { useSheet } from "../sheet/use-sheet.ts";
import { usePutting } from "./aboard-row.tsx";

/** Those that need no more words than their own. */
const METHODS = HAND_OVER_METHODS.filter((one) => one !== "other").map((id) => ({ id, words: methodChoice(id) }));

const OTHER = "other";

interface AddPumpProps {
  /** Given the pump that is on her now; none where nothing was put there. */
  readonly onDone: (pump?: string) => void;
}

/** Puts one more pump on her: a kit of ours, handed over as it goes, or a pump of somebody else's. */
export function AddPump({ onDone }: AddPumpProps) {
  const words = useWords("sheetPumps");
  const { casualty, view } = useSheet();
  const [chosen, choose] = useState<string>();
  const options = [...kitChoices(view, casualty, words), { id: OTHER, words: words.anotherPump() }];
  const kit = view.kits.find(({ id }) => id === chosen);
  return (
    <section className="pump" aria-label={words.oneMore()}>
      <PickRow label={words.which()} options={options} picked={chosen} onPick={choose} />
      {!mayWrite(view.me.role, "handed-over") && <p>{words.whoHands()}</p>}
      {chosen === OTHER && <OtherPump onDone={onDone} />}
      {kit && <KitPump key={kit.id} kit={kit} onDone={onDone} />}
      <Button kind="quiet" onPress={() => onDone()}>
        {words.goBack()}
      </Button>
    </section>
  );
}

function KitPump({ kit, onDone }: AddPumpProps & { readonly kit: KitState }) {
  const words = useWords("sheetPumps");
  const { casualty, view, run, isBusy } = useSheet();
  const carryOut = useCarryOut();
  const put = usePutting(kit);
  const [method, setMethod] = useState<HandOverMethod>();
  const isAboard = kit.custody.kind === "away";
  const standingWords = useWords("standing");
  const standing = view.standings.get(kit.id);
  const doubt = sayKitDoubt(standing && standingInWords(standing, standingWords), words);
  const handOne = async () => {
    if (!isAboard && method) await carryOut((doing) => handOver(doing, kit, handedTo(casualty, method)));
  };
  const add = async () => {
    if ((await run(handOne)) && (await put(false))) onDone(kit.id);
  };
  const load = view.patterns.get(kit.pattern)?.container;
  const place = useIntoView();
  return (
    <div ref={place} tabIndex={-1} className="pump-across">
      {doubt !== undefined && <Notice tone="wrong" title={doubt} isNews />}
      {!isAboard && <HazardsNow moment={{ kind: "lift", ...(load && { load }) }} />}
      {!isAboard && <PickRow label={words.howAcross()} options={METHODS} picked={method} onPick={setMethod} />}
      <Button
        kind="primary"
        wide
        isBusy={isBusy}
        isDisabled={!isAboard && method === undefined}
        onPress={() => void add()}
      >
        {isAboard ? words.isOnHer({ kit: kit.name }) : words.handedOver({ kit: kit.name })}
      </Button>
    </div>
  );
}

/** A kit goes sealed; its seal is broken aboard, and read again when it comes back. */
function handedTo({ id, name }: CasualtyState, method: HandOverMethod): Bodies["handed-over"] {
  return { to: name, method, sealBroken: false, casualty: id };
}

function OtherPump({ onDone }: AddPumpProps) {
  const words = useWords("sheetPumps");
  const { space, write, isBusy } = useSheet();
  const [name, setName] = useState("");
  const [flow, setFlow] = useState<string>();
  const flows = otherFlowPicks(usePreferences().units);
  const add = async () => {
    const si = flows.find(({ id }) => id === flow)?.si;
    if (si === undefined) return;
    const title = name.trim() === "" ? words.herOwn() : name.trim();
    const pump = uuidv7();
    const setting = { pump, name: title, space, running: false, flow: si };
    if (await write(words.wroteOnHer({ pump: title }), (doing, now) => setPump(doing, now, setting))) onDone(pump);
  };
  return (
    <>
      <TextField label={words.nameOfIt()} hint={words.nameHint()} value={name} onChange={setName} limit={80} />
      <PickRow label={words.movesAbout()} options={flows} picked={flow} onPick={setFlow} />
      <Button kind="primary" wide isBusy={isBusy} isDisabled={flow === undefined} onPress={() => void add()}>
        {words.itIsOnHer()}
      </Button>
    </>
  );
}
