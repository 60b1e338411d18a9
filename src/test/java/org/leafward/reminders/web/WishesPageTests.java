package org.leafward.reminders.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.reminders.TaskFixture.ADA;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyInt;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.reminders.ChannelFixture;
import org.leafward.reminders.HowToTell;
import org.leafward.reminders.Manner;
import org.leafward.reminders.QuietHours;
import org.leafward.reminders.Series;
import org.leafward.reminders.Suppressed;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wish;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.channel.Channel;
import org.mockito.ArgumentCaptor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.WebMvcTest;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

@WebMvcTest(WishesPage.class)
@Import(Me.class)
@AutoConfigureMockMvc(addFilters = false)
class WishesPageTests {

	private static final PersonId BEN = new PersonId(TaskFixture.id("ben"));

	private static final PersonId CLEO = new PersonId(TaskFixture.id("cleo"));

	/** In Chicago it is still the day before. */
	private static final Instant NOW = Instant.parse("2026-11-13T03:00:00Z");

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

	@TestConfiguration
	static class Ways {

		@Bean
		Clock clock() {
			return Clock.fixed(NOW, ZoneOffset.UTC);
		}

		@Bean
		Channel webhook() {
			return new ChannelFixture("webhook", "Webhook", Set.of());
		}

		@Bean
		Channel push() {
			return new ChannelFixture("push", "Push messages", Set.of(BEN));
		}

		@Bean
		Channel mail() {
			return new ChannelFixture("mail", "E-mail", Set.of(ADA, BEN));
		}

	}

	@BeforeEach
	void people() {
		when(this.people.find(any(PersonId.class))).thenReturn(Optional.empty());
		person(new Person(ADA, "Ada", "ada@example.org", ZoneId.of("America/Chicago")));
		person(new Person(BEN, "Ben", "ben@example.org", ZoneId.of("Europe/Berlin")));
		person(new Person(CLEO, "Cleo", null, ZoneOffset.UTC, false));
		when(this.howToTell.of(any())).thenReturn(Wishes.USUAL);
		when(this.howToTell.silence(any())).thenReturn(Optional.empty());
		when(this.coming.of(any(), anyInt())).thenReturn(List.of());
		looks(ADA);
	}

	private void person(Person person) {
		when(this.people.find(person.id())).thenReturn(Optional.of(person));
	}

	private void looks(PersonId person) {
		when(this.viewers.current()).thenReturn(new Viewer(person.value(), "somebody", false, false));
	}

	private Document page() throws Exception {
		MvcTestResult result = this.mvc.get().uri("/reminders").exchange();
		assertThat(result).hasStatusOk();
		return Jsoup.parse(result.getResponse().getContentAsString());
	}

	private MvcTestResult send(Map<String, String> fields) {
		var request = this.mvc.post().uri("/reminders");
		fields.forEach(request::param);
		return request.exchange();
	}

	private Wishes kept(PersonId person) {
		ArgumentCaptor<Wishes> kept = ArgumentCaptor.forClass(Wishes.class);
		verify(this.howToTell).save(eq(person), kept.capture());
		return kept.getValue();
	}

	/** What a browser would send from the form. */
	private static Map<String, String> fields(Document page) {
		Map<String, String> fields = new HashMap<>();
		Element form = page.selectFirst("form[action=/reminders]");
		form.select("select").forEach((one) -> fields.put(one.attr("name"), one.select("[selected]").val()));
		form.select("input:not([type=checkbox])").forEach((one) -> fields.putIfAbsent(one.attr("name"), one.val()));
		form.select("input[type=checkbox][checked]").forEach((one) -> fields.put(one.attr("name"), one.val()));
		return fields;
	}

