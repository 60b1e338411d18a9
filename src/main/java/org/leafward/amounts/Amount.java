package org.leafward.amounts;

import org.leafward.measure.Explanation;

/**
 * A computed amount, for the words of a task.
 *
 * @param words one or two sentences of at most 300 characters, in metric units with US
 * customary ones in brackets, for example "About 140 litres (37 gal) in two rounds"
 * @param explanation how it came about, with the source of each formula
 */
public record Amount(String words, Explanation explanation) {
}
