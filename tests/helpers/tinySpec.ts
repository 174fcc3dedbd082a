/**
 * The smallest car that passes every check, as the text of its spec, and a way to spoil it line by line.
 *
 * The car, its maker and its keeper are invented.
 */
import { type LoadedSpec, loadSpec } from '../../src/spec/load';

/** The spec. One entry to a line where that reads well, so that a test can name a line by its words. */
export const tinySpec = `# INVENTED: no such car exists.
kettlebook: 1

car:
  name: Pipkin
  make: Nobody & Sons
  model: Smallest
  year: 1905
  invented: true
  body: two-seat runabout
  seats: 2
  driver-side: right
  steering: tiller
  length: 9 ft
  width: 4 ft 6 in
  wheelbase: 6 ft
  front-axle-back: 1 ft

keeper: { name: Nobody’s workshop }

issue:
  letter: B
  date: 2026-03-14
  changed: [New pilot valve.]
  earlier:
    - letter: A
      date: 2025-11-02
      changed: [First issue.]

print:
  units: { first: us, second: metric }
  paper: letter
  language: en-US
  distances: { dash: 28 in, lap: 18 in, wall: 5 ft }

places:
  dash:
    name: dash
    at: { back: 3 ft, right: 0 in, up: 3 ft }
    reach: seated
  underneath:
    name: under the seat
    at: { back: 4 ft, right: -10 in }
    reach: opened
    how: lift the seat cushion

fuels:
  spirit:
    name: light spirit
    parts:
      - { liquid: gasoline, share: 100 % }
  blend:
    name: kerosene blend
    parts:
      - { liquid: kerosene, share: 90 % }
      - { liquid: gasoline, share: 10 % }

tanks:
  water-tank:
    name: water tank
    place: underneath
    holds: water
    capacity: 20 US gal
    unusable: 1 US gal
    reserve: 4 US gal
    vent: hole in the cap
    filler: { place: underneath }
    read: stick
    stick:
      - { depth: 2 in, volume: 4 US gal }
      - { depth: 10 in, volume: 20 US gal }
  fuel-tank:
    name: fuel tank
    place: underneath
    holds: blend
    capacity: 8 US gal
    fill-to: 6 US gal
    pressure: { from: 40 psi gauge, to: 60 psi gauge }
    vent: crack the filler cap
    filler: { place: underneath }
    read: not-read
  pilot-tank:
    name: pilot tank
    place: underneath
    holds: spirit
    capacity: 1 US gal
    fill-to: 0.8 US gal
    pressure: { from: 15 psi gauge, to: 20 psi gauge }
    vent: crack the filler cap
    filler: { place: underneath }
    read: not-read

equipment:
  extinguisher: { name: dry-powder extinguisher, kind: extinguisher, place: dash }
  torch: { name: hand torch, kind: torch, place: underneath }

boiler:
  name: boiler
  place: underneath
  kind: fire-tube
  allowed-pressure: 300 psi gauge
  working-pressure: 200 psi gauge
  burner-cuts-out: 220 psi gauge
  safety-valve: safety-valve
  water-at-working-level: 5 US gal
  level:
    - { gauge: water-glass, when: both }
  working-level: half a glass
  lowest-level: a quarter of the glass
  blow-down: [blow-down-tap]
  draws-full: not-known
  inspection: { by: the boiler inspector, last: 2026-01-10, due: 2027-01-10 }

burners:
  main-burner: { name: main burner, job: main, place: underneath, fuel: blend, full-rate: 3 US gal/h, low-rate: 1 US gal/h, lit-by: pilot-burner, vaporizer: coil }
  pilot-burner:
    name: pilot burner
    job: pilot
    place: underneath
    fuel: spirit
    lit-by: torch
    soak: { least: 10 min, good: 20 min }

vaporizers:
  coil: { name: vaporizer, place: underneath, heated-by: [pilot-burner], hot-when: a drop of water dances off it }

engine:
  name: engine
  place: underneath
  cylinders: 2
  bore: 3 in
  stroke: 4 in
  action: double
  turns-per-wheel-turn: 2.5
  throttle: throttle
  throttle-lock: throttle-lock
  drips: [drip-cock]
  oil: { kind: steam cylinder oil }
  exhaust: open-air

pumps:
  feed-pump: { name: feed pump, place: underneath, moves: water, drive: engine, bypass: bypass-valve }

valves:
  fuel-stop-valve: { name: fuel stop valve, tag: F1, place: dash, kind: needle, opens: anticlockwise, parked: shut, does: Shuts the main fuel. }
  pilot-valve: { name: pilot valve, tag: F2, place: dash, kind: needle, opens: anticlockwise, turns: 2 turns, parked: shut, does: Shuts the pilot fuel. }
  throttle: { name: throttle valve, tag: S1, place: dash, kind: lever, opens: forward, parked: shut, does: Lets steam to the engine. }
  drip-cock: { name: drip cock, tag: S2, place: dash, kind: cock, opens: handle-along-pipe, parked: open, does: Drains the cylinders. }
  bypass-valve: { name: bypass valve, tag: W1, place: dash, kind: globe, opens: anticlockwise, parked: open, does: Sends the feed back to the tank. }
  blow-down-tap: { name: blow-down tap, tag: W2, place: underneath, kind: plug, opens: handle-along-pipe, parked: shut, does: Empties the boiler. }

devices:
  automatic: { name: steam automatic, place: underneath, kind: steam-automatic, does: Shuts the main fuel at its figure. }
  check-valve: { name: feed check valve, place: underneath, kind: check-valve, does: Keeps the boiler water in. }
  safety-valve: { name: safety valve, place: underneath, kind: safety-valve, set: 250 psi gauge, does: Lets steam off. }

gauges:
  steam-gauge: { name: steam gauge, place: dash, kind: dial, reads: pressure, of: boiler, from: 150 psi gauge, to: 220 psi gauge, red-line: 300 psi gauge }
  water-glass: { name: water glass, place: dash, kind: glass, reads: level, of: boiler, should-read: half a glass }
  fuel-gauge: { name: fuel gauge, kind: dial, place: dash, reads: pressure, of: fuel-tank }
  pilot-gauge: { name: pilot gauge, kind: dial, place: dash, reads: pressure, of: pilot-tank }
locks:
  throttle-lock: { name: throttle lock, place: dash, locks: throttle, how: turn the ring }
controls:
  hand-brake: { name: hand brake, place: dash, kind: parking-brake, does: Holds the rear wheels. }

fittings:
  strainer: { name: fuel strainer, place: underneath, kind: strainer }

lines:
  - { carries: main fuel, through: [fuel-tank, strainer, fuel-stop-valve, automatic, coil, main-burner] }
  - { carries: pilot fuel, through: [pilot-tank, pilot-valve, pilot-burner] }
  - { carries: water, through: [water-tank, feed-pump, check-valve, boiler] }
  - { carries: water, through: [feed-pump, bypass-valve, water-tank] }
  - { carries: water, through: [boiler, blow-down-tap, ground] }
  - { carries: water, through: [boiler, water-glass] }
  - { carries: steam, through: [boiler, throttle, engine] }
  - { carries: steam, through: [boiler, safety-valve, open-air] }
  - { carries: steam, through: [engine, drip-cock, ground] }
  - { carries: exhaust, through: [engine, open-air] }

running:
  usual-speed: 12 mph
  most-speed: 20 mph
  mass-empty: about 1100 lb
  tyres: { size: 28 × 3, rolling-circumference: 7 ft 2 in }
`;