	@Test
	void aNewcomerSeesWhatIsUsualAndThreeThingsToChoose() throws Exception {
		Document page = page();
		assertThat(page.select("p.lead").text()).contains("one mail a day at most", "Before a frost there is one more");
		assertThat(page.select(".problem, .caution, .note")).isEmpty();
		Element form = page.selectFirst("form[action=/reminders]");
		assertThat(form.select("> .pair input").eachAttr("name")).containsExactly("morning", "pausedUntil");
		assertThat(form.select("> fieldset select").eachAttr("name")).containsExactly("mail-to-do", "mail-hold-off",
				"mail-ramp", "mail-look-for", "mail-tonight", "mail-change", "mail-advisory", "mail-outlook");
		// All the rest is folded away.
		assertThat(form.select("details[open]")).isEmpty();
		assertThat(form.select("details input[name=quietFrom], details select[name=language]")).hasSize(2);
		assertThat(form.select("#morning").val()).isEqualTo("07:00");
		assertThat(page.select("#mail-tonight option").eachAttr("value")).containsExactly("off", "morning", "single");
		assertThat(page.select("#mail-tonight option[selected]").val()).isEqualTo("single");
		assertThat(page.select("a[href=/outbox]")).isNotEmpty();
	}

	@Test
	void whatIsShownCanBeSentBackAsItIs() throws Exception {
		Wishes own = new Wishes(Wishes.USUAL.speech(), LocalTime.of(5, 30), DayOfWeek.SATURDAY,
				new QuietHours(LocalTime.of(23, 0), LocalTime.of(5, 0)), false, LocalDate.of(2026, 12, 1),
				Map.of("mail", Map.of(Topic.TO_DO, new Wish(Manner.SINGLE, 3))), Map.of());
		when(this.howToTell.of(ADA)).thenReturn(own);
		MvcTestResult result = send(fields(page()));
		assertThat(result).hasStatus(302).hasRedirectedUrl("/reminders?saved");
		assertThat(kept(ADA)).isEqualTo(own);
	}

	@Test
	void noQuietHoursStayNone() throws Exception {
		Wishes own = new Wishes(Wishes.USUAL.speech(), LocalTime.of(7, 0), DayOfWeek.MONDAY,
				new QuietHours(LocalTime.MIDNIGHT, LocalTime.MIDNIGHT), true, null, Map.of(), Map.of());
		when(this.howToTell.of(ADA)).thenReturn(own);
		send(fields(page()));
		assertThat(kept(ADA)).isEqualTo(own);
	}

	@Test
	void aChannelThatIsNotOnThePageKeepsItsChoices() throws Exception {
		Map<String, Map<Topic, Wish>> chosen = Map.of("push", Map.of(Topic.TO_DO, Wish.of(Manner.OFF)));
		Wishes own = new Wishes(Wishes.USUAL.speech(), LocalTime.of(7, 0), DayOfWeek.MONDAY, QuietHours.USUAL, true,
				null, chosen, Map.of("mail", Set.of(Series.OUTLOOK)));
		when(this.howToTell.of(ADA)).thenReturn(own);
		Document page = page();
		assertThat(page.select("[name^=push-]")).isEmpty();
		Map<String, String> fields = fields(page);
		fields.put("mail-to-do", "off");
		send(fields);
		assertThat(kept(ADA).chosen())
			.isEqualTo(Map.of("push", chosen.get("push"), "mail", Map.of(Topic.TO_DO, Wish.of(Manner.OFF))));
	}

	@Test
	void aChannelThatReachesThePersonCanBeChosenFor() throws Exception {
		looks(BEN);
		Document page = page();
		assertThat(page.select("details select[name^=push-]")).hasSize(Topic.values().length);
		assertThat(page.select("select[name^=webhook-]")).isEmpty();
		assertThat(page.select("a[href=/reminders/push]")).isNotEmpty();
		assertThat(page.select("li:has(a[href=/reminders/webhook])").text()).isEqualTo("Webhook, not set up");
		Map<String, String> fields = fields(page);
		fields.put("push-to-do", "single");
		fields.put("push-to-do-ahead", "2");
		send(fields);
		assertThat(kept(BEN).chosen()).isEqualTo(Map.of("push", Map.of(Topic.TO_DO, new Wish(Manner.SINGLE, 2))));
	}

