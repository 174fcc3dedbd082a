/** The outline of a touring car that nobody built, for drawings of a car. */
import { english } from './english';

/** Its name, what is drawn of it, and the words of drawings. */
export const inventedTourer = {
  name: 'Invented Tourer',
  say: english.messages.say,
  lengthM: 4.4,
  widthM: 1.7,
  wheelbaseM: 3,
  frontAxleBackM: 0.7,
  seats: 5,
  driverSide: 'left',
  steering: 'wheel',
  outline: 'open',
  singleWheel: undefined,
} as const;

/** What is another in a small runabout. */
export const inventedRunabout = {
  steering: 'tiller',
  seats: 2,
  lengthM: 2.3,
  widthM: 1.45,
  wheelbaseM: 1.5,
  frontAxleBackM: 0.4,
} as const;
