/**
 * The unit each system of units prints a dimension in, unless a paper asks for another.
 */
import type { Dimension, UnitSystem } from './dimension';

/** Dimension → system → the name of a unit in `units.ts`. */
export const houseUnits: { readonly [D in Dimension]: Readonly<Record<UnitSystem, string>> } = {
  length: { us: 'in', imperial: 'in', metric: 'mm' },
  distance: { us: 'mi', imperial: 'mi', metric: 'km' },
  area: { us: 'ft2', imperial: 'ft2', metric: 'm2' },
  volume: { us: 'US gal', imperial: 'imp gal', metric: 'L' },
  mass: { us: 'lb', imperial: 'lb', metric: 'kg' },
  time: { us: 'min', imperial: 'min', metric: 'min' },
  angle: { us: 'degrees', imperial: 'degrees', metric: 'degrees' },
  turns: { us: 'turns', imperial: 'turns', metric: 'turns' },
  gaugePressure: { us: 'psi gauge', imperial: 'psi gauge', metric: 'bar gauge' },
  absolutePressure: { us: 'psi absolute', imperial: 'psi absolute', metric: 'bar absolute' },
  temperature: { us: '°F', imperial: '°F', metric: '°C' },
  temperatureDifference: { us: '°F', imperial: '°F', metric: '°C' },
  speed: { us: 'mph', imperial: 'mph', metric: 'km/h' },
  frequency: { us: 'a minute', imperial: 'a minute', metric: 'a minute' },
  density: { us: 'lb/US gal', imperial: 'lb/imp gal', metric: 'kg/L' },
  energy: { us: 'Btu', imperial: 'Btu', metric: 'MJ' },
  power: { us: 'hp', imperial: 'hp', metric: 'kW' },
  force: { us: 'lbf', imperial: 'lbf', metric: 'N' },
  specificEnergy: { us: 'Btu/lb', imperial: 'Btu/lb', metric: 'kJ/kg' },
  energyDensity: { us: 'Btu/US gal', imperial: 'Btu/imp gal', metric: 'MJ/L' },
  volumeFlow: { us: 'US gal/h', imperial: 'imp gal/h', metric: 'L/h' },
  massFlow: { us: 'lb/h', imperial: 'lb/h', metric: 'kg/h' },
  volumePerDistance: { us: 'mi/US gal', imperial: 'mi/imp gal', metric: 'L/100 km' },
  specificVolume: { us: 'ft3/lb', imperial: 'ft3/lb', metric: 'm3/kg' },
  specificHeat: { us: 'Btu/(lb °F)', imperial: 'Btu/(lb °F)', metric: 'kJ/(kg K)' },
  hardness: { us: 'grains/US gal', imperial: 'mg/L', metric: 'mg/L' },
  share: { us: '%', imperial: '%', metric: '%' },
};
