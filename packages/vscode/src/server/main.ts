/**
 * One file for both hosts, since nearly all of it is the same: which of the two ways to talk and to read files is used
 * shows when it runs. The other one is never evaluated.
 */
if (typeof process === 'object' && typeof process.versions?.node === 'string') void import('./node.js');
else void import('./worker.js');
