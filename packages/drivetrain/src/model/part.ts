export {
  type Change,
  type EntryNote,
  home,
  type KeptFrom,
  nameOf,
  type Part,
  type Role,
  statementOf,
} from '@tailshaft/vocabulary';
