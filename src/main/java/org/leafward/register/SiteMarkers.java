package org.leafward.register;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.DayLength;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.SeasonMarker;
import org.leafward.climate.TemperatureThreshold;
import org.springframework.stereotype.Service;

/** The season markers of a site that readers ask for; rules may use others. */
@Service
public class SiteMarkers {

	private static final List<MarkerKey> USUAL = List.of(key(MarkerKind.GROUND_THAW, null, 50),
			key(MarkerKind.DE_ICING_END, null, 50), key(MarkerKind.UPPER_SOIL_WARMS_TO, "50F", 50),
			key(MarkerKind.LAST_SPRING_FREEZE, "28F", 50), key(MarkerKind.LAST_SPRING_FREEZE, "32F", 90),
			key(MarkerKind.LAST_SPRING_FREEZE, "32F", 50), key(MarkerKind.LAST_SPRING_FREEZE, "32F", 10),
			key(MarkerKind.NIGHTS_WARM_TO, "55F", 50),
			MarkerKey.of(MarkerKind.DAYLIGHT_LENGTHENS_TO, DayLength.parse("14h")),
			MarkerKey.of(MarkerKind.DAYLIGHT_SHORTENS_TO, DayLength.parse("12h")),
			key(MarkerKind.NIGHTS_COOL_TO, "55F", 50), key(MarkerKind.FIRST_FALL_FREEZE, "32F", 10),
			key(MarkerKind.FIRST_FALL_FREEZE, "32F", 50), key(MarkerKind.FIRST_FALL_FREEZE, "32F", 90),
			key(MarkerKind.FIRST_FALL_FREEZE, "28F", 50), key(MarkerKind.GROUND_FREEZE, null, 50));

	private final LocalClimate climate;

	SiteMarkers(LocalClimate climate) {
		this.climate = climate;
	}

	/**
	 * A marker of a site, or the reason why there is none.
	 *
	 * @param key which event
	 * @param marker the marker, when the stations can tell
	 * @param missing the reason otherwise
	 */
	public record Line(MarkerKey key, @Nullable SeasonMarker marker, @Nullable String missing) {
	}

	/**
	 * The usual markers in the order of the year.
	 * @param site the site
	 * @param season year of the season
	 * @return one line for each
	 */
	public List<Line> of(Site site, int season) {
		return this.climate.answer(site.place(), (markers) -> lines(markers, season));
	}

	private static List<Line> lines(PlaceMarkers markers, int season) {
		List<Line> lines = new ArrayList<>();
		for (MarkerKey key : USUAL) {
			Optional<SeasonMarker> marker = markers.on(key, season);
			lines.add(new Line(key, marker.orElse(null), marker.isPresent() ? null : markers.whyMissing(key)));
		}
		return lines;
	}

	private static MarkerKey key(MarkerKind kind, @Nullable String threshold, int probability) {
		return new MarkerKey(kind, (threshold != null) ? TemperatureThreshold.parse(threshold) : null, probability);
	}

}
