/** Memory of the tables' database with which those of any corpus can be made, in MB: two million tokens of one speaker, all measured, need less. */
export const leastMemoryMb = 128;
