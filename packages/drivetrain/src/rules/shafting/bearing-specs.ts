import { changed, SINGLE_LINE } from '../example-specs.js';

/** One shaft in a stern tube and a strut, with what the checks of its supports ask for. */
export const WITH_BEARINGS = changed(
  SINGLE_LINE,
  [
    '  torsional yield 70000 psi\n',
    '  torsional yield 70000 psi\n  elastic modulus 193 GPa\n  density 7890 kg/m3\n',
  ],
  [
    '      shaft { material high-strength-stainless  diameter 65 mm [drawing] }',
    `      shaft {
        material high-strength-stainless
        diameter 65 mm [drawing]
        length 3.4 m
        bearing tube {
          kind stern tube
          at 1.45 m
          length 260 mm
          lubrication water
          water from own engine
        }
        bearing strut {
          kind strut
          at 2.95 m
          length 260 mm
          lubrication water
        }
        overhang 60 mm
        seal face seal
        seal water from own engine
      }`,
  ],
);
