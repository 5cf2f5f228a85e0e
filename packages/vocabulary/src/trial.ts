import { anyWord, between, block, counted, quantity, row, text, vocabulary, word } from './kinds.js';
import { DOCK_STEP, DRILL, DRILL_WORDS, RUN_STATE } from './trial-steps.js';

export const TRIAL_RUN = vocabulary({
  title: 'trial run',
  rows: [
    row(
      'at',
      'at',
      word('no load', 'idle ahead', 'part throttle', 'rated speed', 'full throttle'),
      'Point of the run: out of gear at full throttle, or in gear. At idle, rated speed and full throttle the spec predicts the engine speed as well.',
      'at full throttle',
    ),
    row(
      'mode',
      'mode',
      anyWord('mode'),
      'Way of running in which the line was run, one of its modes.',
      'mode passage',
      {
        absent: 'any of the modes of the line: judged where all of them come to the same',
        because:
          'a line mostly has one way of running, and where its modes differ the check asks it by itself',
      },
    ),
    row(
      'engineSpeed',
      'engine speed',
      quantity('rotational speed'),
      'Engine speed read.',
      'engine speed 2310 rpm',
      { range: between('50 rpm', '12000 rpm') },
    ),
    row(
      'shaftSpeed',
      'shaft speed',
      quantity('rotational speed'),
      'Speed of the propeller shaft, by a counter of its own.',
      'shaft speed 1131 rpm',
      { range: between('1 rpm', '12000 rpm') },
    ),
    row('speed', 'speed', quantity('speed'), 'Vessel speed, the mean of runs both ways.', 'speed 24.3 kn', {
      range: between('0 kn', '100 kn'),
    }),
    row(
      'shaftPower',
      'shaft power',
      quantity('power'),
      'Power at the propeller shaft.',
      'shaft power 281 kW',
      { range: between('0.05 kW', '200 MW') },
    ),
    row(
      'coolantTemperature',
      'coolant temperature',
      quantity('temperature'),
      'Engine coolant once it has settled.',
      'coolant temperature 84 °C',
      { range: between('-10 °C', '160 °C') },
    ),
    row(
      'gearOilTemperature',
      'gear oil temperature',
      quantity('temperature'),
      'Gear oil once it has settled.',
      'gear oil temperature 68 °C',
      { range: between('-10 °C', '200 °C') },
    ),
    row(
      'exhaustTemperature',
      'exhaust temperature',
      quantity('temperature'),
      'Exhaust temperature at the engine outlet.',
      'exhaust temperature 420 °C',
      { range: between('-10 °C', '950 °C') },
    ),
    ...RUN_STATE,
  ],
  blocks: [],
});

export const TRIAL = vocabulary({
  title: 'trial',
  rows: [
    row('displacement', 'displacement', quantity('mass'), 'Displacement as run.', 'displacement 11.7 t', {
      range: between('50 kg', '600000 t'),
    }),
    row('bottom', 'bottom', word('clean', 'foul'), 'State of hull and propeller.', 'bottom clean'),
    row(
      'tachometers',
      'tachometers',
      word('checked', 'not checked'),
      'Whether each was checked against an independent counter.',
      'tachometers checked',
    ),
    row(
      'waterDepth',
      'water depth',
      quantity('length'),
      'Depth of water on the course.',
      'water depth 14 m',
      { range: between('0.3 m', '12000 m') },
    ),
    row('weather', 'weather', text, 'Wind, sea and current.', 'weather "wind 2 Bft across, sea calm"'),
    row('ballast', 'ballast', quantity('mass'), 'Ballast taken aboard for the trial.', 'ballast 600 kg', {
      range: between('0 kg', '100000 t'),
      absent: 'no ballast was taken aboard for it',
      because: 'ballast taken aboard for a trial is written',
    }),
    row(
      'fuelAboard',
      'fuel aboard',
      quantity('ratio'),
      'Share of the fuel that was aboard.',
      'fuel aboard 60 %',
      {
        range: between('0 %', '100 %'),
      },
    ),
    row('people', 'people', quantity('number'), 'People aboard.', 'people 6', {
      range: counted('0', '10000'),
    }),
    row(
      'fuelAndAir',
      'fuel and air',
      word('checked', 'not checked'),
      'Whether filters, valves and intakes of fuel and air were found clear before the runs.',
      'fuel and air checked',
    ),
    row(
      'dockDirection',
      'direction at the dock',
      word('proven', 'not proven'),
      'Lever ahead pulls ahead: each side alone and from every station, proven at the dock.',
      'direction at the dock proven',
    ),
    row(
      'sternAndStop',
      'astern and stop',
      word('recorded', 'not recorded'),
      'Whether full astern and a stop from full speed were run and recorded.',
      'astern and stop recorded',
    ),
  ],
  blocks: [
    block(
      'docks',
      'dock',
      DOCK_STEP,
      'One shaft line tried from one station, at the dock and at low power.',
      'dock Port { station "wheelhouse"  with lever ahead pulls ahead  with lever astern pulls astern }',
      {
        many: true,
        head: { field: 'line', kind: anyWord('shaft line') },
        absent: 'direction at the dock is reported as a whole',
        because: 'direction at the dock may be told as a whole',
      },
    ),
    block(
      'drills',
      'drill',
      DRILL,
      'An exercise: loss of control, full astern, a stop from full speed, one engine alone.',
      'drill full astern { result as required  engine speed 1800 rpm }',
      {
        many: true,
        head: { field: 'what', kind: DRILL_WORDS },
        absent: 'no drill is recorded',
        because: 'a drill that was run is written',
      },
    ),
    block(
      'runs',
      'run',
      TRIAL_RUN,
      'Readings of one shaft line at one point.',
      'run Port at full throttle { engine speed 2310 rpm  speed 24.3 kn }',
      { many: true, head: { field: 'line', kind: anyWord('shaft line') }, again: 'freely' },
    ),
  ],
});
