/** The start-up of this car worked backwards from moving off: when each part must begin. */
import type { Car } from '../../car/car';
import { quantity } from '../../quantity/quantity';
import type { Figure, FigureInput } from '../figure';
import { type Phase, startUp } from '../time/start-up';
import type { Timeline, TimelinePart } from '../time/timeline';
import type { RaisingFigures } from './raising';

/** One part, counted back from moving off, s. */
export interface StartUpPart {
  readonly id: string;
  readonly name: string;
  /** How long it lasts. */
  readonly lastsGoodS: number;
  readonly lastsLeastS: number;
  /** When it begins. */
  readonly goodS: number;
  readonly leastS: number;
  readonly flame: boolean;
}

/** The start-up of the car. */
export interface StartUpFigures {
  /** Empty where a part of it is not known. */
  readonly parts: readonly StartUpPart[];
  /** How long each part of the timeline lasts in good time, s: none if this car leaves it out; without those not known. */
  readonly lastsGoodS: ReadonlyMap<string, number>;
  readonly goodS: number;
  readonly leastS: number;
  /** From then on somebody who knows the car stays with it. */
  readonly attendedGoodS: number;
  readonly attendedLeastS: number;
  /** The time of moving off that tables show, seconds of the day. */
  readonly clockS: number;
  readonly figures: readonly Figure[];
}

/** Times of one part, with where they come from. */
interface Lasting {
  readonly leastS: number;
  readonly goodS: number;
  readonly inputs: readonly FigureInput[];
  readonly estimated: boolean;
}

/** Lay the start-up out. */
export function startUpFigures(car: Car, timeline: Timeline, raising: RaisingFigures): StartUpFigures {
  const lasting = timeline.parts.map((part) => ({ part, lasts: lastingOf(part, car, raising) }));
  const lastsGoodS = new Map(
    lasting.flatMap(({ part, lasts }): readonly (readonly [string, number])[] =>
      lasts === 'not known' ? [] : [[part.id, lasts === 'left out' ? 0 : lasts.goodS]],
    ),
  );
  const missing = lasting.filter(({ lasts }) => lasts === 'not known');
  const known = lasting.flatMap(({ part, lasts }) => (typeof lasts === 'object' ? [{ part, lasts }] : []));
  if (missing.length > 0)
    return {
      ...nothing,
      lastsGoodS,
      clockS: timeline.clockS,
      figures: [totalNotKnown(missing.map(({ part }) => part))],
    };
  const plan = startUp(phasesOf(known, timeline));
  const parts = known.flatMap(({ part, lasts }): readonly StartUpPart[] => {
    const times = plan.phases.find(({ name }) => name === part.id);
    if (times === undefined) return [];
    return [
      {
        id: part.id,
        name: part.name,
        lastsGoodS: lasts.goodS,
        lastsLeastS: lasts.leastS,
        goodS: times.good.startS,
        leastS: times.least.startS,
        flame: part.flame,
      },
    ];
  });
  const burning = parts.filter(({ flame }) => flame);
  const whole = {
    parts,
    lastsGoodS,
    goodS: plan.goodS,
    leastS: plan.leastS,
    attendedGoodS: Math.max(0, ...burning.map(({ goodS }) => goodS)),
    attendedLeastS: Math.max(0, ...burning.map(({ leastS }) => leastS)),
    clockS: timeline.clockS,
  };
  const estimated = known.some(({ lasts }) => lasts.estimated);
  const inputs = new Map(known.map(({ part, lasts }) => [part.id, lasts.inputs]));
  return { ...whole, figures: figuresOf(whole, inputs, estimated) };
}

const nothing = {
  parts: [],
  goodS: 0,
  leastS: 0,
  attendedGoodS: 0,
  attendedLeastS: 0,
} as const;

/** Parts of this car in order; where one is left out, what waited for it waits for what it waited for. */
function phasesOf(
  known: readonly { readonly part: TimelinePart; readonly lasts: Lasting }[],
  timeline: Timeline,
): readonly Phase[] {
  const there = new Set(known.map(({ part }) => part.id));
  const before = (id: string): readonly string[] => {
    const index = timeline.parts.findIndex((part) => part.id === id);
    const previous = timeline.parts[index - 1];
    const waits = timeline.parts[index]?.after ?? (previous === undefined ? [] : [previous.id]);
    return [...new Set(waits.flatMap((each) => (there.has(each) ? [each] : before(each))))];
  };
  return known.map(({ part, lasts }) => ({
    name: part.id,
    leastS: lasts.leastS,
    goodS: lasts.goodS,
    after: before(part.id),
  }));
}

/** A vaporizer that is warmed with a torch, and nothing says how long. */
function torchNotTimed({ vaporizers, equipment }: Car['spec']): boolean {
  return Object.values(vaporizers ?? {}).some(
    (each) =>
      each['warm-first'] === undefined && each['heated-by'].some((id) => equipment[id]?.kind === 'torch'),
  );
}

/** A pilot that heats a vaporizer: without the time of its soak no start can be promised. */
function hasPilot({ burners, vaporizers }: Car['spec']): boolean {
  return Object.values(vaporizers ?? {}).some((each) =>
    each['heated-by'].some((id) => burners[id]?.job === 'pilot'),
  );
}

