import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import { useSearchParams } from "wouter";
import { useStation } from "#web/device/index.ts";
import { Button, ButtonRow, EmptyState, Page, Section } from "#web/parts/index.ts";
import { groupByKit, listOpen, type OpenFinding } from "#web/kit-view/ages.ts";
import { FindingList } from "#web/kit-view/finding-list.tsx";
import { FindingPage } from "./finding-view.tsx";
import "#web/kit-view/findings.css";

/** Open findings, oldest first or by kit; one of them, when the address names it, with what to do about it. */
export default function FindingsPage() {
  const words = useWords("findings");
  const lineWords = useWords("kitLine");
  const view = useStation();
  const [search] = useSearchParams();
  const wanted = search.get("finding");
  const kit = search.get("kit");
  if (wanted !== null && kit !== null) return <FindingPage kit={kit} finding={wanted} />;
  const open = listOpen(view.kits, view.patterns, view.today, lineWords).filter(
    (one) => kit === null || one.kit.id === kit,
  );
  const of = view.kits.find((one) => one.id === kit);
  return (
    <Page
      title={of ? words.titleOn({ kit: of.name }) : words.title()}
      {...(of && { back: { to: `/kit/${of.id}`, label: of.name } })}
    >
      {open.length === 0 ? (
        <EmptyState title={words.none()}>
          <p>{words.noneMore()}</p>
        </EmptyState>
      ) : (
        <Lists open={open} />
      )}
    </Page>
  );
}

/** The same findings in two orders. */
function Lists({ open }: { readonly open: readonly OpenFinding[] }) {
  const words = useWords("findings");
  const [order, setOrder] = useState<"age" | "kit">("age");
  return (
    <>
      <ButtonRow>
        <Button isPressed={order === "age"} onPress={() => setOrder("age")}>
          {words.byAge()}
        </Button>
        <Button isPressed={order === "kit"} onPress={() => setOrder("kit")}>
          {words.byKit()}
        </Button>
      </ButtonRow>
      {order === "age" ? (
        <FindingList findings={open} naming="kit" />
      ) : (
        groupByKit(open).map(({ kit, findings }) => (
          <Section key={kit.id} title={kit.name}>
            <FindingList findings={findings} naming="item" />
          </Section>
        ))
      )}
    </>
  );
}
