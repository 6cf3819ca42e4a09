/** Two pitches apart enough to be told from an engine's note [Hz]. */
const HIGH = 2100;
const LOW = 1400;
/** One beep and the pause after it [s]. */
const BEEP = 0.22;
const REST = 0.13;
const BEEPS = 6;
/** Vibration: on, off, on ... [ms]. */
const BUZZ = [400, 150, 400, 150, 800];

/** Sounds and shakes once; call again to repeat. Says whether there was any way to make a noise. */
type SoundAlarm = () => boolean;

/**
 * Makes the alarm of this device. A browser lets sound out only after a tap, so the context is made at one
 * (starting a clock is a tap) and kept.
 */
function makeAlarm(): { readonly arm: () => void; readonly isArmed: () => boolean; readonly sound: SoundAlarm } {
  let context: AudioContext | undefined;
  const arm = () => {
    context ??= "AudioContext" in globalThis ? new AudioContext() : undefined;
    void context?.resume();
  };
  const isArmed = () => context?.state === "running";
  const sound = () => {
    const shook = "vibrate" in navigator && navigator.vibrate(BUZZ);
    if (!context) return shook;
    void context.resume();
    for (let beep = 0; beep < BEEPS; beep += 1) playBeep(context, beep % 2 === 0 ? HIGH : LOW, beep * (BEEP + REST));
    return true;
  };
  return { arm, isArmed, sound };
}

function playBeep(context: AudioContext, pitch: number, after: number): void {
  const start = context.currentTime + after;
  const tone = context.createOscillator();
  const volume = context.createGain();
  tone.type = "square";
  tone.frequency.value = pitch;
  volume.gain.setValueAtTime(0.5, start);
  volume.gain.setValueAtTime(0, start + BEEP);
  tone.connect(volume).connect(context.destination);
  tone.start(start);
  tone.stop(start + BEEP);
}

/** The one alarm of this device: armed by a tap, sounded by whatever is due. */
export const alarm = makeAlarm();
