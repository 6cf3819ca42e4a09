import type { ComponentType, LazyExoticComponent } from "react";
import { fetchedLater } from "./loading/index.ts";

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

const found = import.meta.glob<PageModule>("./pages/**/*-page.tsx");

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
  { path: "/kit/:id/fault", file: "fault/fault" },
  { path: "/kit/:id/drill", file: "drills/drill" },
  { path: "/kit/:id/keep", file: "kit/keep" },
  { path: "/place/:place/muster", file: "kit/muster" },
  { path: "/enrol", file: "kit/enrol" },
  { path: "/enrol/many", file: "kit/enrol-many" },
  { path: "/tables", file: "sheets/tables" },
  { path: "/tables/import", file: "sheets/import" },
  { path: "/year", file: "year/year" },
  { path: "/pattern/:pattern", file: "pattern/report-card" },
  { path: "/pattern/:pattern/interval", file: "pattern/interval" },
  { path: "/pattern/:pattern/lives", file: "pattern/lives" },
  { path: "/pattern/:pattern/lives/:item", file: "pattern/item-life" },
  { path: "/patterns", file: "pattern/patterns" },
  { path: "/patterns/walk", file: "turnaround/dry-run" },
  { path: "/patterns/draft", file: "pattern/pattern-draft" },
  { path: "/work", file: "work/work" },
  { path: "/findings", file: "findings/findings" },
  { path: "/casualty", file: "casualty/casualty" },
  { path: "/casualty/new", file: "casualty/before-launch" },
  { path: "/casualty/read", file: "casualty/join/hand-sheet" },
  { path: "/casualty/:id", file: "casualty/sheet" },
  { path: "/casualty/:id/hand", file: "casualty/join/hand-sheet" },
  { path: "/casualty/:id/timeline", file: "timeline/timeline" },
  { path: "/casualty/:id/review", file: "review/review" },
  { path: "/forecasts", file: "review/forecasts" },
  { path: "/card/read-do", file: "casualty/read-do" },
  { path: "/kit/:id/take-out", file: "kit/take-out" },
  { path: "/stock", file: "stock/stock" },
  { path: "/stock/new", file: "stock/part-setting" },
  { path: "/stock/:part", file: "stock/part" },
  { path: "/stock/:part/setting", file: "stock/part-setting" },
  { path: "/stock/:part/recall", file: "stock/recall" },
  { path: "/label", file: "labels/read-label" },
  { path: "/place/:place/labels", file: "labels/labels" },
  { path: "/people", file: "people/people" },
  { path: "/people/:person", file: "people/person" },
  { path: "/qualifications", file: "people/qualifications" },
  { path: "/qualifications/new", file: "people/qualification-setting" },
  { path: "/qualifications/:qualification/setting", file: "people/qualification-setting" },
  { path: "/drills", file: "drills/drills" },
  { path: "/visits", file: "visits/visits" },
  { path: "/visits/new", file: "visits/begin" },
  { path: "/visits/findings", file: "visits/pareto" },
  { path: "/visits/:id", file: "visits/visit" },
  { path: "/devices", file: "people/devices" },
  { path: "/outbox", file: "outbox/outbox" },
  { path: "/settings", file: "settings/settings" },
  { path: "/sign-in", file: "sign-in/sign-in", isOpen: true },
  { path: "/invite", file: "sign-in/invite", isOpen: true },
  { path: "/wall", file: "wall/wall", isOpen: true },
  { path: "/set-up", file: "sign-in/set-up", isOpen: true },
];

/** The pages there are. */
export const routes: readonly PageRoute[] = PATHS.map(({ path, file, isOpen = false }) => {
  const load = found[`./pages/${file}-page.tsx`];
  if (!load) throw new Error(`Broken invariant: no page at ${file}-page.tsx`);
  return { path, isOpen, page: fetchedLater(load) };
});
