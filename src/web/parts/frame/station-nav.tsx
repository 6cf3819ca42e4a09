import { Link, useRoute } from "wouter";
import { useDeviceState, useStation } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";

const PLACES = [
  { to: "/", name: "board" },
  { to: "/work", name: "work" },
  { to: "/findings", name: "findings" },
  { to: "/casualty", name: "casualty" },
  { to: "/stock", name: "stock" },
  { to: "/people", name: "people" },
  { to: "/tables", name: "tables" },
  { to: "/devices", name: "devices" },
  { to: "/settings", name: "settings" },
] as const;

/** The pages every signed-in person goes between; a casualty that is open is said on every one of them. None beside a lock. */
export function StationNav() {
  const open = useStation().casualties.filter(({ closed }) => !closed).length;
  const state = useDeviceState();
  const words = useWords("frame");
  if (state.kind === "signed-in" && state.isBeside) return null;
  return (
    <nav className="station-nav" aria-label={words.pages()}>
      {PLACES.map(({ to, name }) => (
        <StationLink key={to} to={to} name={words[name]()} open={to === "/casualty" ? open : 0} />
      ))}
    </nav>
  );
}

interface StationLinkProps {
  readonly to: string;
  readonly name: string;
  /** How many are open there. */
  readonly open: number;
}

function StationLink({ to, name, open }: StationLinkProps) {
  const words = useWords("frame");
  const [isHere] = useRoute(to);
  return (
    <Link
      to={to}
      {...(open > 0 && { "aria-label": `${name}: ${words.open({ count: open })}` })}
      {...(isHere && { "aria-current": "page" as const })}
    >
      {name}
      {open > 0 && <span className="station-open">{open}</span>}
    </Link>
  );
}
