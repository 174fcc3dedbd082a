/** What the boiler makes: steam at full fire, its horsepower, what its heating surface bears, and what the readings say of it. */
import type { Car } from '../../car/car';
import { type Quantity, quantity } from '../../quantity/quantity';
import { type Figure, type FigureInput, type FigureValue, notKnownFigure } from '../figure';
import type { Liquids } from '../fuel/liquids';
import { absolutePressurePa, standardAir } from '../steam/atmosphere';
import { boilerHorsepower, equivalentEvaporationKgPerS, steamMaking } from '../steam/evaporation';
import { waterDensity } from '../steam/water-at';
import { efficiencyOf, feedK, fuelHeatPerM3, heatPerKgSteam, mainBurnerOf, usualEfficiency } from './plant';
import type { LiquidUse } from './use';

const cyclopedia = 'Cyclopedia of Mechanical Engineering vol. 4, worked examples';

/** Everything that follows from the full fire and the heat of steam. */
export function evaporationFigures(
  car: Car,
  uses: { readonly water: LiquidUse; readonly fuel: LiquidUse },
  library: Liquids,
): readonly Figure[] {
  return [...fullFire(car, library), ...foundInSteam(car, uses, library)];
}

function fullFire(car: Car, library: Liquids): readonly Figure[] {
  const { boiler } = car.spec;
  const main = mainBurnerOf(car);
  const rate = main?.burner['full-rate'];
  if (main === undefined || rate === undefined)
    return [
      steam({ kind: 'unknown', measure: 'the fuel burnt at full fire (`full-rate` of the main burner)' }, []),
    ];
  const inputs: readonly FigureInput[] = [
    { name: 'full fire', value: rate, from: `burners.${main.id}.full-rate` },
    {
      name: 'lower heating value',
      value: quantity('energyDensity', fuelHeatPerM3(car, main.burner.fuel, library)),
      from: `heat-${main.burner.fuel}`,
    },
    {
      name: 'efficiency',
      value: boiler.efficiency ?? `${usualEfficiency * 100} %, from memory`,
      from: 'boiler.efficiency',
    },
    {
      name: 'heat for the steam',
      value: quantity('specificEnergy', heatPerKgSteam(car)),
      from: 'steam-heat',
    },
  ];
  const heatW = rate.si * fuelHeatPerM3(car, main.burner.fuel, library) * efficiencyOf(car);
  const kgPerS = heatW / heatPerKgSteam(car);
  const horsepower = boilerHorsepower(
    equivalentEvaporationKgPerS(
      kgPerS,
      steamMaking({
        pressurePa: absolutePressurePa(boiler['working-pressure'].si, standardAir(0).pressurePa),
        feedTemperatureK: feedK,
      }),
    ),
  );
  const made = quantity('massFlow', kgPerS, true);
  return [
    steam({ kind: 'quantity', quantity: made, rounding: 'down' }, inputs),
    {
      id: 'boiler-horsepower',
      name: 'horsepower of the boiler at full fire',
      value: { kind: 'number', number: Math.floor(horsepower * 10 + 1e-9) / 10, rounding: 'down' },
      inputs: [{ name: 'steam at full fire', value: made, from: 'steam-full-fire' }],
      formula:
        'steam made × heat for it / heat from and at 212 °F, over 34.5 lb an hour; a measure of boilers, not of what the engine gives',
      source: 'ASME boiler horsepower (33,475 Btu/h); IAPWS-IF97',
      checkedAgainst: cyclopedia,
      doubt: { basis: 'estimated', words: 'as good as full fire and efficiency' },
    },
    surface(boiler['heating-surface'], horsepower),
  ];
}

function steam(value: FigureValue, inputs: readonly FigureInput[]): Figure {
  return {
    id: 'steam-full-fire',
    name: 'steam made at full fire, working pressure, feed cold from the tank',
    value,
    inputs,
    formula: 'full fire × lower heating value × efficiency / heat from feed to steam',
    source: 'IAPWS-IF97; arithmetic',
    checkedAgainst: cyclopedia,
    doubt:
      value.kind === 'unknown'
        ? { basis: 'unknown', words: 'not measured' }
        : { basis: 'estimated', words: 'dry steam; a feed heater makes it more, superheat less' },
  };
}

