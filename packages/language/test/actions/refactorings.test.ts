import { describe, expect, it } from 'vitest';
import { Offers } from './actions.js';

describe('fix all', () => {
  it('corrects every slip that has one correction, and leaves what has more', async () => {
    const offers = await Offers.at(
      'gear G {\n  mas 9 kg,\n  layuot V-drive\n  input 3\n}\npropeller P { hand rihgt }\n',
      'source.fixAll',
    );
    expect(offers.titles).toMatchInlineSnapshot(`"Correct all 3 slips that have one correction only"`);
    expect(offers.after('Correct')).toMatchInlineSnapshot(`
      "gear G {
        mass 9 kg,
        layout V-drive
        input 3
      }
      propeller P { hand right }
      "
    `);
  });

  it('never guesses which part is meant', async () => {
    const spec =
      'gear Alder-63 { mass 9 kg }\nvessel V { arrangement a { shaftline Port { gear Alder-68 } } }';
    expect((await Offers.at(spec, 'source.fixAll')).actions).toEqual([]);
    expect((await Offers.at(spec.replace('Alder-68', 'Alder<|>-68'), 'quickfix')).titles).toContain(
      'Write Alder-63',
    );
  });
});

describe('other units', () => {
  const cases: [what: string, spec: string][] = [
    ['a power', 'engine E { rating medium { power 30<|>0 kW at 2300 rpm } }'],
    ['the speed beside it', 'engine E { rating medium { power 300 kW at 23<|>00 rpm } }'],
    ['a mixed fraction', 'vessel V { arrangement a { shaftline P { shaft { diameter 1 3/<|>4 in } } } }'],
    ['a range, both ends at once', 'gear G { oil pressure 2<|>0 .. 24 bar }'],
    ['a requirement', 'vessel V { require speed at most 5<|>.0 kn at idle ahead }'],
    ['nothing for a bare number', 'propeller P { blades <|>4 }'],
  ];
  it('are offered for what stands at the cursor', async () => {
    const said: string[] = [];
    for (const [what, spec] of cases)
      said.push(`${what}\n${(await Offers.at(spec, 'refactor.rewrite')).titles}`);
    expect(said.join('\n')).toMatchInlineSnapshot(`
      "a power
      Write 300 kW as 402.3 hp
      Write 300 kW as 407.9 PS
      Write 300 kW as 0.3 MW
      Write 300 kW as 402.1 hp-electric
      the speed beside it
      Write 2300 rpm as 240.9 rad/s
      Write 2300 rpm as 38.33 rev/s
      Write 2300 rpm as 13800 deg/s
      a mixed fraction
      Write 1 3/4 in as 44.45 mm
      Write 1 3/4 in as 0.1458 ft
      Write 1 3/4 in as 4.445 cm
      Write 1 3/4 in as 1750 thou
      a range, both ends at once
      Write 20 .. 24 bar as 2 .. 2.4 MPa
      Write 20 .. 24 bar as 290.1 .. 348.1 psi
      Write 20 .. 24 bar as 2 .. 2.4 N/mm2
      Write 20 .. 24 bar as 2000 .. 2400 kPa
      Write 20 .. 24 bar as 0.2901 .. 0.3481 ksi
      Write 20 .. 24 bar as 20.39 .. 24.47 kgf/cm2
      a requirement
      Write 5.0 kn as 2.572 m/s
      Write 5.0 kn as 9.26 km/h
      Write 5.0 kn as 5.754 mph
      Write 5.0 kn as 8.439 ft/s
      Write 5.0 kn as 506.3 ft/min
      nothing for a bare number
      "
    `);
  });

  it('replace number and unit only', async () => {
    const offers = await Offers.at(
      'engine E { rating medium { power 30<|>0 kW at 2300 rpm [plate] } }',
      'refactor.rewrite',
    );
    expect(offers.after('Write 300 kW as 402.3 hp')).toBe(
      'engine E { rating medium { power 402.3 hp at 2300 rpm [plate] } }',
    );
  });
});

