package org.leafward.advisories;

/**
 * The text of an advisory in one language, in the parts that readers of weather alerts
 * know.
 *
 * @param headline the danger and its time in a line
 * @param what what is coming, with its figures
 * @param where the counties
 * @param when the days
 * @param impacts what it does to plants
 * @param toDo what to do, and what to leave
 */
public record DraftText(String headline, String what, String where, String when, String impacts, String toDo) {
}
