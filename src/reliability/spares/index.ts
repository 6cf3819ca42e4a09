export { bestPurchases, type Part, type Purchase, type Purchases } from "./purchases.ts";
export type { Lot } from "./lots.ts";
export { leastStock, MOST_STOCK, stockOf, type StockPoint } from "./shelf.ts";
