package org.leafward.pages;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskNow;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.care.core.phase.Phase;
import org.leafward.care.core.state.TaskCommand;
import org.leafward.care.core.state.TaskStanding;
import org.leafward.climate.Microclimate;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.SeenSite;
import org.leafward.register.Site;
import org.leafward.register.SiteFeature;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.reminders.QueueDepth;
import org.leafward.reminders.QueueTrouble;
import org.leafward.reminders.channel.mail.MailFinding;

/** A model for every template, all of it invented. */
final class PageSamples {

	private static final UUID ID = UUID.fromString("6f8d0a52-6b1e-5c0e-9d57-0d6e7d1f2a34");

	private static final Site SITE = new Site(new SiteId(ID), new PersonId(ID), "Alder Street schoolyard", "Elm County",
			new GeoPoint(44.98, -93.27, 256), ZoneId.of("America/Chicago"), SoilTexture.SILT_LOAM, Sun.PART_SHADE,
			Wind.SHELTERED, Microclimate.NONE, "US-MN", Set.of(SiteFeature.VOLUNTEERS));

	private static final SeenSite SEEN = new SeenSite(SITE, true, null);

	private PageSamples() {
	}

	record Listed(Object id, String name, String more) {
	}

	record Week(DayWindow days, String lead, String why, String nextHref, Night tonight, List<WeekPart> parts,
			boolean noSites, boolean all) {
	}

	record WeekPart(String title, List<TaskLine> lines, int more) {
	}

	record Night(List<Risk> risks, int more, String quiet, String coldest, String made, String unknown) {
	}

	record Risk(String low, List<String> sites, List<Deed> deeds) {
	}

	record Deed(String verb, List<String> plants) {
	}

	record Suggestion(String id, String commonName, String botanicalName, String also) {
	}

	record Silent(String address, String reason, String since) {
	}

	record MessageRow(Object id, String subject, String from, String to, Instant at, String atWords, String state,
			String reply, String messageId, String text) {
	}

	record Fresh(String title, String address, String webcal, String todos) {
	}

	record Given(Object id, String title, String more) {
	}

	/** Options of a calendar. */
	public record Options() {

		public boolean has(String part) {
			return part.equals("tasks");
		}

		public String language() {
			return "es";
		}

		public String units() {
			return "both";
		}

		public String alarm() {
			return "";
		}

		public String behind() {
			return "180";
		}

		public String ahead() {
			return "x";
		}

	}

	record PlantingLine(UUID id, String label, String commonName, String botanicalName, String count, String more) {
	}

	record SiteForm(String owner, String name, String county, String latitude, String longitude, String elevationMetres,
			String zone, String soil, String sun, String wind, String lie, Boolean nearWall, Boolean inTown,
			String measuredOffsetCelsius, String region, Boolean irrigation, Boolean volunteers, String flow) {
	}

	record PlaceForm(String latitude, String longitude, String elevationMetres, String lie, Boolean nearWall,
			Boolean inTown, String measuredOffsetCelsius, String region, Boolean irrigation, Boolean volunteers,
			String flow, String county, String zone, String soil) {
	}

	record Chances(int percent, String spring, String fall, String length) {
	}

	record Behind(String id, String name, boolean invented, String weight, String distance, String height, String shift,
			String spring, String fall, String seasons, String springYears, String fallYears) {
	}

	record Period(String code, String name, String seasons, boolean chosen, String spring, String springMedian,
			String fallMedian, String fall, String length) {
	}

	record PlantingForm(String species, String label, String count, String plantedOn, String placement,
			boolean wintersIndoors, boolean saltExposed, String area, String calliper, String pot, String raisedIn,
			String lampMicromoles, String lampHours, String bed) {
	}

	record WaterForm(String what, String soil, String area, String flow, String depth, String missing, String rain,
			String calliper, String weeks, String dryDays, String pot, Boolean frozen, String warmest) {
	}

	record SizeForm(String area, String calliper, String pot, String raisedIn, String lampMicromoles,
			String lampHours) {
	}

	record BedForm(String rootDepthMetres, String plantFactor, String bed) {
	}

