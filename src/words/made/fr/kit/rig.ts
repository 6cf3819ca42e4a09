/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { RigWords } from "#src/words/made/kit/rig.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: RigWords = {
  hoseShort: (d) =>
    "Le tuyau d'aspiration n'arrive pas à l'eau : " + d.hose + " de tuyau pour " + d.lift + " de hauteur d'aspiration.",
  nothingAbove: (d) => "Aucune eau ne vient avec le bout du tuyau à " + d.height + " au-dessus de l'eau.",
  nothingBelow: (d) => "Aucune eau ne vient avec la pompe à " + d.depth + " sous l'eau.",
  nothingAtLift: (d) => "Aucune eau ne vient à " + d.lift + " de hauteur d'aspiration.",
  flowAbove: (d) =>
    "Environ " +
    d.flow +
    " avec le bout du tuyau à " +
    d.height +
    " au-dessus de l'eau, probablement entre " +
    d.low +
    " et " +
    d.high,
  flowBelow: (d) =>
    "Environ " + d.flow + " avec la pompe à " + d.depth + " sous l'eau, probablement entre " + d.low + " et " + d.high,
  flowAtLift: (d) =>
    "Environ " + d.flow + " à " + d.lift + " de hauteur d'aspiration, probablement entre " + d.low + " et " + d.high,
  suctionBinds: (d) =>
    "C'est le côté aspiration qui limite : il n'alimente pas davantage la pompe. La courbe de la pompe seule donnerait " +
    d.flow +
    ".",
  curveBinds: (d) =>
    "C'est la courbe de la pompe elle-même qui limite : elle donne " +
    d.head +
    " à ce débit. " +
    d.height +
    " Le tuyau d'aspiration prend " +
    d.suction +
    ", le tuyau de refoulement " +
    d.discharge +
    ".",
  heightLevel: () => "Le tuyau finit au niveau de l'eau : la hauteur ne prend rien.",
  heightTakes: (d) => "La hauteur prend " + d.height + ".",
  heightHelps: (d) => "Le tuyau finit " + d.depth + " plus bas que l'eau, ce qui aide.",
  suctionTooFar: (d) =>
    "C'est l'aspiration qui limite : l'eau devrait être " +
    d.short +
    " plus près de la pompe pour qu'elle aspire quoi que ce soit.",
  heightBinds: (d) =>
    "C'est la hauteur qui limite : la pompe donne " + d.most + " à débit nul, et il faut " + d.wanted + ".",
  secondPoint: (d) =>
    "La courbe de la pompe retombe vers le débit nul, et croise donc deux fois celle des tuyaux. Le plus grand débit est stable. À " +
    d.flow +
    " se trouve un second point qui ne l'est pas : une pompe qui ne l'a pas dépassé peut ne rien donner à cette hauteur.",
  lowerPump: (d) => "Descendre la pompe de " + d.length + " : gain d'environ " + d.flow,
  shortenSuction: (d) => "Raccourcir le tuyau d'aspiration de " + d.length + " : gain d'environ " + d.flow,
  shortenDischarge: (d) => "Raccourcir le tuyau de refoulement de " + d.length + " : gain d'environ " + d.flow,
  lowerOutlet: (d) => "Laisser pendre le bout du tuyau " + d.length + " plus bas : gain d'environ " + d.flow,
  widenSuction: (d) => "Prendre un tuyau d'aspiration de " + d.bore + " : gain d'environ " + d.flow,
  widenDischarge: (d) => "Prendre un tuyau de refoulement de " + d.bore + " : gain d'environ " + d.flow,
  openThrottle: (d) => "Mettre plein gaz : gain d'environ " + d.flow,
  throttleBack: (d) =>
    "Réduire les gaz à " +
    d.percent +
    " % du plein régime : le même débit, moins de carburant, et la pompe est ménagée",
  suctionHose: (d) => "tuyau d'aspiration " + d.length,
  dischargeHose: (d) => "tuyau de refoulement " + d.length,
  fullThrottle: () => "plein gaz",
  throttle: (d) => "gaz à " + d.percent + " %",
  seaWater: (d) => "eau de mer à " + d.temperature,
  freshWater: (d) => "eau douce à " + d.temperature,
  altitude: (d) => d.height + " d'altitude",
  seaLevel: () => "niveau de la mer",
  pumps: (d) =>
    plural(d.count, 0, fr, { one: "une pompe", other: strictNumber("fr", d.count, 0, "count") + " pompes" }),
};
export default words;
