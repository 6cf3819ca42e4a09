import { useStation } from "#web/device/index.ts";
import { beginVisit, mayWrite, sizeOfVisit, type VisitWish } from "#station";
import { useMemo, useState } from "react";
import { useLocation } from "wouter";
import { uuidv7 } from "uuidv7";
import { useCarryOut } from "#web/device/index.ts";
import { Button, ErrorBox, Notice, Page, Section, useDoing } from "#web/parts/index.ts";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { useRefused, type Refused } from "#web/parts/fields/use-refused.ts";
import { SamplePanel } from "./sample-panel.tsx";
import "./visits.css";

/** Common practice: nine times in ten at least one is seen where a tenth is wrong. */
const USUAL = { chance: 90, share: 10 } as const;

/** Begins a visit: places, the rule, and how much that comes to; what is drawn shows once it is written. */
export default function BeginVisitPage() {
  const { me, early } = useStation();
  return (
    <Page title="Begin a visit" back={{ to: "/visits", label: "Visits" }}>
      <div className="visit-form">
        {!mayWrite(me.role, "visit-begun") && <Notice title="A visit is begun by an assessor or a keeper" />}
        {early ? <Notice title="The log is still on its way: a sample is drawn once it is here" /> : <BeginForm />}
      </div>
    </Page>
  );
}

function BeginForm() {
  const view = useStation();
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [, go] = useLocation();
  const [places, setPlaces] = useState<readonly string[]>([]);
  const [rule, setRule] = useState<Rule>(USUAL);
  const refused = useRefused();
  const wish = useMemo(() => wishOf(places, rule), [places, rule]);
  const size = useMemo(() => (wish && places.length > 0 ? sizeOfVisit(view, wish) : undefined), [view, wish, places]);
  const id = useState(uuidv7)[0];
  const begin = () =>
    doing
      .run(() => carryOut((one) => beginVisit(one, id, { ...wish!, seed: newSeed() })))
      .then((did) => did && go(`/visits/${id}`));
  return (
    <>
      <Places picked={places} onPick={setPlaces} />
      <RuleFields rule={rule} most={size?.frame.kits.length ?? 0} onChange={setRule} refused={refused} />
      {size && wish && !refused.isAny ? (
        <SamplePanel size={size} wish={wish} />
      ) : (
        <p className="quiet">{whyNotYet(places, rule)}</p>
      )}
      <ErrorBox error={doing.error} title="Not begun" />
      <Button
        kind="primary"
        isDisabled={!size || size.kits === 0 || refused.isAny}
        isBusy={doing.isBusy}
        onPress={() => void begin()}
      >
        Begin the visit and draw
      </Button>
    </>
  );
}

/** In per cent, and a number of kits; undefined where what was typed is none. */
function whyNotYet(places: readonly string[], { chance, share }: Rule): string {
  if (places.length === 0) return "Choose the places first.";
  if (!isPercent(chance) || !isPercent(share)) return "Write chance and share as more than 0 and less than 100.";
  return "Write the number of kits as its field allows, or leave it empty.";
}

interface Rule {
  readonly chance: number | undefined;
  readonly share: number | undefined;
  readonly kits?: number | undefined;
}

type Asked = Omit<VisitWish, "seed">;

function wishOf(places: readonly string[], { chance, share, kits }: Rule): Asked | undefined {
  if (!isPercent(chance) || !isPercent(share)) return undefined;
  return { places, chance: chance / 100, share: share / 100, ...(kits !== undefined && { kits }) };
}

function isPercent(given: number | undefined): given is number {
  return given !== undefined && given > 0 && given < 100;
}

/** Of chance, and made only as the line is written: nobody can look at a sample first and then take another seed. */
function newSeed(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(8));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

interface PlacesProps {
  readonly picked: readonly string[];
  readonly onPick: (places: readonly string[]) => void;
}

function Places({ picked, onPick }: PlacesProps) {
  const { places, kits } = useStation();
  return (
    <fieldset className="visit-picks">
      <legend className="field-label">Which places are visited?</legend>
      {places.map(({ id, name }) => {
        const isPicked = picked.includes(id);
        const count = kits.filter(({ place }) => place === id).length;
        const toggle = () => onPick(isPicked ? picked.filter((one) => one !== id) : [...picked, id]);
        return (
          <Button key={id} wide isPressed={isPicked} onPress={toggle}>
            {name}, {count === 1 ? "1 kit" : `${count} kits`}
          </Button>
        );
      })}
    </fieldset>
  );
}

interface RuleProps {
  readonly rule: Rule;
  readonly most: number;
  readonly onChange: (rule: Rule) => void;
  readonly refused: Refused;
}

/** The rule, in words of what it does. */
function RuleFields({ rule, most, onChange, refused }: RuleProps) {
  return (
    <Section title="The rule">
      <NumberField
        label="Chance of seeing at least one wrong, in per cent"
        hint="90 is usual. 100 would mean looking at nearly every line."
        value={rule.chance}
        onChange={(chance) => onChange({ ...rule, chance })}
        isWhole={false}
      />
      <NumberField
        label="If so many were wrong, in per cent of all"
        hint="10 is usual: a tenth, rounded up. Fewer means a larger sample."
        value={rule.share}
        onChange={(share) => onChange({ ...rule, share })}
        isWhole={false}
      />
      <NumberField
        label="Kits to be opened, where the rule's number is not wanted"
        hint="Empty: the same rule is used for kits."
        value={rule.kits}
        onChange={(kits, isRefused) => {
          onChange({ ...rule, kits });
          refused.tell("kits", isRefused);
        }}
        least={1}
        {...(most > 0 && { most })}
      />
    </Section>
  );
}
