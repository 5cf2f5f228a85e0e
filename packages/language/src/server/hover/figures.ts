import { hullFigures, type Vessel } from '@tailshaft/drivetrain';
import { formatNumber, formatValue, type Value } from '@tailshaft/mechanics';
import { bullets, plain } from './markdown.js';

/** `apparent slip at full throttle: **18.2 %**`. */
export function figureWords(value: Value): string {
  const said = value.dimension === 'ratio' ? `${formatNumber(value.si * 100)} %` : formatValue(value);
  return `${plain(value.label)}: **${said}**`;
}

/** What the size of the hull says of it. */
export function hullHover(vessel: Vessel): string | undefined {
  const figures = hullFigures(vessel);
  return figures.length > 0 ? bullets(figures.map(figureWords)) : undefined;
}
