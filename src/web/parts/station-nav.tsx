import { Link, useRoute } from "wouter";
import { useStation } from "../device/index.ts";

const PLACES = [
  { to: "/", words: "Board" },
  { to: "/findings", words: "Findings" },
  { to: "/casualty", words: "Casualty" },
  { to: "/people", words: "People" },
  { to: "/devices", words: "Devices" },
  { to: "/settings", words: "Settings" },
] as const;

/** The pages every signed-in person goes between; a casualty that is open is said on every one of them. */
export function StationNav() {
  const open = useStation().casualties.filter(({ closed }) => !closed).length;
  return (
    <nav className="station-nav" aria-label="Station">
      {PLACES.map(({ to, words }) => (
        <StationLink key={to} to={to} words={to === "/casualty" && open > 0 ? `${words}: ${open} open` : words} />
      ))}
    </nav>
  );
}

function StationLink({ to, words }: { readonly to: string; readonly words: string }) {
  const [isHere] = useRoute(to);
  return (
    <Link to={to} {...(isHere && { "aria-current": "page" as const })}>
      {words}
    </Link>
  );
}
