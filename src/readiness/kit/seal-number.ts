/** True where two readings name the same seal: letter case and blanks do not count, leading zeros do. */
export function isSameSeal(one: string, other: string): boolean {
  return plainSeal(one) === plainSeal(other);
}

/** A seal number as it is compared. */
export function plainSeal(number: string): string {
  return number.replace(/\s+/g, "").toUpperCase();
}
