/** Blocks in which nothing need be written: what is left out there is not chosen, or not filled in. */
export const CHOICES: Readonly<Record<string, string>> = {
  practice: 'what a practice does not set is as usual, and every verdict says which criterion judged',
  study: 'what a study shows is how it is told',
  project: 'what a project is filed under is read by no check',
  'open matter': 'who does what until when is read by no check',
  revision: 'who signed for a revision is read by no check',
  signature: 'who signed for a revision is read by no check',
  criteria: 'a criterion that nobody chooses is the usual one, and the verdict says which judged',
};

/** What is written otherwise settles these whatever they say, and they are asked for where nothing does. */
export const SETTLED_OTHERWISE: Readonly<Record<string, string>> = {
  'clutch|output':
    'the train of the clutch gives its sense; written as unknown it says that the train is doubted',
};
