package org.leafward.lookalikes.core;

import java.util.List;

/**
 * A cause and what speaks for and against it.
 *
 * @param cause the cause
 * @param share of all the causes that the key knows, 0 to 1; never shown as a certainty
 * @param how how sure that is, in words
 * @param reasonsFor what speaks for it, the strongest first
 * @param against what speaks against it, the strongest first
 * @param settle what would settle it, sentences; the tests that part it from its
 * neighbours first
 */
public record Finding(Cause cause, double share, Sureness how, List<Reason> reasonsFor, List<Reason> against,
		List<String> settle) {

	public Finding {
		reasonsFor = List.copyOf(reasonsFor);
		against = List.copyOf(against);
		settle = List.copyOf(settle);
	}

}
