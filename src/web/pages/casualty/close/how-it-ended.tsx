import { useWords, withParts } from "#web/language/index.ts";
import { isForCasualty, type KitState } from "#readiness";
import { ButtonLink, Timestamp } from "#web/parts/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { sayOutcome } from "../outcomes.ts";
import { useSheet } from "../sheet/use-sheet.ts";

/** How a sheet was closed, what was left aboard, and the way to take back each kit that came with us. */
export function HowItEnded() {
  const words = useWords("casualty");
  const told = useWords("casualtyTold");
  const { casualty, view } = useSheet();
  if (!casualty.closed) return null;
  const { at, by, outcome, note, leftRunning = [], leftAboard = [] } = casualty.closed;
  const pumps = casualty.pumps.filter(({ pump }) => leftRunning.includes(pump));
  const away = view.kits.filter(
    ({ custody }) => custody.kind === "away" && isForCasualty({ ...casualty, closed: { at } }, custody),
  );
  const isLeft = ({ id }: KitState) => leftAboard.includes(id);
  return (
    <>
      <p className="verdict-detail">
        {withParts(words.closedBy, {
          at: <Timestamp at={at} />,
          person: nameOf(view, by),
          outcome: sayOutcome(outcome, told),
        })}{" "}
        {note}
      </p>
      {pumps.length > 0 && <p>{words.leftRunningAre({ pumps: namesOf(pumps) })}</p>}
      {away.some(isLeft) && <p>{words.stillAboard({ kits: namesOf(away.filter(isLeft)) })}</p>}
      {away
        .filter((kit) => !isLeft(kit))
        .map(({ id, name }) => (
          <ButtonLink key={id} wide to={`/kit/${id}/return`}>
            {words.takeBack({ kit: name })}
          </ButtonLink>
        ))}
    </>
  );
}

function namesOf(named: readonly { readonly name: string }[]): string {
  return named.map(({ name }) => name).join(", ");
}
