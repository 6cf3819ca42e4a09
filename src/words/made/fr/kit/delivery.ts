/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { DeliveryWords } from "#src/words/made/kit/delivery.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: DeliveryWords = {
  title: (d) => "Débit de " + d.kit,
  notSaid: () => "Le modèle ne dit pas ce que fait cette pompe",
  notSaidMore: () => "Ajoutez au modèle les points de la pompe et ses tuyaux, et cette page aura une réponse.",
  noAnswer: () => "Pas de réponse pour cette installation.",
  notComputed: () => "Cette installation ne peut pas être calculée",
  beforeRun: () => "Avant de la faire tourner",
  moreFolded: () => "Plus : la courbe, ce qui limite, chaque hauteur",
  granted: () => "Ce qui a été supposé",
  curveLabel: (d) => d.answer + ". " + d.binding + " Les chiffres sont dans le tableau ci-dessous.",
  curveTable: () => "La courbe sous forme de tableau",
  curveCaption: () => "Hauteur de charge selon le débit",
  flow: () => "Débit",
  pumpGives: () => "La pompe donne",
  rigNeeds: () => "La hauteur et les tuyaux demandent",
  inletHas: () => "À l'entrée, il y a",
  inletWants: () => "La pompe y demande",
  binds: () => "Ce qui limite",
  hoseShort: () => "Le tuyau finit au-dessus de l'eau",
  hoseShortMore: () =>
    "Mettez un tuyau d'aspiration plus long, ou placez la pompe plus bas et laissez le tuyau de refoulement faire la hauteur.",
  twoPoints: () => "Deux points de fonctionnement",
  whatToDo: () => "Que faire",
  height: () => "Hauteur",
  suctionLift: () => "Hauteur d'aspiration",
  deliversAbout: () => "Débite environ",
  nothing: () => "rien",
  likelyBetween: () => "Probablement entre",
  band: (d) => d.low + " et " + d.high,
  noBand: () => "aucun",
  atEachHeight: () => "À chaque hauteur",
  atEachLift: () => "À chaque hauteur d'aspiration",
  heightCaption: () =>
    "Débit à chaque hauteur du bout du tuyau au-dessus de l'eau, tout le reste étant réglé comme ci-dessus",
  liftCaption: () => "Débit à chaque hauteur d'aspiration, tout le reste étant réglé comme ci-dessus",
  onCard: () => "La carte du modèle, en PDF sur la page du kit, porte ce tableau pour ses tuyaux tels que rangés.",
  hoseEnd: () => "Bout du tuyau au-dessus de l'eau",
  hoseEndHint: () => "De l'eau à l'intérieur jusqu'à l'endroit où le tuyau passe par-dessus le plat-bord.",
  suctionLiftHint: () => "De l'eau à l'intérieur jusqu'à la pompe.",
  rise: () => "Montée par-dessus le plat-bord",
  riseHint: () => "De la pompe jusqu'au bout du tuyau.",
  seaWater: () => "Eau de mer",
  freshWater: () => "Eau douce",
  rest: (d) => "Tuyaux, gaz, eau : " + d.setting,
  sideBySide: () => "Pompes côte à côte sur un même tuyau de refoulement",
  pumps: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " pompe",
      other: strictNumber("fr", d.count, 0, "count") + " pompes",
    }),
  asPacked: (d) => "Tel que rangé : " + d.length + ".",
  suctionHose: () => "Tuyau d'aspiration",
  dischargeHose: () => "Tuyau de refoulement",
  throttle: () => "Gaz, part du plein régime",
  water: () => "Eau",
  waterTemperature: () => "Température de l'eau",
  altitude: () => "Altitude",
  altitudeHint: () => "Dans un air moins dense, une pompe aspire moins haut et un moteur donne moins.",
  less: (d) => d.label + " : moins",
  more: (d) => d.label + " : plus",
  fromTo: (d) => "De " + d.least + " à " + d.most + ".",
  primeNotComputed: () => "L'amorçage ne peut pas être calculé",
  priming: () => "Amorçage",
  primeFolded: () => "Jusqu'à quelle hauteur elle s'amorce, et ce que dit un amorçage lent",
  reallyTook: () => "Combien de temps il a vraiment pris",
  reallyTookHint: () => "Du premier coup de pompe jusqu'à l'eau. Cela dit si de l'air entre, et combien.",
  fuel: () => "Carburant",
  fuelNotComputed: () => "Le carburant ne peut pas être calculé",
  refuelAfter: (d) =>
    "Refaire le plein au bout de " +
    d.after +
    ", avec " +
    d.left +
    " de reste ; un plein de " +
    d.tank +
    " dure environ " +
    d.runtime +
    " à " +
    d.burn +
    ".",
  emptyAfter: (d) =>
    "À sec au bout de " + d.runtime + " : un plein de " + d.tank + " dure environ " + d.runtime + " à " + d.burn + ".",
  tankEnough: (d) => "Elle consomme " + d.fuel + " : le plein suffit, la réserve restant.",
  takeCans: (d) =>
    plural(d.count, 0, fr, {
      one:
        "Elle consomme " +
        d.fuel +
        " : prenez " +
        strictNumber("fr", d.count, 0, "count") +
        " bidon de " +
        d.can +
        " en plus du plein.",
      other:
        "Elle consomme " +
        d.fuel +
        " : prenez " +
        strictNumber("fr", d.count, 0, "count") +
        " bidons de " +
        d.can +
        " en plus du plein.",
    }),
  cansFolded: () => "Bidons pour un trajet, réserve",
  reserve: () => "Réserve, part du réservoir",
  passage: () => "Trajet et temps sur place",
  passageHint: () => "Combien de temps elle doit tourner en tout, par exemple 6 h.",
  canHolds: () => "Un bidon contient",
  canHoldsHint: (d) => d.can + " si rien n'est entré ici.",
  burnTaken: () => "La consommation est celle que donne le modèle à ce régime.",
  burnEffect: () =>
    "Un moteur froid, un starter resté tiré ou une charge plus lourde consomment plus ; regardez dans le réservoir avant d'y compter.",
  startedNow: (d) => "Démarrée maintenant avec le plein : refaire le plein avant " + d.by + ".",
  remind: () => "Moteur démarré maintenant : me le rappeler",
  startedEarlier: () => "Elle a été démarrée plus tôt",
  runningSince: () => "En marche depuis",
  runningSinceHint: () => "Combien de temps elle a tourné sur ce plein.",
  remindFrom: () => "Me le rappeler à partir de là",
  refuelBy: (d) => "Refaire le plein avant " + d.by,
  left: (d) => "encore " + d.duration,
  over: (d) => "dépassé de " + d.duration,
  clockMore: (d) =>
    d.clock + ", démarrée à " + d.started + ". Un téléphone verrouillé ne sonne pas : gardez cet écran en vue.",
  refuelled: () => "Plein refait, redémarrée maintenant",
  stopped: () => "Moteur arrêté : plus de rappel",
};
export default words;
