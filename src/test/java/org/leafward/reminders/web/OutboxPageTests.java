package org.leafward.reminders.web;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.accounts.OtherMails;
import org.leafward.accounts.OtherMails.Letter;
import org.leafward.accounts.OtherMails.Standing;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageFixture;
import org.leafward.reminders.MessagePage;
import org.leafward.reminders.MessageState;
import org.leafward.reminders.Outbox;
import org.leafward.reminders.TaskFixture;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.WebMvcTest;
import org.springframework.context.annotation.Bean;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.reminders.TaskFixture.ADA;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.when;

@WebMvcTest(OutboxPage.class)
@AutoConfigureMockMvc(addFilters = false)
class OutboxPageTests {

	private static final Viewer ADA_LOOKS = new Viewer(ADA.value(), "Ada", false, false);

	private static final Viewer OPERATOR = new Viewer(null, "Operator", true, false);

	private static final Viewer BEN_LOOKS = new Viewer(TaskFixture.id("ben"), "Ben", false, false);

	private static final Viewer STRANGER = new Viewer(null, "", false, false);

	@Autowired
	private MockMvcTester mvc;

	@MockitoBean
	private Outbox outbox;

	@MockitoBean
	private OtherMails others;

	@MockitoBean
	private Viewers viewers;

	@MockitoBean
	private People people;

	@TestConfiguration
	static class Time {

		@Bean
		Clock clock() {
			return Clock.fixed(Instant.parse("2026-11-12T12:00:00Z"), ZoneOffset.UTC);
		}

	}

	@BeforeEach
	void adaHasAMail() {
		Person ada = new Person(ADA, "Ada", "ada@example.org", ZoneId.of("America/Chicago"));
		when(this.people.find(any(PersonId.class))).thenReturn(Optional.empty());
		when(this.people.find(ADA)).thenReturn(Optional.of(ada));
		Message mail = mail(MessageState.KEPT);
		when(this.outbox.find(any())).thenReturn(Optional.empty());
		when(this.outbox.find(mail.id())).thenReturn(Optional.of(mail));
		when(this.outbox.ofPerson(ADA, 0, 25)).thenReturn(new MessagePage(List.of(mail), 0, true));
		when(this.outbox.all(1, 25)).thenReturn(new MessagePage(List.of(mail), 1, false));
	}

	private static Message mail(MessageState state) {
		return MessageFixture.at(
				MessageFixture.mail("mail",
						MessageFixture.words("Thu 12 Nov: <b>Water</b>", "One task begins.\n<script>", "<p>html</p>")),
				state, Instant.parse("2026-11-12T13:00:00Z"));
	}

	/** Its links let whoever has them act in Ada's name. */
	@Test
	void whoRunsTheServerCannotActForWhomAMailIs() {
		String link = "https://plants.example.org/r/" + "Ab3_".repeat(11);
		Message mail = MessageFixture.at(
				MessageFixture.mail("linked", MessageFixture.words("Water", "Done: " + link, "<p>html</p>")),
				MessageState.KEPT, Instant.parse("2026-11-12T13:00:00Z"));
		when(this.outbox.find(mail.id())).thenReturn(Optional.of(mail));
		assertThat(get(ADA_LOOKS, "/outbox/" + mail.id())).bodyText().contains(link);
		assertThat(get(OPERATOR, "/outbox/" + mail.id())).bodyText().contains("/r/…").doesNotContain(link);
	}

	/** What other modules wrote is for whom it is to, whoever runs the server. */
	@Test
	void mailsOfOtherModulesAreForTheirReader() throws Exception {
		Letter letter = new Letter(UUID.randomUUID(), ADA, "ada@example.org", "Ada", "Workday <Sat 5 Dec>",
				"Come: https://plants.example.org/answer/secret", Standing.KEPT, "no mail server is set up",
				Instant.parse("2026-11-12T13:00:00Z"));
		when(this.others.newest(ADA, 25)).thenReturn(List.of(letter));
		when(this.others.find(letter.id())).thenReturn(Optional.of(letter));
		assertThat(page(ADA_LOOKS, "/outbox").select("li a[href=/outbox/" + letter.id() + "]").text())
			.contains("Workday <Sat 5 Dec>", "kept here");
		assertThat(page(ADA_LOOKS, "/outbox/" + letter.id()).select("pre").text()).isEqualTo(letter.text());
		for (Viewer viewer : List.of(BEN_LOOKS, OPERATOR, STRANGER)) {
			assertThat(get(viewer, "/outbox/" + letter.id())).hasStatus(404);
		}
	}

