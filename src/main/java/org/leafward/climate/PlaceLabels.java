package org.leafward.climate;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import org.leafward.climate.core.season.PlaceFigures;
import org.leafward.measure.GeoPoint;
import org.springframework.stereotype.Service;

/** The hardiness, the day and the light of a place. */
@Service
public class PlaceLabels {

	private final SeasonSoFar seasons;

	PlaceLabels(SeasonSoFar seasons) {
		this.seasons = seasons;
	}

	/**
	 * The figures of a place. Sun and clear sky need no station; the rest comes from the
	 * nearest one whose record covers ten seasons.
	 * @param place the place with its height
	 * @param today the day at the place
	 * @param zone whose clock
	 * @return the figures; what isn't known is said in words
	 */
	public PlaceFacts of(GeoPoint place, LocalDate today, ZoneId zone) {
		return OneVersion.of(() -> {
			Optional<SeasonSoFar.Speaker> found = this.seasons.speaker(place);
			return PlaceFigures.of(place, today, zone, found.map(SeasonSoFar.Speaker::near).orElse(null),
					found.map(SeasonSoFar.Speaker::normals).orElse(null));
		});
	}

}