	record WateringForm(String day, String amount, String unit, String area, String planting, String note) {
	}

	record WateringRow(Object id, String day, String where, String amount, String more) {
	}

	record SoilTestForm(String day, String planting, String ph, String ec, String extract, String sar, String esp,
			String cec, String depth, String drainage, String note) {
	}

	record SoilTestRow(Object id, String day, String where, String figures, String more) {
	}

	record ForecastRow(String day, String low, String high, String rain) {
	}

	record ChillRow(String what, String soFar, String normal, String whole) {
	}

	record LightRow(String month, String clear, String typical, String morning) {
	}

	record LogRow(Object id, String what, String day, String where, String note, String by, String holdOff,
			String holdOffHref, String taskHref) {
	}

	record Step(String day, String what, String who) {
	}

	record Seen(Object id, String what, String day, String where, String by) {
	}

	record WorkForm(String day, String amount, String unit, String area, String note, String work, String planting) {
	}

	record SeenForm(String planting, String what, String day) {
	}

	record LightForm(String latitude, String longitude, String elevationMetres, String zone, String date, String days,
			String start, String level, String unit, String source, String hours, String site, String nightCelsius,
			String held) {
	}

	record CoverForm(String forecast, String hurt, String offset, String unit, String sky, String have) {
	}

	private static final LogRow ENTRY = new LogRow(ID, "Pruning, 2 bags", "Sat 15 Aug", "hedge by the gate",
			"a branch had broken\nover the path", "Nora Field", "Leave evergreens unpruned", "/tasks/1", "/tasks/2");

