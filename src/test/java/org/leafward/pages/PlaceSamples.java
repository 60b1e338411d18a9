package org.leafward.pages;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.leafward.care.PlacePreview;
import org.leafward.care.PreviewedChange;
import org.leafward.climate.MinimumComparison;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
import org.leafward.register.FoundPlace;
import org.leafward.register.Site;

import static org.leafward.pages.PageSamples.choices;
import static org.leafward.pages.PageSamples.model;

/** Models for the pages that set up a site, move it, and compare its thermometer. */
final class PlaceSamples {

	private PlaceSamples() {
	}

	record Tests(String ball, String ribbon, String rubbed, String bucket, String seconds) {
	}

	record Picked(int width, int height) {
	}

	record Form(String readings, String unit) {
	}

	record Night(String day, String own, String estimated, String difference) {
	}

	record Marker(String name, String before, String after, String moved) {
	}

	static Map<String, Object> placeForm(Site site, Object form) {
		Map<String, Object> model = model("section", "sites", "site", site, "form", form, "tests",
				new Tests("yes", "", "gritty", "10 l", "30"), "found",
				new FoundPlace(
						new GeoPoint(42.27, -91.43, 365), "Merrow County", "US-IA", ZoneId.of("America/Chicago"), true),
				"errors",
				Map.of("measuredOffsetCelsius", "measured offset -12 is outside -10 to 10 °C", "ribbon",
						"how long the ribbon gets is not told yet", "moveTo", "that is no place on the map"),
				"lies",
				choices("flat", "It lies on level, open ground", "hollow",
						"It lies in a hollow where cold air gathers"),
				"soilFound", null, "flowFound", "Your hose gives 20.0 l/min (5.3 gal/min).");
		model.putAll(picking());
		model.putAll(hands());
		return model;
	}

	private static Map<String, Object> picking() {
		return model("counties", choices("us-ia-alder-county", "Alder County"), "maps",
				List.of(new Picked(280, 257), new Picked(560, 512)), "units", choices("m", "metres", "ft", "feet"));
	}

	private static Map<String, Object> hands() {
		return model("balls", choices("", "I haven’t tried", "yes", "Yes, it stays in a ball"), "ribbons",
				choices("", "Not told yet", "short", "shorter than 2.5 cm (1 in)"), "rubs",
				choices("", "Not told yet", "gritty", "very gritty"), "soils",
				choices("", "I don’t know; it counts as loam", "feel", "What the test below finds", "loam", "loam"));
	}

	private static Map<String, Object> fields(String... told) {
		Map<String, Object> fields = new LinkedHashMap<>();
		Stream
			.of("county", "latitude", "longitude", "zone", "region", "elevation", "unit", "name", "soil", "sun", "wind",
					"lie", "flow", "ball", "ribbon", "rubbed", "bucket", "seconds")
			.forEach((field) -> fields.put(field, ""));
		Stream.of("nearWall", "inTown", "irrigation", "volunteers").forEach((field) -> fields.put(field, false));
		for (int i = 0; i < told.length; i += 2) {
			fields.put(told[i], told[i + 1]);
		}
		return fields;
	}

	static Map<String, Map<String, Object>> all(Site site) {
		Map<String, Map<String, Object>> all = new LinkedHashMap<>();
		Map<String, List<String>> beside = Map.of("name", List.of("Orchard \u2028 Lane"), "ball", List.of("yes"));
		Map<String, Object> where = model("section", "sites", "beside", beside, "form",
				fields("county", "us-ia-alder-county", "latitude", "142.1", "longitude", "-91.6", "zone", "Mars"),
				"errors", Map.of("latitude", "latitude 142.1 is outside -90 to 90", "zone", "'Mars' is not a zone"));
		where.putAll(picking());
		all.put("register/set-up-place", where);
		Map<String, Object> like = model("section", "sites", "beside", beside, "form",
				fields("county", "Alder County", "elevation", "740", "unit", "ft", "soil", "feel", "ball", "yes",
						"bucket", "a pail"),
				"errors",
				Map.of("name", "name is missing: fill it in.", "bucket", "bucket 'a pail' can't be read", "rubbed",
						"how the wet soil feels is not told yet: rub a very wet pinch in your palm."),
				"suns", choices("full-sun", "full sun"), "winds", choices("average", "average"), "lies",
				choices("flat", "It lies on level, open ground"), "soilFound",
				"By feel it is sandy clay loam, which counts as clay loam here.", "flowFound", null);
		like.putAll(picking());
		like.putAll(hands());
		all.put("register/set-up-like", like);
		all.put("care/thermometer", thermometer(site));
		return all;
	}

	private static Map<String, Object> thermometer(Site site) {
		DayWindow before = new DayWindow(LocalDate.of(2027, 5, 18), LocalDate.of(2027, 6, 1));
		DayWindow after = new DayWindow(LocalDate.of(2027, 5, 24), LocalDate.of(2027, 6, 7));
		return model("section", "sites", "site", site, "remarks", List.of("It is used from now on."), "errors",
				Map.of("readings", "line 2: 'frost' is not a date and degrees: write a date and degrees."), "inUse",
				"1.0 °C (1.8 °F) colder", "effects", List.of(), "compared",
				new MinimumComparison(List.of(), 0, null, null, List.of(), null), "offset", "1.4 °C (2.5 °F) colder",
				"sure", List.of("14 of 15 nights counted, by the records of Maple Hill."), "nights",
				List.of(new Night("Tue 3 Nov", "−2.5 °C (27.5 °F)", "−1.1 °C (30 °F)", "1.4 °C (2.5 °F) colder"),
						new Night("Wed 4 Nov", "1 °C (33.8 °F)", "no record", "")),
				"preview",
				new PlacePreview(List.of(),
						List.of(new PreviewedChange("Home", "Elm County", "tomatoes", "Plant out", before, after),
								new PreviewedChange("Home", "Elm County", "tomatoes", "Cover", null, after),
								new PreviewedChange("Home", "Elm County", "tomatoes", "Uncover", before, null)),
						12, 3),
				"markers",
				List.of(new Marker("Last spring freeze at 32 °F (0 °C), middle year", "Sun 2 May 2027",
						"Fri 7 May 2027", "5 days later")),
				"form", new Form("2026-11-03 -2.5\nfrost", "F"), "units", choices("C", "°C", "F", "°F"), "most", 120);
	}

}
