/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { KitViewWords } from "#src/words/made/kit/kit-view.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: KitViewWords = {
  firstFlush: () => "Premier rinçage",
  nowBefore: () => "Maintenant, avant la remise en état",
  nowFor: (d) => "Maintenant, pour " + d.what,
  firstAid: (d) => "Premiers soins après " + d.what,
  notWritten: () => "Pas noté",
  flushed: () => "Rincé maintenant",
  flushFromStop: (d) =>
    "Il a rencontré : " + d.what + ". " + d.within + " à partir de son dernier pompage, " + d.time + ". " + d.source,
  flushFromReturn: (d) =>
    "Il a rencontré : " +
    d.what +
    ". " +
    d.within +
    " à partir de son retour, " +
    d.time +
    " ; il avait cessé de pomper avant, donc le plus tôt est le mieux. " +
    d.source,
  differ: () => "Deux appareils diffèrent",
  stands: () => "Celle-ci vaut",
  letStand: () => "Faire valoir celle-ci",
  whySettle: () => "Pourquoi : qu'avez-vous regardé ?",
  settle: () => "Trancher",
  notSettled: () => "Pas tranché",
  notReceived: () => "Une ligne que cet appareil n'a pas encore reçue.",
  lineSaid: (d) => "Ligne " + d.line + " : " + d.answer,
  openedNoSeal: () => "Remise en état ouverte, aucun scellé trouvé",
  openedSeal: (d) => "Remise en état ouverte, scellé lu " + d.seal,
  sealedWith: (d) => "Scellé avec " + d.seal,
  closedGrounded: (d) => "Fermé comme immobilisé : " + d.reason,
  timed: (d) => "Chronométré " + d.duration,
  primed: (d) => "Amorcé en " + d.duration,
  pulls: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " tirage compté",
      other: strictNumber("fr", d.count, 0, "count") + " tirages comptés",
    }),
  handedTo: (d) => "Remis à " + d.vessel,
  fitted: (d) => "Posé, " + d.day,
  dateRead: (d) => "Date lue : " + d.date,
  dateUnread: () => "Date lue : illisible",
  shelfAsked: () => "D'où vient le nouveau",
  chooseLot: () => "Lisez le lot dessus, et choisissez",
  notLabel: () => "Ce code n'est pas l'étiquette d'un kit ou d'une étagère.",
  shelfLabel: () => "C'est l'étiquette d'une étagère.",
  unknownLabel: () => "Cet appareil ne connaît aucun kit de cette étiquette.",
  notFound: () => "Aucun kit, ou plus d'un, n'a ce numéro ou ce nom.",
  noneFound: () =>
    "Aucun kit ni étagère, ou plus d'un, ne s'appelle ainsi. De deux étagères du même nom, tapez aussi le lieu.",
  typeAny: () => "Ou tapez le numéro de série, le nom ou l'étagère",
  readLabel: () => "Lire une étiquette",
  typeIt: () => "Ou tapez le numéro de série ou le nom",
  find: () => "Le trouver",
  leave: () => "Laisser",
  camera: () => "Ce que voit l'appareil photo",
  strike: (d) => "Rayer cette ligne : " + d.what,
  strikeDo: () => "Rayer la ligne",
  strikeMore: () => "Ce qu'elle disait ne compte plus. La ligne reste au journal, avec votre nom et la raison.",
  why: () => "Pourquoi",
  notStruck: () => "Pas rayée",
  noShelf: () => "D'aucune étagère de la station",
  offShelf: (d) => d.part + ", de l'étagère de " + d.place + ", " + d.there,
  offShelfLot: (d) => "Lot " + d.lot + ", " + d.count + " là : " + d.part + ", de l'étagère de " + d.place,
  offShelfUnread: (d) => "Lot pas lu : " + d.part + ", de l'étagère de " + d.place,
  there: (d) => d.count + " là",
  thereNone: () => "aucun là d'après le dossier",
  thereLess: (d) => d.count + " : " + d.more + " de plus pris qu'inscrits",
};
export default words;
