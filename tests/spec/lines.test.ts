/** Lines that cannot be so. */
import { describe, expect, test } from 'vitest';
import { spoiled } from '../helpers/tinySpec';
import { told } from './told';

describe('parts and lines', () => {
  test('a valve on no line', () => {
    expect(
      told(
        spoiled(['through: [pilot-tank, pilot-valve, pilot-burner]', 'through: [pilot-tank, pilot-burner]']),
      ),
    ).toMatchInlineSnapshot(`
      "116:3 error spec-lacks at “pilot-burner:”
        fuel comes from pilot tank to pilot burner through no hand valve
        expected: a valve that shuts the fuel off by hand
        mend: put the valve into the line; if the car has none, it must not be fired
      146:3 error spec-off-line at “pilot-valve: { name: pil”
        pilot valve is on no line
        expected: \`pilot-valve\` in the \`through\` of at least one line
        mend: add it to the line it shuts, or take it out if the car has none; a valve on no line can isolate nothing"
    `);
  });

  test('a tank of fuel that feeds no burner', () => {
    expect(
      told(
        spoiled([
          'through: [pilot-tank, pilot-valve, pilot-burner]',
          'through: [pilot-tank, pilot-valve, ground]',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "82:3 remark spec-feeds-nothing at “pilot-tank:”
        pilot tank feeds no burner
        expected: a line that carries fuel from \`pilot-tank\` on to a burner
        mend: write the line; or, if the car has no such tank, take it out with its pumps, valves, gauges and lines, or the papers have it filled and pumped up
      116:3 error spec-off-line at “pilot-burner:”
        pilot burner is on no line
        expected: \`pilot-burner\` in the \`through\` of at least one line
        mend: add it to the line it belongs to, or take it out if the car has none"
    `);
    expect(told(spoiled())).not.toContain('spec-feeds-nothing');
  });

  test('a fitting on no line', () => {
    expect(told(spoiled(['fuel-tank, strainer,', 'fuel-tank,']))).toMatchInlineSnapshot(`
      "168:3 error spec-off-line at “strainer: { name: fuel s”
        fuel strainer is on no line
        expected: \`strainer\` in the \`through\` of at least one line
        mend: add it to the line it belongs to, or take it out if the car has none"
    `);
  });

  test('a fitting of kind other needs none', () => {
    expect(
      told(spoiled(['fuel-tank, strainer,', 'fuel-tank,'], ['kind: strainer }', 'kind: other }'])),
    ).toMatchInlineSnapshot(`"fine"`);
  });

  test('a burner on no line', () => {
    expect(
      told(
        spoiled([
          '  - { carries: pilot fuel, through: [pilot-tank, pilot-valve, pilot-burner] }\n',
          '  - { carries: pilot fuel, through: [pilot-tank, pilot-valve, coil] }\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "116:3 error spec-off-line at “pilot-burner:”
        pilot burner is on no line
        expected: \`pilot-burner\` in the \`through\` of at least one line
        mend: add it to the line it belongs to, or take it out if the car has none"
    `);
  });

  test('a part twice on a line', () => {
    expect(told(spoiled(['fuel-tank, strainer,', 'fuel-tank, strainer, strainer,']))).toMatchInlineSnapshot(`
      "171:58 error spec-line-repeats at “strainer, fuel-stop-valv”
        this line passes through \`strainer\` twice
        expected: each part once in a line
        mend: if the pipe really comes back, write the way back as a line of its own"
    `);
  });

  test('a part twice, far apart', () => {
    expect(
      told(spoiled(['automatic, coil, main-burner', 'automatic, coil, strainer, main-burner'])),
    ).toMatchInlineSnapshot(`
      "115:3 error spec-lacks at “main-burner: { name: mai”
        fuel comes from fuel tank to main burner through no hand valve
        expected: a valve that shuts the fuel off by hand
        mend: put the valve into the line; if the car has none, it must not be fired
      171:92 error spec-line-repeats at “strainer, main-burner] }”
        this line passes through \`strainer\` twice
        expected: each part once in a line
        mend: if the pipe really comes back, write the way back as a line of its own"
    `);
  });
});

describe('ends', () => {
  test('a line that begins nowhere', () => {
    expect(
      told(
        spoiled(
          ['fuel-tank, strainer, fuel-stop-valve', 'strainer, fuel-stop-valve'],
          [
            'through: [engine, open-air] }',
            'through: [engine, open-air] }\n  - { carries: main fuel, through: [fuel-tank, main-burner] }',
          ],
        ),
      ),
    ).toMatchInlineSnapshot(`
      "115:3 error spec-lacks at “main-burner: { name: mai”
        fuel comes from fuel tank to main burner through no hand valve
        expected: a valve that shuts the fuel off by hand
        mend: put the valve into the line; if the car has none, it must not be fired
      171:37 error spec-line-ends at “strainer, fuel-stop-valv”
        this line begins at \`strainer\`, and nothing leads there
        expected: a tank, the boiler, \`open-air\`, or a part that another line leads to
        mend: begin the line where its fluid comes from"
    `);
  });

  test('a line that ends nowhere', () => {
    expect(
      told(
        spoiled(
          [
            '  - { carries: exhaust, through: [engine, open-air] }\n',
            '  - { carries: exhaust, through: [engine, open-air] }\n  - { carries: main fuel, through: [strainer, fuel-stop-valve, drain] }\n',
          ],
          ['fittings:\n', 'fittings:\n  drain: { name: fuel drain, place: underneath, kind: outlet }\n'],
        ),
      ),
    ).toMatchInlineSnapshot(`
      "182:64 error spec-line-ends at “drain] }”
        this line ends at \`drain\`, and nothing leads on
        expected: a burner, the boiler, the engine, a tank, a gauge, \`open-air\`, \`ground\`, or a part from which another line leads on
        mend: write on to where its fluid goes"
    `);
  });

  test('two lines that begin at one part to which nothing leads', () => {
    expect(
      told(
        spoiled(
          [
            'through: [pilot-tank, pilot-valve, pilot-burner] }',
            'through: [pilot-valve, pilot-burner] }\n  - { carries: pilot fuel, through: [pilot-valve, main-burner] }',
          ],
          [
            '  - { carries: exhaust, through: [engine, open-air] }\n',
            '  - { carries: exhaust, through: [engine, open-air] }\n  - { carries: air, through: [open-air, pilot-tank] }\n',
          ],
        ),
      ),
    ).toMatchInlineSnapshot(`
      "82:3 remark spec-feeds-nothing at “pilot-tank:”
        pilot tank feeds no burner
        expected: a line that carries fuel from \`pilot-tank\` on to a burner
        mend: write the line; or, if the car has no such tank, take it out with its pumps, valves, gauges and lines, or the papers have it filled and pumped up
      116:3 error spec-lacks at “pilot-burner:”
        no line brings fuel from a tank to pilot burner
        expected: a line that carries fuel from a tank to \`pilot-burner\`
        mend: join the fuel lines from the tank forward, in the order of flow
      172:38 error spec-line-ends at “pilot-valve, pilot-burne”
        this line begins at \`pilot-valve\`, and nothing leads there
        expected: a tank, the boiler, \`open-air\`, or a part that another line leads to
        mend: begin the line where its fluid comes from
      173:38 error spec-line-ends at “pilot-valve, main-burner”
        this line begins at \`pilot-valve\`, and nothing leads there
        expected: a tank, the boiler, \`open-air\`, or a part that another line leads to
        mend: begin the line where its fluid comes from"
    `);
  });

  test('a line that goes on after its end', () => {
    expect(
      told(spoiled(['through: [engine, open-air]', 'through: [engine, open-air, water-tank]'])),
    ).toMatchInlineSnapshot(`
      "180:43 error spec-line-ends at “open-air, water-tank] }”
        this line goes on past \`open-air\`, where every flow ends
        expected: \`open-air\` at the beginning or the end of a line
        mend: end the line here, and write what comes after it as a line of its own"
    `);
  });

  test('a line that goes on after a burner', () => {
    expect(
      told(spoiled(['pilot-valve, pilot-burner]', 'pilot-valve, pilot-burner, main-burner]'])),
    ).toMatchInlineSnapshot(`
      "172:63 error spec-line-ends at “pilot-burner, main-burne”
        this line goes on past \`pilot-burner\`, where every flow ends
        expected: \`pilot-burner\` at the beginning or the end of a line
        mend: end the line here, and write what comes after it as a line of its own"
    `);
  });

  test('a line that begins where another passes is joined to it', () => {
    expect(
      told(
        spoiled([
          '  - { carries: exhaust, through: [engine, open-air] }\n',
          '  - { carries: exhaust, through: [engine, open-air] }\n  - { carries: pilot fuel, through: [pilot-valve, main-burner] }\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`"fine"`);
  });
});

describe('jumps', () => {
  test('past a valve', () => {
    expect(
      told(
        spoiled([
          '  - { carries: exhaust, through: [engine, open-air] }\n',
          '  - { carries: exhaust, through: [engine, open-air] }\n  - { carries: pilot fuel, through: [pilot-tank, pilot-burner] }\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "116:3 error spec-lacks at “pilot-burner:”
        fuel comes from pilot tank to pilot burner through no hand valve
        expected: a valve that shuts the fuel off by hand
        mend: put the valve into the line; if the car has none, it must not be fired
      181:50 error spec-line-jumps at “pilot-burner] }”
        this line jumps from \`pilot-tank\` to \`pilot-burner\`, past \`pilot-valve\`
        expected: what the other line (line 172) has between them, or a valve of its own
        mend: put the missing part in; a pipe round a shut valve keeps the burner fed"
    `);
  });

  test('past a device', () => {
    expect(
      told(
        spoiled([
          '  - { carries: exhaust, through: [engine, open-air] }\n',
          '  - { carries: exhaust, through: [engine, open-air] }\n  - { carries: main fuel, through: [fuel-stop-valve, coil] }\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "181:54 error spec-line-jumps at “coil] }”
        this line jumps from \`fuel-stop-valve\` to \`coil\`, past \`automatic\`
        expected: what the other line (line 171) has between them, or a valve of its own
        mend: put the missing part in; a pipe round a shut valve keeps the burner fed"
    `);
  });

  test('past a fitting is no jump', () => {
    expect(
      told(
        spoiled([
          '  - { carries: exhaust, through: [engine, open-air] }\n',
          '  - { carries: exhaust, through: [engine, open-air] }\n  - { carries: main fuel, through: [fuel-tank, fuel-stop-valve] }\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`"fine"`);
  });

  test('in another fluid is no jump', () => {
    expect(
      told(
        spoiled([
          '  - { carries: exhaust, through: [engine, open-air] }\n',
          '  - { carries: exhaust, through: [engine, open-air] }\n  - { carries: exhaust, through: [engine, ground] }\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`"fine"`);
  });

  test('against the flow is no jump', () => {
    expect(
      told(
        spoiled([
          '  - { carries: exhaust, through: [engine, open-air] }\n',
          '  - { carries: exhaust, through: [engine, open-air] }\n  - { carries: water, through: [check-valve, water-tank] }\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`"fine"`);
  });
});

describe('two fluids', () => {
  test('a valve in two lines', () => {
    expect(
      told(spoiled(['through: [engine, open-air]', 'through: [engine, blow-down-tap, open-air]'])),
    ).toMatchInlineSnapshot(`
      "180:43 error spec-two-fluids at “blow-down-tap, open-air]”
        \`blow-down-tap\` carries exhaust here and water in line 175
        expected: one fluid to a part
        mend: correct \`carries\`, or name the right part"
    `);
  });

  test('two fuels in a valve', () => {
    expect(
      told(
        spoiled([
          'through: [pilot-tank, pilot-valve, pilot-burner]',
          'through: [pilot-tank, fuel-stop-valve, pilot-valve, pilot-burner]',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "172:50 error spec-two-fluids at “fuel-stop-valve, pilot-v”
        \`fuel-stop-valve\` carries pilot fuel here and main fuel in line 171
        expected: one fluid to a part
        mend: correct \`carries\`, or name the right part"
    `);
  });

  test('two fuels may meet in a fitting', () => {
    expect(
      told(
        spoiled([
          '  - { carries: exhaust, through: [engine, open-air] }\n',
          '  - { carries: exhaust, through: [engine, open-air] }\n  - { carries: pilot fuel, through: [pilot-valve, strainer] }\n',
        ]),
      ),
    ).toMatchInlineSnapshot(`"fine"`);
  });

  test('main and pilot fuel of one tank may share a valve', () => {
    expect(
      told(
        spoiled(
          [
            'through: [pilot-tank, pilot-valve, pilot-burner] }',
            'through: [fuel-stop-valve, pilot-valve, pilot-burner] }',
          ],
          ['    fuel: spirit', '    fuel: blend'],
          [
            '  - { carries: exhaust, through: [engine, open-air] }\n',
            '  - { carries: exhaust, through: [engine, open-air] }\n  - { carries: air, through: [open-air, pilot-tank] }\n',
          ],
        ),
      ),
    ).toMatchInlineSnapshot(`
      "82:3 remark spec-feeds-nothing at “pilot-tank:”
        pilot tank feeds no burner
        expected: a line that carries fuel from \`pilot-tank\` on to a burner
        mend: write the line; or, if the car has no such tank, take it out with its pumps, valves, gauges and lines, or the papers have it filled and pumped up"
    `);
  });

  test('used steam is still steam', () => {
    expect(
      told(spoiled(['through: [engine, open-air]', 'through: [engine, drip-cock, open-air]'])),
    ).toMatchInlineSnapshot(`"fine"`);
  });

  test('a tank that holds something else', () => {
    expect(
      told(
        spoiled(
          ['through: [pilot-tank, pilot-valve', 'through: [water-tank, pilot-valve'],
          [
            '  - { carries: exhaust, through: [engine, open-air] }\n',
            '  - { carries: exhaust, through: [engine, open-air] }\n  - { carries: air, through: [open-air, pilot-tank] }\n',
          ],
        ),
      ),
    ).toMatchInlineSnapshot(`
      "82:3 remark spec-feeds-nothing at “pilot-tank:”
        pilot tank feeds no burner
        expected: a line that carries fuel from \`pilot-tank\` on to a burner
        mend: write the line; or, if the car has no such tank, take it out with its pumps, valves, gauges and lines, or the papers have it filled and pumped up
      116:3 error spec-lacks at “pilot-burner:”
        no line brings fuel from a tank to pilot burner
        expected: a line that carries fuel from a tank to \`pilot-burner\`
        mend: join the fuel lines from the tank forward, in the order of flow
      172:38 error spec-two-fluids at “water-tank, pilot-valve,”
        water tank holds water, but this line carries pilot fuel
        expected: a line that carries what the tank holds
        mend: correct \`carries\`, or what the tank \`holds\`"
    `);
  });

  test('fuel led to the engine', () => {
    expect(
      told(spoiled(['through: [engine, open-air] }', 'through: [fuel-tank, open-air] }'])),
    ).toMatchInlineSnapshot(`
      "180:35 error spec-two-fluids at “fuel-tank, open-air] }”
        fuel tank holds kerosene blend, but this line carries exhaust
        expected: a line that carries what the tank holds
        mend: correct \`carries\`, or what the tank \`holds\`"
    `);
  });

  test('steam led into the water tank', () => {
    expect(
      told(spoiled(['through: [engine, open-air]', 'through: [engine, water-tank]'])),
    ).toMatchInlineSnapshot(`"fine"`);
  });

  test('steam led out of the water tank', () => {
    expect(
      told(spoiled(['through: [engine, open-air]', 'through: [water-tank, open-air]'])),
    ).toMatchInlineSnapshot(`
      "180:35 error spec-two-fluids at “water-tank, open-air] }”
        water tank holds water, but this line carries exhaust
        expected: a line that carries what the tank holds
        mend: correct \`carries\`, or what the tank \`holds\`"
    `);
  });

  test('a pump that moves something else', () => {
    expect(told(spoiled(['moves: water, drive', 'moves: oil, drive']))).toMatchInlineSnapshot(`
      "141:1 error spec-lacks at “pumps:”
        the car has no pump that moves water
        mend: add the feed pump with \`moves: water\`
      173:45 error spec-two-fluids at “feed-pump, check-valve,”
        feed pump moves oil, but this line carries water
        expected: a line that carries what the pump moves
        mend: correct \`carries\`, or what the pump \`moves\`
      174:33 error spec-two-fluids at “feed-pump, bypass-valve,”
        feed pump moves oil, but this line carries water
        expected: a line that carries what the pump moves
        mend: correct \`carries\`, or what the pump \`moves\`"
    `);
  });

  test('a burner that gets another fuel than it burns', () => {
    expect(told(spoiled(['    fuel: spirit', '    fuel: blend']))).toMatchInlineSnapshot(`
      "120:11 error spec-two-fluids at “blend”
        pilot burner burns \`blend\`, but its lines bring light spirit
        expected: \`spirit\`
        mend: correct the fuel of the burner, what the tank \`holds\`, or the lines"
    `);
  });
});

describe('the way of the fuel', () => {
  test('no fuel comes to a burner', () => {
    expect(
      told(
        spoiled(
          [
            'through: [pilot-tank, pilot-valve, pilot-burner]',
            'through: [open-air, pilot-valve, pilot-burner]',
          ],
          [
            '  - { carries: exhaust, through: [engine, open-air] }\n',
            '  - { carries: exhaust, through: [engine, open-air] }\n  - { carries: air, through: [open-air, pilot-tank] }\n',
          ],
        ),
      ),
    ).toMatchInlineSnapshot(`
      "82:3 remark spec-feeds-nothing at “pilot-tank:”
        pilot tank feeds no burner
        expected: a line that carries fuel from \`pilot-tank\` on to a burner
        mend: write the line; or, if the car has no such tank, take it out with its pumps, valves, gauges and lines, or the papers have it filled and pumped up
      116:3 error spec-lacks at “pilot-burner:”
        no line brings fuel from a tank to pilot burner
        expected: a line that carries fuel from a tank to \`pilot-burner\`
        mend: join the fuel lines from the tank forward, in the order of flow"
    `);
  });

  test('fuel that no valve can stop', () => {
    expect(
      told(
        spoiled(
          ['through: [pilot-tank, pilot-valve, pilot-burner]', 'through: [pilot-tank, pilot-burner]'],
          [
            '  - { carries: exhaust, through: [engine, open-air] }\n',
            '  - { carries: exhaust, through: [engine, open-air] }\n  - { carries: pilot fuel, through: [pilot-tank, pilot-valve, main-burner] }\n',
          ],
        ),
      ),
    ).toMatchInlineSnapshot(`
      "116:3 error spec-lacks at “pilot-burner:”
        fuel comes from pilot tank to pilot burner through no hand valve
        expected: a valve that shuts the fuel off by hand
        mend: put the valve into the line; if the car has none, it must not be fired"
    `);
  });
});

describe('the safety valve', () => {
  test('behind a valve', () => {
    expect(
      told(
        spoiled(
          [
            'through: [boiler, safety-valve, open-air]',
            'through: [boiler, throttle, safety-valve, open-air]',
          ],
          ['through: [boiler, throttle, engine]', 'through: [throttle, engine]'],
        ),
      ),
    ).toMatchInlineSnapshot(`
      "104:17 error spec-safety-valve-shut at “safety-valve”
        no open way leads from the boiler to safety valve
        expected: a line from \`boiler\` to it that passes no valve and no other device
        mend: correct the line; if the car is really piped so, it must not be steamed before that is put right"
    `);
  });

  test('with a valve behind it', () => {
    expect(
      told(
        spoiled([
          'through: [boiler, safety-valve, open-air]',
          'through: [boiler, safety-valve, drip-cock, open-air]',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "148:3 error spec-safety-valve-shut at “drip-cock: { name: drip”
        drip cock can shut safety valve off from the air
        expected: no valve behind a safety valve
        mend: correct the line; if the car is really piped so, it must not be steamed before that is put right"
    `);
  });

  test('not on the boiler', () => {
    expect(
      told(
        spoiled(['through: [boiler, safety-valve, open-air]', 'through: [engine, safety-valve, open-air]']),
      ),
    ).toMatchInlineSnapshot(`
      "104:17 error spec-safety-valve-shut at “safety-valve”
        no open way leads from the boiler to safety valve
        expected: a line from \`boiler\` to it that passes no valve and no other device
        mend: correct the line; if the car is really piped so, it must not be steamed before that is put right"
    `);
  });

  test('on a fitting on the boiler', () => {
    expect(
      told(
        spoiled(
          ['through: [boiler, safety-valve, open-air]', 'through: [boiler, dome, safety-valve, open-air]'],
          ['fittings:\n', 'fittings:\n  dome: { name: steam dome, place: underneath, kind: tee }\n'],
        ),
      ),
    ).toMatchInlineSnapshot(`"fine"`);
  });
});
