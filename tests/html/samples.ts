/**
 * Sample papers for pages on a screen: an invented car, its contents chosen to hold every kind of block and some awkward
 * ones (wide tables, a long name, a drawing wider than a phone). Nothing here is for use with a car.
 */
import type { Drawing, Shape } from '../../src/drawing/drawing';
import type { ScreenPageOptions } from '../../src/html/page';
import type { Block } from '../../src/markup/block';
import { parseMarkup } from '../../src/markup/parse';

/** A paper for a screen, less the look and the fonts. */
export interface Sample {
  readonly name: string;
  readonly blocks: readonly Block[];
  readonly options: Omit<ScreenPageOptions, 'look' | 'fonts'>;
}

const made = {
  language: 'en-US',
  car: 'Pipit',
  issue: 'B',
  date: '2026-05-01',
  invented: true,
} as const;

const phases = [
  'Parked',
  'Filling',
  'Pilot lit',
  'Soaking',
  'Main burner',
  'Raising steam',
  'Running',
  'Shut down',
];
const valves = [
  'Pilot stop valve',
  'Pilot needle valve',
  'Fuel stop valve',
  'Burner valve',
  'Left pump bypass',
  'Right pump bypass',
  'Steam chest drips',
];

const valveTable = `
<table class="ruled striped" id="positions">
  <caption>Where each valve stands</caption>
  <colgroup><col data-weight="0"><col data-weight="2">${phases.map(() => '<col data-weight="1">').join('')}</colgroup>
  <thead><tr><th scope="col">Tag</th><th scope="col">Valve</th>${phases.map((phase) => `<th scope="col">${phase}</th>`).join('')}</tr></thead>
  <tbody>${valves
    .map(
      (valve, row) =>
        `<tr><td><strong>${row + 1}</strong></td><th scope="row">${valve}</th>${phases.map((_, column) => `<td>${(row * 3 + column) % 4 < 2 ? 'shut' : '<strong>open</strong>'}</td>`).join('')}</tr>`,
    )
    .join('')}</tbody>
</table>`;

const stickRows = Array.from(
  { length: 24 },
  (_, row) =>
    `<tr><th scope="row">${row + 1} in</th><td>${((row + 1) * 1.04).toFixed(1)} US gal</td><td>${Math.max(0, Math.floor((row - 3) * 1.04))} US gal</td></tr>`,
).join('');

