package org.leafward.quick.web;

import com.icegreen.greenmail.junit5.GreenMailExtension;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import jakarta.servlet.http.Cookie;
import java.net.URI;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Secret;
import org.leafward.feeds.ical.FeedReading;
import org.leafward.measure.GeoPoint;
import org.leafward.register.NewSite;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.support.TestDatabase;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/** The whole way from a calendar of nobody to its owner, by a real mail. */
@SpringBootTest(properties = { "leafward.rate-limits=false", "spring.quartz.auto-startup=false" })
@AutoConfigureMockMvc
@ContextConfiguration(initializers = TestDatabase.class)
class QuickOwnerTests {

	@RegisterExtension
	static final GreenMailExtension MAIL = new GreenMailExtension(
			new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP))
		.withPerMethodLifecycle(false);

	private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

	private static final Pattern LINK = Pattern.compile("/sign-in/once\\?token=([A-Za-z0-9_-]{43})");

	@Autowired
	private MockMvc web;

	@Autowired
	private People people;

	@Autowired
	private Register register;

	@Autowired
	private JdbcClient database;

	@DynamicPropertySource
	static void mailServer(DynamicPropertyRegistry properties) {
		properties.add("spring.mail.host", () -> "127.0.0.1");
		properties.add("spring.mail.port", () -> MAIL.getSmtp().getPort());
	}

	@Test
	void whoIsKnownAlreadyGetsTheCalendarAndItsAddressGoesOn() throws Exception {
		PersonId perpetua = this.people.join("Perpetua Lisle", "perpetua.lisle@example.org", CHICAGO).id();
		this.people.confirm(perpetua);
		SiteId hers = this.register
			.addSite(perpetua,
					new NewSite("Lisle Acre", "", new GeoPoint(42, -91, 200), CHICAGO, SoilTexture.LOAM, Sun.FULL_SUN,
							Wind.AVERAGE))
			.id();
		Document made = page(200,
				post("/quick/calendar").with(csrf())
					.param("latitude", "42.08")
					.param("longitude", "-91.58")
					.param("elevation", "230")
					.param("zone", "America/Chicago")
					.param("name", "Tansy Bank")
					.param("species", "acer-rubrum", "solanum-lycopersicum"));
		String feed = URI.create(made.getElementById("address").text()).getPath();
		String manage = URI.create(made.select("#manage a").attr("href")).getPath();
		Site site = site(manage);
		PersonId nobody = site.owner();
		List<String> before = entries(feed);
		assertThat(before).isNotEmpty();

		// Whoever manages the calendar types her address in another way than she did.
		assertThat(page(200, post(manage + "/email").with(csrf()).param("email", "Perpetua.Lisle@Example.org")).text())
			.contains("A mail is on its way");
		String secret = secret();
		for (int i = 0; i < 2; i++) {
			page(200, get("/sign-in/once").param("token", secret));
		}
		assertThat(this.register.require(site.id()).owner()).as("looking at the link does nothing").isEqualTo(nobody);
		assertThat(page(200, get(manage)).select("main form")).hasSize(3);

		MockHttpServletResponse in = answer(post("/sign-in/once").with(csrf()).param("token", secret));
		assertThat(in.getRedirectedUrl()).isEqualTo("/");
		assertThat(this.register.require(site.id()).owner()).isEqualTo(perpetua);
		assertThat(this.register.sitesOf(perpetua)).extracting(Site::id).containsExactlyInAnyOrder(hers, site.id());
		assertThat(this.people.find(nobody)).as("one person of two").isEmpty();
		assertThat(entries(feed)).as("programs that subscribed go on").isEqualTo(before);

		Cookie session = in.getCookie("SESSION");
		assertThat(page(200, get("/sites").cookie(session)).text()).contains("Tansy Bank", "Lisle Acre");
		assertThat(page(200, get("/sites/" + site.id()).cookie(session)).text()).contains("red maple", "tomato");
		Document owned = page(200, get(manage));
		assertThat(owned.text()).contains("This calendar has an owner with an e-mail address");
		assertThat(owned.select("main form")).as("its secret opens nothing any more").isEmpty();
		for (String act : List.of("/email", "/address", "/delete")) {
			page(404, post(manage + act).with(csrf()).param("email", "eve@example.org"));
		}
		assertThat(answer(post("/sign-in/once").with(csrf()).param("token", secret)).getRedirectedUrl())
			.isEqualTo("/sign-in?failed");
		assertThat(MAIL.getReceivedMessages()).hasSize(1);

		Document subscribed = page(200, get("/subscribe").cookie(session));
		assertThat(subscribed.text()).contains("Tansy Bank");
		assertThat(answer(post(subscribed.select("form[action$=/stop]").attr("action")).cookie(session).with(csrf()))
			.getStatus()).isEqualTo(302);
		assertThat(answer(get(feed)).getStatus()).as("she can stop it").isEqualTo(410);
	}

	private List<String> entries(String feed) throws Exception {
		MockHttpServletResponse got = answer(get(feed));
		assertThat(got.getStatus()).isEqualTo(200);
		return FeedReading.read(got.getContentAsByteArray()).stream().map(Object::toString).sorted().toList();
	}

	private Site site(String manage) {
		UUID site = this.database.sql("select site from quick.calendar where manage_hash = ?")
			.param(Secret.hash(manage.substring(manage.lastIndexOf('/') + 1)))
			.query(UUID.class)
			.single();
		return this.register.require(new SiteId(site));
	}

	private static String secret() throws Exception {
		await().atMost(Duration.ofSeconds(20)).until(() -> MAIL.getReceivedMessages().length == 1);
		MimeMessage mail = MAIL.getReceivedMessages()[0];
		assertThat(mail.getAllRecipients()[0].toString()).containsIgnoringCase("perpetua.lisle@example.org");
		String text = ((MimeMultipart) mail.getContent()).getBodyPart(0).getContent().toString();
		Matcher link = LINK.matcher(text);
		assertThat(link.find()).as(text).isTrue();
		return link.group(1);
	}

	private Document page(int status, MockHttpServletRequestBuilder request) throws Exception {
		MockHttpServletResponse response = answer(request);
		assertThat(response.getStatus()).isEqualTo(status);
		return Jsoup.parse(response.getContentAsString());
	}

	private MockHttpServletResponse answer(MockHttpServletRequestBuilder request) throws Exception {
		return this.web.perform(request).andReturn().getResponse();
	}

}
