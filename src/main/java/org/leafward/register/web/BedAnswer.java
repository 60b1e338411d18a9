package org.leafward.register.web;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.register.Bed;

/**
 * A bed as the API answers it.
 *
 * @param id identifier
 * @param site of which it is a part
 * @param name what its people call it
 * @param sun its own light; null as at the site
 * @param wind its own exposure to wind; null as at the site
 * @param litresPerMinute what its own hose or line gives; null as at the site
 */
record BedAnswer(UUID id, UUID site, String name, @Nullable String sun, @Nullable String wind,
		@Nullable Double litresPerMinute) {

	static BedAnswer of(Bed bed) {
		return new BedAnswer(bed.id().value(), bed.site().value(), bed.name(),
				(bed.sun() != null) ? SiteAnswer.word(bed.sun()) : null,
				(bed.wind() != null) ? SiteAnswer.word(bed.wind()) : null, bed.litresPerMinute());
	}

}
