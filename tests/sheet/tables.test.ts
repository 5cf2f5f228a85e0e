import { vesselSheetHtml } from '@tailshaft/sheet';
import { expect, it } from 'vitest';
import { parsed, tableRows } from './parsed.js';
import { sheetOfExample } from './sheet-of.js';

const SIDE_BY_SIDE = 'The lines side by side; every turn is seen from aft, looking forward';

it('puts the two sides of a repower beside each other', async () => {
  const page = parsed(vesselSheetHtml(await sheetOfExample('pilot-cutter/ternhaven.shaft')));
  expect(tableRows(page, SIDE_BY_SIDE, 'arrangement-proposed').join('\n')).toMatchInlineSnapshot(`
    " | Port | Starboard
    Side | port | starboard
    Engine or motor, as declared | standard viewed from flywheel | standard viewed from flywheel
    Engine or motor, from aft | ↺ counter-clockwise | ↺ counter-clockwise
    Clutch ahead | clutch A, output same, may run ahead continuously | clutch B, output opposite, may run ahead continuously
    Shaft, lever ahead | ↺ counter-clockwise | ↻ clockwise
    Shaft, lever astern | ↻ clockwise | ↺ counter-clockwise
    Hand that drives ahead | left | right
    Propeller fitted | left-hand, fits | right-hand, fits
    Turning | outward | outward
    Pump must be set for | standard | standard
    Pump is set for | standard viewed from flywheel | standard viewed from flywheel"
  `);
});

it('follows a V-drive station by station', async () => {
  const page = parsed(vesselSheetHtml(await sheetOfExample('sport-boat/quickgrass.shaft')));
  const places = /[a-z]+\.shaft:\d+/g;
  const rows = tableRows(page, 'Centre, station by station').map(row => row.replace(places, '(place)'));
  expect(rows.join('\n')).toMatchInlineSnapshot(`
    "Station | Ahead | Astern | Reason | Declared
    engine Sandpiper-6 | ↻ clockwise | ↻ clockwise | standard (SAE J824) is counter-clockwise seen from the flywheel end; counter-clockwise seen from the flywheel end, flywheel forward, is clockwise seen from aft → clockwise seen from aft | (place)
    gear Willow-25, clutch A | ↺ counter-clockwise | ↻ clockwise | output opposite to input, seen from aft → counter-clockwise seen from aft | (place)
    the shaft | ↺ counter-clockwise | ↻ clockwise | a shaft keeps the sense → counter-clockwise seen from aft | (place)
    propeller | ↺ counter-clockwise | ↻ clockwise | counter-clockwise seen from aft drives ahead with a left-hand one | (place)"
  `);
});

it('gives the numbers to expect on trial', async () => {
  const page = parsed(vesselSheetHtml(await sheetOfExample('workboat/saltmarsh.shaft')));
  const rows = tableRows(page, 'Centre: numbers to expect on trial, from the declared facts').map(row =>
    row.replace(/ W\d+/g, ''),
  );
  // Dunlin-4: idle 700 rpm, 84 kW at 2200 rpm, 2400 rpm unloaded; gear 3.05:1 with 96 %; propeller 30 in.
  const shaft = (engine: number) => `${Number((engine / 3.05).toPrecision(4))} rpm`;
  const tip = (engine: number) =>
    `${Number((((Math.PI * engine) / 3.05 / 60) * 30 * 0.0254).toPrecision(4))} m/s`;
  expect(rows).toContain(`idle ahead | 700 rpm | ${shaft(700)} | — | — | ${tip(700)}`);
  expect(rows).toContain(`governed maximum | 2400 rpm | ${shaft(2400)} | — | — | ${tip(2400)}`);
  const torque = ((84_000 / ((2200 * 2 * Math.PI) / 60)) * 3.05 * 0.96).toFixed(0);
  const power = (84 * 0.96).toFixed(2);
  expect(rows).toContain(
    `rated power | 2200 rpm | ${shaft(2200)} | ${torque} N·m | ${power} kW | ${tip(2200)}`,
  );
});

it('prints a part as written and in SI, with evidence and change', async () => {
  const page = parsed(vesselSheetHtml(await sheetOfExample('pilot-cutter/ternhaven.shaft')));
  const found = tableRows(page, 'Parts of Port, in the order of the power flow', 'line-existing.Port');
  expect(found).toContainEqual(
    expect.stringMatching(
      /^diameter \| 1 3\/4 in \| 44\.45 mm \| measured 2026-01-14 \| ternhaven\.shaft:\d+$/,
    ),
  );
  const planned = tableRows(page, 'Parts of Port, in the order of the power flow', 'line-proposed.Port');
  expect(planned).toContainEqual(
    expect.stringMatching(/^Engine Kittiwake-9 — .* — REPLACED Source: “Kittiwake 9 data sheet/),
  );
});
