import { newestOfEach } from "#kit";
import { isLeadSupposed, type PartSetting, type StockPart } from "#readiness";
import { retirePart, setPart } from "#station";
import { useState } from "react";
import { uuidv7 } from "uuidv7";
import { useLocation, useParams, useSearchParams } from "wouter";
import { useCarryOut, useStation, type StationView } from "#web/device/index.ts";
import { Button, ErrorBox, Notice, Page, Section, TextField, useDoing } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { isSpan, spanFault } from "#web/parts/fields/span-fault.ts";
import { ItemPick } from "./item-pick.tsx";
import "./stock.css";
import { useWords } from "#web/language/index.ts";

/** A part put on the list, or written anew. */
export default function PartSettingPage() {
  const frame = useWords("frame");
  const words = useWords("stockPart");
  const { part: id } = useParams<{ readonly part?: string }>();
  const view = useStation();
  const [search] = useSearchParams();
  const part = view.parts.find((one) => one.id === id);
  const name = search.get("name") ?? "";
  return (
    <Page
      title={part ? words.changeNamed({ part: part.name }) : words.newPart()}
      back={part ? { to: `/stock/${part.id}`, label: part.name } : { to: "/stock", label: frame.stock() }}
    >
      <PartForm key={part?.id ?? name} {...(part && { part })} view={view} name={name} />
      {part && part.retired === undefined && <Retire part={part} />}
    </Page>
  );
}

interface PartForm {
  readonly number: string;
  readonly name: string;
  readonly unit: string;
  readonly supplier: string;
  readonly supplierNumber: string;
  readonly cost: number | undefined;
  readonly leadTime: string;
  readonly keeps: "long" | "printed" | "life" | undefined;
  readonly shelfLife: string;
  readonly keep: Readonly<Record<string, number | undefined>>;
  readonly items: PartSetting["items"];
}

function draftOf(part: StockPart | undefined, name: string, view: StationView): PartForm {
  if (!part) return { ...EMPTY, name, items: name === "" ? [] : itemsNamed(view, name) };
  const keeps = part.printed ? "printed" : part.shelfLife === undefined ? "long" : "life";
  return {
    ...EMPTY,
    ...part,
    cost: part.cost,
    supplier: part.supplier ?? "",
    supplierNumber: part.supplierNumber ?? "",
    leadTime: part.leadTime ?? "",
    shelfLife: part.shelfLife ?? "",
    keeps,
    keep: Object.fromEntries(part.keep.map(({ place, least }) => [place, least])),
  };
}

const EMPTY: PartForm = {
  number: "",
  name: "",
  unit: "piece",
  supplier: "",
  supplierNumber: "",
  cost: undefined,
  leadTime: "",
  keeps: undefined,
  shelfLife: "",
  keep: {},
  items: [],
};

/** Items of patterns that name this part in their own words. */
function itemsNamed({ patterns }: StationView, name: string): PartSetting["items"] {
  const all = newestOfEach([...patterns.values()]).flatMap(({ id, items }) =>
    items.filter(({ part }) => part === name).map((item) => ({ pattern: id, item: item.id })),
  );
  return [...new Map(all.map((one) => [`${one.pattern}/${one.item}`, one])).values()];
}

function settingOf(draft: PartForm): PartSetting | undefined {
  const { number, name, unit, keeps, cost, keep, items } = draft;
  if ([number, name, unit].some((text) => text.trim() === "") || keeps === undefined) return undefined;
  if (
    !mayBeSpan(draft.leadTime) ||
    (keeps === "life" && (draft.shelfLife.trim() === "" || !mayBeSpan(draft.shelfLife)))
  )
    return undefined;
  return {
    number: number.trim(),
    name: name.trim(),
    unit: unit.trim(),
    ...(draft.supplier.trim() !== "" && { supplier: draft.supplier.trim() }),
    ...(draft.supplierNumber.trim() !== "" && { supplierNumber: draft.supplierNumber.trim() }),
    ...(cost !== undefined && { cost }),
    ...(draft.leadTime.trim() !== "" && { leadTime: draft.leadTime.trim() }),
    ...(keeps === "life" && { shelfLife: draft.shelfLife.trim() }),
    printed: keeps === "printed",
    keep: Object.entries(keep).flatMap(([place, least]) => (least ? [{ place, least }] : [])),
    items,
  };
}

function mayBeSpan(text: string): boolean {
  return text.trim() === "" || isSpan(text);
}

