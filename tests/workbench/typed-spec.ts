/** A whole vessel as a person types it: 40 lines, laid out as the formatter does. The editor indents, so the leading
 * spaces are not typed. */
export const TYPED_SPEC = `import "../catalogue"

vessel Sandpiper "workboat, single screw" {
  duty medium { hours 900 per year  passengers none }

  hull displacement {
    waterline length 11.2 m
    displacement 14.5 t [drawing]
  }

  arrangement existing "as found" {
    shaftline Centre {
      engine Old-Eight at light { flywheel aft }
      gear Rowan-7 ratio 2.14:1 ahead clutch A
      shaft {
        material austenitic-stainless
        diameter 1 3/4 in [measured 2026-01-14]
      }
      propeller {
        hand left [plate]
        blades 3
        diameter 22 in
        pitch 20 in
      }
    }
  }

  arrangement proposed "diesel repower" revises existing {
    shaftline Centre {
      replace engine Kittiwake-9 at medium { flywheel aft }
      replace gear Alder-63 ratio 2.04:1 ahead clutch A
      retain shaft
      modify propeller { pitch 24 in }
    }
  }

  require speed at least 9 kn at full power
  accept paper/source-age because "sheet 3 still current" by "naval architect" dated 2026-02-01 until 2027-02-01
  revision A dated 2026-03-02 "Diesel repower"
}
`;

/** What the keys are: each line without the spaces that the editor puts before it, and the Enter that ends it. */
export const typedLines = (spec: string): string[] =>
  spec
    .trimEnd()
    .split('\n')
    .map(line => line.trimStart());
