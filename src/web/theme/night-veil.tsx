import { useEffect } from "react";
import { usePreferences } from "./preferences.ts";

/** Sets the palette on the document and, at night, dims everything to the person's level. */
export function NightVeil() {
  const { palette, nightLevel } = usePreferences();
  useEffect(() => {
    document.documentElement.dataset["palette"] = palette;
  }, [palette]);
  if (palette === "day") return null;
  return <div className="veil" aria-hidden="true" style={{ opacity: 1 - nightLevel }} />;
}