interface PartFormProps {
  readonly part?: StockPart;
  readonly view: StationView;
  readonly name: string;
}

function PartForm({ part, view, name }: PartFormProps) {
  const words = useWords("stockPart");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [, go] = useLocation();
  const [draft, setDraft] = useState(() => draftOf(part, name, view));
  /** It was to be saved without saying how long the part takes to come: that is asked once. */
  const [isAsked, setAsked] = useState(false);
  const setting = settingOf(draft);
  const save = async () => {
    if (!setting) return;
    if (!isAsked && isLeadSupposed(setting)) return setAsked(true);
    const id = part?.id ?? uuidv7();
    if (await doing.run(() => carryOut((now) => setPart(now, id, setting)))) go(`/stock/${id}`);
  };
  return (
    <div className="stock-form">
      <PartFields draft={draft} onChange={(change) => setDraft({ ...draft, ...change })} view={view} />
      {isAsked && setting && isLeadSupposed(setting) && (
        <Notice tone="attention" title={words.supposedIfEmpty()} isNews />
      )}
      <ErrorBox error={doing.error} title={words.notSaved()} />
      <Button kind="primary" isDisabled={!setting} isBusy={doing.isBusy} onPress={() => void save()}>
        {words.savePart()}
      </Button>
    </div>
  );
}

interface FieldsProps {
  readonly draft: PartForm;
  readonly onChange: (change: Partial<PartForm>) => void;
  readonly view: StationView;
}

function PartFields({ draft, onChange, view }: FieldsProps) {
  const words = useWords("stockPart");
  const parts = useWords("parts");
  const text = (field: "number" | "name" | "unit" | "supplier" | "supplierNumber", label: string, limit: number) => (
    <TextField label={label} value={draft[field]} onChange={(value) => onChange({ [field]: value })} limit={limit} />
  );
  const leadFault = draft.leadTime.trim() === "" ? undefined : spanFault(draft.leadTime, parts);
  const lifeFault = draft.shelfLife.trim() === "" ? undefined : spanFault(draft.shelfLife, parts);
  return (
    <>
      {text("name", words.name(), 80)}
      {text("number", words.number(), 40)}
      {text("unit", words.countedIn(), 20)}
      {text("supplier", words.supplierIfKnown(), 80)}
      {text("supplierNumber", words.supplierNumber(), 60)}
      <NumberField
        label={words.costIfKnown()}
        value={draft.cost}
        onChange={(cost) => onChange({ cost })}
        isWhole={false}
        least={0}
      />
      <TextField
        label={words.orderToShelf()}
        hint={words.weeksHint()}
        value={draft.leadTime}
        onChange={(leadTime) => onChange({ leadTime })}
        isShort
        {...(leadFault !== undefined && { fault: leadFault })}
      />
      <Choice
        label={words.howLongKeeps()}
        options={[
          { value: "long", label: words.keepsLong() },
          { value: "printed", label: words.keepsToPrinted() },
          { value: "life", label: words.keepsLife() },
        ]}
        value={draft.keeps}
        onChange={(keeps) => onChange({ keeps })}
      />
      {draft.keeps === "life" && (
        <TextField
          label={words.howLong()}
          hint={words.monthsHint()}
          value={draft.shelfLife}
          onChange={(shelfLife) => onChange({ shelfLife })}
          isShort
          {...(lifeFault !== undefined && { fault: lifeFault })}
        />
      )}
      {view.places.map(({ id, name }) => (
        <NumberField
          key={id}
          label={words.leastKeptAt({ place: name })}
          value={draft.keep[id]}
          onChange={(least) => onChange({ keep: { ...draft.keep, [id]: least } })}
          least={0}
        />
      ))}
      <ItemPick view={view} items={draft.items} onChange={(items) => onChange({ items })} />
    </>
  );
}

function Retire({ part }: { readonly part: StockPart }) {
  const words = useWords("stockPart");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [, go] = useLocation();
  const [reason, setReason] = useState("");
  const retire = async () => {
    if (await doing.run(() => carryOut((now) => retirePart(now, part.id, reason.trim())))) go("/stock");
  };
  return (
    <Section title={words.takeOffList()}>
      <TextField label={words.because()} value={reason} onChange={setReason} />
      <ErrorBox error={doing.error} title={words.notTakenOff()} />
      <div>
        <Button tone="grave" isDisabled={reason.trim() === ""} isBusy={doing.isBusy} onPress={() => void retire()}>
          {words.takeOffList()}
        </Button>
      </div>
    </Section>
  );
}
