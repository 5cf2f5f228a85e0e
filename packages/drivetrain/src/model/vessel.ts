import type { Dimension, Origin, Value } from '@tailshaft/mechanics';
import type {
  Certificate,
  Criteria,
  Duty,
  Helm,
  Hull,
  Mode,
  NewValue,
  PracticeFacts,
  Project,
  REASONS,
  Signatures,
  Study,
} from '@tailshaft/vocabulary';
import type { Engine, Motor } from './engine.js';
import type { Fact, Quantity, Side } from './fact.js';
import type { Gear, Transfer } from './gear.js';
import type { Part } from './part.js';
import type { Coupling, Propeller, Shaft } from './shafting.js';
import type { Trial } from './trial.js';

export type {
  Certificate,
  Criteria,
  Duty,
  Helm,
  HelmStation,
  Hull,
  Matter,
  Mode,
  PracticeFacts,
  Project,
  Ranking,
  RankOrder,
  ShaftCriterion,
  Signature,
  Signatures,
  Study,
  Variation,
  Weight,
} from '@tailshaft/vocabulary';

/** What drives to one propeller: one engine or motor, or several, used by turns or together as its modes say. */
export interface ShaftLine {
  readonly name: string;
  /** `proposed.Port`. */
  readonly path: string;
  readonly arrangement: string;
  readonly origin: Origin;
  readonly nameOrigin: Origin;
  readonly side?: Fact<Side>;
  /** Name of the line it mirrors. */
  readonly mirrors?: string;
  readonly engine?: Engine;
  readonly motor?: Motor;
  readonly gear?: Gear;
  readonly couplings: readonly Coupling[];
  readonly transfers: readonly Transfer[];
  readonly shafts: readonly Shaft[];
  readonly propeller?: Propeller;
  /** All parts in the order of the power flow. */
  readonly chain: readonly Part[];
  /** Its ways of running, where it has several movers and says how they are used; the first is the one that is shown. */
  readonly modes?: readonly Mode[];
  /** The one way of running that this line is looked at in. */
  readonly mode?: Mode;
  /** Movers that drive beside the engine in that mode. */
  readonly joined?: readonly (Engine | Motor)[];
  /** The same line as found: in the arrangement that the revisions begin with, however many there are. */
  readonly before?: ShaftLine;
}

export interface Arrangement {
  readonly name: string;
  readonly title?: string;
  readonly path: string;
  readonly origin: Origin;
  readonly nameOrigin: Origin;
  readonly revises?: string;
  /** The arrangement that the revisions begin with, however many there are. */
  readonly before?: Arrangement;
  readonly lines: readonly ShaftLine[];
  /** `reason "..."` given for one-sided, inward-turning or same-hand choices. */
  readonly reasons: readonly Reason[];
}

export interface Reason {
  readonly about: (typeof REASONS)[number];
  readonly text: string;
  readonly origin: Origin;
}

/** `assume gear efficiency 97 % because "..."`. */
export interface Assumption {
  readonly about: string;
  readonly origin: Origin;
  readonly quantity?: Quantity;
  readonly because?: string;
}

/** Requirement as written, with the parts the checks use. */
export interface Requirement {
  readonly origin: Origin;
  readonly written: string;
  /** What it is about: `speed`, `trolling speed`, `propellers turn`, ... */
  readonly about: string;
  readonly bound?: 'at least' | 'at most' | 'is';
  readonly quantity?: Quantity;
  /** Its bound has no unit, or none that can be relied on; the rules on units tell it. */
  readonly unitless?: true;
  readonly word?: string;
  /** `at idle ahead`, `at full power`. */
  readonly condition?: string;
  /** `in mode harbour`: the way of running that it is for. */
  readonly mode?: string;
  readonly note?: string;
}

export interface Acceptance {
  readonly origin: Origin;
  readonly rule: string;
  readonly on: string;
  /** False where `on` is left out, and the whole vessel is taken. */
  readonly placed?: boolean;
  readonly because?: string;
  readonly by?: string;
  readonly dated?: string;
  readonly until?: string;
  /** Dates that are written and not known, `until unknown`: it may be over or not yet given, so it covers nothing. */
  readonly open?: readonly ('dated' | 'until')[];
}

/** What an office asks of all its vessels, with its name. */
export interface Practice {
  readonly name: string;
  readonly title?: string;
  readonly origin: Origin;
  readonly nameOrigin: Origin;
  readonly facts: PracticeFacts;
}

export interface Revision extends Signatures {
  readonly origin: Origin;
  readonly name: string;
  readonly dated?: string;
  readonly text?: string;
}

/** A quantity whose unit cannot be relied on, as the reader of the text met it. */
export interface UnitConcern {
  readonly kind: 'no unit' | 'ambiguous unit' | 'wrong dimension' | 'unknown unit';
  readonly origin: Origin;
  readonly property: string;
  readonly dimension: Dimension;
  readonly written: string;
  readonly number: number;
  readonly unit?: string;
  /** Symbol of the unit that a misspelt one most likely means. */
  readonly meant?: string;
  /** The number in other units, with what each would mean: `300 PS`, `220.6 kW`. */
  readonly choices: readonly UnitChoice[];
}

export interface UnitChoice {
  readonly value: NewValue;
  readonly means: string;
  readonly si?: number;
}

/** Something the catalogue of a part declares more than once or against itself is reported by rules on entries. */
export interface Vessel {
  readonly name: string;
  readonly title?: string;
  readonly doc?: string;
  readonly origin: Origin;
  readonly nameOrigin: Origin;
  readonly duty?: Duty;
  readonly hull?: Hull;
  readonly certificate?: Certificate;
  readonly helm?: Helm;
  readonly project?: Project;
  /** The practice that the spec imports: it judges by its criteria wherever the vessel chooses none. */
  readonly practice?: Practice;
  readonly arrangements: readonly Arrangement[];
  readonly criteria?: Criteria;
  /** Criteria that the vessel writes as an open question where its practice sets them: the practice judges. */
  readonly leftOpen?: Partial<Criteria>;
  readonly assumptions: readonly Assumption[];
  readonly requirements: readonly Requirement[];
  readonly acceptances: readonly Acceptance[];
  readonly revisions: readonly Revision[];
  /** Trial sheets, in the order of the text; none where the spec has none. */
  readonly trials?: readonly Trial[];
  /** Studies, in the order of the text; none where the spec has none. */
  readonly studies?: readonly Study[];
  readonly unitConcerns: readonly UnitConcern[];
  /** Every quantity as written in the vessel's own text, for checks on units. */
  readonly quantities: readonly {
    readonly property: string;
    readonly value: Value;
    readonly origin: Origin;
  }[];
  /** Every `unknown`, for the sheet. */
  readonly openQuestions: readonly { readonly what: string; readonly origin: Origin }[];
}
