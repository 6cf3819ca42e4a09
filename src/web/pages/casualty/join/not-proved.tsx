/** What a code shows and what it does not. The handbook says the same. */
export function NotProved() {
  return (
    <p>
      The stamp shows that the code came from a device of this station. Who wrote each line it does not show. They count
      here now; the station takes each only from the device that wrote it, so bring that device to a network too.
    </p>
  );
}