	/** View name, then its model. */
	static Map<String, Map<String, Object>> all() {
		Map<String, Map<String, Object>> all = new LinkedHashMap<>();
		all.put("care/home", model("section", "week", "live", true, "week", new Week(
				new DayWindow(Samples.TODAY, Samples.TODAY.plusDays(6)),
				"Three things to do this week, and one to leave alone: the hedge wants water before the ground freezes.",
				null, "/tasks/1",
				new Night(
						List.of(new Risk("Tonight −2 °C (28 °F)", List.of("Orchard Lane", "Mill Road"),
								List.of(new Deed("Cover", List.of("tomato bed (tomato)", "3 more plantings")),
										new Deed("Bring in", List.of("basil pot (basil)"))))),
						1, null, null, "The forecast is 3 hours old.", "Home"),
				List.of(new WeekPart("To do", Samples.todo(), 4), new WeekPart("Leave alone", Samples.holdOffs(), 0),
						new WeekPart("Look for", Samples.watches(), 0),
						new WeekPart("What changed", List.of(Samples.line(Mark.RAMP, "Harden off the pansies",
								"window boxes (pansy)", LocalDate.of(2027, 4, 3), LocalDate.of(2027, 4, 12),
								"Now 3 Apr – 12 Apr, was 28 Mar – 6 Apr."),
								Samples.line(Mark.DO, "Water the new trees", "young maple (red maple)", Samples.TODAY,
										Samples.TODAY, "No longer needed: 32 mm of rain fell since Sunday.")),
								0)),
				false, false), "noted", "Noted as done: Rake the leaves, lawn.", "notedLines", Samples.noted()));
		all.put("plants/search", model("section", "sites", "searched", "box", "found",
				List.of(new Suggestion("buxus-sempervirens", "common boxwood", "Buxus sempervirens", "boj común"))));
		all.put("care/task",
				model("section", "week", "seen", SEEN, "mark", Mark.DO, "task", task(), "ramp", Samples.light("light"),
						"explanation", Samples.explanation(), "now",
						new TaskNow(TaskStanding.DUE, "Due today, until Tue 24 Nov 2026.", false,
								Set.of(TaskCommand.DONE, TaskCommand.SKIP), LocalDate.of(2027, 2, 11)),
						"acts", new TaskActs(List.of(ID), true, true, true, "task"), "entry", ENTRY, "history",
						List.of(new Step("Mon 9 Nov 2026", "Withdrawn: 32 mm of rain fell since Sunday.", "the plan")),
						"form", new WorkForm("2027-11-12", "25", "mm", null, "soaker hose", null, null), "reason", "",
						"errors", Map.of("day", "2027-11-12 is still to come: give the day on which it was."), "units",
						choices("", "no amount", "mm", "mm")));
		all.put("care/log", model("section", "sites", "site", SITE, "only", "", "rows", List.of(ENTRY), "page", 0,
				"hasNext", true, "here", "/sites/1/log?of=", "form",
				new WorkForm("2026-11-12", null, null, null, "x", "prune", null), "errors",
				Map.of("note", "the note has 2001 characters: shorten it."), "places",
				choices("", "the whole site", ID.toString(), "hedge by the gate"), "filters", choices("", "everything"),
				"works", choices("prune", "pruning"), "units", choices("", "no amount", "mm", "mm"), "remarks",
				List.of("It is kept, and marked: “Leave evergreens unpruned” asks for no pruning.")));
		all.put("care/observations", model("section", "sites", "site", SITE, "rows",
				List.of(new Seen(ID, "first bloom", "Sat 18 Apr", "forsythia", "Nora Field")), "page", 1, "hasNext",
				false, "here", "/sites/1/observations", "form", new SeenForm("", "phase:bloom-start", "2026-04-18"),
				"errors", Map.of("planting", "a site as a whole has no phase: say on which planting it was seen."),
				"places", choices("", "the whole site"), "whats", choices("phase:bloom-start", "first bloom"), "phases",
				List.of(new Phase("bloom-start", "first bloom", "The first flowers are open.", List.of()))));
		all.put("register/counties",
				model("section", "sites", "lead", "You serve Elm County.", "sites", List
					.of(new Listed(ID, "Alder Street schoolyard", "Elm County, looked after by Nora, 8 plantings")),
						"page", 0, "hasNext", true));
		all.put("register/sites",
				model("section", "sites", "serves", true, "lead", "You look after two sites.", "sites",
						List.of(new Listed(ID, "Alder Street schoolyard", "Elm County, 8 plantings"),
								new Listed(ID, "Home", "Elm County, 3 plantings")),
						"page", 0, "hasNext", true, "mayAdd", true));
		all.put("care/site",
				model("section", "sites", "live", true, "site", SITE, "lead",
						"Water the hedge until the ground freezes, about Tue 24 Nov.", "strip", Samples.strip("year"),
						"now", Samples.acting(), "tasks", Samples.todo(), "lately", Samples.acted(), "beds", true,
						"many", true, "q", "", "part", "Plantings 1 to 20 of 200", "bedNames", List.of(), "page", 0,
						"hasNext", true, "here", "/sites/1", "parts",
						BedSamples.parts(
								new PlantingLine(ID, "hedge by the gate", "common boxwood", "Buxus sempervirens",
										"12 plants", "in the ground since 4 May 2019"),
								new PlantingLine(ID, "young maple", "red maple", "Acer rubrum", "1 plant",
										"in the ground since 20 Oct 2024, salt reaches it")),
						"markers", List.of(Samples.explanation()), "seen", SEEN, "undated",
						List.of("Prune in late winter, hedge: no station is near enough.")));
		all.put("register/weather", model("section", "sites", "site", SITE, "seen", SEEN, "lead",
				"320 degree-days so far, 26 days ahead of normal. A bed here is dry: 0 of 70 mm of water are left for plants.",
				"heatMissing", null, "heat", Samples.degreeDays("degree-days"), "goals",
				List.of("200: reached on 19 Apr; usual: 6 May"), "water", Samples.water("water"), "waterWords",
				List.of("Watering became due on 21 Jun."), "around",
				"How far to trust the sum: from Maple Hill it is 320 by 19 May.", "watering",
				new WateringForm("2026-07-12", "500", "gallons", null, null, null), "wateringErrors",
				Map.of("area", "area is missing: fill it in."), "beds",
				choices("", "the whole site", ID.toString(), "hedge by the gate"), "units",
				choices("mm", "mm deep", "gallons", "US gallons over an area in square feet"), "waterings",
				List.of(new WateringRow(ID, "Sun 12 Jul", "the whole site", "20 mm (0.8 in)",
						"soaker hose; entered by Nora Field")),
				"here", "/sites/1/weather?bed=", "page", 0, "hasNext", true, "waterExplanation", Samples.explanation(),
				"form", new BedForm("0.45", "5", ""), "errors",
				Map.of("plantFactor", "plantFactor 5.0 is outside 0.0 to 2.0: give a number between the two."),
				"temperatures", Samples.temperatures("temperatures"), "explanation", Samples.explanation(), "forecast",
				"The forecast for Maple Hill was made 3 hours ago.", "forecastDays",
				List.of(new ForecastRow("Wed 20 May", "20 °C (68 °F)", "36 °C (97 °F)", "0 mm")), "cautions",
				List.of("Wed 20 May: Heat index 121 °F in the afternoon, danger."), "chillWords",
				List.of("Winter 1 Sep 2025 – 28 Feb, counted up to 28 Feb."), "chill",
				List.of(new ChillRow("Utah units", "1,012", "980", "980")), "hardiness", "half zone 5a", "extreme",
				"−27 °C (−16.6 °F)", "sun", "From 05:38 to 20:44, 15 h 06 min.", "light",
				List.of(new LightRow("January", "18", "11", "2.1")), "placeExplanation", Samples.explanation(),
				"states", List.of(Samples.explanation())));
		all.put("register/soil-tests", model("section", "sites", "site", SITE, "form",
				new SoilTestForm("2026-07-12", "", "8.9", "lots", "saturated-paste", "24", null, "18", "15", "good",
						null),
				"errors", Map.of("ec", "ec 'lots' is not a number: give a number in dS/m."), "beds",
				choices("", "the whole site", ID.toString(), "hedge by the gate"), "extracts",
				choices("saturated-paste", "a saturated paste"), "drainages", choices("good", "drains well"), "tests",
				List.of(new SoilTestRow(ID, "Sun 12 Jul", "the whole site",
						"pH 8.9, 2.1 dS/m in a saturated paste, SAR 24", "15 cm deep; entered by Nora Field")),
				"here", "/sites/1/soil-tests", "page", 0, "hasNext", true));
		all.put("register/site-form",
				model("section", "sites", "beside", Map.of("ball", List.of("yes")), "form",
						new SiteForm(null, "Alder Street schoolyard", null, "144.98", null, null, "America/Chicago",
								"LOAM", null, null, "hollow", true, null, "-12", "Michigan", true, null, "3 gal/min"),
						"lies", choices("flat", "It lies on level, open ground"), "errors",
						Map.of("latitude", "144.98 is outside -90 to 90: give latitude in degrees north", "region",
								"'Michigan' is not the code of a state or province"),
						"owners", choices(ID.toString(), "Nora Field"), "soils",
						choices("SAND", "sand", "LOAM", "loam"), "suns", choices("FULL_SUN", "full sun"), "winds",
						choices("AVERAGE", "average", "EXPOSED", "exposed")));
		all.put("register/place-form", PlaceSamples.placeForm(SITE, new PlaceForm("44.98", "-93.27", "256", "hollow",
				false, true, "-12", "US-MN", false, true, "12", "Elm County", "America/Chicago", "feel")));
		all.putAll(PlaceSamples.all(SITE));
		all.put("register/freezes", model("section", "sites", "site", SITE, "seen", new SeenSite(SITE, false, "Nora"),
				"lead",
				"After 16 May, 32 °F (0 °C) comes in one spring in ten; by 19 September it has come in one fall in ten.",
				"invented", true, "curve", Samples.curve("freeze-here"), "words", "32 °F (0 °C)", "periodWords",
				"the latest 30 seasons", "threshold", "32F", "period", "latest-30", "thresholds",
				choices("32F", "32 °F (0 °C)", "28F", "28 °F (−2.2 °C)"), "periodChoices",
				choices("latest-30", "the latest 30 seasons", "all", "all seasons on record"), "chances",
				List.of(new Chances(10, "16 May", "19 Sep", "131 days"),
						new Chances(20, "11 May", "22 Sep", "138 days")),
				"stations",
				List.of(new Behind("XXW00000001", "Maple Hill", true, "80 %", "12.1 km", "20 m lower", "2.1 °C colder",
						"2 May", "none: only 8 seasons can be told, fewer than 10", "1995 to 2024",
						"29 used, 0 without, 1 left out", "8 used, 0 without, 0 left out")),
				"effects", new Microclimate(Microclimate.Lie.HOLLOW, false, true, null).effects(), "spread",
				"Carried to this place, the stations’ middle dates lie 6 days apart in spring.", "check",
				"Each station around was foretold from the others.", "periods",
				List.of(new Period("latest-30", "the latest 30 seasons", "1995 to 2024, 1 station", true, "16 May",
						"2 May", "1 Oct", "19 Sep", "150 days"))));
		all.put("register/planting-form", model("section", "sites", "site", SITE, "form",
				new PlantingForm("box", null, "12", null, null, false, true, null, null, null, null, null, null, null),
				"beds", choices("", "no bed of its own", ID.toString(), "bed along the fence"), "errors",
				Map.of("species", "“box” is not one plant’s name without doubt: pick one of the list below it."),
				"raisedIn", choices("", "It doesn’t", "lamps", "under lamps"), "live", true, "searched", "box",
				"picked", "buxus-sempervirens", "found",
				List.of(new Suggestion("buxus-sempervirens", "common boxwood", "Buxus sempervirens", null),
						new Suggestion("acer-negundo", "boxelder", "Acer negundo", "arce negundo")),
				"placements", choices("GROUND", "in the ground", "CONTAINER", "in a container")));
		all.put("register/size-form",
				model("section", "sites", "planting",
						new Planting(new PlantingId(ID), new SiteId(ID), new SpeciesId("buxus-sempervirens"),
								"hedge by the gate", 12, LocalDate.of(2019, 4, 2), Placement.GROUND, false, false),
						"form", new SizeForm("130 sq ft", "2 feet", "", "lamps", "", "14"), "errors",
						Map.of("calliper", "calliper '2 feet' can't be read: write it in millimetres"), "raisedIn",
						choices("", "It doesn’t", "lamps", "under lamps")));
		all.putAll(CalculatorSamples.all());
		all.putAll(KeptSamples.all(SITE));
		all.putAll(WorkdaySamples.all());
		all.putAll(BedSamples.all(SITE));
		all.putAll(PhotoSamples.all());
		all.putAll(QuickSamples.all());
		all.putAll(ListSamples.all(SITE));
		all.putAll(ReviewSamples.all(SITE));
		all.putAll(LinkSamples.all());
		all.putAll(CaseSamples.all(SITE));
		all.putAll(WishesSamples.all());
		MessageRow mail = new MessageRow(ID, "Thu 12 Nov: Water deeply: hedge by the gate (common boxwood)",
				"Leafward <reminders@example.org>", "Nora Field <nora@example.org>",
				Instant.parse("2026-11-12T13:00:00Z"), "Thu 12 Nov 2026, 07:00 (Central Time)",
				"not taken yet, will be tried again", "451 4.7.1 come back in a while", "<6f8d0a52@example.org>",
				"One task begins on Thu 12 Nov.\n\n* Water deeply: hedge by the gate (common boxwood)\n");
		all.put("reminders/outbox", model("section", "outbox", "everybody", true, "mails", List.of(mail, mail),
				"others", List.of(mail), "page", 0, "hasNext", true));
		all.put("reminders/mail", model("section", "outbox", "mail", mail));
		all.put("reminders/webhook", WebhookSamples.webhook());
		all.put("reminders/post-room", model("section", "outbox", "depth", new QueueDepth(3, 1, 2, 400, null), "oldest",
				"Thu 12 Nov, 06:00 UTC, 40 minutes ago", "late", true, "trouble", new QueueTrouble(1, 2), "hours",
				List.of(Map.of("from", "Thu 12 Nov, 06:00 UTC", "messages", 12)), "mails", List.of(mail, mail), "page",
				0, "hasNext", true, "addressTrouble", "'ada' is no address", "address", "ada"));
		all.put("reminders/mail-check", model("section", "accounts", "outside", true, "findings",
				List.of(new MailFinding(MailFinding.Level.GOOD, "Sender", "Mails come from Leafward."),
						new MailFinding(MailFinding.Level.BAD, "Mail server", "None is set up.")),
				"silent", List.of(new Silent("ada@example.org", "550 5.1.1 gone", "12 Nov 2026")), "page", 0, "hasNext",
				false));
		all.put("climate/stations",
				model("section", "stations", "lead", "Every date begins at one of these.", "stations",
						List.of(new Listed("XXW00000001", "Maple Hill", "256 m (840 ft), 1995 to 2024")), "page", 0,
						"hasNext", false));
		all.put("climate/station", model("section", "stations", "station",
				new Station(new StationId("XXW00000001"), "Maple Hill", new GeoPoint(44.98, -93.27, 256), true), "lead",
				"After 16 May it freezes in one year in ten; from 19 Sep the first freeze is possible.", "latest",
				List.of("The last day with an observation is Tue 10 Nov 2026.",
						"The forecast was made on Wed 11 Nov 2026, 06:00 UTC, 31 hours ago; it is stale, too old to lean on."),
				"curves", List.of(Samples.curve("c32")), "explanation", Samples.explanation(), "record",
				"1995 to 2024, 28 of 30 years complete enough"));
		all.put("feeds/subscribe", model("section", "subscribe", "noSites", false, "fresh",
				new Fresh("All my sites", "https://leafward.example/f/3q5v8y7hd2kf9s1m4n6p8r0t2v4x/tasks.ics",
						"webcal://leafward.example/f/3q5v8y7hd2kf9s1m4n6p8r0t2v4x/tasks.ics",
						"https://leafward.example/f/3q5v8y7hd2kf9s1m4n6p8r0t2v4x/todo.ics"),
				"what", "all", "choices", choices("all", "All my sites"), "given",
				List.of(new Given(ID, "All my sites", "made Thu 12 Nov 2026, not fetched yet")), "options",
				new Options(), "errors", Map.of("ahead", "'x' is not a whole number: give one such as 3."), "languages",
				choices("en", "English", "es", "español"), "systems", choices("both", "both", "us", "US"), "offers",
				choices("tasks", "to do", "hold-offs", "hold-offs")));
		all.put("feeds/options", model("section", "subscribe", "feed",
				new Given(ID, "All my sites", "made Thu 12 Nov 2026, not fetched yet"), "options", new Options(),
				"errors", Map.of("parts", "the calendar would hold nothing: tick at least one."), "languages",
				choices("en", "English", "es", "español"), "systems", choices("both", "both", "us", "US"), "offers",
				choices("tasks", "to do", "hold-offs", "hold-offs")));
		all.put("accounts/people",
				model("section", "people", "people",
						List.of(new Listed(ID, "Nora Field", "2 sites"), new Listed(ID, "Tomas Brook", "14 sites")),
						"page", 0, "hasNext", false));
		all.put("accounts/sign-in", model("section", "sign-in", "failed", true, "open", true, "links", true, "doors",
				List.of(Map.of("name", "County network", "href", "/oauth2/authorization/county")), "email", "ada"));
		all.put("accounts/me",
				model("section", "me", "name", "Nora Field", "zone", "America/Chicago", "errors",
						Map.of("zone", "zone 'Mars' is not known"), "address", "nora@example.org", "confirmed", true,
						"may", "area specialist", "deeds", List.of("2027-05-01 10:00 UTC: Odile opened a site")));
		all.put("accounts/bring", model("section", "me", "counts", Map.of("sites", 2), "what",
				"latitude 144.98 is outside -90 to 90", "where", "sites.csv, row 3, latitude", "mend", "check it"));
		all.put("accounts/end",
				model("section", "me", "name", "Nora Field", "counts", List.of("2 sites"), "wrong", true));
		all.put("accounts/ended", model("section", "me"));
		all.put("accounts/sessions", model("section", "me", "sessions",
				List.of(Map.of("since", "2027-05-01T10:00", "last", "2027-05-02T08:30", "here", true))));
		all.put("accounts/sent", model("section", "sign-in", "shown", null, "minutes", 10));
		all.put("accounts/once", model("section", "sign-in", "token", "a".repeat(43)));
		all.put("accounts/tokens", AccessSamples.tokens());
		all.put("reminders/push", AccessSamples.push());
		all.put("accounts/accounts",
				model("section", "accounts", "page", 0, "hasNext", true, "roles", List.of(), "people",
						List.of(Map.of("id", ID, "name", "Nora Field", "address", "nora@example.org", "grants",
								List.of(Map.of("role", "SPECIALIST", "county", "Alder County", "words",
										"area specialist for Alder County"))))));
		all.put("accounts/audit", model("section", "accounts", "page", 0, "hasNext", false, "lines", List.of(Map
			.of("at", "2027-05-01T10:00:00Z", "who", "Odile", "words", "opened a site", "concerns", "Nora Field"))));
		all.put("amounts/light",
				model("section", "calculators", "lead",
						"Begin on Wed 5 May 2027; after 14 days it can be set out on Wed 19 May 2027.", "change",
						"On a south windowsill it gets about 9 mol/m² of light a day.", "picture",
						Samples.light("light"), "explanation", Samples.explanation(), "form",
						new LightForm("42.1", "-91.6", null, "Asia/Tokyo", "2027-05-19", "14", "south-window", null,
								"lux", null, "14", "full-sun", "10", "4"),
						"errors", Map.of("zone", "time zone Asia/Tokyo doesn’t fit: give the time zone of the place."),
						"starts", choices("south-window", "on a south windowsill"), "units", choices("lux", "lux"),
						"sources", choices("daylight", "daylight"), "sites", choices("full-sun", "full sun"), "nights",
						choices("10", "10 °C (50 °F)")));
		all.put("amounts/water",
				model("section", "calculators", "lead", "About 250 litres (66 gal).", "explanation",
						Samples.explanation(), "form",
						new WaterForm("bed", "clay", "x", "12", "300", "", "", "", "4", "21", "", true, "7 C"),
						"errors", Map.of("area", "area 'x' can't be read: write it in square metres"), "kinds",
						choices("bed", "a bed or a lawn"), "soils", choices("clay", "clay")));
		all.put("amounts/cover",
				model("section", "calculators", "lead", "Cover with light row cover before sunset.", "explanation",
						Samples.explanation(), "form", new CoverForm("36", "cold", "0", "fahrenheit", "unknown", "any"),
						"errors", Map.of("hurt", "hurt 'cold' is not a number: give a number in degrees."), "units",
						choices("fahrenheit", "°F"), "skies", choices("unknown", "not known"), "covers",
						choices("any", "whatever is enough")));
		WorkshopSamples.addTo(all);
		AdvisorySamples.addTo(all);
		SentSamples.addTo(all);
		KeySamples.addTo(all);
		all.put("error", model("what", "latitude 144.98 is outside -90 to 90", "where", "latitude", "mend",
				"give latitude in degrees north", "status", 400));
		return all;
	}

