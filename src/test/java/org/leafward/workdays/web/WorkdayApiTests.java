package org.leafward.workdays.web;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalToken;
import org.leafward.accounts.Scope;
import org.leafward.accounts.Secret;
import org.leafward.accounts.signin.PersonalTokens;
import org.leafward.accounts.store.TokenTable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskKind;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.Placement;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.support.DemoServer;
import org.leafward.workdays.GroupDesk;
import org.leafward.workdays.GroupDesk.Told;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.Groups;
import org.leafward.workdays.OnTheDay;
import org.leafward.workdays.PlanTerms;
import org.leafward.workdays.WorkdayDesk;
import org.leafward.workdays.WorkdayDesk.Frame;
import org.leafward.workdays.WorkdayId;
import org.leafward.workdays.WorkdayTask;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.delete;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.put;

/** Groups and workdays as programs see them, with tokens of their people. */
@DemoServer
class WorkdayApiTests {

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	@Autowired
	private MockMvc web;

	@Autowired
	private People people;

	@Autowired
	private TokenTable tokens;

	@Autowired
	private Register register;

	@Autowired
	private TaskCalendar calendar;

	@Autowired
	private GroupDesk desk;

	@Autowired
	private Groups groups;

	@Autowired
	private WorkdayDesk days;

	@Autowired
	private OnTheDay onTheDay;

	private String lead;

	private String member;

	private PersonId leader;

	private GroupId group;

	private LocalDate today;

	@BeforeEach
	void group() {
		this.today = LocalDate.ofInstant(Instant.now(), ZONE);
		this.leader = person("Nora");
		this.lead = token(this.leader);
		this.group = this.desk.make(new Told("Crew", "We dig.", ZONE, "the shed", Set.of(DayOfWeek.SATURDAY),
				LocalTime.of(0, 0), LocalTime.of(12, 0), 1, Set.of(), PlanTerms.USUAL), this.leader);
		PersonId other = person("Ada");
		this.desk.join(this.group, other);
		this.member = token(other);
	}

	private PersonId person(String name) {
		return this.people.join(name + " Trial", UUID.randomUUID() + "@example.org", ZONE).id();
	}

	private String token(PersonId owner) {
		String secret = PersonalTokens.PREFIX + Secret.make();
		Instant now = Instant.now();
		this.tokens.add(new PersonalToken(UUID.randomUUID(), owner, "test", Set.of(Scope.READ, Scope.WRITE),
				now.minusSeconds(60), now.plus(Duration.ofDays(1)), null, null), secret);
		return secret;
	}

	private WorkdayId fixed(LocalDate day) {
		WorkdayId id = this.days.add(this.groups.find(this.group).orElseThrow(),
				new Frame(day, LocalTime.of(9, 0), LocalTime.of(20, 0), "the shed", 1, null));
		this.days.fix(id);
		return id;
	}

	private JsonNode call(MockHttpServletRequestBuilder call, String token, int status) throws Exception {
		MockHttpServletResponse response = this.web
			.perform(call.header("Authorization", "Bearer " + token).contentType(MediaType.APPLICATION_JSON))
			.andReturn()
			.getResponse();
		assertThat(response.getStatus()).as(response.getContentAsString()).isEqualTo(status);
		return JsonMapper.shared().readTree(response.getContentAsString());
	}

	@Test
	void aGroupIsReadByItsMembers() throws Exception {
		String address = "/api/v1/groups/" + this.group;
		JsonNode mine = call(get("/api/v1/groups"), this.member, 200);
		assertThat(mine.size()).isEqualTo(1);
		assertThat(mine.at("/0/name").asString()).isEqualTo("Crew");
		assertThat(mine.at("/0/leads").asBoolean()).isFalse();
		assertThat(mine.at("/0/weekdays/0").asString()).isEqualTo("saturday");
		assertThat(call(get(address), this.lead, 200).at("/leads").asBoolean()).isTrue();
		JsonNode members = call(get(address + "/members"), this.member, 200);
		assertThat(members.at("/0/name").asString()).isEqualTo("Nora Trial");
		assertThat(members.findValues("emergency")).as("nobody's emergency contact").isEmpty();
		assertThat(call(get(address + "/members").param("page", "1").param("size", "1"), this.member, 200).at("/0/name")
			.asString()).isEqualTo("Ada Trial");
		assertThat(call(get(address + "/members").param("page", "2").param("size", "1"), this.member, 200).size())
			.isZero();
		assertThat(call(get(address + "/members").param("size", "1000"), this.member, 400).at("/status").asInt())
			.isEqualTo(400);
		String stranger = token(person("Eve"));
		for (String more : List.of("", "/members", "/sites", "/workdays", "/hours")) {
			call(get(address + more), stranger, 404);
		}
		call(get(address + "/hours"), this.member, 404);
	}

