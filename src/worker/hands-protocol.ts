/** The channel on which the windows of a tablet tell its workers of each touch. */
export const handsChannel = 'tallywright hands';
