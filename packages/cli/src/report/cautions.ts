export { SCREENING as CAUTION } from '@tailshaft/sheet';
