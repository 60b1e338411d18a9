package org.leafward.counties.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.Station;
import org.leafward.climate.Stations;
import org.leafward.counties.CountyCalendars;
import org.leafward.counties.core.CountyAddress;
import org.leafward.feeds.FeedAddresses;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.pages.Choice;
import org.leafward.pages.Formats;
import org.leafward.quick.qr.QrCode;
import org.leafward.quick.web.CalendarApp;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * The page that tells the address of a county's calendar: a form whose answer is an
 * address of its own, so that it can be linked.
 */
@Controller
class CountyCalendarPage {

	private static final int STATIONS = 3;

	/** Characters of an address; one widely used program shortens longer ones. */
	private static final int LONGEST = 116;

	private final Regions regions;

	private final CountyCalendars calendars;

	private final Stations stations;

	private final FeedAddresses addresses;

	private final Clock clock;

	CountyCalendarPage(Regions regions, CountyCalendars calendars, Stations stations, FeedAddresses addresses,
			Clock clock) {
		this.regions = regions;
		this.calendars = calendars;
		this.stations = stations;
		this.addresses = addresses;
		this.clock = clock;
	}

	@GetMapping("/county-calendars")
	String page(@RequestParam(defaultValue = "") String county,
			@RequestParam(required = false) @Nullable List<String> kind,
			@RequestParam(defaultValue = "en") String language, @RequestParam(defaultValue = "both") String system,
			@RequestParam(defaultValue = "") String go, Model model, HttpServletResponse response) {
		List<String> wanted = (kind != null) ? kind : List.of();
		model.addAttribute("section", "county-calendars");
		model.addAttribute("counties", this.regions.counties());
		model.addAttribute("kinds", this.calendars.kinds());
		model.addAttribute("wanted", wanted);
		model.addAttribute("most", CountyAddress.MOST);
		model.addAttribute("language", language);
		model.addAttribute("system", system);
		model.addAttribute("languages",
				Arrays.stream(Language.values()).map((one) -> new Choice(one.code(), one.words())).toList());
		model.addAttribute("systems",
				Arrays.stream(Units.values()).map((one) -> new Choice(one.code(), one.words())).toList());
		Map<String, String> errors = new LinkedHashMap<>();
		Optional<County> chosen = this.regions.find(county);
		chosen.ifPresent((one) -> place(one, model));
		if (chosen.isEmpty() && !county.isEmpty()) {
			errors.put("county", "there is no county '%s' here: choose one from the list".formatted(county));
		}
		if (chosen.isPresent() && (!wanted.isEmpty() || !go.isEmpty())) {
			try {
				Speech speech = new Speech(Language.of("language", language), Units.of("system", system));
				show(CountyAddress.of(county, wanted, this.calendars.codes(), speech), model, response);
			}
			catch (BadInput ex) {
				errors.putAll(ex.byField());
			}
		}
		if (!errors.isEmpty()) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
		}
		model.addAttribute("errors", errors);
		return "counties/calendars";
	}

	private void place(County county, Model model) {
		GeoPoint point = county.somewhere();
		Formats formats = new Formats(LocalDate.ofInstant(this.clock.instant(), county.zone()).getYear());
		model.addAttribute("county", county);
		model.addAttribute("stations",
				this.stations.near(point, LocalClimate.STATION_RADIUS_KILOMETRES)
					.stream()
					.limit(STATIONS)
					.map((one) -> words(one, point, formats))
					.toList());
	}

	private static String words(Station station, GeoPoint point, Formats formats) {
		return "%s (%.0f km away, %s)".formatted(station.name(), station.point().distanceKilometres(point),
				formats.height(station.point().elevationMetres()));
	}

	private void show(CountyAddress address, Model model, HttpServletResponse response) {
		try {
			model.addAttribute("coming", this.calendars.find(address).coming());
		}
		catch (CountyCalendars.NotYet ex) {
			response.setStatus(HttpStatus.SERVICE_UNAVAILABLE.value());
			model.addAttribute("notYet", ex.getMessage());
			return;
		}
		String absolute = this.addresses.absolute(address.path());
		String webcal = absolute.replaceFirst("^https?:", "webcal:");
		model.addAttribute("address", absolute);
		model.addAttribute("long", absolute.length() > LONGEST);
		model.addAttribute("webcal", webcal);
		model.addAttribute("qr", QrCode.svg(webcal, "The address of the calendar as a QR code"));
		model.addAttribute("apps", CalendarApp.ALL);
	}

}