	@Test
	void allWrongFieldsAreToldAndNothingIsLost() throws Exception {
		MvcTestResult result = send(Map.of("morning", "7", "pausedUntil", "2026-11-12", "mail-to-do", "x",
				"mail-ramp-ahead", "99", "quietFrom", "22:00", "quietTo", "", "language", "xx", "mail-change", "off"));
		assertThat(result).hasStatus(400);
		Document page = Jsoup.parse(result.getResponse().getContentAsString());
		assertThat(page.select(".problem a").eachAttr("href")).containsExactlyInAnyOrder("#morning", "#pausedUntil",
				"#mail-to-do", "#mail-ramp-ahead", "#quietTo", "#language");
		for (String link : page.select(".problem a").eachAttr("href")) {
			Element field = page.getElementById(link.substring(1));
			assertThat(field.attr("aria-invalid")).isEqualTo("true");
			assertThat(field.parents().is("details:not([open])")).as(link).isFalse();
		}
		assertThat(page.getElementById("morning").val()).isEqualTo("7");
		assertThat(page.getElementById("mail-ramp-ahead").val()).isEqualTo("99");
		assertThat(page.select("#mail-change [selected]").val()).isEqualTo("off");
		verify(this.howToTell, never()).save(any(), any());
	}

	/** Chicago is six hours behind UTC in November, Berlin one ahead. */
	@Test
	void aPauseBeginsFromTheDayWhereThePersonIs() {
		assertThat(send(Map.of("pausedUntil", "2026-11-13"))).hasStatus(302);
		assertThat(kept(ADA).pausedUntil()).isEqualTo(LocalDate.of(2026, 11, 13));
		looks(BEN);
		assertThat(send(Map.of("pausedUntil", "2026-11-13"))).hasStatus(400);
		assertThat(send(Map.of("pausedUntil", "2026-11-14"))).hasStatus(302);
	}

	@ParameterizedTest
	@CsvSource({ "2026-11-12, false", "2026-11-13, true" })
	void aPauseIsShownUntilItIsOver(LocalDate until, boolean shown) throws Exception {
		when(this.howToTell.of(ADA)).thenReturn(new Wishes(Wishes.USUAL.speech(), LocalTime.of(7, 0), DayOfWeek.MONDAY,
				QuietHours.USUAL, true, until, Map.of(), Map.of()));
		Document page = page();
		assertThat(page.select("form[action=/reminders/pause/end] button")).hasSize(shown ? 1 : 0);
		assertThat(page.getElementById("pausedUntil").val()).isEqualTo(shown ? until.toString() : "");
		assertThat(this.mvc.post().uri("/reminders/pause/end").exchange()).hasStatus(302);
		verify(this.howToTell).endPause(ADA);
	}

	@ParameterizedTest
	@EnumSource(Series.class)
	void aSeriesThatWasLeftCanBeHadAgain(Series series) throws Exception {
		when(this.howToTell.of(ADA)).thenReturn(new Wishes(Wishes.USUAL.speech(), LocalTime.of(7, 0), DayOfWeek.MONDAY,
				QuietHours.USUAL, true, null, Map.of(), Map.of("mail", Set.of(series))));
		Element form = page().selectFirst("form[action=/reminders/resume]");
		assertThat(form.select("input[name=channel]").val()).isEqualTo("mail");
		assertThat(form.select("input[name=series]").val()).isEqualTo(series.code());
		assertThat(form.select("button .unseen").text()).startsWith(": E-mail: ");
		assertThat(this.mvc.post()
			.uri("/reminders/resume")
			.param("channel", "mail")
			.param("series", series.code())
			.exchange()).hasStatus(302);
		verify(this.howToTell).resume(ADA, "mail", series);
	}

	@Test
	void aSeriesThatIsNoneIsNotThere() {
		assertThat(this.mvc.post().uri("/reminders/resume").param("channel", "mail").param("series", "x").exchange())
			.hasStatus(404);
		verify(this.howToTell, never()).resume(any(), any(), any());
	}

	@Test
	void saysWhenNobodyWouldTellOfFrost() throws Exception {
		assertThat(page().select(".caution")).isEmpty();
		when(this.howToTell.of(ADA)).thenReturn(choosing(Map.of("mail", Map.of(Topic.TONIGHT, Wish.of(Manner.OFF)))));
		assertThat(page().select(".caution").text()).contains("a night that kills");
		looks(BEN);
		when(this.howToTell.of(BEN)).thenReturn(choosing(Map.of("mail", Map.of(Topic.TONIGHT, Wish.of(Manner.OFF)))));
		assertThat(page().select(".caution")).as("push tells of it").isEmpty();
	}

