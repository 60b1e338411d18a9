package org.leafward.care;

import java.util.UUID;
import org.leafward.measure.BadInput;

/**
 * What tasks are added for.
 *
 * @param source the kind of thing, one word such as {@code case}; it stands before the
 * key where rules stand in other tasks, and never changes
 * @param id which one
 * @param link page that says why, from the root of the server, at most 200 characters
 */
public record AddedFor(String source, UUID id, String link) {

	/**
	 * Checks source and link.
	 * @throws BadInput when one can't be used
	 */
	public AddedFor {
		if (!source.matches("[a-z]{1,20}")) {
			throw new BadInput("'%s' is no source".formatted(source), "source", "write one word in lower case");
		}
		if (!link.matches("/[a-z][a-z0-9/-]{0,198}")) {
			throw new BadInput("'%s' is no page of this server".formatted(link), "link", "begin it with a slash");
		}
	}

	/**
	 * What stands in place of a rule. Rules have a slash and no colon, so the two never
	 * meet.
	 * @param key the task's key
	 * @return for example {@code case:water-deeply}
	 */
	public String rule(String key) {
		return this.source + ":" + key;
	}

}
