/**
 * Water and fuel from work, where no log tells better: by the engine's steam rate and the boiler's efficiency.
 */

/** What the engine and boiler make of their steam and fuel. */
export interface SteamPlant {
  /** Steam for each joule at the wheels, kg/J. A keeper knows it in lb for each hp h: small engines take 40 to 70. */
  readonly steamRateKgPerJ: number;
  /** Heat given to each kilogram of steam, J/kg (`steamMaking`). */
  readonly heatPerKg: number;
  /** Share of the fuel's heat (lower heating value) that reaches the water. */
  readonly boilerEfficiency: number;
  /** Lower heating value of the fuel by volume, J/m³. */
  readonly fuelHeatPerM3: number;
  readonly feedDensityKgPerM3: number;
}

/** Estimated use for a distance, m³ per m. */
export interface EstimatedUse {
  readonly waterPerM: number;
  readonly fuelPerM: number;
}

/** Use of water and fuel for `workPerM` (J/m) at the wheels. */
export function estimatedUse(plant: SteamPlant, workPerM: number): EstimatedUse {
  const steamKgPerM = workPerM * plant.steamRateKgPerJ;
  return {
    waterPerM: steamKgPerM / plant.feedDensityKgPerM3,
    fuelPerM: (steamKgPerM * plant.heatPerKg) / (plant.boilerEfficiency * plant.fuelHeatPerM3),
  };
}

/** Share of the heat in the steam that becomes work. */
export function engineEfficiency({
  steamRateKgPerJ,
  heatPerKg,
}: Pick<SteamPlant, 'steamRateKgPerJ' | 'heatPerKg'>): number {
  return 1 / (steamRateKgPerJ * heatPerKg);
}
