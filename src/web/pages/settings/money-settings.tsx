import { setPolicy } from "#station";
import { useState } from "react";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, ErrorBox, Section, TextField, useDoing } from "#web/parts/index.ts";

/** The currency in which every cost is told, set once for the whole station. */
export function MoneySettings() {
  const words = useWords("settingsStation");
  const { policy } = useStation();
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [typed, setTyped] = useState<string>();
  const [tried, setTried] = useState(false);
  const currency = (typed ?? policy.currency ?? "").trim().toUpperCase();
  const isCode = /^[A-Z]{3}$/.test(currency);
  const save = async () => {
    setTried(true);
    if (isCode) await doing.run(() => carryOut((now) => setPolicy(now, { currency })));
  };
  return (
    <Section title={words.money()}>
      <TextField
        label={words.currency()}
        hint={words.currencyHint()}
        value={typed ?? policy.currency ?? ""}
        onChange={setTyped}
        isShort
        limit={3}
        {...(tried && !isCode && { fault: words.currencyFault() })}
      />
      <ErrorBox error={doing.error} title={words.notSaved()} />
      <div>
        <Button isDisabled={currency === (policy.currency ?? "")} isBusy={doing.isBusy} onPress={() => void save()}>
          {words.saveCurrency()}
        </Button>
      </div>
    </Section>
  );
}
