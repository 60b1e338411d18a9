package org.leafward.advisories;

import java.util.SortedMap;

/**
 * How many messages of an advisory left the house. Implemented by whoever sends them; a
 * server without one shows that nothing is known.
 */
public interface Deliveries {

	/**
	 * What was sent.
	 * @param id the advisory
	 * @return number of messages handed on, by the way in words, such as "mail"
	 */
	SortedMap<String, Long> sent(AdvisoryId id);

}
