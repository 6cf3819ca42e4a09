export type { OpenOrder, OrderAsked, OrderLine } from "./order-list.ts";
export { arrivalOf, openOrders, orderList } from "./order-list.ts";
export { holdersOf, partsFor, recallNote, type LotHolders, type LotInKit } from "./lots.ts";
export { onShelf, type OnShelf } from "./on-shelf.ts";
export { applyToPart, blankPart, isStockKind, PartDraft } from "./part-draft.ts";
export { partNeeds, type StockNeed } from "./part-needs.ts";
export type { PartOrder, Recall, StockLine, StockPart } from "./part-state.ts";
export { usedPerYear } from "./part-use.ts";
export { isSameLot, partShelf, stockOf, type PartShelf, type ShelfLot, type Stock } from "./shelves.ts";
