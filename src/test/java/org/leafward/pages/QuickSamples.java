package org.leafward.pages;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.quick.core.PlantFinder;
import org.leafward.quick.core.PlantKinds;
import org.leafward.quick.qr.QrCode;

import static org.leafward.pages.PageSamples.choices;
import static org.leafward.pages.PageSamples.model;

/** Models for the pages of the quick calendar. */
final class QuickSamples {

	private static final Species ROSE = species("rosa-hybrid-tea", "Rosa hybrid tea", "hybrid tea rose");

	private static final Species LILAC = species("syringa-vulgaris", "Syringa vulgaris", "common lilac");

	private static final String ADDRESS = "webcal://localhost/f/AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA/tasks.ics";

	private static final Form FORM = new Form("", "142.1", "-91.58", "", "ft", "", "x".repeat(40), "part-shade", "",
			"loam", "My\u0007garden", "es", "metric");

	private QuickSamples() {
	}

	record Form(String county, String latitude, String longitude, String elevation, String unit, String zone,
			String search, String sun, String wind, String soil, String name, String language, String system) {
	}

	record Map280(int width, int height) {
	}

	record Spot(GeoPoint point, String county, String region, ZoneId zone, boolean stations) {
	}

	record Row(String id, String name, String botanical, boolean lasts, boolean young) {
	}

	record App(String name, String how, String updates) {
	}

	record Garden(String name) {
	}

	private static Species species(String id, String botanical, String common) {
		return new Species(new SpeciesId(id), botanical, common, List.of(), List.of("woody"), Set.of());
	}

	static Map<String, Map<String, Object>> all() {
		Map<String, Map<String, Object>> all = new LinkedHashMap<>();
		Map<String, List<String>> beside = Map.of("key", List.of("1"), "species", List.of("a", "b"));
		all.put("quick/place",
				model("section", "quick", "form", FORM, "beside", beside, "counties",
						choices("us-ia-alder-county", "Alder County"), "maps", List.of(new Map280(280, 257)), "units",
						choices("m", "metres", "ft", "feet"), "errors",
						Map.of("county", "no place is chosen yet: choose a county.", "latitude",
								"latitude 142.1 is outside -90.0 to 90.0: give latitude in degrees north.")));
		all.put("quick/plants", model("section", "quick", "form", FORM, "beside", beside, "errors",
				Map.of("search", "that is too long, 10,240 characters: write a few names at a time."), "place",
				new Spot(new GeoPoint(42.08, -91.58, 225), "", "", ZoneId.of("America/Chicago"), false), "list",
				List.of(new Row("acer-rubrum", "red maple", "Acer rubrum", true, true),
						new Row("solanum-lycopersicum", "tomato", "Solanum lycopersicum", false, false)),
				"offers", List.of(new PlantFinder.Offer("roses", List.of(ROSE))), "unknown",
				List.of(new PlantFinder.Offer("frumious bandersnatch", List.of()),
						new PlantFinder.Offer("lilak bush", List.of(LILAC))),
				"strange", List.of("no-such-plant"), "most", 40, "kinds",
				List.of(new PlantKinds.Kind("roses", "Roses", List.of(ROSE)),
						new PlantKinds.Kind("spring-shrubs", "Shrubs that flower in spring", List.of(LILAC)))));
		all.put("quick/light", model("section", "quick", "form", FORM, "beside", beside, "count", 3, "suns",
				choices("full-sun", "full sun", "part-shade", "part shade"), "winds",
				choices("sheltered", "sheltered", "average", "average"), "soils",
				choices("", "I don’t know", "loam", "loam"), "languages", choices("en", "English", "es", "español"),
				"systems", choices("both", "both", "metric", "metric"), "errors",
				Map.of("name", "name has a line break or a control character: write it on one line.")));
		Map<String, Object> made = model("section", "quick", "address", ADDRESS.replace("webcal", "http"), "webcal",
				ADDRESS, "qr", QrCode.svg(ADDRESS, "The address as a QR code"), "apps",
				List.of(new App("Mac", "Paste the address.", "As often as you set.")), "site",
				new Garden("Garden in Alder County"), "manage", "http://localhost/quick/manage/secret", "tasks",
				List.of(Samples.line(Mark.DO, "Prune roses", "hybrid tea rose", LocalDate.of(2027, 4, 3),
						LocalDate.of(2027, 4, 20), null)));
		all.put("quick/made", made);
		Map<String, Object> manage = new LinkedHashMap<>(made);
		manage.putAll(model("secret", "secret", "claimed", false, "feed", "Its address was made on Thu 26 Nov 2026.",
				"plants", List.of("common lilac", "tomato"), "email", "nobody", "remark", "A mail is on its way.",
				"errors", Map.of("email", "'nobody' is not an e-mail address: write it like ada@example.org.")));
		all.put("quick/manage", manage);
		all.put("quick/deleted", model("section", "quick"));
		return all;
	}

}
