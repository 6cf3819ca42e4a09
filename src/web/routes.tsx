import { lazy, type ComponentType, type LazyExoticComponent } from "react";

interface PageModule {
  readonly default: ComponentType;
}

/** A page by its path. Each is a chunk of its own, fetched when first shown and kept for offline. */
export interface PageRoute {
  readonly path: string;
  /** Shown before anyone has signed in. */
  readonly isOpen?: boolean;
  readonly page: LazyExoticComponent<ComponentType>;
}

const found = import.meta.glob<PageModule>("./pages/*/*-page.tsx");

const PATHS: readonly { readonly path: string; readonly file: string; readonly isOpen?: boolean }[] = [
  { path: "/", file: "board/board" },
  { path: "/kit/:id", file: "kit/kit" },
  { path: "/kit/:id/turnaround", file: "turnaround/turnaround" },
  { path: "/kit/:id/turnaround/:turnaround/record", file: "turnaround/record" },
  { path: "/kit/:id/card-entry", file: "turnaround/card-entry" },
  { path: "/kit/:id/delivery", file: "delivery/delivery" },
  { path: "/kit/:id/hand-over", file: "kit/hand-over" },
  { path: "/kit/:id/return", file: "kit/return" },
  { path: "/kit/:id/finding", file: "kit/raise-finding" },
  { path: "/kit/:id/keep", file: "kit/keep" },
  { path: "/place/:place/muster", file: "kit/muster" },
  { path: "/enrol", file: "kit/enrol" },
  { path: "/findings", file: "findings/findings" },
  { path: "/casualty", file: "casualty/casualty" },
  { path: "/casualty/new", file: "casualty/before-launch" },
  { path: "/casualty/:id", file: "casualty/sheet" },
  { path: "/card/read-do", file: "casualty/read-do" },
  { path: "/people", file: "people/people" },
  { path: "/devices", file: "devices/devices" },
  { path: "/outbox", file: "outbox/outbox" },
  { path: "/settings", file: "settings/settings" },
  { path: "/sign-in", file: "sign-in/sign-in", isOpen: true },
  { path: "/invite", file: "sign-in/invite", isOpen: true },
  { path: "/set-up", file: "set-up/set-up", isOpen: true },
];

/** The pages there are. */
export const routes: readonly PageRoute[] = PATHS.flatMap(({ path, file, isOpen = false }) => {
  const load = found[`./pages/${file}-page.tsx`];
  return load ? [{ path, isOpen, page: lazy(load) }] : [];
});
