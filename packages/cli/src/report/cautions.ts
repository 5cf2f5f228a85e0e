/** Said at the end of every report on a drivetrain. */
export const CAUTION =
  'A screening of what the specs declare, not a certificate: where it differs from the maker of a part, from class, flag ' +
  'or local codes, or from a licensed practitioner, they are right. Weight, trim, stability, exhaust, fire and fuel are not ' +
  'checked here at all. No result proves which way the vessel will move: try each side alone, tied up, at low power, ' +
  'watching the shaft.';
