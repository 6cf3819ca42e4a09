let touched = false;

/** True once anything was tapped or typed in this window: only then can a tap have been meant for what stood before. */
export function isTouched(): boolean {
  return touched;
}

function note(): void {
  touched = true;
}

if (typeof document !== "undefined") {
  document.addEventListener("pointerdown", note, { capture: true, once: true });
  document.addEventListener("keydown", note, { capture: true, once: true });
}
