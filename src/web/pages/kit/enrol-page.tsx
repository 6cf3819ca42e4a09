import { useLocation } from "wouter";
import { uuidv7 } from "uuidv7";
import { patternKey } from "#kit";
import { enrolKit, mayWrite } from "#station";
import { useCarryOut, useStation, type StationView } from "../../device/index.ts";
import {
  Button,
  ButtonLink,
  Choice,
  EmptyState,
  ErrorBox,
  Page,
  sayCount,
  Section,
  TextField,
  useDoing,
} from "../../parts/index.ts";
import { useKept, type Kept } from "../turnaround/use-kept.ts";
import { EnrolItems } from "./enrol-items.tsx";
import { datesMissing, EMPTY_ENROLMENT, enrolBody, isEnough, type EnrolDraft } from "./enrolment.ts";
import "./kit.css";

/** Takes a kit on charge: what it is built to, where it lives, what it is called, and what is in it. */
export default function EnrolPage() {
  const view = useStation();
  const kept = useKept<EnrolDraft>("enrol", EMPTY_ENROLMENT);
  return (
    <Page title="Enrol a kit" back={{ to: "/", label: "Board" }}>
      {mayWrite(view.me.role, "kit-enrolled") ? (
        <EnrolForm view={view} kept={kept} />
      ) : (
        <EmptyState title="A keeper or an administrator enrols kits" />
      )}
    </Page>
  );
}

interface EnrolFormProps {
  readonly view: StationView;
  readonly kept: Kept<EnrolDraft>;
}

function EnrolForm({ view, kept }: EnrolFormProps) {
  const { value: draft, change } = kept;
  const pattern = view.patterns.get(draft.pattern);
  return (
    <div className="kit-form">
      <About view={view} kept={kept} />
      {pattern && (
        <Section title="What is in it">
          <EnrolItems
            key={draft.pattern}
            pattern={pattern}
            draft={draft}
            onChange={(part) => change({ ...draft, ...part })}
          />
        </Section>
      )}
      <Finish view={view} kept={kept} />
    </div>
  );
}

function About({ view, kept: { value: draft, change } }: EnrolFormProps) {
  const field = (name: "name" | "serial" | "seal") => ({
    value: draft[name],
    onChange: (text: string) => change({ ...draft, [name]: text }),
  });
  return (
    <>
      <Choice
        label="Built to the pattern"
        options={[...view.patterns.values()].map((one) => ({
          value: patternKey(one),
          label: `${one.name}, version ${one.version}`,
          note: one.summary,
        }))}
        value={draft.pattern || undefined}
        onChange={(pattern) => change({ ...draft, pattern, dates: {}, quantities: {} })}
      />
      <Choice
        label="Kept at"
        options={view.places.map(({ id, name }) => ({ value: id, label: name }))}
        value={draft.place || undefined}
        onChange={(place) => change({ ...draft, place })}
      />
      <TextField label="Name" hint="As people call it: Pump 4." {...field("name")} limit={80} />
      <TextField label="Serial" hint="As on its plate." {...field("serial")} limit={80} isShort />
      <TextField
        label="Number of the seal on it"
        hint="Read off the container. Leave empty where it has none."
        {...field("seal")}
        limit={40}
        isShort
      />
    </>
  );
}

function Finish({ view, kept }: EnrolFormProps) {
  const { value: draft } = kept;
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [, go] = useLocation();
  const pattern = view.patterns.get(draft.pattern);
  const missing = pattern ? datesMissing(pattern, draft).length : 0;
  const enrol = async () => {
    if (!pattern) return;
    const kit = uuidv7();
    const wanted = { kit, place: draft.place, pattern: draft.pattern, body: enrolBody(pattern, draft, view.today) };
    if (!(await doing.run(() => carryOut((now) => enrolKit(now, wanted))))) return;
    kept.clear();
    go(`/kit/${kit}`);
  };
  return (
    <>
      {missing > 0 && (
        <p>
          {sayCount(missing, "date")} not read. It can be enrolled so, but does not stand ready until each is on record.
        </p>
      )}
      <p>A new kit stands ready after its first whole turnaround here.</p>
      <ErrorBox error={doing.error} title="Not enrolled" />
      <Button kind="primary" isDisabled={!isEnough(draft)} isBusy={doing.isBusy} onPress={() => void enrol()}>
        Enrol it
      </Button>
      {view.places.length < 2 && mayWrite(view.me.role, "place-set") && (
        <div>
          <ButtonLink kind="quiet" to="/settings">
            Add another place first
          </ButtonLink>
        </div>
      )}
    </>
  );
}