	private MvcTestResult get(Viewer viewer, String path) {
		when(this.viewers.current()).thenReturn(viewer);
		return this.mvc.get().uri(path).exchange();
	}

	private Document page(Viewer viewer, String path) throws Exception {
		MvcTestResult result = get(viewer, path);
		assertThat(result).hasStatusOk();
		return Jsoup.parse(result.getResponse().getContentAsString());
	}

	@Test
	void showsAPersonTheirOwnMailsInTheirZone() throws Exception {
		Document page = page(ADA_LOOKS, "/outbox");
		assertThat(page.select("p.lead").text()).isEqualTo("Reminders to you, newest first.");
		assertThat(page.select("li:has(time)")).hasSize(1);
		assertThat(page.select("li:has(time) a").attr("href")).isEqualTo("/outbox/" + mail(MessageState.KEPT).id());
		assertThat(page.select("li:has(time) .pick-name").text()).isEqualTo("Thu 12 Nov: <b>Water</b>");
		// Chicago is at UTC-6 in November (15 U.S.C. 260a, 263).
		assertThat(page.select("li time").text()).startsWith("Thu 12 Nov 2026, 07:00");
		assertThat(page.select("li time").attr("datetime")).isEqualTo("2026-11-12T13:00:00Z");
		assertThat(page.select("a[rel=next]").attr("href")).isEqualTo("/outbox?page=1");
		assertThat(page.select("a[rel=prev]")).isEmpty();
		assertThat(page.text()).doesNotContain("ada@example.org");
	}

	@Test
	void showsAnOperatorEverybodysMails() throws Exception {
		Document page = page(OPERATOR, "/outbox?page=1");
		assertThat(page.select("p.lead").text()).isEqualTo("Reminders to everybody, newest first.");
		assertThat(page.select("li:has(time)").text()).contains("Ada <ada@example.org>");
		assertThat(page.select("a[rel=prev]").attr("href")).isEqualTo("/outbox?page=0");
		assertThat(page.select("a[rel=next]")).isEmpty();
	}

	@Test
	void showsAMailWithItsHeadAndText() throws Exception {
		Document page = page(ADA_LOOKS, "/outbox/" + TaskFixture.id("mail"));
		assertThat(page.select("dt").eachText()).containsExactly("From", "To", "Date", "Message-ID");
		assertThat(page.select("dd").eachText()).contains("Leafward <reminders@example.org>", "Ada <ada@example.org>",
				"<mail@example.org>");
		assertThat(page.select("h1").text()).isEqualTo("Thu 12 Nov: <b>Water</b>");
		assertThat(page.select("pre").first().wholeText()).isEqualTo("One task begins.\n<script>");
		assertThat(page.select("main").text()).contains("kept here, no mail server is set up");
	}

	@Test
	void showsAMailToAnOperator() throws Exception {
		assertThat(page(OPERATOR, "/outbox/" + TaskFixture.id("mail")).select("pre")).hasSize(1);
	}

	@Test
	void anotherPersonsMailIsNotThere() {
		assertThat(get(BEN_LOOKS, "/outbox/" + TaskFixture.id("mail"))).hasStatus(404);
		assertThat(get(STRANGER, "/outbox/" + TaskFixture.id("mail"))).hasStatus(404);
	}

	@Test
	void aStrangerHasNoOutbox() {
		assertThat(get(STRANGER, "/outbox")).hasStatus(404);
	}

	@ParameterizedTest
	@ValueSource(strings = { "nonsense", "1", "00000000-0000-0000-0000-000000000000" })
	void aMailThatIsNoneIsNotThere(String id) {
		assertThat(get(ADA_LOOKS, "/outbox/" + id)).hasStatus(404);
	}

	@ParameterizedTest
	@EnumSource(MessageState.class)
	void hasWordsForEachState(MessageState state) throws Exception {
		UUID id = mail(state).id();
		when(this.outbox.find(id)).thenReturn(Optional.of(mail(state)));
		assertThat(page(ADA_LOOKS, "/outbox/" + id).select("main > p").first().text())
			.isEqualTo("This mail: " + MessageRow.words(state) + ".");
	}

}
