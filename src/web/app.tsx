import { Suspense, useEffect, useRef, useState } from "react";
import { Redirect, Route, Router, Switch, useLocation } from "wouter";
import { DeviceProvider, useDeviceState, type DeviceState, type ThisDevice } from "./device/index.ts";
import { Crash } from "./crash.tsx";
import { useWords } from "./language/index.ts";
import { fetchedLater } from "./loading/index.ts";
import { EmptyState, ErrorBox, Notice, Page } from "./parts/index.ts";
import { goPastDialogs } from "./parts/back-closes.ts";
import { LinePhotoWatch } from "./parts/line-photo-watch.tsx";
import { CasualtyWatch } from "./pages/casualty/calls/casualty-watch.tsx";
import { RefuelWatch } from "./pages/delivery/refuel-watch.tsx";
import { BesideStrip } from "./pages/lock/beside-strip.tsx";
import { LockWatch } from "./pages/lock/lock-watch.tsx";
import { routes, type PageRoute } from "./routes.tsx";
import { NightVeil } from "./theme/index.ts";

const LockPage = fetchedLater(async () => ({ default: (await import("./pages/lock/lock-screen.tsx")).LockPage }));

/** The whole app on one device. */
export function App({ device }: { readonly device: ThisDevice }) {
  return (
    <DeviceProvider device={device}>
      <NightVeil />
      <Router aroundNav={goPastDialogs}>
        <Crash>
          <BesideStrip />
          <Suspense fallback={<PageOpening />}>
            <Rooms />
          </Suspense>
          <LinePhotoWatch />
          <RefuelWatch />
          <CasualtyWatch />
          <LockWatch />
        </Crash>
      </Router>
    </DeviceProvider>
  );
}

/** A page's own program is read the first time it is gone to. */
function PageOpening() {
  return <p className="opening">{useWords("app").pageOpening()}</p>;
}

/** Which pages there are depends on who sits here. */
function Rooms() {
  const state = useDeviceState();
  useArrival();
  switch (state.kind) {
    case "opening":
      return <Opening />;
    case "unopened":
      return <Unopened error={state.error} />;
    case "signed-out":
      return <Pages routes={openRoutes} otherwise={<Redirect to={entranceOf(state)} replace />} />;
    case "locked":
      return <LockPage state={state} />;
    case "signed-in":
      if (state.isBeside) return <Pages routes={besideRoutes} otherwise={<Redirect to="/casualty/new" replace />} />;
      return state.station ? (
        <Pages routes={routes} otherwise={<NoSuchPage />} />
      ) : (
        <Pages routes={openRoutes} otherwise={<Fetching state={state} />} />
      );
  }
}

/** On a locked device, beside the lock: a casualty sheet and the card for strangers. */
const besideRoutes = routes.filter(({ path }) => path.startsWith("/casualty") || path.startsWith("/card/"));

const openRoutes = routes.filter(({ isOpen }) => isOpen);

function Pages({ routes, otherwise }: { readonly routes: readonly PageRoute[]; readonly otherwise: React.ReactNode }) {
  return (
    <Switch>
      {routes.map(({ path, page }) => (
        <Route key={path} path={path} component={page} />
      ))}
      <Route>{otherwise}</Route>
    </Switch>
  );
}

function entranceOf({ server }: DeviceState & { kind: "signed-out" }): string {
  return server?.needsSetup === true ? "/set-up" : "/sign-in";
}

/** A new page begins at its top, for eyes and for readers. */
function useArrival(): void {
  const [location] = useLocation();
  const before = useRef(location);
  useEffect(() => {
    if (before.current === location) return;
    before.current = location;
    window.scrollTo(0, 0);
    document.getElementById("main")?.focus({ preventScroll: true });
  }, [location]);
}

/** The words of index.html stay for the ordinary half second, so that nothing flashes; then it says what takes so long. */
function Opening() {
  const words = useWords("app");
  const [isSlow, setSlow] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setSlow(true), 1000);
    return () => clearTimeout(timer);
  }, []);
  return isSlow ? (
    <Page title="Drykeel" frame="full">
      <p>{words.opening()}</p>
    </Page>
  ) : (
    <p className="opening">{words.openingShort()}</p>
  );
}

function Fetching({ state }: { readonly state: DeviceState & { kind: "signed-in" } }) {
  const words = useWords("app");
  const { reach, sitting } = state;
  return (
    <Page title={sitting.stationName || words.station()} frame="full">
      {reach.kind === "offline" || reach.kind === "signed-out" ? (
        <Notice tone="attention" title={words.notHereYet()} isNews>
          <p>{words.notHereYetMore()}</p>
        </Notice>
      ) : (
        <Notice title={words.fetching()} isNews>
          <p>{words.fetchingMore()}</p>
        </Notice>
      )}
    </Page>
  );
}

/** Shown where the device's disk cannot be used: then nothing may be written, or it would be lost. */
export function Unopened({ error }: { readonly error: unknown }) {
  const words = useWords("app");
  return (
    <Page title={words.keepsNothing()} frame="full">
      <NightVeil />
      <Notice tone="wrong" title={words.keepsNothingNews()} isNews>
        <p>{words.keepsNothingMore()}</p>
      </Notice>
      <ErrorBox error={error} title={words.browserSays()} />
    </Page>
  );
}

function NoSuchPage() {
  const words = useWords("app");
  const frame = useWords("frame");
  return (
    <Page title={words.noPage()} back={{ to: "/", label: frame.board() }}>
      <EmptyState title={words.noPageNews()}>
        <p>{words.noPageMore()}</p>
      </EmptyState>
    </Page>
  );
}
