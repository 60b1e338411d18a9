package org.leafward;

import jakarta.servlet.http.Cookie;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.IntStream;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalRecords;
import org.leafward.climate.Microclimate;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Beds;
import org.leafward.register.NewBed;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.support.DemoServer;
import org.leafward.support.FarrowHouse;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/**
 * Every form of a gardener with one field at a time that can't be right. Nothing of it is
 * an error of ours; what is refused is named, with its place and how to mend it; and what
 * is refused is not kept.
 */
@DemoServer
class HostileFormsTests {

	private static final String LONG = "x".repeat(10_000);

	/** In no field of any form can one of these be right. */
	private static final List<String> NEVER = List.of(LONG, "bell\u0007 and \u0000 nothing", "\u202e\u0001");

	/** In a field for a number, a date, an identifier or a choice neither. */
	private static final List<String> NO_FIGURE = List.of("-1", "NaN", "Infinity", "1e309", "-0.0000001", "1,2,3",
			"0x1F", "12 parsecs", "1700-02-30", "9999-12-31", "+999999999-01-01", "0001-01-01", "not-a-uuid",
			"00000000-0000-0000-0000-000000000000", "true' or 1=1", "<b>", "\ud83d\udca7");

	private int turn;

	@Autowired
	private MockMvc web;

	@Autowired
	private Register register;

	@Autowired
	private Beds beds;

	@Autowired
	private JdbcClient database;

	@Autowired
	private Clock clock;

	@Autowired
	private People people;

	@Autowired
	private PersonalRecords records;

	private PersonId person;

	private final List<String> wrong = new ArrayList<>();

	private Cookie session = new Cookie("SESSION", "");

	private int asked;

	/**
	 * A form.
	 *
	 * @param address where it is sent
	 * @param right fields that are right together
	 * @param texts those of them that take any line of text
	 * @param idle those that are not looked at when the others are as they are
	 */
	private record Form(String address, Map<String, String> right, Set<String> texts, Set<String> idle) {
	}

	@BeforeEach
	void somebody() throws Exception {
		this.person = this.people
			.join("Tess Hollow", UUID.randomUUID() + "@example.org", FarrowHouse.in(this.register).zone())
			.id();
		this.people.confirm(this.person);
		this.session = this.web.perform(post("/people/" + this.person.value()).with(csrf()))
			.andReturn()
			.getResponse()
			.getCookie("SESSION");
		assertThat(this.session).isNotNull();
	}

	/** Others look at the same demo. */
	@AfterEach
	void leave() {
		this.records.forget(this.person);
	}

	@Test
	void noFormOfAGardenerBreaksOrKeepsWhatCanNotBe() throws Exception {
		Site like = FarrowHouse.in(this.register);
		Site site = this.register.addSite(this.person, new NewSite("Ground for forms", like.county(), like.point(),
				like.zone(), like.soil(), like.sun(), like.wind(), Microclimate.NONE, "", Set.of()));
		Planting planting = this.register
			.addPlantings(site.id(), List.of(new NewPlanting(new SpeciesId("buxus-sempervirens"), "hedge", 3,
					LocalDate.of(2020, 5, 1), Placement.GROUND, false, false)))
			.get(0);
		UUID bed = this.beds.add(site.id(), NewBed.named("first")).id().value();
		attack(forms(site, planting, bed), () -> kept(site));
		assertThat(this.asked).isGreaterThan(200);
	}

	@Test
	void noFormAboutAPersonBreaksOrKeepsWhatCanNotBe() throws Exception {
		Site like = FarrowHouse.in(this.register);
		attack(formsAboutAPerson(like), this::keptOfPeople);
		assertThat(this.asked).isGreaterThan(150);
	}

	private void attack(List<Form> forms, Supplier<String> kept) throws Exception {
		for (Form form : forms) {
			// The rest of the form is right, or nothing would be learned from the others.
			int right = send(form, form.right()).getStatus();
			assertThat(right).as(form.address()).isIn(200, 302);
			for (String field : form.right().keySet()) {
				if (!field.equals("go")) {
					breakOff(kept, form, field);
				}
			}
		}
		assertThat(this.wrong).isEmpty();
	}

