/** Loaded before the program: says at the end, on descriptor 3, the most memory the process held in kilobytes and its processor time. */
const { writeSync } = require('node:fs');

process.on('exit', () => {
  const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
  writeSync(3, JSON.stringify({ maxRSS, processorMs: (userCPUTime + systemCPUTime) / 1000 }));
});
