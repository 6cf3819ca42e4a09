import { useWords } from "#web/language/index.ts";
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
  const words = useWords("delivery");
  if (standsInWater(pattern)) {
    return (
      <Stepper
        label={words.hoseEnd()}
        hint={words.hoseEndHint()}
        steps={STEPS.rise}
        value={setting.rise}
        onChange={(rise) => onChange({ rise })}
      />
    );
  }
  return (
    <>
      <Stepper
        label={words.suctionLift()}
        hint={words.suctionLiftHint()}
        steps={STEPS.lift}
        value={setting.lift}
        onChange={(lift) => onChange({ lift })}
      />
      <Stepper
        label={words.rise()}
        hint={words.riseHint()}
        steps={STEPS.rise}
        value={setting.rise}
        onChange={(rise) => onChange({ rise })}
      />
    </>
  );
}

/** The rest of the rig, folded away with what it stands at in its heading. */
export function RestOfRig({ about, onChange }: RigFormProps) {
  const words = useWords("delivery");
  const rig = useWords("rig");
  return (
    <details className="extras delivery-rest">
      <summary>
        <span>{words.rest({ setting: saySetting(about, rig) })}</span>
      </summary>
      <div className="delivery-steppers">
        <HoseSteppers about={about} onChange={onChange} />
        <EngineStepper about={about} onChange={onChange} />
        <SurroundingSteppers about={about} onChange={onChange} />
        <CountStepper
          label={words.sideBySide()}
          value={about.setting.pumps}
          least={1}
          most={6}
          say={(count) => words.pumps({ count })}
          onChange={(pumps) => onChange({ pumps })}
        />
      </div>
    </details>
  );
}

function HoseSteppers({ about: { pattern, setting, units }, onChange }: RigFormProps) {
  const words = useWords("delivery");
  const packed = firstSetting(pattern, units);
  const hint = (length: number) => words.asPacked({ length: sayStep(length, STEPS.dischargeLength, units) });
  return (
    <>
      {!standsInWater(pattern) && (
        <Stepper
          label={words.suctionHose()}
          hint={hint(packed.suctionLength)}
          steps={STEPS.suctionLength}
          value={setting.suctionLength}
          onChange={(suctionLength) => onChange({ suctionLength })}
        />
      )}
      <Stepper
        label={words.dischargeHose()}
        hint={hint(packed.dischargeLength)}
        steps={STEPS.dischargeLength}
        value={setting.dischargeLength}
        onChange={(dischargeLength) => onChange({ dischargeLength })}
      />
    </>
  );
}

function EngineStepper({ about: { pattern, setting }, onChange }: RigFormProps) {
  const words = useWords("delivery");
  if (!pattern.engine) return null;
  return (
    <Stepper
      label={words.throttle()}
      steps={STEPS.throttle}
      value={setting.throttle}
      onChange={(throttle) => onChange({ throttle })}
    />
  );
}

function SurroundingSteppers({ about: { setting }, onChange }: RigFormProps) {
  const words = useWords("delivery");
  const waters = [
    { value: "sea", label: words.seaWater() },
    { value: "fresh", label: words.freshWater() },
  ] as const;
  return (
    <>
      <Choice label={words.water()} options={waters} value={setting.water} onChange={(water) => onChange({ water })} />
      <Stepper
        label={words.waterTemperature()}
        steps={STEPS.waterTemperature}
        value={setting.waterTemperature}
        onChange={(waterTemperature) => onChange({ waterTemperature })}
      />
      <Stepper
        label={words.altitude()}
        hint={words.altitudeHint()}
        steps={STEPS.altitude}
        value={setting.altitude}
        onChange={(altitude) => onChange({ altitude })}
      />
    </>
  );
}
