package org.leafward.reminders.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.reminders.TaskFixture.ADA;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.Mockito.doAnswer;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.measure.BadInput;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.reminders.ChannelFixture;
import org.leafward.reminders.HowToTell;
import org.leafward.reminders.Manner;
import org.leafward.reminders.Series;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wish;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.channel.Channel;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.WebMvcTest;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.http.MediaType;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

@WebMvcTest(RemindersApi.class)
@Import(Me.class)
@AutoConfigureMockMvc(addFilters = false)
class RemindersApiTests {

	private static final JsonMapper JSON = new JsonMapper();

	@Autowired
	private MockMvcTester mvc;

	@MockitoBean
	private Viewers viewers;

	@MockitoBean
	private People people;

	@MockitoBean
	private HowToTell howToTell;

	@MockitoBean
	private Coming coming;

	private Wishes kept = Wishes.USUAL;

	@TestConfiguration
	static class Ways {

		@Bean
		Clock clock() {
			return Clock.fixed(Instant.parse("2026-11-13T03:00:00Z"), ZoneOffset.UTC);
		}

		@Bean
		Channel push() {
			return new ChannelFixture("push", "Push messages", Set.of());
		}

		@Bean
		Channel mail() {
			return new ChannelFixture("mail", "E-mail", Set.of(ADA));
		}

	}

	/** Wishes are kept here as the real service keeps them. */
	@BeforeEach
	void ada() {
		when(this.people.find(ADA))
			.thenReturn(Optional.of(new Person(ADA, "Ada", "ada@example.org", ZoneId.of("America/Chicago"))));
		when(this.viewers.current()).thenReturn(new Viewer(ADA.value(), "Ada", false, false));
		when(this.howToTell.of(ADA)).thenAnswer((call) -> this.kept);
		doAnswer((call) -> this.kept = leaving(call.getArgument(1), this.kept.stopped())).when(this.howToTell)
			.save(eq(ADA), any());
		doAnswer((call) -> this.kept = call.getArgument(1)).when(this.howToTell).saveAll(eq(ADA), any());
	}

	private static Wishes leaving(Wishes wishes, Map<String, Set<Series>> stopped) {
		return new Wishes(wishes.speech(), wishes.morning(), wishes.outlookDay(), wishes.quiet(), wishes.urgentAnyway(),
				wishes.pausedUntil(), wishes.chosen(), stopped);
	}

	private JsonNode get() throws Exception {
		MvcTestResult result = this.mvc.get().uri("/api/v1/reminders").exchange();
		assertThat(result).hasStatusOk();
		return JSON.readTree(result.getResponse().getContentAsString());
	}

	private MvcTestResult put(String body) {
		return this.mvc.put().uri("/api/v1/reminders").contentType(MediaType.APPLICATION_JSON).content(body).exchange();
	}

	@Test
	void tellsWhatIsUsualToo() throws Exception {
		JsonNode all = get();
		assertThat(all.path("morning").stringValue()).isEqualTo("07:00");
		assertThat(all.path("outlookDay").stringValue()).isEqualTo("monday");
		assertThat(all.path("pausedUntil").isNull()).isTrue();
		assertThat(all.path("channels").path("mail").path("tonight").path("manner").stringValue()).isEqualTo("single");
		assertThat(all.path("channels").path("push").size()).isEqualTo(Topic.values().length);
		assertThat(all.path("stopped").isEmpty()).isTrue();
	}

	@Test
	void whatItTellsCanBeSentBack() throws Exception {
		String body = """
				{"language": "es", "units": "us", "morning": "05:30", "outlookDay": "friday", "quietFrom": "23:00",
				 "quietTo": "05:15", "urgentAnyway": false, "pausedUntil": "2026-11-13",
				 "channels": {"mail": {"to-do": {"manner": "single", "leadDays": 3}, "ramp": {"leadDays": "2"}},
				              "push": {"tonight": {"manner": "off"}}},
				 "stopped": {"mail": ["outlook", "single"]}}""";
		assertThat(put(body)).hasStatusOk();
		Wishes first = this.kept;
		assertThat(first.of("mail", Topic.TO_DO)).isEqualTo(new Wish(Manner.SINGLE, 3));
		assertThat(first.of("mail", Topic.RAMP)).isEqualTo(new Wish(Manner.MORNING, 2));
		assertThat(first.of("push", Topic.TONIGHT).manner()).isEqualTo(Manner.OFF);
		assertThat(first.pausedUntil()).isEqualTo(LocalDate.of(2026, 11, 13));
		assertThat(first.stopped()).isEqualTo(Map.of("mail", Set.of(Series.OUTLOOK, Series.SINGLE)));
		JsonNode told = get();
		this.kept = Wishes.USUAL;
		MvcTestResult again = put(told.toString());
		assertThat(again).hasStatusOk();
		assertThat(this.kept).isEqualTo(first);
		assertThat(JSON.readTree(again.getResponse().getContentAsString())).isEqualTo(told);
	}

