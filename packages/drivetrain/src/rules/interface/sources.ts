import type { Source } from '@tailshaft/mechanics';

export const HOUSINGS: Source = {
  title: 'SAE J617',
  clause: 'sizes of flywheel housings, four copies',
  confidence: 'published',
};

export const FLYWHEELS: Source = {
  title: 'SAE J620',
  clause: 'sizes of flywheels, two or three copies',
  confidence: 'published',
};

export { DEFER, PART_SHEET, PRACTICE } from '../shafting/sources.js';
