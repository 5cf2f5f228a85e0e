import type {
  AnyBlock,
  Bearing,
  BlockRow,
  Certificate,
  Clutch,
  CouplingFacts,
  Criteria,
  Damageable,
  Duty,
  EngineFacts,
  FieldsOf,
  GearFacts,
  Helm,
  Hull,
  MotorFacts,
  PracticeFacts,
  Project,
  PropellerFacts,
  RatioVariant,
  Row,
  ShaftFacts,
  ShaftMaterial,
  Signatures,
  Study,
  TransferFacts,
  Trial,
  Vocabularies,
  Vocabulary,
} from '@tailshaft/vocabulary';

/*
 * The fields of a property follow from its row. What an interface says itself, blocks and what heads them, is held to the
 * vocabulary here: a field that nothing fills, and a block without a field, do not compile.
 */

/** Fields that no row of the block fills: what it is called, where it stands, and what its header says. */
type Head =
  | 'origin'
  | 'name'
  | 'title'
  | 'class'
  | 'form'
  | 'of'
  | 'dated'
  | 'nominal'
  | 'nominalFact'
  | 'studied';

type Unfilled<Facts, V> = Exclude<keyof Facts, FieldsOf<V> | Head>;
type BlockFields<V> = V extends Vocabulary<Row, infer B extends BlockRow> ? B['field'] : never;
type Homeless<Facts, V> = Exclude<BlockFields<V>, keyof Facts>;
type Fits<Facts, V> = Unfilled<Facts, V> | Homeless<Facts, V>;
type None<T extends never> = T;

type BlockIn<V, F extends string> =
  V extends Vocabulary<Row, infer B extends AnyBlock> ? Extract<B, { readonly field: F }>['block'] : never;

type Entries = Vocabularies['entries'];
type Places = Vocabularies['places'];
type Settings = Vocabularies['settings'];

export type EveryFieldIsFilled = [
  None<Fits<EngineFacts & Damageable, Places['engine']>>,
  None<Fits<MotorFacts & Damageable, Places['motor']>>,
  None<Fits<GearFacts & Damageable, Places['gear']>>,
  None<Fits<RatioVariant, BlockIn<Entries['gear'], 'ratios'>>>,
  None<Fits<Clutch, BlockIn<Entries['gear'], 'clutches'>>>,
  None<Fits<TransferFacts & Damageable, Places['transfer']>>,
  None<Fits<CouplingFacts & Damageable, Places['coupling']>>,
  None<Fits<ShaftFacts, Places['shaft']>>,
  None<Fits<Bearing, BlockIn<Places['shaft'], 'bearings'>>>,
  None<Fits<PropellerFacts & Damageable, Places['propeller']>>,
  None<Fits<ShaftMaterial, Entries['shaft material']>>,
  None<Fits<PracticeFacts, Entries['practice']>>,
  None<Fits<Duty, Settings['duty']>>,
  None<Fits<Hull, Settings['hull']>>,
  None<Fits<Criteria, Settings['criteria']>>,
  None<Fits<Certificate, Settings['certificate']>>,
  None<Fits<Helm, Settings['helm']>>,
  None<Fits<Trial, Settings['trial']>>,
  None<Fits<Project, Settings['project']>>,
  None<Fits<Signatures, Settings['revision']>>,
  None<Fits<Study, Settings['study']>>,
];