/** How much surface each horsepower has; boilers of the old rating had 10 ft². */
function surface(area: Quantity<'area'> | undefined, horsepower: number): Figure {
  const told = {
    id: 'surface-per-horsepower',
    name: 'heating surface for each horsepower of the boiler at full fire',
    formula: 'heating surface / horsepower of the boiler',
    source: 'arithmetic; about 10 ft² was the old rating of a boiler (common practice, no source)',
    checkedAgainst: 'worked by hand',
  };
  if (area === undefined)
    return {
      ...told,
      value: {
        kind: 'unknown',
        measure: 'the surface that the fire heats, tubes and all (`boiler.heating-surface`)',
      },
      inputs: [],
      doubt: { basis: 'unknown', words: 'not measured' },
    };
  return {
    ...told,
    value: {
      kind: 'quantity',
      quantity: quantity('area', area.si / horsepower, true),
      rounding: 'nearest',
    },
    inputs: [
      { name: 'heating surface', value: area, from: 'boiler.heating-surface' },
      {
        name: 'horsepower of the boiler',
        value: Math.round(horsepower * 10) / 10,
        from: 'boiler-horsepower',
      },
    ],
    doubt: { basis: 'estimated', words: 'much less of it means a hard-driven boiler; scale makes it worse' },
  };
}

const heatFound = {
  id: 'heat-found-in-steam',
  name: 'share of the fuel’s heat found again in the steam, by what was measured on the road',
  formula: 'water used × its density × heat from feed to steam / (fuel used × lower heating value)',
  source: 'heat balance; IAPWS-IF97',
} as const;

/** What of the fuel’s heat shows in the water that went through; only where the steam is not brought back. */
function foundInSteam(
  car: Car,
  { water, fuel }: { readonly water: LiquidUse; readonly fuel: LiquidUse },
  library: Liquids,
): readonly Figure[] {
  const share = heatFoundShare(car, { water, fuel }, library);
  const [waterPerM, fuelPerM] = [water.byTerrain.level.meanPerM, fuel.byTerrain.level.meanPerM];
  if (car.spec.engine.exhaust === 'condenser') return [];
  if (share === undefined || waterPerM === undefined || fuelPerM === undefined)
    return [
      notKnownFigure(
        heatFound,
        'the water and the fuel used over the same road (`running.water-use`, `running.fuel-use`, or a `log`)',
      ),
    ];
  return [
    {
      ...heatFound,
      value: {
        kind: 'quantity',
        quantity: quantity('share', share, true),
        rounding: 'nearest',
      },
      inputs: [
        {
          name: 'water used, middle',
          value: quantity('volumePerDistance', waterPerM, true),
          from: 'water-use-level',
        },
        {
          name: 'fuel used, middle',
          value: quantity('volumePerDistance', fuelPerM, true),
          from: 'fuel-use-level',
        },
        {
          name: 'heat for the steam',
          value: quantity('specificEnergy', heatPerKgSteam(car)),
          from: 'steam-heat',
        },
      ],
      checkedAgainst: 'worked by hand',
      doubt: {
        basis: 'estimated',
        words:
          'leaks, blow-down and wet steam make it look better, a warm start and fire at rest worse; far from the efficiency of the boiler, one of the readings is wrong',
      },
    },
  ];
}

/**
 * Heat in the steam that the used water makes over the heat of the fuel used for the same road. Undefined for a car that
 * brings its steam back, and where water or fuel was not measured on the road.
 */
export function heatFoundShare(
  car: Car,
  { water, fuel }: { readonly water: LiquidUse; readonly fuel: LiquidUse },
  library: Liquids,
): number | undefined {
  const { running, engine } = car.spec;
  const main = mainBurnerOf(car);
  const measured = (use: LiquidUse): boolean =>
    use.fit !== undefined || running[`${use.liquid}-use`] !== undefined;
  const [waterPerM, fuelPerM] = [water.byTerrain.level.meanPerM, fuel.byTerrain.level.meanPerM];
  if (main === undefined || engine.exhaust === 'condenser' || !measured(water) || !measured(fuel))
    return undefined;
  if (waterPerM === undefined || fuelPerM === undefined) return undefined;
  const steamPerM = waterPerM * waterDensity(feedK) * heatPerKgSteam(car);
  return steamPerM / (fuelPerM * fuelHeatPerM3(car, main.burner.fuel, library));
}
