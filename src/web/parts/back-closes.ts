import { useEffect, useRef } from "react";
import type { AroundNavHandler } from "wouter";

/**
 * The Back button closes the dialog on the screen, and leaves the page only where none is open. A dialog has an entry of
 * its own in the browser's history, at the address of its page; closed by another way, or left behind by a reload, that
 * entry is gone back over. What calls until it is answered stays, and so does the page under it.
 */
interface Open {
  readonly id: string;
  /** What Back does. */
  readonly onBack: () => void;
}

/** Dialogs on the screen, the uppermost last. */
let open: readonly Open[] = [];
/** Ends once the browser has gone back over the entry of a dialog that was closed. */
let leaving: Promise<void> | undefined;
let made = 0;

/** @param onClose - called when Back is pressed while the dialog is the uppermost */
export function useBackCloses(onClose: () => void): void {
  const close = useRef(onClose);
  useEffect(() => {
    close.current = onClose;
  });
  useEffect(() => lay(() => close.current()), []);
}

/** Back neither answers what calls nor leaves the page under it. */
export function useBackStays(): void {
  useEffect(() => lay(), []);
}

/** Gives a dialog its entry; what is returned takes it away. Without `onBack` the entry comes again after every Back. */
function lay(onBack?: () => void): () => void {
  const id = `${performance.timeOrigin} ${(made += 1)}`;
  const enter = () => {
    if (!open.some((one) => one.id === id)) return;
    history.scrollRestoration = "manual";
    history.pushState({ dialog: id }, "");
  };
  open = [...open, { id, onBack: onBack ?? enter }];
  if (open.length === 1) addEventListener("popstate", closeAbove);
  if (leaving) void leaving.then(enter);
  else enter();
  return () => takeAway(id);
}

function takeAway(id: string): void {
  open = open.filter((one) => one.id !== id);
  if (open.length === 0) removeEventListener("popstate", closeAbove);
  if (dialogHere() === id) leave();
}

/** Goes back over the entry of a dialog that a reload has closed, so that the first Back is not in vain. */
export function leaveReloaded(): void {
  if (isOfClosed()) leave();
}

/** Closes every dialog that lies above the entry the browser has come to. */
function closeAbove(): void {
  const here = dialogHere();
  const kept = open.findIndex(({ id }) => id === here);
  for (const one of open.slice(kept + 1)) one.onBack();
  restoreAgain();
}

/**
 * The page under a dialog stays where it was brought meanwhile: going back over the dialog's entry does not scroll it. Once that
 * is painted the browser keeps the place of each page by itself again.
 */
function restoreAgain(): void {
  requestAnimationFrame(() => requestAnimationFrame(keepPlaces));
}

function keepPlaces(): void {
  if (dialogHere() === undefined) history.scrollRestoration = "auto";
}

/** Goes back over entries of dialogs that are no longer open. */
function leave(): void {
  leaving ??= new Promise((resolve) => {
    const onPop = (): void => {
      if (isOfClosed()) return history.back();
      removeEventListener("popstate", onPop);
      restoreAgain();
      leaving = undefined;
      resolve();
    };
    addEventListener("popstate", onPop);
    history.back();
  });
}

function isOfClosed(): boolean {
  const here = dialogHere();
  return here !== undefined && !open.some(({ id }) => id === here);
}

function dialogHere(): string | undefined {
  return (history.state as { readonly dialog?: string } | null)?.dialog;
}

/** Goes to an address: once a closed dialog's entry is gone, and in the place of the entry of one that is open. */
export const goPastDialogs: AroundNavHandler = (navigate, to, options) => {
  const go = () => navigate(to, dialogHere() === undefined ? options : { ...options, replace: true });
  if (leaving) void leaving.then(go);
  else go();
};