/** The liquids the tiny car takes from the library. */
export const tinyLiquids = ['gasoline', 'kerosene'] as const;

/** The spec with some words of it changed. Each must stand in it exactly once: a test that changes nothing would prove nothing. */
export function spoiled(...changes: readonly (readonly [from: string, to: string])[]): string {
  return changes.reduce((text, [from, to]) => {
    const times = text.split(from).length - 1;
    if (times !== 1) throw new Error(`“${from}” stands ${times} times in the tiny spec`);
    return text.replace(from, () => to);
  }, tinySpec);
}

/** The line, counted from 1, on which some words stand for the first time. */
export function lineOf(text: string, words: string): number {
  const offset = text.indexOf(words);
  if (offset < 0) throw new Error(`“${words}” does not stand in the text`);
  return text.slice(0, offset).split('\n').length;
}

/** Load a text as the tiny car’s file. */
export function loadTiny(text: string) {
  return loadSpec(text, 'pipkin.yaml', tinyLiquids);
}

/** A loaded spec, or an error that lists what is wrong with it. */
export function loadedTiny(text: string = tinySpec): LoadedSpec {
  const outcome = loadTiny(text);
  if (outcome.ok) return outcome.value;
  const problems = outcome.problems.map((each) => `${each.at?.line ?? 0}: ${each.code} ${each.message}`);
  throw new Error(`the spec does not load:\n${problems.join('\n')}`);
}
