import { between, quantity, row, text, vocabulary, word } from './kinds.js';
import { DRILLS } from './words.js';

/** How the engine was fed and set during a run, and what it showed. */
export const RUN_STATE = [
  row('load', 'load', quantity('ratio'), 'Load that the engine display shows.', 'load 98 %', {
    range: between('0 %', '130 %'),
  }),
  row('fuelRate', 'fuel rate', quantity('volume flow'), 'Fuel burnt.', 'fuel rate 76 l/h', {
    range: between('0.05 l/h', '20000 l/h'),
  }),
  row(
    'boost',
    'boost',
    quantity('pressure'),
    'Charge pressure behind the turbocharger, gauge.',
    'boost 1.6 bar',
    {
      range: between('0 bar', '8 bar'),
    },
  ),
  row(
    'gearOilPressure',
    'gear oil pressure',
    quantity('pressure'),
    'Clutch oil pressure.',
    'gear oil pressure 22 bar',
    {
      range: between('0 bar', '60 bar'),
    },
  ),
  row(
    'fuelPressure',
    'fuel pressure',
    quantity('pressure'),
    'Fuel pressure ahead of the injection pump, at this load.',
    'fuel pressure 0.6 bar',
    { range: between('0 bar', '3000 bar') },
  ),
  row(
    'intakeDepression',
    'intake depression',
    quantity('pressure'),
    'Pressure lost in the air intake and its filter, at this load.',
    'intake depression 40 mbar',
    { range: between('0 mbar', '500 mbar') },
  ),
  row(
    'smoke',
    'smoke',
    word('none', 'light', 'black', 'white', 'blue'),
    'Exhaust smoke, settled. Black smoke means too much fuel for the air: overload or a lack of air.',
    'smoke none',
  ),
  row('lever', 'lever', quantity('ratio'), 'Position of the lever as a share of its travel.', 'lever 100 %', {
    range: between('0 %', '100 %'),
  }),
  row(
    'throttle',
    'throttle',
    word('at its stop', 'short of its stop'),
    'Whether the lever of the pump or governor itself, at the engine, reached its stop.',
    'throttle at its stop',
  ),
];

const PULLS = word('pulls ahead', 'pulls astern', 'no pull');

export const DOCK_STEP = vocabulary({
  title: 'dock step',
  rows: [
    row('station', 'station', text, 'Station that the step was run from.', 'station "wheelhouse"'),
    row('ahead', 'with lever ahead', PULLS, 'Effect of this lever ahead.', 'with lever ahead pulls ahead'),
    row(
      'astern',
      'with lever astern',
      PULLS,
      'Effect of the lever astern.',
      'with lever astern pulls astern',
    ),
    row(
      'neutral',
      'neutral',
      word('no drive', 'drives'),
      'Whether the shaft stops, or only drags, in neutral.',
      'neutral no drive',
    ),
    row(
      'shaftTurns',
      'shaft turns',
      word('clockwise', 'counter-clockwise'),
      'Turning sense of the shaft with the lever ahead, seen from aft.',
      'shaft turns clockwise',
      {
        absent: 'not looked at',
        because: 'a step is judged by the pull; the sense of the shaft is noted where somebody looked',
      },
    ),
  ],
  blocks: [],
});

export const DRILL = vocabulary({
  title: 'drill',
  rows: [
    row(
      'result',
      'result',
      word('as required', 'not as required'),
      'Whether it went as the trial plan requires.',
      'result as required',
    ),
    row('station', 'station', text, 'Station that the step was run from.', 'station "wheelhouse"', {
      absent: 'the only station',
      because: 'a vessel with one station is drilled from it',
    }),
    row('time', 'time', quantity('time'), 'Time taken.', 'time 14 s', {
      range: between('0.1 s', '2 h'),
      absent: 'no time was taken',
      because: 'what was not taken is not written',
    }),
    row('distance', 'distance', quantity('length'), 'Distance run.', 'distance 46 m', {
      range: between('0 m', '10000 m'),
      absent: 'no distance was taken',
      because: 'what was not taken is not written',
    }),
    row(
      'engineSpeed',
      'engine speed',
      quantity('rotational speed'),
      'Greatest engine speed during the drill.',
      'engine speed 1800 rpm',
      {
        range: between('50 rpm', '12000 rpm'),
        absent: 'no speed was read',
        because: 'what was not read is not written',
      },
    ),
    row(
      'remark',
      'remark',
      text,
      'Remarks of the crew or surveyor.',
      'remark "engine stop at the helm pulled, both stopped"',
      {
        absent: 'nothing further',
        because: 'what was seen is written',
      },
    ),
  ],
  blocks: [],
});

/** What is drilled, as the header of a drill. */
export const DRILL_WORDS = word(...DRILLS);
