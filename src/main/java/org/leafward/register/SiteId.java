package org.leafward.register;

import java.util.UUID;

/**
 * Identifier of a site.
 *
 * @param value the identifier
 */
public record SiteId(UUID value) {

	@Override
	public String toString() {
		return this.value.toString();
	}

}
