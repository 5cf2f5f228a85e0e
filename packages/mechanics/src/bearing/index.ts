export * from './clearance.js';
export * from './overhang.js';
export * from './rollingLife.js';
export * from './spanGuide.js';
export * from './steppedSpan.js';
export * from './sternBearing.js';
export * from './thrustCollar.js';
export * from './whirlingSpan.js';
