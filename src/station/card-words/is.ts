import type { CardWords } from "./card-words.ts";

/** The card's own words in this language; not yet read by a native speaker. */
export const is: CardWords = {
  name: "Íslenska",
  title: "Dæla: fylgið myndunum, einni af annarri",
  stop: "Að stöðva",
  noWater: "Ekkert vatn innan mínútu",
  kit: "Sett",
  channel: "Talstöðvarrás",
  notRead: "Enn ekki lesið af neinum með málið að móðurmáli",
  first: "Handbók tækisins og stjórnandi á vettvangi ráða.",
  noWords: "Ekki enn á þessu máli: fylgið myndinni.",
  signals: { DANGER: "HÆTTA", WARNING: "VIÐVÖRUN", CAUTION: "VARÚÐ", NOTICE: "ATHUGIÐ" },
  cautions: {
    "carbon-monoxide":
      "Útblástur er lyktarlaus og drepur á mínútum. Aðeins undir beru lofti. Höfuðverkur: stöðvið, upp í vindinn.",
    "petrol-vapour": "Bensíngufa brennur og springur. Engan eld, engar reykingar, enga rofa.",
    "never-pump-fuel": "Að dæla eldsneyti kveikir eld. Eldsneyti eða lykt: ekki ræsa; í gangi: stöðvið.",
    "electric-shock": "Vatnið getur leitt straum og drepið. Klóna úr áður en dælan er snert.",
    "refuel-stopped-and-cool": "Eldsneyti á heitri vél kviknar strax. Fyllið aðeins á stöðvaða og kalda vél.",
    "opened-wrapping": "Gufa í pokanum: beygið ykkur ekki yfir í tvær mínútur.",
    "load-overhead": "Enginn undir byrðinni eða milli hennar og skips: hún kremur.",
    "hydraulic-injection": "Olía úr mjórri slöngu fer gegnum húð. Snertið aldrei leka. Fyrir henni: læknir strax.",
    "pressurised-hose": "Slangan slæst. Bindið fyrir ræsingu. Stöðvið áður en tengi er snert.",
    "hot-exhaust": "Útblástursrör brennir hendur og slöngur, löngu eftir stöðvun.",
    "recoil-kick": "Snúran getur kippst til baka. Vefjið henni ekki um höndina. Enginn fyrir aftan.",
    "heavy-lift": "Þungt: tveir eða fleiri, bogin hné.",
  },
};
