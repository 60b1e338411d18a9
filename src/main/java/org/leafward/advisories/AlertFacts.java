package org.leafward.advisories;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What the Common Alerting Protocol says of an alert in its own words.
 *
 * @param category what it is about
 * @param responses what kinds of action are asked for
 * @param urgency when to act
 * @param severity how much harm it can do
 * @param certainty how sure it is
 */
public record AlertFacts(Category category, Set<Response> responses, Urgency urgency, Severity severity,
		Certainty certainty) {

	public AlertFacts {
		responses = Collections.unmodifiableSet(new TreeSet<>(responses));
	}

	/**
	 * What a watched condition begins with.
	 * @param defaults in words of the protocol
	 * @return the same
	 * @throws org.leafward.measure.BadInput when a word is none of the protocol's
	 */
	public static AlertFacts of(AlertDefaults defaults) {
		return new AlertFacts(Category.of(defaults.category()),
				defaults.responses().stream().map(Response::of).collect(Collectors.toSet()),
				Urgency.of(defaults.urgency()), Severity.of(defaults.severity()), Certainty.of(defaults.certainty()));
	}

}
