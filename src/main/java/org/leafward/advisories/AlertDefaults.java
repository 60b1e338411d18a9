package org.leafward.advisories;

import java.util.Set;

/**
 * What an advisory of a condition begins with, in the words of the Common Alerting
 * Protocol 1.2; the specialist may change them.
 *
 * @param category for example {@code Met}
 * @param urgency for example {@code Expected}
 * @param severity for example {@code Moderate}
 * @param certainty for example {@code Likely}
 * @param responses for example {@code Prepare}
 */
public record AlertDefaults(String category, String urgency, String severity, String certainty, Set<String> responses) {

	public AlertDefaults {
		responses = Set.copyOf(responses);
	}

}
