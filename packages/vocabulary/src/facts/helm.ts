import type { Origin } from '@tailshaft/mechanics';
import type { HELM, HELM_STATION } from '../helm.js';
import type { FactsOf } from '../kinds.js';

/** What one helm shows and lets do. */
export interface HelmStation extends FactsOf<typeof HELM_STATION> {
  readonly name: string;
  readonly origin: Origin;
}

/** The helms of a vessel, with the text that asks for their fittings. */
export interface Helm extends FactsOf<typeof HELM> {
  readonly origin: Origin;
  readonly stations?: readonly HelmStation[];
}
