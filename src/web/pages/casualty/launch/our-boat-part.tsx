import { useWords } from "#web/language/index.ts";
import { inUnit } from "#base";
import { useState } from "react";
import { useStation } from "#web/device/index.ts";
import { Button, Section } from "#web/parts/index.ts";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { QuantityField } from "#web/parts/fields/quantity-field.tsx";
import type { Call, Told } from "./before-launch.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { ANOTHER, boatPicked, type Way } from "./our-boat.ts";
import { lightOf, lightPicks } from "./light-picks.ts";
import { sayWay } from "./way-words.ts";

/** Id of the part of the page where it is told who goes. */
export const OURS_PLACE = "ours";

interface OurBoatProps {
  readonly call: Call;
  readonly way: Way;
  readonly onChange: (part: Told) => void;
}

/** Who goes, with what, how soon: each figure in sight, each to be changed for this call. */
export function OurBoatPart({ call, way, onChange }: OurBoatProps) {
  const words = useWords("launch");
  const { boats } = useStation();
  const [isOpen, setOpen] = useState(false);
  const options = [...boats.map(({ id, name }) => ({ id, words: name })), { id: ANOTHER, words: words.anotherBoat() }];
  const mains = [
    { id: "yes", words: words.mainsYes() },
    { id: "no", words: words.mainsNo() },
  ] as const;
  const said = sayWay(way, words);
  return (
    <Section id={OURS_PLACE} title={words.whoGoes()}>
      <PickRow
        label={words.whichFirst()}
        options={options}
        picked={way.boat?.id ?? ANOTHER}
        onPick={(boat) => onChange(boatPicked(boat))}
      />
      <p>{way.isGuessed ? words.wayIsGuessed({ way: said }) : words.wayIs({ way: said })}</p>
      <Button isOpen={isOpen} onPress={() => setOpen(!isOpen)}>
        {isOpen ? words.keepFigures() : words.otherFigures()}
      </Button>
      {isOpen && <Figures key={way.boat?.id ?? ANOTHER} way={way} onChange={onChange} />}
      <PickRow
        label={words.light()}
        options={lightPicks(words)}
        picked={call.light ?? "not-known"}
        onPick={(id) => onChange({ light: lightOf(id) })}
      />
      {!way.mains && (
        <PickRow
          label={words.mains()}
          options={mains}
          picked={call.herMains === true ? "yes" : "no"}
          onPick={(id) => onChange({ herMains: id === "yes" })}
        />
      )}
    </Section>
  );
}

function Figures({ way, onChange }: Pick<OurBoatProps, "way" | "onChange">) {
  const words = useWords("launch");
  return (
    <>
      <Figure label={words.speed()} of="speed" unit="kn" {...{ way, onChange }} />
      <Figure label={words.untilWay()} of="launch" unit="min" {...{ way, onChange }} />
      <Figure label={words.untilWater()} of="setUp" unit="min" {...{ way, onChange }} />
      <NumberField
        label={words.carries()}
        value={way.carries}
        onChange={(carries) => onChange({ carries })}
        least={0}
        most={50}
      />
    </>
  );
}

interface FigureProps extends Pick<OurBoatProps, "way" | "onChange"> {
  readonly label: string;
  readonly of: "speed" | "launch" | "setUp";
  readonly unit: string;
}

const MOST = { speed: 60, launch: 86_400, setUp: 7_200 } as const;

/** A figure that cannot be is not told on: her own stands. */
function Figure({ label, of, unit, way, onChange }: FigureProps) {
  const words = useWords("launch");
  const dimension = of === "speed" ? "speed" : "time";
  const [text, setText] = useState(() => String(Number(inUnit(way[of], unit, dimension).toPrecision(4))));
  const [isBad, setBad] = useState(false);
  return (
    <QuantityField
      label={label}
      dimension={dimension}
      unit={unit}
      value={text}
      {...(isBad && { fault: of === "speed" ? words.speedFault() : words.timeFault({ minutes: MOST[of] / 60 }) })}
      onChange={(next, reading) => {
        const isWithin = reading !== undefined && reading.si <= MOST[of] && reading.si >= (of === "speed" ? 0.1 : 0);
        setText(next);
        setBad(reading !== undefined && !isWithin);
        onChange({ [of]: isWithin ? reading.si : undefined });
      }}
    />
  );
}
