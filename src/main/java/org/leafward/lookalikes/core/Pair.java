package org.leafward.lookalikes.core;

/**
 * Two causes that the answers alone often can't part.
 *
 * @param one a cause
 * @param other another cause
 * @param split the observation or test that parts them, a sentence or two
 * @param test whether that takes a test rather than a look
 */
public record Pair(String one, String other, String split, boolean test) {

	public boolean of(String first, String second) {
		return (this.one.equals(first) && this.other.equals(second))
				|| (this.one.equals(second) && this.other.equals(first));
	}

	public boolean has(String cause) {
		return this.one.equals(cause) || this.other.equals(cause);
	}

}
