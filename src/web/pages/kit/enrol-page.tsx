import { useLocation } from "wouter";
import { uuidv7 } from "uuidv7";
import { newestOfEach, patternKey } from "#kit";
import { enrolKit, mayWrite } from "#station";
import { useCarryOut, useStation, type StationView } from "#web/device/index.ts";
import { Button, ButtonLink, EmptyState, ErrorBox, Page, sayCount, TextField, useDoing } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import type { DoingNow } from "#web/parts/use-doing.ts";
import { useKept, type Kept } from "#web/act/use-kept.ts";
import { EnrolItems } from "./enrol/enrol-items.tsx";
import { faultAt, faultsElsewhere } from "#web/act/fault-at.ts";
import {
  dateField,
  datesMissing,
  emptyEnrolment,
  enrolBody,
  FIELD_OF,
  isEnough,
  type EnrolDraft,
} from "./enrol/enrolment.ts";
import "#web/kit-view/kit.css";

/** Takes a kit on charge: what it is built to, where it lives, what it is called, and what is in it. */
export default function EnrolPage() {
  const view = useStation();
  const kept = useKept<EnrolDraft>("enrolment", emptyEnrolment(view.places));
  return (
    <Page title="Enrol a kit" back={{ to: "/", label: "Board" }}>
      {mayWrite(view.me.role, "kit-enrolled") ? (
        <>
          <div>
            <ButtonLink kind="quiet" to="/enrol/many">
              Several kits of one pattern
            </ButtonLink>
          </div>
          <EnrolForm view={view} kept={kept} />
        </>
      ) : (
        <EmptyState title="A keeper or an administrator enrols kits" />
      )}
    </Page>
  );
}

interface EnrolFormProps {
  readonly view: StationView;
  readonly kept: Kept<EnrolDraft>;
  /** What the station had against the last try. */
  readonly error: unknown;
}

function EnrolForm({ view, kept }: Omit<EnrolFormProps, "error">) {
  const { value: draft, change } = kept;
  const pattern = view.patterns.get(draft.pattern);
  const doing = useDoing();
  return (
    <div className="kit-form">
      <About view={view} kept={kept} error={doing.error} />
      {pattern && (
        <EnrolItems
          key={draft.pattern}
          pattern={pattern}
          draft={draft}
          error={doing.error}
          onChange={(part) => change({ ...draft, ...part })}
        />
      )}
      <Finish view={view} kept={kept} doing={doing} />
    </div>
  );
}

function About({ view, kept: { value: draft, change }, error }: EnrolFormProps) {
  const faultOf = (name: keyof typeof FIELD_OF) => {
    const fault = faultAt(error, FIELD_OF[name]);
    return fault === undefined ? {} : { fault };
  };
  const field = (name: "name" | "serial" | "seal") => ({
    value: draft[name],
    onChange: (text: string) => change({ ...draft, [name]: text }),
    ...faultOf(name),
  });
  return (
    <>
      <Choice
        label="Built to the pattern"
        options={newestOfEach([...view.patterns.values()]).map((one) => ({
          value: patternKey(one),
          label: `${one.name}, version ${one.version}`,
          note: one.summary,
        }))}
        value={draft.pattern || undefined}
        onChange={(pattern) => change({ ...draft, pattern, dates: {} })}
      />
      <Choice
        label="Kept at"
        options={view.places.map(({ id, name }) => ({ value: id, label: name }))}
        value={draft.place || undefined}
        onChange={(place) => change({ ...draft, place })}
        {...faultOf("place")}
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

interface FinishProps extends Omit<EnrolFormProps, "error"> {
  readonly doing: DoingNow;
}

function Finish({ view, kept, doing }: FinishProps) {
  const { value: draft } = kept;
  const carryOut = useCarryOut();
  const [, go] = useLocation();
  const pattern = view.patterns.get(draft.pattern);
  const missing = pattern ? datesMissing(pattern, draft).length : 0;
  const body = pattern && enrolBody(pattern, draft);
  const enrol = async () => {
    if (!body) return;
    const kit = uuidv7();
    const wanted = { kit, place: draft.place, pattern: draft.pattern, body };
    if (!(await doing.run(() => carryOut((now) => enrolKit(now, wanted))))) return;
    kept.clear();
    go(`/kit/${kit}`);
  };
  const said = [...Object.values(FIELD_OF), ...(body?.read ?? []).map(({ item }) => dateField(body!, item))];
  return (
    <>
      {missing > 0 && (
        <p>
          {sayCount(missing, "date")} not read yet: {missing === 1 ? "it is" : "each is"} asked in its first turnaround.
        </p>
      )}
      <p>A new kit stands ready after its first whole turnaround here. Only what was read is written down.</p>
      <ErrorBox error={faultsElsewhere(doing.error, said)} title="Not enrolled" />
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