	@Test
	void noQuietHoursCanBeSentBackToo() throws Exception {
		assertThat(put("{\"quietFrom\": \"\", \"quietTo\": \"\"}")).hasStatusOk();
		Wishes none = this.kept;
		assertThat(none.quiet().from()).isEqualTo(none.quiet().to());
		assertThat(put(get().toString())).hasStatusOk();
		assertThat(this.kept).isEqualTo(none);
	}

	@Test
	void whatIsLeftOutIsAsUsualButLeftSeriesStayLeft() {
		this.kept = leaving(Wishes.USUAL, Map.of("mail", Set.of(Series.OUTLOOK)));
		assertThat(put("{}")).hasStatusOk();
		assertThat(this.kept).isEqualTo(leaving(Wishes.USUAL, Map.of("mail", Set.of(Series.OUTLOOK))));
		assertThat(put("{\"stopped\": {}}")).hasStatusOk();
		assertThat(this.kept).isEqualTo(Wishes.USUAL);
	}

	@Test
	void nullsAreLeftOut() {
		assertThat(put("{\"morning\": null, \"channels\": {\"mail\": null, \"push\": {\"to-do\": null}}, "
				+ "\"stopped\": {\"mail\": null}}"))
			.hasStatusOk();
		assertThat(this.kept.chosen()).isEmpty();
		assertThat(this.kept.morning()).isEqualTo(Wishes.USUAL.morning());
	}

	@ParameterizedTest
	@ValueSource(strings = { "{\"morning\": \"7\"}", "{\"channels\": {\"fax\": {}}}",
			"{\"channels\": {\"mail\": {\"sky\": {}}}}", "{\"channels\": {\"mail\": {\"to-do\": {\"leadDays\": 15}}}}",
			"{\"channels\": {\"mail\": {\"tonight\": {\"manner\": \"weekly\"}}}}", "{\"stopped\": {\"mail\": [\"x\"]}}",
			"{\"stopped\": {\"mail\": [null]}}", "{\"stopped\": {\"fax\": []}}", "{\"pausedUntil\": \"2026-11-12\"}",
			"{\"urgentAnyway\": \"perhaps\"}", "{\"channels\": 3}", "[]", "{", "" })
	void whatCantBeUsedIsRefusedAndNothingIsKept(String body) {
		MvcTestResult result = put(body);
		assertThat(result).hasStatus(400);
		verify(this.howToTell, never()).save(any(), any());
		verify(this.howToTell, never()).saveAll(any(), any());
	}

	@Test
	void allThatIsWrongIsToldAtOnce() throws Exception {
		MvcTestResult result = put(
				"""
						{"morning": "x", "channels": {"fax": {}, "mail": {"to-do": {"manner": "x"}}}, "stopped": {"mail": ["x"]}}
						""");
		assertThat(result.getResponse().getContentAsString()).contains("no time of day", "no channel here",
				"no way to be told", "no series");
	}

	@Test
	void tellsWhatComesNext() throws Exception {
		Coming.Upcoming one = new Coming.Upcoming(Instant.parse("2026-11-16T13:00:00Z"), "mail", "to-do",
				TaskFixture.id("task"), "Water", "hedge", "Elm Street", LocalDate.of(2026, 11, 16));
		when(this.coming.of(ADA, 50)).thenReturn(List.of(one));
		MvcTestResult result = this.mvc.get().uri("/api/v1/reminders/upcoming").exchange();
		assertThat(result).hasStatusOk();
		JsonNode first = JSON.readTree(result.getResponse().getContentAsString()).get(0);
		assertThat(first.path("dueAt").stringValue()).isEqualTo("2026-11-16T13:00:00Z");
		assertThat(first.path("firstDay").stringValue()).isEqualTo("2026-11-16");
		assertThat(first.path("title").stringValue()).isEqualTo("Water");
	}

	@Test
	void aLimitThatIsNoneIsRefused() {
		when(this.coming.of(ADA, 0)).thenThrow(new BadInput("limit 0 is not 1 to 200", "limit", "ask for fewer"));
		assertThat(this.mvc.get().uri("/api/v1/reminders/upcoming?limit=0").exchange()).hasStatus(400);
	}

	@Test
	void theOperatorTokenHasNoReminders() {
		when(this.viewers.current()).thenReturn(new Viewer(null, "Operator", true, false));
		assertThat(this.mvc.get().uri("/api/v1/reminders").exchange()).hasStatus(404);
		assertThat(put("{\"morning\": \"x\"}")).hasStatus(404);
		assertThat(this.mvc.get().uri("/api/v1/reminders/upcoming").exchange()).hasStatus(404);
	}

}
