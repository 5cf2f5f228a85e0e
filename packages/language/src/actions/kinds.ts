/** All slips of the pen that have one correction only, corrected at once. */
export const FIX_ALL = 'source.fixAll.tailshaft';

/** Kinds of what is offered, for the client's menus. */
export const CODE_ACTION_KINDS = [
  'quickfix',
  'refactor',
  'refactor.rewrite',
  'refactor.extract',
  'refactor.inline',
  FIX_ALL,
];
