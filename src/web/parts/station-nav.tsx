import { Link, useRoute } from "wouter";

const PLACES = [
  { to: "/", words: "Board" },
  { to: "/findings", words: "Findings" },
  { to: "/casualty", words: "Casualty" },
  { to: "/people", words: "People" },
  { to: "/devices", words: "Devices" },
  { to: "/settings", words: "Settings" },
] as const;

/** The pages every signed-in person goes between. */
export function StationNav() {
  return (
    <nav className="station-nav" aria-label="Station">
      {PLACES.map((place) => (
        <StationLink key={place.to} {...place} />
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
