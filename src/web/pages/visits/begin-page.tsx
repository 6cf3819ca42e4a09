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
import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";

/** Common practice: nine times in ten at least one is seen where a tenth is wrong. */
const USUAL = { chance: 90, share: 10 } as const;

/** Begins a visit: places, the rule, and how much that comes to; what is drawn shows once it is written. */
export default function BeginVisitPage() {
  const words = useWords("visits");
  const { me, early } = useStation();
  return (
    <Page title={words.begin()} back={{ to: "/visits", label: words.title() }}>
      <div className="visit-form">
        {!mayWrite(me.role, "visit-begun") && <Notice title={words.whoBegins()} />}
        {early ? <Notice title={words.early()} /> : <BeginForm />}
      </div>
    </Page>
  );
}

function BeginForm() {
  const words = useWords("visits");
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
        <p className="quiet">{whyNotYet(places, rule, words)}</p>
      )}
      <ErrorBox error={doing.error} title={words.notBegun()} />
      <Button
        kind="primary"
        isDisabled={!size || size.kits === 0 || refused.isAny}
        isBusy={doing.isBusy}
        onPress={() => void begin()}
      >
        {words.beginAndDraw()}
      </Button>
    </>
  );
}

/** In per cent, and a number of kits; undefined where what was typed is none. */
function whyNotYet(places: readonly string[], { chance, share }: Rule, words: Words["visits"]): string {
  if (places.length === 0) return words.choosePlaces();
  if (!isPercent(chance) || !isPercent(share)) return words.writeRule();
  return words.writeKits();
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
  const words = useWords("visits");
  const { places, kits } = useStation();
  return (
    <fieldset className="visit-picks">
      <legend className="field-label">{words.whichPlaces()}</legend>
      {places.map(({ id, name }) => {
        const isPicked = picked.includes(id);
        const count = kits.filter(({ place }) => place === id).length;
        const toggle = () => onPick(isPicked ? picked.filter((one) => one !== id) : [...picked, id]);
        return (
          <Button key={id} wide isPressed={isPicked} onPress={toggle}>
            {words.placeKits({ place: name, count })}
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
  const words = useWords("visits");
  return (
    <Section title={words.rule()}>
      <NumberField
        label={words.chance()}
        hint={words.chanceHint()}
        value={rule.chance}
        onChange={(chance) => onChange({ ...rule, chance })}
        isWhole={false}
      />
      <NumberField
        label={words.share()}
        hint={words.shareHint()}
        value={rule.share}
        onChange={(share) => onChange({ ...rule, share })}
        isWhole={false}
      />
      <NumberField
        label={words.kits()}
        hint={words.kitsHint()}
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
