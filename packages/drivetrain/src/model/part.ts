export { type Change, type EntryNote, home, nameOf, type Part, type Role } from '@tailshaft/vocabulary';