	private void breakOff(Supplier<String> kept, Form form, String field) throws Exception {
		// Some of them for each field and others for the next: all come to some field of
		// every form.
		int turn = this.turn++;
		List<String> values = new ArrayList<>(List.of(NEVER.get(turn % NEVER.size())));
		if (!form.texts().contains(field)) {
			IntStream.range(0, NO_FIGURE.size())
				.filter((at) -> at % 5 == turn % 5)
				.mapToObj(NO_FIGURE::get)
				.forEach(values::add);
		}
		String before = kept.get();
		for (String value : values) {
			Map<String, String> fields = new LinkedHashMap<>(form.right());
			fields.put(field, value);
			MockHttpServletResponse answer = send(form, fields);
			String what = "%s %s=%s -> %d".formatted(form.address().replaceAll("[0-9a-f-]{36}", "*"), field,
					(value.length() > 40) ? "(long)" : value, answer.getStatus());
			if (answer.getStatus() >= 500) {
				this.wrong.add(what);
			}
			else if (answer.getStatus() < 400) {
				if (!form.idle().contains(field) && !accepted(field, value)) {
					this.wrong.add(what + " accepted");
				}
				before = kept.get();
			}
			else {
				Document page = Jsoup.parse(answer.getContentAsString());
				boolean named = !page.select(".problem li, .wrong-text, main p").isEmpty() && page.text().length() > 40;
				if (!named) {
					this.wrong.add(what + " says nothing");
				}
				String now = kept.get();
				if (!now.equals(before)) {
					this.wrong.add(what + " kept: " + now + " instead of " + before);
				}
				before = now;
			}
		}
		// Nothing at all may be right or wrong, but never an error of ours.
		Map<String, String> without = with(form.right(), field, "");
		if (turn % 2 == 0) {
			without.remove(field);
		}
		int status = send(form, without).getStatus();
		if (status >= 500) {
			this.wrong.add("%s without %s -> %d".formatted(form.address(), field, status));
		}
	}

	/** What looks strange and is right all the same. */
	private static boolean accepted(String field, String value) {
		return switch (field) {
			// Degrees may be below zero, and a site may lie on the date line.
			case "latitude", "longitude", "elevation", "elevationMetres", "measuredOffsetCelsius" ->
				List.of("-1", "-0.0000001").contains(value);
			// An hour behind UTC.
			case "zone" -> value.equals("-1");
			default -> false;
		};
	}

	private static Map<String, String> with(Map<String, String> right, String field, String value) {
		Map<String, String> fields = new LinkedHashMap<>(right);
		fields.put(field, value);
		return fields;
	}

	private MockHttpServletResponse send(Form form, Map<String, String> fields) throws Exception {
		this.asked++;
		MockHttpServletRequestBuilder request = post(form.address()).with(csrf()).cookie(this.session);
		fields.forEach(request::param);
		try {
			return this.web.perform(request).andReturn().getResponse();
		}
		catch (jakarta.servlet.ServletException ex) {
			// What MockMvc throws, a server answers with 500.
			MockHttpServletResponse broken = new MockHttpServletResponse();
			broken.setStatus(500);
			return broken;
		}
	}

	/** Counts of all that the forms can add, and what the site itself is like. */
	private String kept(Site site) {
		List<String> all = new ArrayList<>();
		for (String table : List.of("register.planting", "register.bed", "register.watering", "register.soil_test",
				"care.log", "care.observation")) {
			all.add(this.database
				.sql("select count(*) || ' ' || coalesce(md5(string_agg(t::text, ',' order by t::text)), '') " + "from "
						+ table + " t where site = ?")
				.param(site.id().value())
				.query(String.class)
				.single());
		}
		all.add(this.database.sql("select md5(s::text) from register.site s where id = ?")
			.param(site.id().value())
			.query(String.class)
			.single());
		all.add(this.database.sql("select count(*)::text from register.site").query(String.class).single());
		return String.join(" ", all);
	}

	/** What the forms about a person can add or change. */
	private String keptOfPeople() {
		return this.database
			.sql("""
					select concat_ws(' ', (select md5(string_agg(concat(id, name, zone), ',' order by id)) from accounts.person),
						(select count(*) from accounts.token), (select count(*) from feeds.feed),
						(select count(*) from quick.calendar), (select count(*) from register.site),
						(select md5(string_agg(w::text, ',' order by w::text)) from reminders.wishes w),
						(select md5(string_agg(w::text, ',' order by w::text)) from reminders.wish w))
					""")
			.query(String.class)
			.single();
	}

