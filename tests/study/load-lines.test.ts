import { LineAnalysis, searched, withLoadLines } from '@tailshaft/drivetrain';
import { given } from '@tailshaft/mechanics';
import { studiesPanel } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { joinedExample } from '../support/examples.js';
import { exampleWithStudy, studied } from '../support/study.js';

async function linesOf(...vary: string[]) {
  const text = exampleWithStudy(
    'pilot-cutter/ternhaven.shaft',
    `study wheel of proposed { ${vary.map(one => `vary ${one}`).join('  ')}  rank by least margin }`,
  );
  const [of] = (await studied(text)).studies;
  const result = withLoadLines(of!, searched(of!));
  return { of: of!, result, loadLines: result.loadLines ?? [] };
}

const PITCH = 'propeller pitch 30 in .. 38 in by 1 in';
const DIAMETER = 'propeller diameter 28 in, 28.5 in';

describe('the load lines of a study', () => {
  it('stand over the curve of the engine, one chart for each ratio and one line for each pitch', async () => {
    const { of, result, loadLines } = await linesOf('gear any', PITCH, DIAMETER);
    expect(loadLines.length).toBeGreaterThan(1);
    expect(loadLines.length).toBeLessThanOrEqual(4);
    const ratios = loadLines.map(one => Number.parseFloat(one.ratio!));
    expect(ratios).toEqual([...new Set(ratios)].sort((a, b) => a - b));
    const best = result.holds[0]!.choice;
    for (const { lines, varied } of loadLines) {
      expect(varied).toBe('propeller pitch');
      expect(lines.length).toBeGreaterThan(2);
      // At one speed a propeller of more pitch asks for more power.
      const powers = lines.map(one => one.points.at(-1)![1]);
      expect(powers).toEqual([...powers].sort((a, b) => a - b));
    }
    const shown = loadLines.flatMap(one => one.lines.filter(line => line.holds));
    const pitch = of.dimensions.findIndex(one => one.words === 'propeller pitch');
    expect(shown.map(one => one.option)).toContain(of.dimensions[pitch]!.options[best[pitch]!]);
  });

  it('are what each candidate asks at its crankshaft, and end where the engine stands with the lever right forward', async () => {
    const { of, result, loadLines } = await linesOf(PITCH);
    expect(loadLines).toHaveLength(1);
    expect(loadLines[0]!.ratio).toBeUndefined();
    for (const { option, holds, points, full } of loadLines[0]!.lines) {
      const choice = [of.dimensions[0]!.options.indexOf(option)];
      expect(holds).toBe(result.holds.some(one => one.choice[0] === choice[0]));
      const vessel = of.vesselWith(choice)!;
      const line = vessel.arrangements.find(one => one.name === of.arrangement)!.lines[0]!;
      const analysis = new LineAnalysis(line, vessel);
      const { atEngineSpeed, full: open } = analysis.propulsion!.value!;
      const [speed, power] = points[4]!;
      const run = atEngineSpeed!(given('engine speed', 'ω', 'rotational speed', speed));
      if (!run.applies || !open.applies) throw new Error('not predicted');
      // Torque asked of the engine times its speed.
      expect(power / (run.loadFraction!.si * run.torqueAvailable!.si * speed)).toBeCloseTo(1, 6);
      expect(full![0]).toBe(open.engineSpeed.si);
    }
  });

  it('tell ratios apart where no pitch varies, and are not drawn where neither does', async () => {
    const [only] = (await linesOf('gear any')).loadLines;
    expect(only!.varied).toBe('gear');
    expect((await linesOf(DIAMETER)).loadLines).toEqual([]);
  });

  it('are those of every line that varies, once for lines that are alike', async () => {
    const spec = joinedExample('triple-screw/strand.shaft').replace(/^ {2}study [\s\S]*?\n {2}\}\n/gm, '');
    const named = async (of: string) => {
      const study = 'study wheel of built { vary propeller pitch 30 in, 31 in  rank by least margin }';
      const [ready] = (await studied(of.replace(/\}\s*$/, `  ${study}\n}\n`))).studies;
      const { loadLines = [] } = withLoadLines(ready!, searched(ready!));
      return loadLines.map(one => one.line);
    };
    expect(await named(spec)).toEqual(['Port, Centre and Starboard']);
    const centre = spec.indexOf('shaftline Centre');
    const other = spec.slice(0, centre) + spec.slice(centre).replace('area ratio 0.72', 'area ratio 0.6');
    expect(await named(other)).toEqual(['Port and Starboard', 'Centre']);
  });

  it('are drawn', async () => {
    const { result } = await linesOf(PITCH);
    const drawn = studiesPanel([result]);
    expect(drawn).toContain('Study wheel of proposed, Port and Starboard: power by propeller pitch');
    expect(drawn).toMatch(/candidate holds, 34 in: [\d.]+ at/);
    expect(drawn).toMatch(/<text[^>]*>34 in<\/text>/);
  });
});
