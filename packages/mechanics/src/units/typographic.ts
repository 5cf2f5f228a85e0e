const SUPERSCRIPT: Record<string, string> = { '2': '²', '3': '³', '4': '⁴' };

/** `kg.m2` as it is printed: `kg·m²`. */
export function typographic(ascii: string): string {
  return ascii
    .replace(
      /([A-Za-z])([234])(?=$|[./])/g,
      (_, letter: string, power: string) => letter + SUPERSCRIPT[power],
    )
    .replace(/\./g, '·')
    .replace(/-/g, ' ');
}

/** The spelling looked up for anything a person types or pastes: `kg·m²` and `kg * m^2` become `kg.m2`. */
export function asciiSpelling(text: string): string {
  return text
    .trim()
    .replace(/\s*([./·⋅•*∙])\s*/g, (_, sign: string) => (sign === '/' ? '/' : '.'))
    .replace(/[²³⁴]/g, power => ({ '²': '2', '³': '3', '⁴': '4' })[power] ?? power)
    .replace(/\^/g, '')
    .replace(/⁻¹/g, '-1')
    .replace(/[°º]/g, 'deg')
    .replace(/[µμ]/g, 'u');
}
