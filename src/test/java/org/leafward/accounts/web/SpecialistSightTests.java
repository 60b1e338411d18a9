package org.leafward.accounts.web;

import jakarta.servlet.http.Cookie;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Role;
import org.leafward.accounts.Roles;
import org.leafward.accounts.signin.SignedIn;
import org.leafward.accounts.web.AccessThings.Having;
import org.leafward.care.CareLog;
import org.leafward.care.TaskId;
import org.leafward.care.WorkDone;
import org.leafward.register.NewWatering;
import org.leafward.register.Waterings;
import org.leafward.support.SettableClock;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.session.Session;
import org.springframework.session.SessionRepository;
import org.springframework.test.web.servlet.MockMvc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

/**
 * What a specialist sees of the sites of their county, what stays with those who look
 * after them, and that each look is noted. The position is 45.037 N, 90.512 W.
 */
@AccessServer
class SpecialistSightTests {

	private static int counter;

	@Autowired
	private MockMvc web;

	@Autowired
	private AccessThings things;

	@Autowired
	private People people;

	@Autowired
	private Roles roles;

	@Autowired
	private CareLog log;

	@Autowired
	private Waterings waterings;

	@Autowired
	private SessionRepository<? extends Session> sessions;

	@Autowired
	private JdbcClient database;

	@Autowired
	private SettableClock clock;

	private PersonId owner;

	private PersonId specialist;

	private Having garden;

	@BeforeEach
	void aGardenWithNotes() {
		this.clock.set(AccessServer.Times.NOW);
		counter++;
		this.owner = this.things.person("Nora Fieldname" + counter);
		this.garden = this.things.of(this.owner);
		LocalDate day = LocalDate.of(2026, 5, 18);
		this.log.done(List.of(new TaskId(this.garden.task())), WorkDone.on(day, "key under the pot"), this.owner);
		this.waterings.record(this.garden.site(), new NewWatering(null, day, 3, "while we are in Rome"), this.owner);
		this.specialist = this.things.person("Odile Marsh" + counter);
		this.roles.grant(this.specialist, Role.SPECIALIST, "alder county");
	}

	private Cookie session(PersonId who) {
		return AccessTests.session(this.sessions,
				SignedIn.person(this.people.find(who).orElseThrow(), this.roles.of(who)));
	}

	private Document page(Cookie session, String path) throws Exception {
		return Jsoup.parse(this.web.perform(get(path).cookie(session)).andReturn().getResponse().getContentAsString());
	}

	private long looks() {
		return this.database.sql(
				"select count(*) from accounts.audit where deed = 'SAW_SITE' and concerns = ? and actor = ? and what = ?")
			.params(this.owner.value(), this.specialist.value(), "site in Alder County")
			.query(Long.class)
			.single();
	}

	@Test
	void nothingOnTheFourPagesTellsWhereOrWho() throws Exception {
		Cookie session = session(this.specialist);
		String site = "/sites/" + this.garden.site();
		for (String path : List.of(site, site + "/weather", site + "/freezes", "/tasks/" + this.garden.task(),
				"/sites/counties")) {
			Document page = page(session, path);
			String all = page.html();
			assertThat(page.title()).as(path).doesNotContain("problem", "not there");
			assertThat(all).as(path)
				.doesNotContain("45.04", "45.037", "90.51", "90.512", "Fieldname", "@example.org", "key under the pot",
						"in Rome", this.owner.toString());
			assertThat(page.select("main").text()).as(path).contains("Nora");
			assertThat(page.select("main form[method=post]")).as(path).isEmpty();
			assertThat(page.select("main a[href$=/log], main a[href$=/place], main a[href$=/new]")).as(path).isEmpty();
		}
		assertThat(page(session, site).text()).contains("45° N, 90.5° W", "lilac");
		// The owner sees all of it.
		Cookie own = session(this.owner);
		assertThat(page(own, site).text()).contains("45.04° N, 90.51° W");
		assertThat(page(own, site + "/weather").text()).contains("in Rome");
		assertThat(page(own, "/tasks/" + this.garden.task()).text()).contains("key under the pot");
	}

	@Test
	void whyATaskIsLeftOutStaysWithItsPeople() throws Exception {
		List<TaskId> task = List.of(new TaskId(this.garden.task()));
		this.log.undo(task, this.owner);
		this.log.skip(task, "the knee hurts", this.owner);
		for (String path : List.of("/sites/" + this.garden.site(), "/tasks/" + this.garden.task())) {
			assertThat(page(session(this.specialist), path).text()).contains("Nora").doesNotContain("the knee hurts");
			assertThat(page(session(this.owner), path).text()).contains("the knee hurts");
		}
	}

	@Test
	void theFirstLookOfASessionOnADayIsNotedAndTheOwnersOwnIsNot() throws Exception {
		Cookie session = session(this.specialist);
		page(session, "/sites/counties");
		assertThat(looks()).as("a list is no look at a site").isZero();
		page(session, "/sites/" + this.garden.site());
		page(session, "/sites/" + this.garden.site() + "/weather");
		page(session, "/tasks/" + this.garden.task());
		assertThat(looks()).isEqualTo(1);
		this.clock.advance(Duration.ofDays(1));
		page(session, "/sites/" + this.garden.site());
		assertThat(looks()).isEqualTo(2);
		page(session(this.specialist), "/sites/" + this.garden.site() + "/freezes");
		assertThat(looks()).as("another session").isEqualTo(3);
		page(session(this.owner), "/sites/" + this.garden.site());
		assertThat(this.database.sql("select count(*) from accounts.audit where actor = ?")
			.param(this.owner.value())
			.query(Long.class)
			.single()).isZero();
	}

	@Test
	void theListHasTheSitesOfTheirCountiesInWhateverCase() throws Exception {
		PersonId elsewhere = this.things.person("Elso Wren" + counter);
		this.roles.grant(elsewhere, Role.SPECIALIST, "Birch County");
		String link = "a[href=/sites/" + this.garden.site() + "]";
		assertThat(page(session(this.specialist), "/sites/counties").select(link)).hasSize(1);
		assertThat(page(session(elsewhere), "/sites/counties").select(link)).isEmpty();
		assertThat(page(session(this.specialist), "/sites").select("a[href=/sites/counties]")).hasSize(1);
		assertThat(page(session(this.owner), "/sites").select("a[href=/sites/counties]")).isEmpty();
	}

}
