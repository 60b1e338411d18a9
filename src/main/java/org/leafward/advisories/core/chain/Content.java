package org.leafward.advisories.core.chain;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.AdvisoryText;
import org.leafward.advisories.AlertFacts;
import org.leafward.advisories.Area;
import org.leafward.advisories.Bilingual;
import org.leafward.advisories.PlantChoice;

/**
 * What a message says.
 *
 * @param condition code of the watched condition that it goes back to; null for none
 * @param event what it is, in a few words
 * @param facts how bad, how soon, how sure
 * @param area where
 * @param plants for whose plants
 * @param works codes of the kinds of work that it asks for
 * @param onset when it begins
 * @param expires when it ends
 * @param zone time zone of the area
 * @param english the words
 * @param spanish the words in Spanish; null for none
 */
public record Content(@Nullable String condition, Bilingual event, AlertFacts facts, Area area, PlantChoice plants,
		Set<String> works, Instant onset, Instant expires, ZoneId zone, AdvisoryText english,
		@Nullable AdvisoryText spanish) {

	public Content {
		works = Set.copyOf(works);
	}

}
