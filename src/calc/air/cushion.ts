/**
 * The air over the fuel in a closed tank: it presses the fuel out, and falls as the fuel goes.
 *
 * Formula: Boyle's law, absolute pressure times volume stays; with temperature, pressure times volume over temperature
 * stays. Fuel leaves slowly, so the air keeps the temperature of the tank. Gauge pressures are made absolute with
 * the air pressure of the place; leaving that out would promise too little fall.
 */

/** A charged tank as it stands. */
export interface ChargedTank {
  /** All it holds, brim full, m³. */
  readonly capacityM3: number;
  readonly fuelM3: number;
  readonly gaugePa: number;
  /** Air pressure of the place, absolute. */
  readonly ambientPa: number;
}

/** Volume of the air cushion, m³. A tank without any cannot press. */
export function cushionM3({ capacityM3, fuelM3 }: Pick<ChargedTank, 'capacityM3' | 'fuelM3'>): number {
  const air = capacityM3 - fuelM3;
  if (!(air > 0 && fuelM3 >= 0)) throw new RangeError('a charged tank needs room for air over its fuel');
  return air;
}

/** Gauge pressure once only `fuelLeftM3` is left and nobody has pumped, Pa. Below nought the tank would draw air in. */
export function gaugeWhenLeftPa(tank: ChargedTank, fuelLeftM3: number): number {
  const air = cushionM3(tank);
  const airThen = cushionM3({ capacityM3: tank.capacityM3, fuelM3: fuelLeftM3 });
  return (absolute(tank) * air) / airThen - tank.ambientPa;
}

/** Fuel the cushion presses out while it falls from its pressure now to `floorGaugePa`, without pumping, m³. */
export function deliveredDownToM3(tank: ChargedTank, floorGaugePa: number): number {
  if (tank.gaugePa <= floorGaugePa) return 0;
  const air = cushionM3(tank);
  const airAtFloor = (absolute(tank) * air) / (floorGaugePa + tank.ambientPa);
  return Math.min(airAtFloor - air, tank.fuelM3);
}

/** The most fuel of which every drop leaves between `topGaugePa` and `floorGaugePa` on one charge of air, m³. */
export function fillForOneChargeM3(band: {
  readonly capacityM3: number;
  readonly topGaugePa: number;
  readonly floorGaugePa: number;
  readonly ambientPa: number;
}): number {
  const share = (band.floorGaugePa + band.ambientPa) / (band.topGaugePa + band.ambientPa);
  return band.capacityM3 * Math.max(0, 1 - share);
}

/** Gauge pressure of the same air when tank and air change temperature or the car changes altitude, Pa. */
export function gaugeAfterChangePa(
  tank: ChargedTank,
  change: { readonly fromK: number; readonly toK: number; readonly ambientPa?: number },
): number {
  return (absolute(tank) * change.toK) / change.fromK - (change.ambientPa ?? tank.ambientPa);
}

function absolute({ gaugePa, ambientPa }: ChargedTank): number {
  return gaugePa + ambientPa;
}
