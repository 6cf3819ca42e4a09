import { useMemo } from "react";
import { useWords } from "../language/index.ts";
import { hangingOf, type KitState } from "#readiness";
import { sayHanging } from "../act/timers.ts";
import { useStation } from "../device/index.ts";
import { useMinute } from "../timing/use-minute.ts";
import "./after-use.css";

/** What hangs in an open turnaround, and until when, in one line of a list; nothing where nothing hangs. */
export function HangingLine({ kit }: { readonly kit: KitState }) {
  const words = useWords("kitLine");
  const pattern = useStation().patterns.get(kit.turnaround?.pattern ?? kit.pattern);
  const until = useMemo(() => pattern && kit.turnaround && hangingOf(kit.turnaround, pattern)?.until, [kit, pattern]);
  const now = useMinute();
  if (until === undefined) return null;
  const said = sayHanging(until, now, words);
  return <span className="flush-line tabular">{`${said.charAt(0).toUpperCase()}${said.slice(1)}.`}</span>;
}
