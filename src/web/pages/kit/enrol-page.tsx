import { useLocation } from "wouter";
import { useWords } from "#web/language/index.ts";
import { uuidv7 } from "uuidv7";
import { newestOfEach, patternKey } from "#kit";
import { enrolKit, mayWrite } from "#station";
import { useCarryOut, useStation, type StationView } from "#web/device/index.ts";
import { Button, ButtonLink, EmptyState, ErrorBox, Page, TextField, useDoing } from "#web/parts/index.ts";
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
  const words = useWords("enrol");
  const view = useStation();
  const kept = useKept<EnrolDraft>("enrolment", emptyEnrolment(view.places));
  return (
    <Page title={words.title()} back={{ to: "/", label: words.board() }}>
      {mayWrite(view.me.role, "kit-enrolled") ? (
        <>
          <div>
            <ButtonLink kind="quiet" to="/enrol/many">
              {words.several()}
            </ButtonLink>
          </div>
          <EnrolForm view={view} kept={kept} />
        </>
      ) : (
        <EmptyState title={words.notYou()} />
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
  const words = useWords("enrol");
  const parts = useWords("parts");
  const faultOf = (name: keyof typeof FIELD_OF) => {
    const fault = faultAt(error, FIELD_OF[name], parts);
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
        label={words.pattern()}
        options={newestOfEach([...view.patterns.values()]).map((one) => ({
          value: patternKey(one),
          label: words.version({ name: one.name, version: one.version }),
          note: one.summary,
        }))}
        value={draft.pattern || undefined}
        onChange={(pattern) => change({ ...draft, pattern, dates: {} })}
      />
      <Choice
        label={words.keptAt()}
        options={view.places.map(({ id, name }) => ({ value: id, label: name }))}
        value={draft.place || undefined}
        onChange={(place) => change({ ...draft, place })}
        {...faultOf("place")}
      />
      <TextField label={words.name()} hint={words.nameHint()} {...field("name")} limit={80} />
      <TextField label={words.serial()} hint={words.serialHint()} {...field("serial")} limit={80} isShort />
      <TextField label={words.seal()} hint={words.sealHint()} {...field("seal")} limit={40} isShort />
    </>
  );
}

interface FinishProps extends Omit<EnrolFormProps, "error"> {
  readonly doing: DoingNow;
}

function Finish({ view, kept, doing }: FinishProps) {
  const words = useWords("enrol");
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
      {missing > 0 && <p>{words.datesMissing({ count: missing })}</p>}
      <p>{words.afterFirst()}</p>
      <ErrorBox error={faultsElsewhere(doing.error, said)} title={words.notEnrolled()} />
      <Button kind="primary" isDisabled={!isEnough(draft)} isBusy={doing.isBusy} onPress={() => void enrol()}>
        {words.enrolIt()}
      </Button>
      {view.places.length < 2 && mayWrite(view.me.role, "place-set") && (
        <div>
          <ButtonLink kind="quiet" to="/settings">
            {words.addPlace()}
          </ButtonLink>
        </div>
      )}
    </>
  );
}