	private static Wishes choosing(Map<String, Map<Topic, Wish>> chosen) {
		return new Wishes(Wishes.USUAL.speech(), LocalTime.of(7, 0), DayOfWeek.MONDAY, QuietHours.USUAL, true, null,
				chosen, Map.of());
	}

	@Test
	void saysWhenTheMorningIsQuiet() throws Exception {
		when(this.howToTell.of(ADA)).thenReturn(new Wishes(Wishes.USUAL.speech(), LocalTime.of(5, 0), DayOfWeek.MONDAY,
				QuietHours.USUAL, true, null, Map.of(), Map.of()));
		assertThat(page().getElementById("morning-hint").text()).contains("quiet hours", "06:00");
	}

	@Test
	void saysWhyNoMailComes() throws Exception {
		looks(CLEO);
		assertThat(page().select(".caution").first().text()).isEqualTo("You gave no address, so no mail goes to you.");
		person(new Person(CLEO, "Cleo", "cleo@example.org", ZoneOffset.UTC, false));
		assertThat(page().select(".caution").first().text()).startsWith("No mail goes to cleo@example.org before");
	}

	@Test
	void saysWhenTheAddressIsDeadAndWhatToDo() throws Exception {
		assertThat(page().select("form[action=/reminders/address/again]")).isEmpty();
		Suppressed dead = new Suppressed("ada@example.org", "550 <no>", Instant.parse("2026-11-02T03:00:00Z"));
		when(this.howToTell.silence(any())).thenReturn(Optional.of(dead));
		Document page = page();
		// In Chicago it was still the first.
		assertThat(page.select(".caution").text()).contains("ada@example.org", "Sun 1 Nov 2026", "550 <no>");
		assertThat(page.select("form[action=/reminders/address/again] button")).hasSize(1);
		assertThat(this.mvc.post().uri("/reminders/address/again").exchange()).hasStatus(302);
		verify(this.howToTell).mailAgain(any());
	}

	@Test
	void showsWhatComesNextInThePersonsZone() throws Exception {
		UUID task = TaskFixture.id("task");
		Instant due = Instant.parse("2026-11-16T13:00:00Z");
		when(this.coming.of(eq(ADA), anyInt())).thenReturn(List.of(
				new Coming.Upcoming(due, "mail", "to-do", task, "<b>Water", "hedge", "Elm Street",
						LocalDate.of(2026, 11, 16)),
				new Coming.Upcoming(due, "mail", "change", task, "Mulch", "hedge", "Elm Street",
						LocalDate.of(2026, 11, 16)),
				new Coming.Upcoming(due, "mail", "outlook", null, null, null, null, LocalDate.of(2026, 11, 16)),
				new Coming.Upcoming(due.plusSeconds(60), "gone", "to-do", task, "Mulch", "hedge", "Elm Street",
						LocalDate.of(2026, 11, 16))));
		Document page = page();
		assertThat(page.select(".dates > li")).hasSize(2);
		assertThat(page.select(".dates time").eachText()).containsExactly("Mon 16 Nov, 07:00", "Mon 16 Nov, 07:01");
		assertThat(page.select(".dates > li").first().select("p").eachText()).containsExactly(
				"<b>Water hedge, Elm Street", "Moved or fallen away: Mulch hedge, Elm Street", "The weekly outlook");
		assertThat(page.select(".dates a").first().attr("href")).isEqualTo("/tasks/" + task);
	}

	@Test
	void theOperatorTokenHasNoReminders() {
		when(this.viewers.current()).thenReturn(new Viewer(null, "Operator", true, false));
		assertThat(this.mvc.get().uri("/reminders").exchange()).hasStatus(404);
		assertThat(send(Map.of("morning", "x"))).hasStatus(404);
		assertThat(this.mvc.post().uri("/reminders/pause/end").exchange()).hasStatus(404);
		verify(this.howToTell, never()).endPause(any());
	}

}
