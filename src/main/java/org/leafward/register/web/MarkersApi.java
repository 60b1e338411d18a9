package org.leafward.register.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Explanation;
import org.leafward.register.OpenSites;
import org.leafward.register.Site;
import org.leafward.register.SiteMarkers;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Season markers of a site by API. */
@RestController
@Tag(name = "Season markers", description = "Dates that the weather records give for a site")
class MarkersApi {

	private final OpenSites sites;

	private final SiteMarkers markers;

	MarkersApi(OpenSites sites, SiteMarkers markers) {
		this.sites = sites;
		this.markers = markers;
	}

	/**
	 * One marker.
	 *
	 * @param marker name of the event
	 * @param threshold the temperature, where the event has one
	 * @param daylight the length of the day, where the event is one
	 * @param probability percent; the chance of cold on the wrong side of the date
	 * @param date the date
	 * @param earliest one year in ten is earlier
	 * @param latest one year in ten is later
	 * @param missing why there is no date
	 * @param explanation how the date came about
	 */
	record MarkerAnswer(String marker, @Nullable String threshold, @Nullable String daylight, int probability,
			@Nullable LocalDate date, @Nullable LocalDate earliest, @Nullable LocalDate latest,
			@Nullable String missing, @Nullable Explanation explanation) {

		static MarkerAnswer of(SiteMarkers.Line line) {
			var marker = line.marker();
			var threshold = line.key().threshold();
			var daylight = line.key().daylight();
			return new MarkerAnswer(line.key().kind().code(), (threshold != null) ? threshold.code() : null,
					(daylight != null) ? daylight.code() : null, line.key().probability(),
					(marker != null) ? marker.date() : null, (marker != null) ? marker.earliest() : null,
					(marker != null) ? marker.latest() : null, line.missing(),
					(marker != null) ? marker.explanation() : null);
		}

	}

	@Operation(summary = "The markers of a season, each with its explanation")
	@GetMapping("/api/v1/sites/{id}/markers")
	List<MarkerAnswer> markers(@PathVariable UUID id, @RequestParam int season) {
		if (season < 1700 || season > 2199) {
			throw new BadInput("season %d is outside 1700 to 2199".formatted(season), "season",
					"give the year of its spring, for example 2027");
		}
		Site site = this.sites.own(id);
		return this.markers.of(site, season).stream().map(MarkerAnswer::of).toList();
	}

}
