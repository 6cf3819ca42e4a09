import { useEffect, useState } from "react";
import type { StationView } from "./sync/contract.ts";

/** Asks for the app to be kept on this device. Without a secure address browsers refuse, and the app needs a network. */
export async function keepAppHere(): Promise<void> {
  if (!("serviceWorker" in navigator)) return;
  await navigator.serviceWorker.register("/service-worker.js", { updateViaCache: "none" });
}

interface Versions {
  readonly newest: string;
  readonly shown: string;
}

const LOOK_MS = 30 * 60_000;

/**
 * True while a turnaround that this device has a hand in is open: the app may not change under it.
 * One that others opened elsewhere does not hold this device back.
 */
export function hasWorkOpen({ kits, device }: Pick<StationView, "kits" | "device">): boolean {
  return kits.some(({ turnaround, otherTurnarounds = [] }) =>
    [...(turnaround ? [turnaround] : []), ...otherTurnarounds].some((one) =>
      [one.opened, ...Object.values(one.answers).map(({ mark }) => mark)].some((mark) => mark.device === device),
    ),
  );
}

/** True when a newer version lies ready on this device. */
export function useNewVersion(): boolean {
  const [isNewer, setNewer] = useState(false);
  useEffect(() => {
    if (!("serviceWorker" in navigator)) return undefined;
    const look = () => void lookForNewer().then(setNewer);
    look();
    const timer = setInterval(look, LOOK_MS);
    return () => clearInterval(timer);
  }, []);
  return isNewer;
}

/** Shows the newer version from now on, and loads it. Only ever on a person's tap. */
export async function adoptNewVersion(): Promise<void> {
  const worker = await newestWorker();
  if (!worker) return;
  await askWorker(worker, "adopt");
  location.reload();
}

async function lookForNewer(): Promise<boolean> {
  const registration = await navigator.serviceWorker.getRegistration();
  await registration?.update().catch(() => undefined);
  await settled(registration?.installing);
  const worker = await newestWorker();
  if (!worker) return false;
  const { newest, shown } = await askWorker(worker, "which");
  return newest !== shown;
}

/** Resolves once a version being fetched is whole, or has failed. */
function settled(worker: ServiceWorker | null | undefined): Promise<void> {
  return new Promise((resolve) => {
    if (!worker || worker.state !== "installing") resolve();
    else worker.addEventListener("statechange", () => resolve(), { once: true });
  });
}

async function newestWorker(): Promise<ServiceWorker | undefined> {
  const registration = await navigator.serviceWorker.getRegistration();
  return registration?.waiting ?? registration?.active ?? undefined;
}

function askWorker(worker: ServiceWorker, question: "which" | "adopt"): Promise<Versions> {
  const { port1, port2 } = new MessageChannel();
  return new Promise((resolve) => {
    port1.addEventListener("message", (event: MessageEvent<Versions>) => resolve(event.data));
    port1.start();
    worker.postMessage(question, [port2]);
  });
}
