import type { CardWords } from "./card-words.ts";

/** The card's own words in this language; not yet read by a native speaker. */
export const fil: CardWords = {
  name: "Filipino",
  title: "Bomba: sundin ang mga larawan, isa-isa",
  stop: "Para ihinto",
  noWater: "Walang tubig sa loob ng isang minuto",
  kit: "Kit",
  channel: "Channel ng radyo",
  notRead: "Hindi pa nababasa ng katutubong tagapagsalita",
  first: "Mauuna ang manwal ng bomba at ang namumuno.",
  noWords: "Wala pa sa wikang ito: sundin ang larawan.",
  signals: { DANGER: "PANGANIB", WARNING: "BABALA", CAUTION: "MAG-INGAT", NOTICE: "PAUNAWA" },
  cautions: {
    "carbon-monoxide":
      "Walang amoy ang usok ng tambutso at nakamamatay sa ilang minuto. Sa bukas na hangin lang. Sumakit ang ulo: ihinto, lumapit sa hangin.",
    "petrol-vapour": "Nasusunog at sumasabog ang singaw ng gasolina. Walang apoy, walang sigarilyo, walang switch.",
    "never-pump-fuel": "Sunog ang pagbomba ng gasolina. May gasolina o amoy: huwag paandarin; umaandar: ihinto.",
    "electric-shock": "Maaaring may kuryente ang tubig at makamatay. Bunutin ang plug bago hawakan ang bomba.",
    "refuel-stopped-and-cool":
      "Nagliliyab ang gasolina sa mainit na makina. Magkarga lang kapag nakahinto at malamig ito.",
    "opened-wrapping": "May singaw sa supot: huwag yumuko nang dalawang minuto.",
    "load-overhead": "Walang tao sa ilalim ng karga o sa pagitan nito at ng barko: nakadudurog.",
    "hydraulic-injection": "Tumatagos sa balat ang langis. Huwag hawakan ang tagas. Tinamaan: doktor agad.",
    "pressurised-hose": "Pumapalo ang hose. Itali bago paandarin. Ihinto bago hawakan ang koneksyon.",
    "hot-exhaust": "Nakapapaso ang tambutso kahit matagal nang nakahinto.",
    "recoil-kick": "Maaaring humatak pabalik ang tali. Huwag ipulupot sa kamay. Walang tao sa likod.",
    "heavy-lift": "Mabigat: dalawa o higit pa, baluktot ang tuhod.",
  },
};
