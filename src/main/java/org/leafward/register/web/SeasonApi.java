package org.leafward.register.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.ChillSoFar;
import org.leafward.climate.HeatSoFar;
import org.leafward.climate.PlaceFacts;
import org.leafward.climate.PlaceLabels;
import org.leafward.climate.SeasonSoFar;
import org.leafward.climate.SeasonView;
import org.leafward.climate.WaterView;
import org.leafward.measure.Explanation;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.measure.Season;
import org.leafward.register.OpenSites;
import org.leafward.register.Site;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The season so far and the water of a site by API. */
@RestController
@Tag(name = "Weather of a site", description = "How far the season has come, and the water in a bed")
class SeasonApi {

	private final OpenSites sites;

	private final SeasonSoFar seasons;

	private final PlaceLabels labels;

	private final BedWater beds;

	private final Clock clock;

	SeasonApi(OpenSites sites, SeasonSoFar seasons, PlaceLabels labels, BedWater beds, Clock clock) {
		this.sites = sites;
		this.seasons = seasons;
		this.labels = labels;
		this.beds = beds;
		this.clock = clock;
	}

	/**
	 * A season so far.
	 *
	 * @param season year of the season
	 * @param station identifier of the station that speaks for the site; null when none
	 * does
	 * @param lastObserved last day with both temperatures
	 * @param missing why there is no season, or that the record ends early
	 * @param heat degree-days
	 * @param chill chill of the winter before the season
	 * @param labels hardiness, day and light
	 * @param explanation how the season came about
	 */
	record SeasonAnswer(int season, @Nullable String station, @Nullable LocalDate lastObserved,
			@Nullable String missing, @Nullable HeatSoFar heat, @Nullable ChillSoFar chill, PlaceFacts labels,
			@Nullable Explanation explanation) {

		static SeasonAnswer of(SeasonView view, @Nullable ChillSoFar chill, PlaceFacts labels) {
			return new SeasonAnswer(view.season(), view.station().id().value(), view.lastObserved(), view.recordEnd(),
					view.heat(), chill, labels, view.explanation());
		}

	}

	@Operation(summary = "Degree-days and chill of a season so far beside normal, with the labels of the place")
	@GetMapping("/api/v1/sites/{id}/season")
	SeasonAnswer season(@PathVariable UUID id, @RequestParam(required = false) @Nullable String season) {
		Site site = this.sites.own(id);
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), site.zone());
		int year = (season != null) ? Given.whole("season", season)
				: Season.containing(today, site.point().hemisphere()).year();
		PlaceFacts facts = this.labels.of(site.point(), today, site.zone());
		return this.seasons.of(site.place(), year, today)
			.map((view) -> SeasonAnswer.of(view, this.seasons.chill(site.place(), year).orElse(null), facts))
			.orElseGet(() -> new SeasonAnswer(year, null, null, WeatherWords.NO_STATION, null, null, facts, null));
	}

	@Operation(summary = "The daily water balance of a bed with the site's soil and waterings, three years at most")
	@GetMapping("/api/v1/sites/{id}/water")
	WaterView water(@PathVariable UUID id, @RequestParam(required = false) @Nullable String from,
			@RequestParam(required = false) @Nullable String to,
			@RequestParam(required = false) @Nullable String rootDepthMetres,
			@RequestParam(required = false) @Nullable String plantFactor,
			@RequestParam(required = false) @Nullable String bed) {
		Site site = this.sites.own(id);
		return this.beds
			.water(site, BedRequest.of(rootDepthMetres, plantFactor, bed), Given.date("from", from),
					Given.date("to", to))
			.orElseThrow(() -> new NotThere(
					"No station within 150 km has temperatures of those days or the 180 before them."));
	}

}