function lastingOf(
  part: TimelinePart,
  { spec }: Car,
  { curves, doubt }: RaisingFigures,
): Lasting | 'left out' | 'not known' {
  switch (part.takes) {
    case 'said': {
      if (part.least === undefined || part.good === undefined) return 'not known';
      const from = `shared/timeline.yaml: ${part.mark ?? 'the keeper'}`;
      return {
        leastS: part.least.si,
        goodS: part.good.si,
        estimated: true,
        inputs: [
          { name: `${part.name}, least`, value: part.least, from },
          { name: `${part.name}, good`, value: part.good, from },
        ],
      };
    }
    case 'warm-first': {
      const warmed = Object.entries(spec.vaporizers ?? {}).flatMap(([id, { 'warm-first': time }]) =>
        time === undefined ? [] : [{ id, time }],
      );
      const longest = warmed.reduce<(typeof warmed)[number] | undefined>(
        (most, each) => (most === undefined || each.time.si > most.time.si ? each : most),
        undefined,
      );
      if (torchNotTimed(spec)) return 'not known';
      if (longest === undefined) return 'left out';
      return {
        leastS: longest.time.si,
        goodS: longest.time.si,
        estimated: longest.time.estimated,
        inputs: [{ name: part.name, value: longest.time, from: `vaporizers.${longest.id}.warm-first` }],
      };
    }
    case 'soak': {
      const soaks = Object.entries(spec.burners).flatMap(([id, { soak }]) =>
        soak === undefined ? [] : [{ id, soak }],
      );
      if (soaks.length === 0) return hasPilot(spec) ? 'not known' : 'left out';
      const most = (of: (soak: (typeof soaks)[number]['soak']) => number): number =>
        Math.max(...soaks.map(({ soak }) => of(soak)));
      return {
        leastS: most(({ least }) => least.si),
        goodS: most(({ good }) => good.si),
        estimated: soaks.some(({ soak }) => soak.least.estimated || soak.good.estimated),
        inputs: soaks.flatMap(({ id, soak }) => [
          { name: `${part.name}, least`, value: soak.least, from: `burners.${id}.soak.least` },
          { name: `${part.name}, good`, value: soak.good, from: `burners.${id}.soak.good` },
        ]),
      };
    }
    case 'raising-steam': {
      const cold = curves.find(({ start }) => start === 'cold');
      const seconds = cold?.checks.find(({ at }) => at === 'working')?.seconds;
      if (seconds === undefined) return 'not known';
      return {
        leastS: seconds,
        goodS: seconds * (1 + doubt),
        estimated: true,
        inputs: [{ name: part.name, value: quantity('time', seconds, true), from: 'steam-cold-working' }],
      };
    }
  }
}

function figuresOf(
  start: Omit<StartUpFigures, 'figures'>,
  inputsOf: ReadonlyMap<string, readonly FigureInput[]>,
  estimated: boolean,
): readonly Figure[] {
  const all: readonly FigureInput[] = [...inputsOf.values()].flat();
  const common = {
    formula:
      'latest start of each part, counted back from moving off; a part begins when what it waits for is over',
    source: 'critical path method (J. E. Kelley and M. R. Walker, 1959, from memory)',
    checkedAgainst: 'worked by hand; no part begins before what it waits for is over',
    doubt: {
      basis: estimated ? ('estimated' as const) : ('computed' as const),
      words: 'a first time, a cold day or a stranger takes longer; the good time is the one to plan with',
    },
  };
  const time = (id: string, name: string, seconds: number, inputs: readonly FigureInput[] = all): Figure => ({
    id,
    name,
    inputs,
    value: { kind: 'quantity', quantity: quantity('time', seconds, estimated), rounding: 'up' },
    ...common,
  });
  return [
    time('start-up-good', 'from the first look at the car to moving off, in good time', start.goodS),
    time('start-up-least', 'from the first look at the car to moving off, at the least', start.leastS),
    time('start-up-attended', 'before moving off, somebody stays with the car from', start.attendedGoodS),
    ...start.parts.flatMap(({ id, name, goodS, leastS }) => [
      time(
        `start-up-${id}-good`,
        `before moving off, begin (${name}), in good time`,
        goodS,
        inputsOf.get(id),
      ),
      time(
        `start-up-${id}-least`,
        `before moving off, begin (${name}), at the least`,
        leastS,
        inputsOf.get(id),
      ),
    ]),
  ];
}

function totalNotKnown(missing: readonly TimelinePart[]): Figure {
  return {
    id: 'start-up-good',
    name: 'from the first look at the car to moving off, in good time',
    value: {
      kind: 'unknown',
      measure: `time with a watch: ${missing.map(({ name }) => name).join('; ')}`,
    },
    inputs: [],
    formula: 'latest start of each part, counted back from moving off',
    source: 'critical path method (J. E. Kelley and M. R. Walker, 1959, from memory)',
    checkedAgainst: 'nothing, as nothing is worked out',
    doubt: { basis: 'unknown', words: 'a part of it is not known' },
  };
}
