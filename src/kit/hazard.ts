/** What a step does that can hurt; the lint demands the cautions that go with it. */
export type Hazard =
  | "enters-wrapping"
  | "lifts-container"
  | "closes-clamp"
  | "opens-fuel"
  | "fills-fuel"
  | "opens-cylinder"
  | "pulls-cord"
  | "turns-by-hand"
  | "runs-engine"
  | "hot-exhaust"
  | "unguarded-rotation"
  | "pumps-water"
  | "moves-strainer"
  | "hand-at-strainer"
  | "pressurised-hose"
  | "electric-in-water"
  | "uses-cleaner";
