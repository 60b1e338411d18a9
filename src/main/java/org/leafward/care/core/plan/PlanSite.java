package org.leafward.care.core.plan;

import org.leafward.care.core.rule.SiteFacts;
import org.leafward.climate.PlaceMarkers;
import org.leafward.measure.Hemisphere;
import org.leafward.register.SiteId;

/**
 * The site that is planned for.
 *
 * @param id identifier
 * @param hemisphere the half of the earth it lies on
 * @param facts what rules may ask about it
 * @param markers its season markers
 * @param observed what people logged there
 * @param weather what its weather is like
 * @param figures what is worked out for its plantings
 */
public record PlanSite(SiteId id, Hemisphere hemisphere, SiteFacts facts, PlaceMarkers markers, Observed observed,
		WeatherAnswers weather, Figures figures) {

	/**
	 * A site for whose plantings nothing is worked out.
	 * @param id identifier
	 * @param hemisphere the half of the earth it lies on
	 * @param facts what rules may ask about it
	 * @param markers its season markers
	 * @param observed what people logged there
	 * @param weather what its weather is like
	 */
	public PlanSite(SiteId id, Hemisphere hemisphere, SiteFacts facts, PlaceMarkers markers, Observed observed,
			WeatherAnswers weather) {
		this(id, hemisphere, facts, markers, observed, weather, Figures.NONE);
	}

	/**
	 * A site where nothing was logged and the weather is not known.
	 * @param id identifier
	 * @param hemisphere the half of the earth it lies on
	 * @param facts what rules may ask about it
	 * @param markers its season markers
	 */
	public PlanSite(SiteId id, Hemisphere hemisphere, SiteFacts facts, PlaceMarkers markers) {
		this(id, hemisphere, facts, markers, Observed.NOTHING, WeatherAnswers.UNKNOWN, Figures.NONE);
	}

}
