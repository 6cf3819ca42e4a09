import type { Person, Role } from "#readiness";
import type { InviteReply, InviteRequest } from "#station";
import { useState } from "react";
import { useThisDevice } from "#web/device/index.ts";
import type { Reply } from "#web/device/sync/server-door.ts";
import { Button, Notice, Section, TextField, Timestamp, useDoing } from "#web/parts/index.ts";
import { RoleChoice } from "./role-choice.tsx";
import { useWords, withParts } from "#web/language/index.ts";

/** Invites somebody new. Needs the network: the code is made by the server and shown once. */
export function InvitePerson() {
  const words = useWords("people");
  const [name, setName] = useState("");
  const [role, setRole] = useState<Role>();
  const invite = useInvite();
  const isReady = name.trim() !== "" && role !== undefined;
  return (
    <Section title={words.invite()}>
      <TextField label={words.name()} hint={words.nameHint()} value={name} onChange={setName} limit={80} />
      <RoleChoice value={role} onChange={setRole} />
      <div>
        <Button
          isDisabled={!isReady}
          isBusy={invite.isBusy}
          onPress={() => role && void invite.ask({ name: name.trim(), role })}
        >
          {words.makeInvite()}
        </Button>
      </div>
      <InviteMade reply={invite.reply} />
    </Section>
  );
}

/** A way back in for somebody known: lost PIN, locked out, new device. */
export function InviteAgain({ person }: { readonly person: Person }) {
  const words = useWords("people");
  const invite = useInvite();
  return (
    <>
      <div>
        <Button isBusy={invite.isBusy} onPress={() => void invite.ask({ person: person.id })}>
          {words.inviteAgain({ name: person.name })}
        </Button>
      </div>
      <InviteMade reply={invite.reply} />
    </>
  );
}

function useInvite() {
  const { door } = useThisDevice();
  const { isBusy, run } = useDoing();
  const [reply, setReply] = useState<Reply<InviteReply>>();
  const ask = (json: InviteRequest) =>
    run(async () => setReply(await door.ask<InviteReply>({ method: "POST", path: "/api/invites", json })));
  return { isBusy, reply, ask };
}

function InviteMade({ reply }: { readonly reply: Reply<InviteReply> | undefined }) {
  const words = useWords("people");
  if (!reply) return null;
  if (reply.kind === "unreachable") {
    return <Notice tone="attention" title={words.inviteNeedsNetwork()} isNews />;
  }
  if (reply.kind === "refused") {
    return (
      <Notice tone="wrong" title={reply.problem.message} isNews>
        <p>{reply.problem.remedy}</p>
      </Notice>
    );
  }
  return <InviteCode invite={reply.value} />;
}

function InviteCode({ invite }: { readonly invite: InviteReply }) {
  const words = useWords("people");
  const [isCopied, setCopied] = useState(false);
  const copy = () => void navigator.clipboard.writeText(invite.link).then(() => setCopied(true));
  return (
    <Notice title={words.passOn()} isNews>
      <p className="figure">{invite.code}</p>
      <p>{withParts(words.link, { link: <span className="invite-link">{invite.link}</span> })}</p>
      <p>{withParts(words.goodUntil, { at: <Timestamp at={invite.expires} /> })}</p>
      {"clipboard" in navigator && (
        <p>
          <Button onPress={copy}>{isCopied ? words.copied() : words.copy()}</Button>
        </p>
      )}
    </Notice>
  );
}
