/**
 * Flow, head and power after a change of speed: Q2/Q1 = n2/n1, H2/H1 = (n2/n1)², P2/P1 = (n2/n1)³.
 *
 * @param duty - flow [m³/s], head [m], power [W] at the first speed
 * @param ratio - second speed over first, [1]
 * @returns duty at the second speed
 * @range same pump, same liquid, no cavitation
 * @source DOE-HDBK-1012/3-92, HT-03, p. 49
 * @example scaleDuty({ flow: 0.02, head: 10, power: 3000 }, 0.5) // { flow: 0.01, head: 2.5, power: 375 }
 */
export function scaleDuty(
  duty: { readonly flow: number; readonly head: number; readonly power: number },
  ratio: number,
): { readonly flow: number; readonly head: number; readonly power: number } {
  return { flow: duty.flow * ratio, head: duty.head * ratio ** 2, power: duty.power * ratio ** 3 };
}

/**
 * Power a pump takes from its shaft, P = ρ g Q H / η.
 *
 * @param flow - [m³/s]
 * @param head - [m]
 * @param density - [kg/m³]
 * @param gravity - [m/s²]
 * @param efficiency - [1], more than 0, at most 1
 * @returns shaft power, [W]
 * @range any pump in steady running
 * @source definition of pump efficiency
 */
export function shaftPower(flow: number, head: number, density: number, gravity: number, efficiency: number): number {
  return (density * gravity * flow * head) / efficiency;
}