describe('the mirror line', () => {
  const spec = (more = '') => `vessel V {
  arrangement a {
    shaftline Po<|>rt {
      gear ahead clutch A { pump set for standard  shift cable push for ahead }
      propeller hand left
    }
${more}  }
}
`;
  it('is added with handed facts as open questions', async () => {
    const offers = await Offers.at(spec(), 'refactor');
    expect(offers.titles).toMatchInlineSnapshot(
      `"Add the starboard line as a mirror of Port, with handed facts as open questions"`,
    );
    expect(offers.after('Add the starboard line')).toMatchInlineSnapshot(`
      "vessel V {
        arrangement a {
          shaftline Port {
            gear ahead clutch A { pump set for standard  shift cable push for ahead }
            propeller hand left
          }
          shaftline Starboard mirrors Port { ahead clutch unknown  gear { pump set for unknown }  propeller hand unknown }
        }
      }
      "
    `);
  });

  it('is not offered where the other side is there, nor on the mirror itself', async () => {
    expect((await Offers.at(spec('    shaftline Starboard mirrors Port\n'), 'refactor')).titles).toBe('');
    const mirror = spec('    shaftline Star<|>board mirrors Port\n').replace('Po<|>rt', 'Port');
    expect((await Offers.at(mirror, 'refactor')).titles).toBe('');
  });
});

describe('a part in place', () => {
  const gear = `gear<|> ratio 2:1 ahead clutch A {
        // from the plate
        mass 9 kg [plate] // dry
        shift cable push for ahead
        clutch A output same  ahead continuous
      }`;
  const spec = `/// The cutter.
vessel V {
  arrangement a {
    shaftline Port {
      ${gear}
      propeller { hand left  blades 4 }
    }
  }
}
`;
  it('moves to this file when no catalogue is imported, with its comments', async () => {
    const offers = await Offers.at(spec, 'refactor.extract');
    expect(offers.titles).toMatchInlineSnapshot(
      `"Move this gear to the catalogue in this file as V-Port-gear"`,
    );
    expect(offers.after('Move this gear')).toMatchInlineSnapshot(`
      "gear V-Port-gear {
        // from the plate
        mass 9 kg [plate]  // dry
        clutch A  output same  ahead continuous
      }

      /// The cutter.
      vessel V {
        arrangement a {
          shaftline Port {
            gear V-Port-gear ratio 2:1 ahead clutch A {
              shift cable push for ahead
            }
            propeller { hand left  blades 4 }
          }
        }
      }
      "
    `);
  });

  it('moves to the file that has such parts', async () => {
    const files = {
      'v.shaft': `import "engines"\nimport "gears"\n${spec.replace('gear<|>', 'gear').replace('propeller {', 'prop<|>eller {')}`,
      'engines.shaft': 'engine E { mass 9 kg }\n',
      'gears.shaft': 'propeller V-Port-propeller { blades 3 }',
    };
    const offers = await Offers.at(files, 'refactor.extract');
    expect(offers.titles).toBe('Move this propeller to the catalogue in gears.shaft as V-Port-propeller-2');
    expect(offers.after('Move', 'gears.shaft')).toMatchInlineSnapshot(`
      "propeller V-Port-propeller { blades 3 }

      propeller V-Port-propeller-2 {
        hand left
        blades 4
      }
      "
    `);
    expect(offers.after('Move')).toContain('      propeller V-Port-propeller-2\n    }');
  });

  it('stays where its facts are not its own', async () => {
    const named =
      'gear G { mass 9 kg }\nvessel V { arrangement a { shaftline Port { ge<|>ar G { mass 8 kg } } } }';
    const mirrored =
      'vessel V { arrangement a { shaftline Port { gear { mass 8 kg } } shaftline S mirrors Port { ge<|>ar { mass 9 kg } } } }';
    for (const spec of [named, mirrored]) expect((await Offers.at(spec, 'refactor.extract')).titles).toBe('');
  });
});
