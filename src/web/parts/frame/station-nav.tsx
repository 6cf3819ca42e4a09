import { Link, useRoute } from "wouter";
import { useDeviceState, useStation } from "../../device/index.ts";

const PLACES = [
  { to: "/", words: "Board" },
  { to: "/work", words: "Work due" },
  { to: "/findings", words: "Findings" },
  { to: "/casualty", words: "Casualty" },
  { to: "/stock", words: "Parts" },
  { to: "/people", words: "People" },
  { to: "/tables", words: "Tables" },
  { to: "/devices", words: "Devices" },
  { to: "/settings", words: "Settings" },
] as const;

/** The pages every signed-in person goes between; a casualty that is open is said on every one of them. None beside a lock. */
export function StationNav() {
  const open = useStation().casualties.filter(({ closed }) => !closed).length;
  const state = useDeviceState();
  if (state.kind === "signed-in" && state.isBeside) return null;
  return (
    <nav className="station-nav" aria-label="Station">
      {PLACES.map(({ to, words }) => (
        <StationLink key={to} to={to} words={words} open={to === "/casualty" ? open : 0} />
      ))}
    </nav>
  );
}

interface StationLinkProps {
  readonly to: string;
  readonly words: string;
  /** How many are open there. */
  readonly open: number;
}

function StationLink({ to, words, open }: StationLinkProps) {
  const [isHere] = useRoute(to);
  return (
    <Link
      to={to}
      {...(open > 0 && { "aria-label": `${words}: ${open} open` })}
      {...(isHere && { "aria-current": "page" as const })}
    >
      {words}
      {open > 0 && <span className="station-open">{open}</span>}
    </Link>
  );
}
