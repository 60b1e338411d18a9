package org.leafward.care.core.rule;

import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.DayLength;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.plants.SpeciesId;

/**
 * A local event of the season, with days added.
 *
 * @param marker which event, at which probability, for plants that have none of their own
 * @param bySpecies the same event at temperatures that differ by species; empty when it
 * is the same for all
 * @param days days after it
 * @param nextSeason whether the event of the following season is meant
 * @param bounds days of the year that the date keeps to
 * @param floor another event that the date comes no sooner than, where that has a date;
 * null for none
 */
public record MarkerAnchor(MarkerKey marker, Map<SpeciesId, MarkerKey> bySpecies, Days days, boolean nextSeason,
		Bounds bounds, @Nullable MarkerAnchor floor) implements Anchor {

	public MarkerAnchor {
		bySpecies = Map.copyOf(bySpecies);
	}

	/**
	 * An anchor that is the same for all species.
	 * @param marker which event, at which probability
	 * @param days days after it
	 * @param nextSeason whether the event of the following season is meant
	 * @param bounds days of the year that the date keeps to
	 * @param floor another event that the date comes no sooner than; null for none
	 */
	public MarkerAnchor(MarkerKey marker, Days days, boolean nextSeason, Bounds bounds, @Nullable MarkerAnchor floor) {
		this(marker, Map.of(), days, nextSeason, bounds, floor);
	}

	/**
	 * An anchor at temperatures that differ by species.
	 * @param marker which event, at which probability, at the lowest of the temperatures
	 * @param thresholds the temperature for each species
	 * @param days days after it
	 * @param nextSeason whether the event of the following season is meant
	 * @param bounds days of the year that the date keeps to
	 * @param floor another event that the date comes no sooner than; null for none
	 * @return the anchor
	 */
	public static MarkerAnchor at(MarkerKey marker, Map<SpeciesId, TemperatureThreshold> thresholds, Days days,
			boolean nextSeason, Bounds bounds, @Nullable MarkerAnchor floor) {
		Map<SpeciesId, MarkerKey> bySpecies = thresholds.entrySet()
			.stream()
			.collect(Collectors.toMap(Map.Entry::getKey, (one) -> new MarkerKey(marker.kind(), one.getValue(),
					marker.probability(), marker.goal(), marker.daylight())));
		return new MarkerAnchor(marker, bySpecies, days, nextSeason, bounds, floor);
	}

	/**
	 * An anchor on one event alone.
	 * @param marker which event, at which probability
	 * @param days days after it
	 * @param nextSeason whether the event of the following season is meant
	 * @param bounds days of the year that the date keeps to
	 */
	public MarkerAnchor(MarkerKey marker, Days days, boolean nextSeason, Bounds bounds) {
		this(marker, Map.of(), days, nextSeason, bounds, null);
	}

	/**
	 * The event for a plant.
	 * @param species the species, or null for a site as a whole
	 * @return which event, at which probability
	 */
	public MarkerKey of(@Nullable SpeciesId species) {
		return (species != null) ? this.bySpecies.getOrDefault(species, this.marker) : this.marker;
	}

	/**
	 * Whether the date at a site is the same for all plants.
	 * @return false when something about it differs by species
	 */
	public boolean sameForAll() {
		return this.bySpecies.isEmpty() && this.days.bySpecies().isEmpty()
				&& (this.floor == null || this.floor.sameForAll());
	}

	@Override
	public String words() {
		return wordsAlone()
				+ ((this.floor != null) ? ", but no sooner than " + this.floor.words().replaceFirst("^on ", "") : "");
	}

	/**
	 * The anchor in words, without the event that it waits for.
	 * @return such as "14 days after the middle date of the last spring freeze at 32 °F"
	 */
	public String wordsAlone() {
		return this.days.words(date() + event() + (this.nextSeason ? " of the following season" : ""));
	}

	/** Which of the dates that the event has had, in words a gardener would use. */
	private String date() {
		int probability = this.marker.probability();
		if (this.marker.kind().needsDaylight()) {
			return "";
		}
		if (probability == 50) {
			return "the middle date of ";
		}
		boolean spring = this.marker.kind().spring();
		return (spring == (probability < 50)) ? "the late date (%s) of ".formatted(share(probability, spring))
				: "the early date (%s) of ".formatted(share(probability, spring));
	}

	private static String share(int probability, boolean spring) {
		return "in %d of 100 seasons it comes on or %s it".formatted(probability, spring ? "after" : "before");
	}

	private String event() {
		TemperatureThreshold threshold = this.marker.threshold();
		return event((threshold == null) ? "the threshold"
				: this.bySpecies.isEmpty() ? threshold.words() : "what the species needs");
	}

	/**
	 * The event as it is for a species.
	 * @param species the species
	 * @return for example "the soil warming to 60 °F (15.6 °C)"
	 */
	public String eventFor(SpeciesId species) {
		TemperatureThreshold threshold = of(species).threshold();
		return event((threshold == null) ? "the threshold" : threshold.words());
	}

	private String event(String degrees) {
		return switch (this.marker.kind()) {
			case LAST_SPRING_FREEZE -> "the last spring freeze at " + degrees;
			case FIRST_FALL_FREEZE -> "the first fall freeze at " + degrees;
			case NIGHTS_WARM_TO -> "nights warming to " + degrees;
			case NIGHTS_COOL_TO -> "nights cooling to " + degrees;
			case GROUND_FREEZE -> "the ground freezing";
			case GROUND_THAW -> "the ground thawing";
			case DEGREE_DAYS -> "degree-days above " + degrees + goal();
			case SOIL_WARMS_TO -> "the soil warming to " + degrees;
			case SOIL_COOLS_TO -> "the soil cooling to " + degrees;
			case DAYS_COOL_TO -> "days cooling to " + degrees;
			case UPPER_SOIL_WARMS_TO -> "the upper soil warming to " + degrees;
			case UPPER_SOIL_COOLS_TO -> "the upper soil cooling to " + degrees;
			case DE_ICING_END -> "the end of de-icing";
			case DAYLIGHT_LENGTHENS_TO -> "the day lengthening to " + daylight();
			case DAYLIGHT_SHORTENS_TO -> "the day shortening to " + daylight();
		};
	}

	private String daylight() {
		DayLength daylight = this.marker.daylight();
		return (daylight != null) ? daylight.words() : "its length";
	}

	private String goal() {
		HeatGoal goal = this.marker.goal();
		return (goal != null) ? " reaching " + goal.words() : "";
	}

}
