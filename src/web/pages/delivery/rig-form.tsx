import { Choice } from "#web/parts/fields/choice.tsx";
import { saySetting, type Setting } from "#web/rig/delivery-words.ts";
import { firstSetting, standsInWater, type RigSetting } from "#web/rig/rig-setting.ts";
import { CountStepper, Stepper } from "./stepper.tsx";
import { sayStep, STEPS } from "./stepping.ts";

export interface RigFormProps {
  readonly about: Setting;
  readonly onChange: (part: Partial<RigSetting>) => void;
}

/** The two heights: what changes from boat to boat. */
export function HeightSteppers({ about: { pattern, setting }, onChange }: RigFormProps) {
  if (standsInWater(pattern)) {
    return (
      <Stepper
        label="Hose's end above the water"
        hint="From the water inside up to where the hose goes over the rail."
        steps={STEPS.rise}
        value={setting.rise}
        onChange={(rise) => onChange({ rise })}
      />
    );
  }
  return (
    <>
      <Stepper
        label="Suction lift"
        hint="From the water inside up to the pump."
        steps={STEPS.lift}
        value={setting.lift}
        onChange={(lift) => onChange({ lift })}
      />
      <Stepper
        label="Rise over the rail"
        hint="From the pump up to the end of the hose."
        steps={STEPS.rise}
        value={setting.rise}
        onChange={(rise) => onChange({ rise })}
      />
    </>
  );
}

const WATERS = [
  { value: "sea", label: "Sea water" },
  { value: "fresh", label: "Fresh water" },
] as const;

/** The rest of the rig, folded away with what it stands at in its heading. */
export function RestOfRig({ about, onChange }: RigFormProps) {
  return (
    <details className="extras delivery-rest">
      <summary>
        <span>Hoses, throttle, water: {saySetting(about)}</span>
      </summary>
      <div className="delivery-steppers">
        <HoseSteppers about={about} onChange={onChange} />
        <EngineStepper about={about} onChange={onChange} />
        <SurroundingSteppers about={about} onChange={onChange} />
        <CountStepper
          label="Pumps side by side on one discharge hose"
          value={about.setting.pumps}
          least={1}
          most={6}
          say={(pumps) => (pumps === 1 ? "1 pump" : `${pumps} pumps`)}
          onChange={(pumps) => onChange({ pumps })}
        />
      </div>
    </details>
  );
}

function HoseSteppers({ about: { pattern, setting, units }, onChange }: RigFormProps) {
  const packed = firstSetting(pattern, units);
  const hint = (length: number) => `As packed: ${sayStep(length, STEPS.dischargeLength, units)}.`;
  return (
    <>
      {!standsInWater(pattern) && (
        <Stepper
          label="Suction hose"
          hint={hint(packed.suctionLength)}
          steps={STEPS.suctionLength}
          value={setting.suctionLength}
          onChange={(suctionLength) => onChange({ suctionLength })}
        />
      )}
      <Stepper
        label="Discharge hose"
        hint={hint(packed.dischargeLength)}
        steps={STEPS.dischargeLength}
        value={setting.dischargeLength}
        onChange={(dischargeLength) => onChange({ dischargeLength })}
      />
    </>
  );
}

function EngineStepper({ about: { pattern, setting }, onChange }: RigFormProps) {
  if (!pattern.engine) return null;
  return (
    <Stepper
      label="Throttle, part of full speed"
      steps={STEPS.throttle}
      value={setting.throttle}
      onChange={(throttle) => onChange({ throttle })}
    />
  );
}

function SurroundingSteppers({ about: { setting }, onChange }: RigFormProps) {
  return (
    <>
      <Choice label="Water" options={WATERS} value={setting.water} onChange={(water) => onChange({ water })} />
      <Stepper
        label="Water temperature"
        steps={STEPS.waterTemperature}
        value={setting.waterTemperature}
        onChange={(waterTemperature) => onChange({ waterTemperature })}
      />
      <Stepper
        label="Altitude"
        hint="Thin air lets a pump lift less and an engine give less."
        steps={STEPS.altitude}
        value={setting.altitude}
        onChange={(altitude) => onChange({ altitude })}
      />
    </>
  );
}
