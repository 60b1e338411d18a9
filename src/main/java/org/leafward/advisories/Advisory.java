package org.leafward.advisories;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.language.Language;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.Species;

/**
 * An advisory as its latest message says it. Never changes; a later message gives another
 * one.
 *
 * @param id identifier, the same for all messages
 * @param message identifier of the latest message
 * @param number of the message, from 1 for the first
 * @param state where it stands at the moment at which it was read
 * @param condition code of the watched condition that it goes back to; null for none
 * @param event what it is, in a few words, such as "Late freeze" and "Helada tardía"
 * @param facts how bad, how soon, how sure
 * @param area where
 * @param plants for whose plants
 * @param works codes of the kinds of work that it asks for, such as {@code water}
 * @param first when the first message was sent
 * @param sent when the latest message was sent, whole seconds
 * @param onset when what it speaks of begins
 * @param expires when it ends; of one that was called off, when that message ends
 * @param zone time zone of the area
 * @param english the words
 * @param spanish the words in Spanish; null for none
 * @param reason what changed or why it was called off, in English; null for none
 */
public record Advisory(AdvisoryId id, UUID message, int number, AdvisoryState state, @Nullable String condition,
		Bilingual event, AlertFacts facts, Area area, PlantChoice plants, Set<String> works, Instant first,
		Instant sent, Instant onset, Instant expires, ZoneId zone, AdvisoryText english, @Nullable AdvisoryText spanish,
		@Nullable String reason) {

	public Advisory {
		works = Set.copyOf(works);
	}

	/**
	 * One whose latest message gives no reason.
	 * @param id identifier
	 * @param message identifier of the latest message
	 * @param number of the message
	 * @param state where it stands
	 * @param condition code of the watched condition
	 * @param event what it is
	 * @param facts how bad, how soon, how sure
	 * @param area where
	 * @param plants for whose plants
	 * @param works kinds of work that it asks for
	 * @param first when the first message was sent
	 * @param sent when the latest message was sent
	 * @param onset when it begins
	 * @param expires when it ends
	 * @param zone time zone of the area
	 * @param english the words
	 * @param spanish the words in Spanish
	 */
	public Advisory(AdvisoryId id, UUID message, int number, AdvisoryState state, @Nullable String condition,
			Bilingual event, AlertFacts facts, Area area, PlantChoice plants, Set<String> works, Instant first,
			Instant sent, Instant onset, Instant expires, ZoneId zone, AdvisoryText english,
			@Nullable AdvisoryText spanish) {
		this(id, message, number, state, condition, event, facts, area, plants, works, first, sent, onset, expires,
				zone, english, spanish, null);
	}

	/**
	 * The words for a reader.
	 * @param language what they read
	 * @return English where there is nothing else
	 */
	public AdvisoryText text(Language language) {
		return (language == Language.SPANISH) ? Optional.ofNullable(this.spanish).orElse(this.english) : this.english;
	}

	/**
	 * Whether a site is concerned.
	 * @param county code of its county
	 * @param point where it is
	 * @param grown what grows there
	 * @return true when it lies in the area and one of the plants is meant
	 */
	public boolean concerns(String county, GeoPoint point, Collection<Species> grown) {
		return this.area.holds(county, point)
				&& (this.plants.everything() || grown.stream().anyMatch(this.plants::concerns));
	}

	/**
	 * Address of its page.
	 * @return from the root
	 */
	public String path() {
		return "/advisories/" + this.id;
	}

}
