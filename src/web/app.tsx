import { lazy, Suspense, useEffect, useRef, useState } from "react";
import { Redirect, Route, Switch, useLocation } from "wouter";
import { DeviceProvider, useDeviceState, type DeviceState, type ThisDevice } from "./device/index.ts";
import { Crash } from "./crash.tsx";
import { EmptyState, ErrorBox, Notice, Page } from "./parts/index.ts";
import { CasualtyWatch } from "./pages/casualty/calls/casualty-watch.tsx";
import { RefuelWatch } from "./pages/delivery/refuel-watch.tsx";
import { BesideStrip } from "./pages/lock/beside-strip.tsx";
import { LockWatch } from "./pages/lock/lock-watch.tsx";
import { routes, type PageRoute } from "./routes.tsx";
import { NightVeil } from "./theme/index.ts";

const LockPage = lazy(async () => ({ default: (await import("./pages/lock/lock-screen.tsx")).LockPage }));

/** The whole app on one device. */
export function App({ device }: { readonly device: ThisDevice }) {
  return (
    <DeviceProvider device={device}>
      <NightVeil />
      <Crash>
        <BesideStrip />
        <Suspense fallback={null}>
          <Rooms />
        </Suspense>
        <RefuelWatch />
        <CasualtyWatch />
        <LockWatch />
      </Crash>
    </DeviceProvider>
  );
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
  const [isSlow, setSlow] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setSlow(true), 1000);
    return () => clearTimeout(timer);
  }, []);
  return isSlow ? (
    <Page title="Drykeel" frame="full">
      <p>Reading what this device holds.</p>
    </Page>
  ) : (
    <p className="opening">Drykeel is opening</p>
  );
}

function Fetching({ state }: { readonly state: DeviceState & { kind: "signed-in" } }) {
  const { reach, sitting } = state;
  return (
    <Page title={sitting.stationName || "The station"} frame="full">
      {reach.kind === "offline" || reach.kind === "signed-out" ? (
        <Notice tone="attention" title="The station's log is not on this device yet" isNews>
          <p>It has to be fetched once, with a network. This device keeps trying.</p>
        </Notice>
      ) : (
        <Notice title="Fetching the station's log" isNews>
          <p>Once it is here, everything works without a network.</p>
        </Notice>
      )}
    </Page>
  );
}

/** Shown where the device's disk cannot be used: then nothing may be written, or it would be lost. */
export function Unopened({ error }: { readonly error: unknown }) {
  return (
    <Page title="This device cannot keep anything" frame="full">
      <NightVeil />
      <Notice tone="wrong" title="Nothing can be kept here, so nothing can be written" isNews>
        <p>Close other windows of this app and load the page again. A private window cannot keep anything.</p>
      </Notice>
      <ErrorBox error={error} title="What the browser says" />
    </Page>
  );
}

function NoSuchPage() {
  return (
    <Page title="No such page" back={{ to: "/", label: "Board" }}>
      <EmptyState title="There is nothing at this address">
        <p>Go back to the board.</p>
      </EmptyState>
    </Page>
  );
}
