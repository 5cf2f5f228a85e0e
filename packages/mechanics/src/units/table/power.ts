import {
  BY_PRODUCT,
  FOOT,
  HORSEPOWER,
  METRIC_HORSEPOWER,
  POUND,
  POUND_FORCE,
  RPM,
  SP811,
  STANDARD_GRAVITY,
} from '../constants.js';
import { unitRows } from '../unit.js';

/** Power, energy, power per speed and specific fuel consumption. */
export const POWER_UNITS = [
  ...unitRows('power', SP811, [
    ['kW', 'kilowatt', 1e3, 'metric', 'engine power'],
    ['hp', 'horsepower, 550 ft·lbf/s', HORSEPOWER, 'US', 'engine power', { aliases: ['horsepower'] }],
    [
      'PS',
      'metric horsepower, 75 kgf·m/s',
      METRIC_HORSEPOWER,
      'metric',
      'engine power',
      { aliases: ['metric-hp'] },
    ],
    ['MW', 'megawatt', 1e6, 'metric', 'engine power of ships'],
    ['W', 'watt', 1, 'metric', 'losses'],
    ['hp-electric', 'electric horsepower, 746 W', 746, 'US', 'motor plates', { display: 'hp (electric)' }],
    [
      'lbf.ft/s',
      'pound-force foot per second',
      POUND_FORCE * FOOT,
      'US',
      'textbooks',
      { aliases: ['ft.lbf/s'] },
    ],
    ['kgf.m/s', 'kilogram-force metre per second', STANDARD_GRAVITY, 'metric', 'textbooks'],
  ]),
  ...unitRows('energy', SP811, [
    ['J', 'joule', 1, 'metric', 'slip heat'],
    ['kJ', 'kilojoule', 1e3, 'metric', 'slip heat'],
    ['MJ', 'megajoule', 1e6, 'metric', 'fuel energy'],
    ['kWh', 'kilowatt hour', 3.6e6, 'metric', 'batteries', { display: 'kW·h', aliases: ['kW.h'] }],
  ]),
  ...unitRows('power per speed', BY_PRODUCT, [
    [
      'kW/rpm',
      'kilowatt per revolution per minute',
      1e3 / RPM,
      'metric',
      'gear ratings',
      {
        aliases: ['kW.min', 'kW/(r/min)', 'kW/min-1'],
      },
    ],
    ['hp/rpm', 'horsepower per revolution per minute', HORSEPOWER / RPM, 'US', 'gear ratings'],
    [
      'hp/100rpm',
      'horsepower per hundred revolutions per minute',
      HORSEPOWER / (100 * RPM),
      'US',
      'gear and coupling ratings',
      {
        display: 'hp/100 rpm',
        aliases: ['hp/100-rpm', 'hp/100 rpm'],
      },
    ],
    [
      'PS/rpm',
      'metric horsepower per revolution per minute',
      METRIC_HORSEPOWER / RPM,
      'metric',
      'old gear ratings',
    ],
    [
      'kW/1000rpm',
      'kilowatt per thousand revolutions per minute',
      1 / RPM,
      'metric',
      'gear ratings',
      {
        display: 'kW/1000 rpm',
        aliases: ['kW/1000 rpm'],
      },
    ],
  ]),
  ...unitRows('fuel rate', BY_PRODUCT, [
    [
      'g/kWh',
      'gram per kilowatt hour',
      1e-3 / 3.6e6,
      'metric',
      'specific fuel consumption',
      {
        display: 'g/(kW·h)',
        aliases: ['g/kW.h', 'g/(kW.h)'],
      },
    ],
    [
      'lb/hp.h',
      'pound per horsepower hour',
      POUND / (HORSEPOWER * 3600),
      'US',
      'specific fuel consumption',
      {
        display: 'lb/(hp·h)',
        aliases: ['lb/hph', 'lb/(hp.h)', 'lb/hp-h'],
      },
    ],
    [
      'g/PS.h',
      'gram per metric horsepower hour',
      1e-3 / (METRIC_HORSEPOWER * 3600),
      'metric',
      'old fuel curves',
      {
        display: 'g/(PS·h)',
        aliases: ['g/PSh', 'g/(PS.h)'],
      },
    ],
  ]),
];
