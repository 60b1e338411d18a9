package org.leafward.advisories;

import java.time.Instant;
import java.util.Set;

/**
 * Questions that came in about plants. Implemented by whoever keeps them; a server
 * without one shows that nothing is known.
 */
public interface Questions {

	/**
	 * How many questions came.
	 * @param counties codes of counties
	 * @param from since when
	 * @param to until when, exclusive
	 * @return 0 or more
	 */
	long asked(Set<String> counties, Instant from, Instant to);

}
