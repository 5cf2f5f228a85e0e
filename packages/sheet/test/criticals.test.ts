import { expect, it } from 'vitest';
import { chart } from '../src/drawing/chart.js';
import { speedsPicture } from '../src/drawing/speeds-picture.js';

const attributes = (svg: string, pattern: RegExp) =>
  [...svg.matchAll(pattern)].map(found => found.slice(1).map(Number));

it('draws the running range behind the curves, on the scale of the axis', () => {
  const { source } = chart({
    id: 'x',
    title: 'T',
    xTitle: 'rpm',
    yTitle: 'Hz',
    band: { from: 500, to: 1000, name: 'running range' },
    series: [
      {
        name: 'order',
        kind: 'solid',
        points: [
          [0, 0],
          [1000, 50],
        ],
      },
    ],
  });
  const [[x, width]] = attributes(
    source,
    /<rect x="([\d.]+)" y="[\d.]+" width="([\d.]+)"[^>]*class="band"/g,
  ) as [[number, number]];
  // The axis runs from 58 at zero to 476 at 1200, the next round number above 1040.
  const perRpm = (476 - 58) / 1200;
  expect(x).toBeCloseTo(58 + 500 * perRpm, 1);
  expect(width).toBeCloseTo(500 * perRpm, 1);
  expect(source.indexOf('class="band"')).toBeLessThan(source.indexOf('class="series'));
  expect(source).toContain('running range: 500 to 1000. order: 0 at 0, 50 at 1000.');
});

it('grows with its legend and is as before without a band', () => {
  const drawn = (count: number) =>
    chart({
      id: 'x',
      title: 'T',
      xTitle: 'x',
      yTitle: 'y',
      series: Array.from({ length: count }, (_, index) => ({
        name: `s${index}`,
        kind: 'marks' as const,
        points: [[1, 1]] as const,
      })),
    }).source;
  expect(drawn(3)).toContain('viewBox="0 0 500 330"');
  expect(drawn(3)).not.toContain('band');
  expect(Number(/viewBox="0 0 500 (\d+)"/.exec(drawn(11))![1])).toBeGreaterThan(234 + 54 + 5 * 18);
});

it('marks what lies in the running range, by place and word, and only tells what is told', () => {
  const { source } = speedsPicture({
    id: 'x',
    title: 'T',
    running: { from: 150, to: 500 },
    rows: [
      { name: 'below', from: 100, to: 149 },
      { name: 'reaches in', from: 480, to: 900 },
      { name: 'above', from: 501, to: 501 },
      { name: 'blade rate', from: 300, to: 300, told: true },
    ],
  });
  expect([...source.matchAll(/class="bar (\w+)"/g)].map(found => found[1])).toEqual([
    'holds',
    'fails',
    'holds',
    'possible',
  ]);
  expect(source).toContain('Running range 150 to 500 rpm. below: 100–149 rpm. reaches in: 480–900 rpm.');
});
