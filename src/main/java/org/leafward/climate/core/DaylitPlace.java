package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.leafward.climate.DayLength;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.SeasonMarker;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.core.light.Daylight;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Season;

/**
 * Adds the lengths of the day, which need no station, to the markers that stations give.
 */
public final class DaylitPlace implements PlaceMarkers {

	private final GeoPoint point;

	private final PlaceMarkers weather;

	/**
	 * Makes the markers of a place.
	 * @param point the place
	 * @param weather its markers from stations
	 */
	public DaylitPlace(GeoPoint point, PlaceMarkers weather) {
		this.point = point;
		this.weather = weather;
	}

	@Override
	public Optional<SeasonMarker> on(MarkerKey key, int season) {
		return key.kind().needsDaylight() ? daylight(key, season) : this.weather.on(key, season);
	}

	@Override
	public String whyMissing(MarkerKey key) {
		if (!key.kind().needsDaylight()) {
			return this.weather.whyMissing(key);
		}
		return "%s has no date here: at this latitude the day is always longer, or always shorter."
			.formatted(MarkerWords.title(key));
	}

	@Override
	public OptionalDouble yearsWithFreeze(TemperatureThreshold threshold) {
		return this.weather.yearsWithFreeze(threshold);
	}

	private Optional<SeasonMarker> daylight(MarkerKey key, int year) {
		DayLength length = Objects.requireNonNull(key.daylight());
		Season season = new Season(year, this.point.hemisphere());
		return ((key.kind() == MarkerKind.DAYLIGHT_LENGTHENS_TO)
				? Daylight.lengthensTo(this.point, season, length.minutes())
				: Daylight.shortensTo(this.point, season, length.minutes()))
			.map((date) -> new SeasonMarker(key, year, date, date, date, () -> explanation(key, date)));
	}

	private Explanation explanation(MarkerKey key, LocalDate date) {
		int minutes = (int) Math.round(Daylight.minutes(this.point, date));
		return Explanation.of(MarkerWords.title(key), DayWords.of(date))
			.withDetail(
					"%s The sun alone decides, so it is the same in every year but for a day; mountains and houses make the day shorter."
						.formatted(MarkerWords.whatItIs(key.kind())))
			.withSource("Upper edge of the sun over a level horizon, with refraction: centre at −0.833°")
			.withSteps(List.of(Explanation.of("Daylight on that day", new DayLength(minutes).words())));
	}

}