const manualMarkup = `
<h1 id="cover">Pipit</h1>
<p class="lead">Owner’s manual</p>
<p>A two-seat runabout of 1908, made up to show what such a book holds.</p>
<table class="plain">
  <colgroup><col data-weight="0"><col data-weight="1"></colgroup>
  <tbody>
    <tr><th scope="row">Issue</th><td>B, 1 May 2026</td></tr>
    <tr><th scope="row">Keeper</th><td>the keeper of the invented car</td></tr>
    <tr><th scope="row">Made from</th><td>the spec with fingerprint 7GKX-4MRT</td></tr>
  </tbody>
</table>
<aside data-signal="notice"><p class="hazard">This car is invented.</p><p class="consequence">The car, its maker, its keeper and every figure in this book are made up. No real car may be run by it.</p></aside>
<aside data-signal="warning">
  <p class="hazard">Steam, fire and liquid fuel.</p>
  <p class="consequence">A missed valve can flood a burner; a boiler without water can burst.</p>
  <p class="avoidance">Nobody runs this car who has not been shown how by the keeper. The boiler inspector, the local fire code and the law of the road stand above anything in this book.</p>
</aside>
<h2>What is in this book</h2>
<nav data-depth="2"></nav>
<h1 id="read-first">Read this first</h1>
<p class="lead">This book is for one car as it stood at issue B. Another car, even of the same make, has its valves elsewhere.</p>
<h2 id="signal-words">What the signal words mean</h2>
<table>
  <colgroup><col data-weight="0"><col data-weight="1"></colgroup>
  <thead><tr><th scope="col">Word</th><th scope="col">What it says: a hazard that, if it is not avoided,</th></tr></thead>
  <tbody>
    <tr><th scope="row">DANGER</th><td>will kill or badly injure</td></tr>
    <tr><th scope="row">WARNING</th><td>could kill or badly injure</td></tr>
    <tr><th scope="row">CAUTION</th><td>could injure slightly or moderately</td></tr>
    <tr><th scope="row">NOTICE</th><td>could damage the car; nobody is hurt</td></tr>
  </tbody>
</table>
<h2 id="always">Cautions that always hold</h2>
<aside data-signal="danger" id="fumes">
  <p class="hazard">Burner fumes in a closed place.</p>
  <p class="consequence">They hold carbon monoxide, which cannot be smelt and kills.</p>
  <p class="avoidance">Light the main burner out of doors. Never keep a burner lit in a shed, a garage or a tent.</p>
</aside>
<aside data-signal="caution">
  <p class="hazard">Hot brass.</p>
  <p class="consequence">Fittings near the burner stay hot long after the fire is out.</p>
  <p class="avoidance">Wear gloves.</p>
</aside>
<p>The chapter <a href="#sticks">What the stick says</a> (page <a class="page" href="#sticks"></a>) says what is left in the tank.</p>
<h1 id="controls">Controls, by place</h1>
<p>The plan shows every place where something is worked, read or filled.</p>
<figure id="plan" data-drawing="plan"><figcaption>Pipit from above, with the places of its controls.</figcaption></figure>
<h2 id="positions-by-phase">Valves through the day</h2>
${valveTable}
<h1 id="firing-up">Firing up</h1>
<h2 id="procedure-water">Know the water</h2>
<p>No flame before the level is known and enough.</p>
<ol class="steps" data-mark="tick">
  <li><p class="action">Chock both sides of a rear wheel.</p></li>
  <li data-critical>
    <aside data-signal="danger"><p class="hazard">A fire under a boiler that is short of water.</p><p class="consequence">Metal overheats and gives way; the boiler can burst.</p><p class="avoidance">Know the level by two readings before any flame.</p></aside>
    <p class="action">Open the <strong>try cock</strong> and read the level in the clear tube.</p><p class="result">water at the mark, 8 in above the bottom of the glass</p><p class="remark">Kneeling beside the car, left side. If there is none, see <a href="#always">Cautions that always hold</a>.</p></li>
  <li><p class="action">Read the <strong>gauge glass</strong>.</p><p class="result">the same level as the tube</p></li>
  <li><p class="action">Dip the <strong>water tank</strong>.</p><p class="result">at least 16 in on the stick</p></li>
  <li><p class="action"><em>Helper:</em> stand by with the extinguisher.</p><p class="result">at the burner front, pin out of its seal</p></li>
</ol>
<h2 id="procedure-pilot">Light the pilot</h2>
<p>The pilot keeps the vaporizer hot and lights the main burner.</p>
<ol class="steps" data-mark="number" start="6">
  <li><p class="action">Charge the <strong>pilot tank</strong> with air.</p><p class="result">20 to 25 psi on its gauge</p></li>
  <li><p class="action">Warm the pilot’s vaporizing tube with the torch for two minutes.</p><p class="result">a drop of water dances on it</p></li>
  <li data-critical>
    <aside data-signal="warning"><p class="hazard">Liquid fuel on a hot burner.</p><p class="consequence">It flares out of the front.</p><p class="avoidance">Stand to the side, and open the needle valve a quarter turn only.</p></aside>
    <p class="action">Open the <strong>pilot stop valve</strong>, then crack the <strong>pilot needle valve</strong>.</p><p class="result">a blue flame, steady, with a low roar</p></li>
  <li><p class="action">Wait ten minutes for the vaporizer to soak.</p><p class="result">the vaporizer too hot to spit on</p></li>
</ol>
<p><strong>What can go wrong:</strong></p>
<ul><li>A yellow flame: the tube is not hot enough. Shut the needle valve, wait, warm it again.</li><li>No flame: the jet is blocked.</li></ul>
<section class="boxed"><p><strong>Why so long?</strong> A cold vaporizer passes liquid fuel, and liquid fuel in the burner is how fires outside it begin.</p></section>
<h1 id="fuel-and-water">Fuel and water</h1>
<h2 id="sticks">What the stick says</h2>
<table class="ruled striped" id="stick-water">
  <caption>Water tank (computed). Cannot be drawn: 0.5 US gal. Reserve: 3 US gal.</caption>
  <colgroup><col data-weight="1" data-align="right"><col data-weight="1" data-align="right"><col data-weight="1" data-align="right"></colgroup>
  <thead><tr><th scope="col">Wet on the stick</th><th scope="col">In the tank</th><th scope="col">To run on</th></tr></thead>
  <tbody>${stickRows}</tbody>
</table>
<h1 id="glossary">Words of the trade</h1>
<dl><dt>Automatic</dt><dd>The device that shuts the fuel when steam reaches its set pressure.</dd><dt>Drips</dt><dd>Cocks that drain water from the steam chest and cylinders.</dd><dt>Soak</dt><dd>The time a pilot needs to heat the vaporizer through.</dd></dl>
<h1 id="record">Record of issues</h1>
<p class="note">Take old cards out of the car and destroy them.</p>
<h2 id="notes">Notes to hand on with the car</h2>
<hr data-lines="5">
`;

