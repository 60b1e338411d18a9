package org.leafward.reminders.web;

import java.io.InputStream;
import java.time.Instant;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.reminders.Suppressed;
import org.leafward.reminders.Suppressions;
import org.leafward.reminders.channel.mail.Bounces;
import org.leafward.reminders.channel.mail.MailDoctor;
import org.leafward.reminders.channel.mail.MailFinding;
import org.leafward.reminders.channel.mail.MailFinding.Level;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.WebMvcTest;
import org.springframework.http.MediaType;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.assertj.MockMvcTester;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyInt;
import static org.mockito.Mockito.doThrow;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

@WebMvcTest({ MailCheckPage.class, BouncesApi.class })
@AutoConfigureMockMvc(addFilters = false)
class MailCheckPageTests {

	@Autowired
	private MockMvcTester mvc;

	@MockitoBean
	private MailDoctor doctor;

	@MockitoBean
	private Suppressions suppressions;

	@MockitoBean
	private Bounces bounces;

	@MockitoBean
	private Viewers viewers;

	@BeforeEach
	void open() {
		when(this.viewers.current()).thenReturn(new Viewer(null, "Operator", true, false));
		when(this.doctor.settings()).thenReturn(List.of(new MailFinding(Level.BAD, "Sender", "Nobody takes <it>.")));
		when(this.doctor.outside()).thenReturn(List.of(new MailFinding(Level.GOOD, "Connection", "It answers.")));
		when(this.suppressions.list(anyInt(), anyInt())).thenReturn(
				List.of(new Suppressed("ada@example.org", "550 5.1.1 gone", Instant.parse("2026-11-12T06:00:00Z"))));
	}

	@Test
	void openingItAsksNobody() throws Exception {
		Document page = Jsoup.parse(this.mvc.get().uri("/mail-check").exchange().getResponse().getContentAsString());
		assertThat(page.select(".facts dd").eachText()).containsExactly("must be mended: Nobody takes <it>.");
		assertThat(page.select(".records h3").eachText()).containsExactly("ada@example.org");
		assertThat(page.select(".records p").text()).contains("Since 12 Nov 2026: 550 5.1.1 gone");
		verify(this.doctor, never()).outside();
	}

	@Test
	void lookingFurtherAsksOthers() throws Exception {
		Document page = Jsoup.parse(this.mvc.post().uri("/mail-check").exchange().getResponse().getContentAsString());
		assertThat(page.select(".facts dt").eachText()).containsExactly("Sender", "Connection");
	}

	@Test
	void anAddressIsWrittenToAgain() {
		assertThat(this.mvc.post().uri("/mail-check/lifted").param("address", "ada@example.org")).hasStatus(302);
		verify(this.suppressions).lift("ada@example.org");
		doThrow(new NotThere("no")).when(this.suppressions).lift("ben@example.org");
		assertThat(this.mvc.post().uri("/mail-check/lifted").param("address", "ben@example.org")).hasStatus(404);
		assertThat(this.mvc.post().uri("/mail-check/lifted")).hasStatus(400);
	}

	/** As a mail server's pipe sends it by curl, which calls it a form. */
	@Test
	void aReportIsReadWhateverItIsCalled() throws Exception {
		when(this.bounces.read(any(InputStream.class))).thenAnswer((call) -> {
			assertThat(new String(call.getArgument(0, InputStream.class).readAllBytes())).isEqualTo("To: x=1&y");
			return Bounces.Bounce.NO_REPORT;
		});
		for (MediaType type : List.of(MediaType.APPLICATION_FORM_URLENCODED,
				MediaType.parseMediaType("message/rfc822"))) {
			assertThat(this.mvc.post().uri("/api/v1/reminders/bounces").contentType(type).content("To: x=1&y"))
				.hasStatusOk()
				.bodyJson()
				.extractingPath("$.result")
				.isEqualTo("no-report");
		}
		when(this.bounces.read(any(InputStream.class)))
			.thenThrow(new BadInput("too long", "request body", "shorten it"));
		assertThat(this.mvc.post().uri("/api/v1/reminders/bounces").content("x")).hasStatus(400);
	}

}
