import type { CasualtyState, KeptForecast } from "#readiness";
import { believableOf, sheetQuestion, type OnSceneAnswer } from "#questions";
import { chanceLower, levelsAt, levelsForecast, startForecasts, type LevelForecast } from "#station";
import { crpsOfPercentiles } from "#reliability";
import { useEffect, useMemo, useState } from "react";
import type { StationView } from "#web/device/index.ts";
import { useAsk } from "#web/worker/index.ts";
import { inOrder } from "./in-order.ts";

/** What had been forecast and what came, oldest first, as far as it has been computed. */
export interface Judged {
  readonly forecasts: readonly KeptForecast[];
  /** Forecasts still to be computed. */
  readonly left: number;
}

type Ask = (name: string, input: unknown) => Promise<unknown>;

/** Levels of every closed casualty: those kept when it was gone through, the others computed now from its lines. */
export function useAllLevels(view: StationView): Judged {
  const ask = useAsk();
  const closed = useMemo(() => view.casualties.filter((one) => one.closed !== undefined), [view]);
  const asked = useMemo(() => closed.flatMap((one) => (one.reviewed ? [] : levelsOf(view, one))), [view, closed]);
  const kept = closed.flatMap(({ reviewed }) => (reviewed?.forecasts ?? []).filter(({ of }) => of === "lower"));
  const { forecasts, left } = useLevels(ask, asked);
  return { forecasts: inOrder([...kept, ...forecasts]), left };
}

/** Forecasts of levels, each asked anew from the lines its writer then had, and of the starts of our kits there. */
export function useJudged(view: StationView, casualty: CasualtyState): Judged {
  const ask = useAsk();
  const starts = useMemo(() => startsOn(view, casualty), [view, casualty]);
  const asked = useMemo(() => levelsOf(view, casualty), [view, casualty]);
  const { forecasts, left } = useLevels(ask, asked);
  return { forecasts: inOrder([...starts, ...forecasts]), left };
}

/** One after another, those still left counted. */
function useLevels(ask: Ask, asked: readonly LevelForecast[]): Judged {
  const [told, setTold] = useState<ReadonlyMap<string, KeptForecast | undefined>>(new Map());
  useEffect(() => {
    const leaving = new AbortController();
    void judgeAll(ask, asked, leaving.signal, (entry, one) => setTold((before) => new Map([...before, [entry, one]])));
    return () => leaving.abort();
  }, [ask, asked]);
  const forecasts = asked.flatMap(({ entry }) => told.get(entry) ?? []);
  return { forecasts, left: asked.filter(({ entry }) => !told.has(entry)).length };
}

function levelsOf(view: StationView, { id }: CasualtyState): readonly LevelForecast[] {
  const history = view.historyOf(`casualty:${id}`);
  const strikes = history.flatMap(({ struck }) => struck ?? []);
  return levelsForecast([...history.map(({ entry }) => entry), ...strikes], view.entriesOf(`casualty:${id}`));
}

/** Starts on this casualty are those asked for while its sheet was open. */
function startsOn(view: StationView, casualty: CasualtyState): readonly KeptForecast[] {
  const kits = new Set(casualty.pumps.flatMap(({ kit }) => kit ?? []));
  const [from, to] = [Date.parse(casualty.opened.at), Date.parse(casualty.closed?.at ?? casualty.opened.at)];
  const log = { kits: [...view.kits, ...view.retired], casualties: view.casualties, patterns: view.patterns };
  return startForecasts(log)
    .filter(({ kit, on, at }) => on === "casualty" && kits.has(kit) && Date.parse(at) >= from && Date.parse(at) <= to)
    .map(({ kit, at, chance, came }) => ({ of: "start", kit, at, chance, came }));
}

async function judgeAll(
  ask: Ask,
  asked: readonly LevelForecast[],
  leaving: AbortSignal,
  tell: (entry: string, one: KeptForecast | undefined) => void,
): Promise<void> {
  for (const one of asked) {
    if (leaving.aborted) return;
    const { casualty } = believableOf(one.casualty);
    const answer = await ask("on-scene", sheetQuestion(casualty, Date.parse(one.at), one.space)).then(
      (said) => said as OnSceneAnswer,
      () => undefined,
    );
    if (!leaving.aborted) tell(one.entry, judged(one, answer));
  }
}

function judged(one: LevelForecast, answer: OnSceneAnswer | undefined): KeptForecast | undefined {
  const seconds = (Date.parse(one.next.at) - Date.parse(one.casualty.opened.at)) / 1000;
  const fan = answer?.reading?.fan ?? [];
  const [chance, levels] = [chanceLower(fan, seconds, one.level), levelsAt(fan, seconds)];
  if (chance === undefined || !levels) return undefined;
  const stayed = Math.abs(one.next.level - one.level);
  const off = { told: crpsOfPercentiles(levels, one.next.level), stayed };
  return { of: "lower", at: one.at, chance, came: one.next.level < one.level, off };
}