	@Test
	void placesAreTakenAndGivenBack() throws Exception {
		String address = "/api/v1/workdays/" + fixed(this.today.plusDays(9));
		assertThat(call(get("/api/v1/workdays"), this.member, 200).at("/0/mine").isNull()).isTrue();
		assertThat(call(put(address + "/sign-up"), this.member, 200).at("/mine").asString()).isEqualTo("in");
		assertThat(call(put(address + "/sign-up"), this.lead, 200).at("/mine").asString()).isEqualTo("waiting");
		assertThat(
				call(put(address + "/sign-up").content("{\"children\": 1}"), this.lead, 400).at("/detail").asString())
			.contains("guardian");
		JsonNode all = call(get(address + "/sign-ups"), this.lead, 200);
		assertThat(all.size()).isEqualTo(2);
		call(get(address + "/sign-ups"), this.member, 404);
		assertThat(call(delete(address + "/sign-up"), this.member, 200).at("/mine").asString()).isEqualTo("out");
		assertThat(call(get(address), this.lead, 200).at("/mine").asString()).as("moved up").isEqualTo("in");
		assertThat(call(get("/api/v1/workdays"), this.member, 200).at("/0/mine").asString()).isEqualTo("out");
		assertThat(call(get("/api/v1/workdays").param("from", "2026-02-30"), this.member, 400).at("/status").asInt())
			.isEqualTo(400);
		call(get("/api/v1/workdays").param("from", "2026-01-01").param("to", "9999-12-31"), this.member, 400);
	}

	/** What is only proposed is seen by those who lead. */
	@Test
	void proposedDaysAreForThoseWhoLead() throws Exception {
		WorkdayId day = this.days.add(this.groups.find(this.group).orElseThrow(),
				new Frame(this.today.plusDays(9), LocalTime.of(9, 0), LocalTime.of(12, 0), "", 5, null));
		String list = "/api/v1/groups/" + this.group + "/workdays";
		assertThat(call(get(list), this.lead, 200).at("/0/state").asString()).isEqualTo("proposed");
		assertThat(call(get(list), this.member, 200).size()).isZero();
		call(get("/api/v1/workdays/" + day), this.member, 404);
		call(get("/api/v1/workdays/" + day + "/tasks"), this.member, 404);
	}

	@Test
	void tasksAreTickedAndTheTickIsTakenBack() throws Exception {
		Site site = this.register.addSite(this.leader, new NewSite("Park", "Alder County",
				new GeoPoint(42.07, -91.61, 220), ZONE, SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE));
		this.register.addPlantings(site.id(), List.of(new NewPlanting(new SpeciesId("quercus-palustris"), "oak", 1,
				LocalDate.of(1994, 4, 20), Placement.GROUND, false, false)));
		this.desk.give(this.group, site, "");
		CareTask task = this.calendar.ofSite(site.id(), new DayWindow(this.today, this.today.plusYears(1)))
			.stream()
			.filter((one) -> one.kind() == TaskKind.DO)
			.findFirst()
			.orElseThrow();
		WorkdayId day = fixed(this.today);
		this.days.addTask(day, new WorkdayTask(task.id(), site.id(), 45, true, "", 1, 1, false));
		String address = "/api/v1/workdays/" + day;
		JsonNode list = call(get(address + "/tasks"), this.member, 200);
		assertThat(list.size()).isEqualTo(1);
		assertThat(list.at("/0/siteName").asString()).isEqualTo("Park");
		assertThat(list.at("/0/minutes").asInt()).isEqualTo(45);
		String done = address + "/tasks/" + task.id() + "/done";
		assertThat(call(put(done), this.member, 200).at("/done").asBoolean()).isTrue();
		assertThat(call(put(done), this.lead, 200).at("/done").asBoolean()).as("twice is once").isTrue();
		assertThat(call(get(address), this.member, 200).at("/done").asInt()).isEqualTo(1);
		assertThat(call(delete(done), this.lead, 200).at("/done").asBoolean()).isFalse();
		call(put(address + "/tasks/" + UUID.randomUUID() + "/done"), this.member, 404);
		String early = "/api/v1/workdays/" + fixed(this.today.plusDays(3));
		call(put(early + "/tasks/" + task.id() + "/done"), this.member, 404);
		this.onTheDay.hours(day, Map.of(this.leader, 150));
		assertThat(call(get("/api/v1/groups/" + this.group + "/hours"), this.lead, 200).at("/0/minutes").asInt())
			.isEqualTo(150);
		call(get("/api/v1/groups/" + this.group + "/hours").param("year", "1999"), this.lead, 400);
	}

}
