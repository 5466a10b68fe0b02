/**
 * Cards for the wall: scales of a wash side by side, and what an instrument shows wrong by heat.
 */
package washbook.runner.card;
