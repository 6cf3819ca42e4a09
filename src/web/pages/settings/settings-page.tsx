import { useStation } from "#web/device/index.ts";
import { mayCall, mayWrite } from "#station";
import { useWords } from "#web/language/index.ts";
import { ButtonLink, ButtonRow, Page, Section } from "#web/parts/index.ts";
import { LeaveDevice } from "./leave-device.tsx";
import { LockSettings } from "./lock-settings.tsx";
import { LooksSettings } from "./looks-settings.tsx";
import { BoatsSettings } from "./boats-settings.tsx";
import { MoneySettings } from "./money-settings.tsx";
import { OwnCalendar } from "./own-calendar.tsx";
import { OwnMail } from "./mail/own-mail.tsx";
import { PlaceChoice } from "./place-choice.tsx";
import { PlacesSettings } from "./places-settings.tsx";
import { SignInSettings } from "./sign-in-settings.tsx";
import { WallLinks } from "./wall-links.tsx";
import { FromFiles } from "./from-files.tsx";
import { HeldHere } from "./held-here.tsx";

/** How this device looks and reads, where its person works, and the ways out. */
export default function SettingsPage() {
  const { me } = useStation();
  const words = useWords("settings");
  const [frame, roles] = [useWords("frame"), useWords("signIn")];
  return (
    <Page
      title={frame.settings()}
      beside={<span>{words.meAs({ person: me.name, role: roles[me.role]().toLowerCase() })}</span>}
    >
      <LooksSettings />
      <PlaceChoice />
      <SignInSettings />
      {mayWrite(me.role, "place-set") && <PlacesSettings />}
      {mayWrite(me.role, "boat-set") && <BoatsSettings />}
      {mayWrite(me.role, "policy-set") && <MoneySettings />}
      <OwnCalendar />
      <OwnMail />
      {mayCall(me.role, "keep-wall-links") && <WallLinks />}
      <LockSettings />
      <Patterns />
      <HeldHere />
      <FromFiles />
      <LeaveDevice />
    </Page>
  );
}

function Patterns() {
  const words = useWords("settings");
  return (
    <Section title={words.patterns()}>
      <p>{words.patternsMore()}</p>
      <ButtonRow>
        <ButtonLink to="/patterns">{words.patterns()}</ButtonLink>
      </ButtonRow>
    </Section>
  );
}
