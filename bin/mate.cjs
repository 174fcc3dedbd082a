/** What a second thread begins with: it does what the first one hands it. */
'use strict';
const { join } = require('node:path');
const { recallTexts, workAsMate } = require('./program.cjs');

recallTexts(join(__dirname, 'shared.json'));
void workAsMate();