	private static CareTask task() {
		return new CareTask(new TaskId(ID), new PlantingId(ID), "hedge by the gate (common boxwood)", SITE.id(),
				SITE.name(), SITE.owner(), "broadleaf-evergreens/late-water", 2026, 0, TaskKind.DO,
				new DayWindow(LocalDate.of(2026, 11, 9), LocalDate.of(2026, 11, 24)),
				new TaskText("Water until the ground freezes",
						"Let the hose trickle at the foot of each plant until the soil is moist a hand deep.",
						"25 mm, about 2 hours of a soaker hose",
						"Evergreen leaves lose water all winter and can’t replace it from frozen ground.",
						"Leaves scorch brown in February sun.", "Drain and disconnect the hose before a freeze."),
				TaskState.PLANNED, null, 0, Instant.EPOCH, Instant.EPOCH);
	}

	static List<Choice> choices(String... pairs) {
		return IntStream.range(0, pairs.length / 2)
			.mapToObj((i) -> new Choice(pairs[2 * i], pairs[2 * i + 1]))
			.toList();
	}

	static Map<String, Object> model(Object... pairs) {
		Map<String, Object> model = new LinkedHashMap<>();
		for (int i = 0; i < pairs.length; i += 2) {
			model.put((String) pairs[i], pairs[i + 1]);
		}
		return model;
	}

}
