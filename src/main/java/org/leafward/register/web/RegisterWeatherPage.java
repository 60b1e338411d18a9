package org.leafward.register.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.ForecastDay;
import org.leafward.climate.PlaceFacts;
import org.leafward.climate.PlaceLabels;
import org.leafward.climate.SeasonSoFar;
import org.leafward.climate.SeasonView;
import org.leafward.climate.StationForecast;
import org.leafward.climate.TemperatureShift;
import org.leafward.climate.WaterView;
import org.leafward.climate.WeatherState;
import org.leafward.climate.WeatherStates;
import org.leafward.climate.WorkCautions;
import org.leafward.measure.BadInput;
import org.leafward.measure.Season;
import org.leafward.pages.Formats;
import org.leafward.register.OpenSites;
import org.leafward.register.SeenSite;
import org.leafward.register.Site;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * The weather of a site: the season so far, the water in a bed, chill, light and labels.
 */
@Controller
class RegisterWeatherPage {

	private static final int WATER_DAYS = 150;

	private final OpenSites sites;

	private final SeasonSoFar seasons;

	private final PlaceLabels labels;

	private final BedWater beds;

	private final WateringPart waterings;

	private final WeatherStates states;

	private final Clock clock;

	RegisterWeatherPage(OpenSites sites, SeasonSoFar seasons, PlaceLabels labels, BedWater beds, WateringPart waterings,
			WeatherStates states, Clock clock) {
		this.sites = sites;
		this.seasons = seasons;
		this.labels = labels;
		this.beds = beds;
		this.waterings = waterings;
		this.states = states;
		this.clock = clock;
	}

	/**
	 * A day of the forecast, in words.
	 *
	 * @param day the day
	 * @param low minimum at the site
	 * @param high maximum at the site
	 * @param rain that is to fall
	 */
	record ForecastRow(String day, String low, String high, String rain) {
	}

	/**
	 * The light of a month, in words.
	 *
	 * @param month its name
	 * @param clear under a clear sky
	 * @param typical in past years
	 * @param morning by 10:30
	 */
	record LightRow(String month, String clear, String typical, String morning) {
	}

	@GetMapping("/sites/{id}/weather")
	String weather(@PathVariable UUID id, @RequestParam(required = false) @Nullable String rootDepthMetres,
			@RequestParam(required = false) @Nullable String plantFactor,
			@RequestParam(required = false) @Nullable String bed, @RequestParam(defaultValue = "0") int page,
			Model model, HttpServletResponse response) {
		SeenSite seen = this.sites.seen(id);
		return show(seen, BedRequest.of(rootDepthMetres, plantFactor, bed), WateringRequest.on(today(seen.site())),
				Map.of(), page, model, response);
	}

	private LocalDate today(Site site) {
		return LocalDate.ofInstant(this.clock.instant(), site.zone());
	}

	String show(SeenSite seen, BedRequest form, WateringRequest watering, Map<String, String> wateringErrors, int page,
			Model model, HttpServletResponse response) {
		Site site = seen.site();
		LocalDate today = today(site);
		WeatherWords words = new WeatherWords(new Formats(today.getYear()));
		SeasonView view = this.seasons
			.of(site.place(), Season.containing(today, site.point().hemisphere()).year(), today)
			.orElse(null);
		Map<String, String> errors = Map.of();
		WaterView bed = null;
		try {
			LocalDate to = (view != null) ? view.lastObserved() : today.minusDays(1);
			bed = this.beds.water(site, form, to.minusDays(WATER_DAYS - 1), to).orElse(null);
		}
		catch (BadInput ex) {
			errors = ex.byField();
			response.setStatus(HttpStatus.BAD_REQUEST.value());
		}
		model.addAttribute("section", "sites");
		model.addAttribute("site", site);
		model.addAttribute("seen", seen);
		model.addAttribute("lead", words.lead(view, bed));
		model.addAttribute("form", form);
		model.addAttribute("errors", errors);
		model.addAttribute("water", (bed != null) ? WeatherPictures.water(bed) : null);
		model.addAttribute("waterWords", (bed != null) ? words.water(bed) : List.of());
		model.addAttribute("waterExplanation", (bed != null) ? bed.explanation() : null);
		model.addAttribute("states",
				this.states.at(site.place(), today).stream().map(WeatherState::explanation).toList());
		season(view, site, today, words, model);
		place(this.labels.of(site.point(), today, site.zone()), new Formats(today.getYear()), model);
		model.addAttribute("here", form.address(site));
		this.waterings.put(seen, watering, wateringErrors, page, today, model);
		return "register/weather";
	}

	private void season(@Nullable SeasonView view, Site site, LocalDate today, WeatherWords words, Model model) {
		model.addAttribute("heat", (view != null) ? WeatherPictures.heat(view.heat(), today) : null);
		model.addAttribute("heatMissing", (view != null) ? view.heat().missing() : WeatherWords.NO_STATION);
		model.addAttribute("goals", (view != null) ? words.goals(view.heat()) : List.of());
		model.addAttribute("around", (view != null) ? words.around(view) : null);
		model.addAttribute("temperatures",
				(view != null) ? WeatherPictures.temperatures(view.temperatures(), today) : null);
		model.addAttribute("explanation", (view != null) ? view.explanation() : null);
		model.addAttribute("forecast", null);
		this.seasons.chill(site.place(), SeasonSoFar.winterOn(today, site.point().hemisphere())).ifPresent((chill) -> {
			model.addAttribute("chillWords", words.chill(chill));
			model.addAttribute("chill", words.chillRows(chill));
		});
		StationForecast forecast = (view != null) ? view.forecast() : null;
		if (view != null && forecast != null) {
			Formats formats = new Formats(today.getYear());
			model.addAttribute("forecast", words.forecast(view, forecast, this.clock.instant()));
			model.addAttribute("forecastDays",
					forecast.days()
						.stream()
						.filter((day) -> !day.day().isBefore(today))
						.map((day) -> row(day, view.shift(), formats))
						.toList());
			model.addAttribute("cautions",
					WorkCautions.of(forecast.days(), today, view.shift().high())
						.stream()
						.map((one) -> formats.day(one.day()) + ": " + one.words())
						.toList());
		}
	}

	private static ForecastRow row(ForecastDay day, TemperatureShift shift, Formats formats) {
		return new ForecastRow(formats.day(day.day()), temperature(day.minimum(), shift.low(), formats),
				temperature(day.maximum(), shift.high(), formats),
				(day.precipitation() == null) ? "not forecast" : formats.number(day.precipitation() / 10.0, 1) + " mm");
	}

	private static String temperature(@Nullable Integer tenths, double colderBy, Formats formats) {
		return (tenths == null) ? "not forecast" : formats.wholeTemperature(tenths / 10.0 - colderBy);
	}

	private static void place(PlaceFacts facts, Formats formats, Model model) {
		model.addAttribute("hardiness",
				(facts.zone() != null) ? "half zone " + facts.zone() : "not known. " + facts.whyNoZone());
		model.addAttribute("extreme", (facts.extremeMinimum() != null) ? formats.temperature(facts.extremeMinimum())
				: "not known. " + facts.whyNoZone());
		model.addAttribute("sun", facts.sun());
		model.addAttribute("light",
				facts.light()
					.stream()
					.map((one) -> new LightRow(one.month().getDisplayName(TextStyle.FULL, Locale.ENGLISH),
							formats.number(one.clear(), 0),
							(one.typical() != null) ? formats.number(one.typical(), 0) : "not known",
							formats.number(one.morning(), 1)))
					.toList());
		model.addAttribute("placeExplanation", facts.explanation());
	}

}
