import { useState, type ReactNode } from "react";
import { useWords } from "#web/language/index.ts";
import { useLocation } from "wouter";
import { patternKey } from "#kit";
import type { EntryKind } from "#readiness";
import { moveKit, rebuildKit, renameKit, retireKit, type Act, type ActContext } from "#station";
import { useCarryOut } from "#web/device/index.ts";
import {
  Button,
  ButtonLink,
  ConfirmDialog,
  EmptyState,
  ErrorBox,
  Notice,
  Section,
  TextField,
  useDoing,
} from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import { sayStillOut } from "./still-out.ts";
import { VersionChanges } from "./version-changes.tsx";
import { KitFormPage } from "./kit-form-page.tsx";

/** What a keeper does to a kit as a whole: its name, its place, its pattern version, its end. */
export default function KeepPage() {
  const words = useWords("keep");
  return (
    <KitFormPage title={(kit) => words.title({ kit })}>
      {(at) => (
        <>
          <Rename at={at} />
          <Move at={at} />
          <Rebuild at={at} />
          <Retire at={at} />
        </>
      )}
    </KitFormPage>
  );
}

interface AboutKit {
  readonly at: KitAtHand;
}

interface SmallFormProps {
  readonly title: string;
  readonly children: ReactNode;
  readonly button: string;
  readonly isReady: boolean;
  readonly act: (doing: ActContext) => Act<EntryKind>;
  readonly onDone: () => void;
}

/** One act: its fields, why it was refused, its button. */
function SmallForm({ title, children, button, isReady, act, onDone }: SmallFormProps) {
  const words = useWords("keep");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const save = async () => {
    if (await doing.run(() => carryOut(act))) onDone();
  };
  return (
    <Section title={title}>
      {children}
      <ErrorBox error={doing.error} title={words.notDone()} />
      <div>
        <Button isDisabled={!isReady} isBusy={doing.isBusy} onPress={() => void save()}>
          {button}
        </Button>
      </div>
    </Section>
  );
}

function useBack({ kit }: KitAtHand): () => void {
  const [, go] = useLocation();
  return () => go(`/kit/${kit.id}`);
}

function Rename({ at }: AboutKit) {
  const words = useWords("keep");
  const back = useBack(at);
  const [name, setName] = useState(at.kit.name);
  return (
    <SmallForm
      title={words.name()}
      button={words.rename()}
      isReady={name.trim() !== "" && name.trim() !== at.kit.name}
      act={(doing) => renameKit(doing, at.kit, name.trim())}
      onDone={back}
    >
      <TextField label={words.name()} value={name} onChange={setName} limit={80} />
    </SmallForm>
  );
}

function Move({ at }: AboutKit) {
  const words = useWords("keep");
  const back = useBack(at);
  const [to, setTo] = useState<string>();
  const others = at.view.places.filter(({ id }) => id !== at.kit.place);
  const here = at.view.places.find(({ id }) => id === at.kit.place)?.name ?? at.kit.place;
  if (others.length === 0) {
    return (
      <Section title={words.place()}>
        <EmptyState title={words.onlyPlace({ place: here })}>
          <p>{words.onlyPlaceMore()}</p>
        </EmptyState>
      </Section>
    );
  }
  return (
    <SmallForm
      title={words.place()}
      button={words.move()}
      isReady={to !== undefined}
      act={(doing) => moveKit(doing, at.kit, to ?? "")}
      onDone={back}
    >
      <Choice
        label={words.fromTo({ place: here })}
        options={others.map(({ id, name }) => ({ value: id, label: name }))}
        value={to}
        onChange={setTo}
      />
    </SmallForm>
  );
}

/** Offered where the station has another version of the kit's pattern. */
function Rebuild({ at }: AboutKit) {
  const words = useWords("keep");
  const back = useBack(at);
  const [to, setTo] = useState<string>();
  const [reason, setReason] = useState("");
  const versions = [...at.view.patterns.values()].filter(
    (pattern) => pattern.id === at.pattern.id && patternKey(pattern) !== at.kit.pattern,
  );
  if (versions.length === 0) return null;
  const chosen = to === undefined ? undefined : at.view.patterns.get(to);
  return (
    <SmallForm
      title={words.patternVersion()}
      button={words.rebuilt()}
      isReady={to !== undefined && reason.trim() !== ""}
      act={(doing) => rebuildKit(doing, at.kit, to ?? "", reason.trim())}
      onDone={back}
    >
      <Choice
        label={words.rebuiltTo()}
        options={versions.map((one) => ({
          value: patternKey(one),
          label: words.version({ name: one.name, version: one.version }),
        }))}
        value={to}
        onChange={setTo}
      />
      {chosen && <VersionChanges from={at.view.patterns.get(at.kit.pattern) ?? at.pattern} to={chosen} />}
      <TextField label={words.whatChanged()} value={reason} onChange={setReason} />
    </SmallForm>
  );
}

function Retire({ at }: AboutKit) {
  const words = useWords("keep");
  const { kit } = at;
  const stillOut = sayStillOut(kit, { keep: words, standing: useWords("standing") });
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [, go] = useLocation();
  const [reason, setReason] = useState("");
  const [isAsking, setAsking] = useState(false);
  const retire = async () => {
    if (await doing.run(() => carryOut((now) => retireKit(now, kit, reason.trim())))) go("/");
    else setAsking(false);
  };
  return (
    <Section title={words.retire()}>
      <p>{words.retireMore()}</p>
      <StillOut list={stillOut} />
      {kit.lentOut && <ButtonLink to={`/kit/${kit.id}`}>{words.settleFirst()}</ButtonLink>}
      <TextField label={words.why()} value={reason} onChange={setReason} />
      <ErrorBox error={doing.error} title={words.notRetired()} />
      <div>
        <Button tone="grave" isDisabled={reason.trim() === ""} onPress={() => setAsking(true)}>
          {words.retireKit({ kit: kit.name })}
        </Button>
      </div>
      <ConfirmDialog
        title={words.retireAsk({ kit: kit.name })}
        isOpen={isAsking}
        onClose={() => setAsking(false)}
        confirm={words.retireDo()}
        onConfirm={() => void retire()}
        tone="grave"
        isBusy={doing.isBusy}
      >
        <p>{words.leavesBoard({ reason: reason.trim() })}</p>
        <StillOut list={stillOut} />
      </ConfirmDialog>
    </Section>
  );
}

/** Said before it is retired: nobody is sent for it afterwards. */
function StillOut({ list }: { readonly list: readonly string[] }) {
  const words = useWords("keep");
  if (list.length === 0) return null;
  return (
    <Notice tone="attention" title={words.notAllHere()}>
      {list.map((one) => (
        <p key={one}>{one}</p>
      ))}
      <p>{words.asksNoMore()}</p>
    </Notice>
  );
}
