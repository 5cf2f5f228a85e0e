import type {
  Certificate,
  CouplingFacts,
  Criteria,
  Duty,
  EngineFacts,
  FieldsOf,
  GearFacts,
  Hull,
  MotorFacts,
  Project,
  PropellerFacts,
  ShaftFacts,
  ShaftMaterial,
  Signatures,
  TransferFacts,
  Trial,
  Vocabularies,
} from '@tailshaft/vocabulary';

/*
 * Each field of a fact interface has its row. `rowsFor` refuses a row without its field, or of another type, and
 * `blocksFor` asks the same of the blocks inside; here the other way round is asked of the blocks that stand by themselves.
 */

/** Fields that no row of the block fills: what it is called, where it stands, and what its header says. */
type Head = 'origin' | 'name' | 'title' | 'class' | 'form' | 'of' | 'dated';

type Missing<Facts, V> = Exclude<keyof Facts, FieldsOf<V> | Head>;
type None<T extends never> = T;

export type EveryFieldHasItsRow = [
  None<Missing<EngineFacts, Vocabularies['places']['engine']>>,
  None<Missing<MotorFacts, Vocabularies['places']['motor']>>,
  None<Missing<GearFacts, Vocabularies['places']['gear']>>,
  None<Missing<TransferFacts, Vocabularies['places']['transfer']>>,
  None<Missing<CouplingFacts, Vocabularies['places']['coupling']>>,
  None<Missing<ShaftFacts, Vocabularies['places']['shaft']>>,
  None<Missing<PropellerFacts, Vocabularies['places']['propeller']>>,
  None<Missing<ShaftMaterial, Vocabularies['entries']['shaft material']>>,
  None<Missing<Duty, Vocabularies['settings']['duty']>>,
  None<Missing<Hull, Vocabularies['settings']['hull']>>,
  None<Missing<Criteria, Vocabularies['settings']['criteria']>>,
  None<Missing<Certificate, Vocabularies['settings']['certificate']>>,
  None<Missing<Trial, Vocabularies['settings']['trial']>>,
  None<Missing<Project, Vocabularies['settings']['project']>>,
  None<Missing<Signatures, Vocabularies['settings']['revision']>>,
];