const cardMarkup = `
<h1>Pipit: shut everything</h1>
<h2>Fire where it should not be</h2>
<p><strong>Seen:</strong> flame outside the burner, or a smell of fuel with the fire on.</p>
<ol class="steps" data-mark="number">
  <li data-critical><p class="action">Shut the <strong>fuel stop valve</strong>.</p><p class="result">handle across the pipe</p></li>
  <li data-critical><p class="action">Shut the <strong>pilot stop valve</strong>.</p><p class="result">screwed home clockwise</p></li>
  <li><aside data-signal="warning" data-brief><p class="hazard">Burning fuel runs downhill.</p></aside><p class="action">Everybody out, upwind.</p></li>
  <li><p class="action">Extinguisher at the base of the flame, only if the way out is behind you.</p></li>
</ol>
<p><strong>Never:</strong> water on burning fuel.</p>
<hr class="page-break">
<h1>Pipit: water lost with the fire on</h1>
<ol class="steps" data-mark="number">
  <li data-critical><p class="action">Shut the <strong>fuel stop valve</strong> and the <strong>pilot stop valve</strong>.</p></li>
  <li data-critical><aside data-signal="danger"><p class="hazard">Cold water on hot dry metal.</p><p class="consequence">The boiler can burst.</p><p class="avoidance">Add no water, by any pump.</p></aside><p class="action">Leave both bypasses <strong>open</strong>.</p></li>
</ol>
<table class="large striped">
  <caption>How far on what the stick shows</caption>
  <colgroup><col data-weight="1" data-align="right"><col data-weight="1" data-align="right"></colgroup>
  <thead><tr><th scope="col">stick</th><th scope="col">hilly</th></tr></thead>
  <tbody><tr><th scope="row">12 in</th><td>9 mi</td></tr><tr><th scope="row">8 in</th><td>4 mi</td></tr></tbody>
</table>
`;

/** A plan of a car, roughly: wider than a phone, with small letters. */
const plan: Drawing = {
  name: 'plan',
  widthPt: 500,
  heightPt: 210,
  alt: 'The car from above, front to the left, with six numbered places from the radiator cap to the fuel filler.',
  shapes: [
    {
      kind: 'rect',
      x: 40,
      y: 50,
      width: 420,
      height: 110,
      radius: 24,
      paint: { fill: '#f6f6f3', stroke: { colour: '#111111', widthPt: 1.5 } },
    },
    ...[110, 370].flatMap((x): Shape[] =>
      [32, 160].map((y) => ({
        kind: 'rect',
        x,
        y,
        width: 60,
        height: 18,
        radius: 4,
        paint: { stroke: { colour: '#111111', widthPt: 1.5 } },
      })),
    ),
    ...['Water filler', 'Pilot tank', 'Pilot valves', 'Throttle', 'Bypass levers', 'Fuel filler'].flatMap(
      (name, index): Shape[] => [
        { kind: 'circle', cx: 80 + index * 68, cy: 105, r: 9, paint: { fill: '#111111' } },
        {
          kind: 'text',
          x: 80 + index * 68,
          y: 108.5,
          text: String(index + 1),
          face: 'text-bold',
          sizePt: 10,
          colour: '#ffffff',
          anchor: 'middle',
        },
        {
          kind: 'path',
          pieces: [
            { op: 'move', x: 80 + index * 68, y: 114 },
            { op: 'line', x: 80 + index * 68, y: 186 },
          ],
          paint: { stroke: { colour: '#8a8a8a', widthPt: 0.75, dashPt: [2, 2] } },
        },
        {
          kind: 'text',
          x: 80 + index * 68,
          y: 198,
          text: name,
          face: 'narrow',
          sizePt: 9,
          colour: '#111111',
          anchor: 'middle',
        },
      ],
    ),
  ],
};

function blocksOf(markup: string): readonly Block[] {
  const parsed = parseMarkup(markup, 'sample', { drawings: new Map([[plan.name, plan]]) });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems, null, 2));
  return parsed.value;
}

/** The sample papers. */
export const samples: readonly Sample[] = [
  {
    name: 'manual',
    blocks: blocksOf(manualMarkup),
    options: { ...made, title: 'Owner’s manual', fingerprint: '7GKX-4MRT' },
  },
  {
    name: 'card',
    blocks: blocksOf(cardMarkup),
    options: { ...made, title: 'Emergency card', fingerprint: '9ACD-EFGH' },
  },
];
