/** Where a pressure is counted from: the air outside, as a gauge shows it, or nothing at all. */
export type Datum = 'gauge' | 'absolute';

/** Standard atmosphere in Pa, exact by definition (CGPM 1954, resolution 4). */
export const STANDARD_ATMOSPHERE = 101_325;

/** Spellings that say it, and the unit they say it of. */
const SPELLINGS: Readonly<Record<string, readonly [symbol: string, datum: Datum]>> = Object.fromEntries(
  ['psi', 'bar', 'kPa', 'mbar', 'MPa'].flatMap(symbol =>
    (['gauge', 'absolute'] as const).flatMap(datum => {
      const letter = datum[0]!;
      return [`${symbol}${letter}`, `${symbol}(${letter})`, `${symbol}-${letter}`].map(
        spelling => [spelling, [symbol, datum]] as const,
      );
    }),
  ),
);

/** The unit behind `psig`, `bara` or `kPa(g)`, and what it counts from. */
export function pressureDatum(
  spelling: string,
): { readonly symbol: string; readonly datum: Datum } | undefined {
  const found = Object.hasOwn(SPELLINGS, spelling) ? SPELLINGS[spelling] : undefined;
  return found && { symbol: found[0], datum: found[1] };
}
