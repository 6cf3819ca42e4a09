import "@fontsource/atkinson-hyperlegible-next/latin-400.css";
import "@fontsource/atkinson-hyperlegible-next/latin-700.css";
import "./theme/base.css";
import { openBrowserStore } from "#store/browser";
import { createRoot } from "react-dom/client";
import { App, Unopened } from "./app.tsx";
import { holdWords } from "./language/index.ts";
import { leaveReloaded } from "./parts/back-closes.ts";
import { isBesideInUse, keepAppHere, openBeside, ThisDevice } from "./device/index.ts";

const root = createRoot(document.getElementById("app")!);

/** The frame's own words, which no page waits for. */
const spoken = holdWords("app", "frame", "parts");

/** Opens the device's disk, then shows what is on it; the network comes last. */
async function start(): Promise<void> {
  await spoken;
  const store = await openBrowserStore("drykeel", { onSuperseded: () => location.reload() });
  const beside = isBesideInUse() ? await openBeside(store) : undefined;
  const device = beside ? new ThisDevice(beside.store, beside.card) : new ThisDevice(store);
  root.render(<App device={device} />);
  await device.open();
}

leaveReloaded();
start().catch((cause: unknown) => root.render(<Unopened error={cause} />));
void keepAppHere();