	private List<Form> formsAboutAPerson(Site like) {
		List<Form> forms = new ArrayList<>();
		String name = this.database.sql("select name from accounts.person where id = ?")
			.param(this.person.value())
			.query(String.class)
			.single();
		String pause = LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC).plusDays(9).toString();
		forms.add(new Form("/me", map("name", name, "zone", "America/Chicago"), Set.of("name"), Set.of()));
		forms.add(new Form("/me/tokens", map("name", "a program", "scope", "read", "days", "30"), Set.of("name"),
				Set.of()));
		forms.add(new Form("/reminders",
				map("morning", "06:30", "pausedUntil", pause, "outlookDay", "sunday", "quietFrom", "21:00", "quietTo",
						"06:00", "urgentAnyway", "true", "language", "en", "units", "both", "mail-to-do", "morning",
						"mail-to-do-ahead", "2"),
				Set.of(), Set.of()));
		forms.add(new Form("/subscribe", map("what", "all", "language", "en", "units", "both", "parts", "tasks",
				"alarm", "08:00", "behind", "30", "ahead", "90"), Set.of(), Set.of()));
		forms.add(new Form("/quick/calendar",
				map("latitude", "" + like.point().latitude(), "longitude", "" + like.point().longitude(), "elevation",
						"200", "unit", "m", "zone", like.zone().getId(), "species", "buxus-sempervirens", "sun",
						"shade", "wind", "sheltered", "soil", "loam", "name", "Quick", "language", "en", "system",
						"both"),
				// The county tells the zone; each field is cut as it comes in.
				Set.of("name"), Set.of("zone", "name")));
		return forms;
	}

	private List<Form> forms(Site site, Planting planting, UUID bed) {
		String at = "/sites/" + site.id();
		String day = LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC).minusDays(3).toString();
		List<Form> forms = new ArrayList<>();
		forms.add(new Form(at + "/plantings/new",
				map("species", "buxus-sempervirens", "label", "box", "count", "2", "plantedOn", "2020-05-01",
						"placement", "ground", "area", "2", "calliper", "20", "pot", "5", "raisedIn", "lamps",
						"lampMicromoles", "100", "lampHours", "12", "bed", bed.toString()),
				Set.of("label", "species"), Set.of()));
		forms.add(new Form("/plantings/" + planting.id() + "/size", map("area", "2", "calliper", "20", "pot", "5",
				"raisedIn", "lamps", "lampMicromoles", "100", "lampHours", "12"), Set.of(), Set.of()));
		forms.add(new Form(at + "/waterings",
				map("planting", planting.id().toString(), "day", day, "amount", "1", "unit", "litres", "area", "20",
						"note", "can", "rootDepthMetres", "0.45", "plantFactor", "0.7"),
				Set.of("note"), Set.of("rootDepthMetres", "plantFactor")));
		forms.add(new Form(at + "/soil-tests",
				map("planting", planting.id().toString(), "day", day, "ph", "7", "ec", "1", "extract",
						"saturated-paste", "sar", "2", "cec", "12", "depth", "15", "drainage", "good", "note",
						"laboratory"),
				Set.of("note"), Set.of()));
		forms.add(new Form(at + "/beds/new",
				map("name", "bed " + this.asked, "sun", "shade", "wind", "sheltered", "flow", "4"), Set.of("name"),
				Set.of()));
		forms.add(new Form("/beds/" + bed, map("name", "first", "sun", "shade", "wind", "sheltered", "flow", "4"),
				Set.of("name"), Set.of()));
		forms.add(new Form(at + "/place",
				map("latitude", "" + site.point().latitude(), "longitude", "" + site.point().longitude(),
						"elevationMetres", "200", "lie", "flat", "measuredOffsetCelsius", "1", "region", "", "flow",
						"12", "county", site.county(), "zone", site.zone().getId(), "soil", "loam"),
				Set.of("county"), Set.of()));
		forms.add(new Form("/sites/new",
				map("name", "Another", "county", site.county(), "latitude", "" + site.point().latitude(), "longitude",
						"" + site.point().longitude(), "elevationMetres", "200", "zone", site.zone().getId(), "soil",
						"loam", "sun", "shade", "wind", "exposed", "lie", "flat", "measuredOffsetCelsius", "1",
						"region", "", "flow", "12"),
				Set.of("name", "county"), Set.of()));
		forms.add(new Form(at + "/log", map("planting", planting.id().toString(), "work", "mulch", "day", day, "amount",
				"2", "unit", "litres", "area", "3", "note", "done"), Set.of("note"), Set.of("area")));
		forms.add(new Form(at + "/observations",
				map("what", "phase:bloom-end", "planting", planting.id().toString(), "day", day), Set.of(), Set.of()));
		forms.add(new Form(at + "/thermometer", map("go", "compare", "readings", day + " 2.5", "unit", "C"), Set.of(),
				Set.of("unit")));
		forms.add(new Form(at + "/plantings/several",
				map("go", "look", "text", "12 common boxwood, hedge, 2019-05-01", "usual", "2020", "order", "day-first",
						"count-1", "3", "label-1", "box", "planted-1", "2019", "placement-1", "ground", "area-1", "2"),
				Set.of("text", "label-1"),
				Set.of("text", "usual", "order", "count-1", "label-1", "planted-1", "placement-1", "area-1")));
		return forms;
	}

	private static Map<String, String> map(String... pairs) {
		Map<String, String> map = new LinkedHashMap<>();
		for (int i = 0; i < pairs.length; i += 2) {
			map.put(pairs[i], pairs[i + 1]);
		}
		return map;
	}

}
