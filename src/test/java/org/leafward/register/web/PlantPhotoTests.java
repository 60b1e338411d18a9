package org.leafward.register.web;

import jakarta.servlet.http.Cookie;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.Placement;
import org.leafward.register.PlantPhotos;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.support.DemoServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMultipartHttpServletRequestBuilder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

/** Photos of a planting over HTTP, of a person of their own. */
@DemoServer
class PlantPhotoTests {

	private static final String PLACE = "42.0813N 91.5791W";

	@Autowired
	private MockMvc web;

	@Autowired
	private Register register;

	@Autowired
	private People people;

	@Autowired
	private PlantPhotos photos;

	@Autowired
	private OwnRegister own;

	@Autowired
	private JdbcClient database;

	@LocalServerPort
	private int port;

	private Person person;

	private Planting planting;

	private Cookie session;

	private String address;

	@BeforeEach
	void aGarden() throws Exception {
		this.person = this.people.join("Wilma Brandt", "wilma.%s@example.org".formatted(UUID.randomUUID()),
				ZoneId.of("America/Chicago"));
		Site site = this.register.addSite(this.person.id(),
				new NewSite("Brandt yard", "Alder County", new GeoPoint(45.037, -90.512, 203),
						ZoneId.of("America/Chicago"), SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE));
		this.planting = this.register
			.addPlantings(site.id(), List.of(new NewPlanting(new SpeciesId("syringa-vulgaris"), "lilac", 1,
					LocalDate.of(2015, 4, 20), Placement.GROUND, false, false)))
			.get(0);
		this.session = session(this.person);
		this.address = "/plantings/" + this.planting.id() + "/photos";
	}

	private Cookie session(Person of) throws Exception {
		return this.web.perform(post("/people/" + of.id().value()).with(csrf()))
			.andReturn()
			.getResponse()
			.getCookie("SESSION");
	}

	private static byte[] picture(String format) throws IOException {
		BufferedImage image = new BufferedImage(120, 80, BufferedImage.TYPE_INT_RGB);
		for (int x = 0; x < 120; x++) {
			for (int y = 0; y < 40; y++) {
				image.setRGB(x, y, Color.RED.getRGB());
			}
		}
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ImageIO.write(image, format, out);
		return out.toByteArray();
	}

	/** The camera was turned (6), and it noted a place: Exif 2.32, 4.5 and 4.6. */
	private static byte[] fromAPhone() throws IOException {
		byte[] jpeg = picture("jpeg");
		byte[] place = PLACE.getBytes(StandardCharsets.US_ASCII);
		int length = 2 + 6 + 38 + place.length;
		ByteBuffer out = ByteBuffer.allocate(jpeg.length + 2 + length);
		out.put(jpeg, 0, 2).putShort((short) 0xffe1).putShort((short) length);
		out.put("Exif\0\0MM\0*".getBytes(StandardCharsets.US_ASCII)).putInt(8).putShort((short) 2);
		out.putShort((short) 0x010e).putShort((short) 2).putInt(place.length).putInt(38);
		out.putShort((short) 0x0112).putShort((short) 3).putInt(1).putShort((short) 6).putShort((short) 0);
		return out.putInt(0).put(place).put(jpeg, 2, jpeg.length - 2).array();
	}

	private MockHttpServletResponse send(byte[] file, String words, String day) throws Exception {
		return ask(multipart(this.address).file(new MockMultipartFile("photo", "a.jpg", "image/jpeg", file))
			.param("words", words)
			.param("day", day), this.session);
	}

	private MockHttpServletResponse ask(MockHttpServletRequestBuilder request, Cookie as) throws Exception {
		return this.web.perform(request.with(csrf()).cookie(as)).andReturn().getResponse();
	}

	private MockHttpServletResponse ask(MockMultipartHttpServletRequestBuilder request, Cookie as) throws Exception {
		return this.web.perform(request.with(csrf()).cookie(as)).andReturn().getResponse();
	}

	private Document page() throws Exception {
		return Jsoup.parse(ask(get(this.address), this.session).getContentAsString());
	}

	@Test
	void aPhotoIsShownUprightWithItsWordsAndDayAndWithoutThePlaceWhereItWasTaken() throws Exception {
		assertThat(page().select("p.lead").text()).startsWith("There is no photo yet");
		assertThat(new String(fromAPhone(), StandardCharsets.ISO_8859_1)).contains(PLACE, "Exif");
		assertThat(send(fromAPhone(), "  buds <b>swell ", "2020-05-04").getRedirectedUrl()).isEqualTo(this.address);
		Document page = page();
		assertThat(page.select("p.lead").text()).isEqualTo("The latest is of Mon 4 May 2020.");
		Element image = page.selectFirst(".photos img");
		assertThat(image.attr("alt")).isEqualTo("buds <b>swell");
		assertThat(image.attr("width") + " " + image.attr("height")).isEqualTo("80 120");
		MockHttpServletResponse jpeg = ask(get(image.attr("src")), this.session);
		assertThat(jpeg.getContentType()).isEqualTo("image/jpeg");
		assertThat(jpeg.getHeader("Cache-Control")).contains("private").doesNotContain("public");
		assertThat(jpeg.getHeader("X-Content-Type-Options")).isEqualTo("nosniff");
		assertThat(new String(jpeg.getContentAsByteArray(), StandardCharsets.ISO_8859_1)).doesNotContain(PLACE)
			.doesNotContain("Exif");
		BufferedImage read = ImageIO.read(new ByteArrayInputStream(jpeg.getContentAsByteArray()));
		assertThat(read.getWidth()).isEqualTo(80);
		assertThat(new Color(read.getRGB(70, 60)).getRed()).as("what was above lies right").isGreaterThan(150);
		assertThat(Jsoup.parse(ask(get("/sites/" + this.planting.site()), this.session).getContentAsString())
			.select("a[href=%s]".formatted(this.address))).hasSize(1);
	}

	@Test
	void itGoesWithTheExportAndWithThePersonAndByItself() throws Exception {
		send(picture("png"), "in bloom", "2020-05-20");
		send(picture("png"), "leaf drop", "2020-10-20");
		assertThat(this.own.of(this.person.id()).get("plant-photos")).extracting((row) -> row.get("words"))
			.containsExactly("in bloom", "leaf drop");
		assertThat(this.own.files(this.person.id())).hasSize(2)
			.allSatisfy((name, jpeg) -> assertThat(jpeg).startsWith(0xff, 0xd8));
		assertThat(ask(post(page().selectFirst(".photos form").attr("action")), this.session).getStatus())
			.isEqualTo(302);
		assertThat(this.photos.of(this.planting.id())).extracting("words").containsExactly("in bloom");
		this.own.forget(this.person.id());
		assertThat(this.database.sql("select count(*) from register.photo where planting = ?")
			.param(this.planting.id().value())
			.query(Long.class)
			.single()).isZero();
	}

	@Test
	void othersFindNothing() throws Exception {
		send(picture("png"), "in bloom", "2020-05-20");
		String picture = this.address + "/" + this.photos.of(this.planting.id()).get(0).id();
		Cookie other = session(this.people.join("Olaf Senn", "olaf.%s@example.org".formatted(UUID.randomUUID()),
				ZoneId.of("America/Chicago")));
		assertThat(ask(get(this.address), other).getStatus()).isEqualTo(404);
		assertThat(ask(get(picture), other).getStatus()).isEqualTo(404);
		assertThat(ask(post(picture + "/delete"), other).getStatus()).isEqualTo(404);
		assertThat(ask(multipart(this.address).file(new MockMultipartFile("photo", picture("png"))), other).getStatus())
			.isEqualTo(404);
		assertThat(this.photos.of(this.planting.id())).hasSize(1);
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "GIF89a1234567890",
			"<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>",
			"\u00ff\u00d8\u00ff\u00e0 and then nothing", "\u0089PNG\r\n\u001a\n\u0000\u0000\u0000\rIHDRnonsense" })
	void whatIsNoPhotoIsRefusedInWordsAndWhatWasTypedStays(String content) throws Exception {
		MockHttpServletResponse answer = send(content.getBytes(StandardCharsets.ISO_8859_1), "in bloom", "2020-05-20");
		assertThat(answer.getStatus()).isEqualTo(400);
		Document page = Jsoup.parse(answer.getContentAsString());
		assertThat(page.select("[role=alert] a").eachAttr("href")).containsExactly("#photo");
		assertThat(page.getElementById("words").val()).isEqualTo("in bloom");
		assertThat(this.photos.of(this.planting.id())).isEmpty();
	}

	@Test
	void wordsAndDayAreAskedForAllAtOnce() throws Exception {
		MockHttpServletResponse answer = send(picture("png"), " ", "2999-01-01");
		assertThat(answer.getStatus()).isEqualTo(400);
		assertThat(Jsoup.parse(answer.getContentAsString()).select("[role=alert] a").eachAttr("href"))
			.containsExactlyInAnyOrder("#words", "#day");
	}

	@Test
	void thereAreOnlySoMany() throws Exception {
		for (int i = 0; i < PlantPhotos.MOST; i++) {
			assertThat(send(picture("png"), "day " + i, "2020-05-20").getStatus()).isEqualTo(302);
		}
		assertThat(page().select("input[type=file]")).isEmpty();
		MockHttpServletResponse answer = send(picture("png"), "one more", "2020-05-20");
		assertThat(answer.getStatus()).isEqualTo(400);
		assertThat(answer.getContentAsString()).contains("the planting has 8 photos");
		assertThat(this.photos.of(this.planting.id())).hasSize(PlantPhotos.MOST);
	}

	/**
	 * By a real connection: the bound is the server's, which must not hang up before it
	 * answers.
	 */
	@Test
	void thirtyMegabytesAreToldSo() throws Exception {
		HttpClient client = HttpClient.newHttpClient();
		URI uri = URI.create("http://localhost:" + this.port + this.address);
		String cookie = "SESSION=" + this.session.getValue();
		Document form = Jsoup.parse(client
			.send(HttpRequest.newBuilder(uri).header("Cookie", cookie).build(), HttpResponse.BodyHandlers.ofString())
			.body());
		String token = form.selectFirst("form[enctype] input[name=_csrf]").val();
		String head = "--x\r\nContent-Disposition: form-data; name=\"_csrf\"\r\n\r\n" + token
				+ "\r\n--x\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"a.jpg\"\r\n"
				+ "Content-Type: image/jpeg\r\n\r\n";
		byte[] body = new byte[30 << 20];
		System.arraycopy(head.getBytes(StandardCharsets.US_ASCII), 0, body, 0, head.length());
		byte[] end = "\r\n--x--\r\n".getBytes(StandardCharsets.US_ASCII);
		System.arraycopy(end, 0, body, body.length - end.length, end.length);
		HttpResponse<String> answer = client.send(HttpRequest.newBuilder(uri)
			.header("Cookie", cookie)
			.header("Accept", "text/html")
			.header("Content-Type", "multipart/form-data; boundary=x")
			.POST(HttpRequest.BodyPublishers.ofByteArray(body))
			.build(), HttpResponse.BodyHandlers.ofString());
		assertThat(answer.statusCode()).as(answer.body()).isEqualTo(413);
		assertThat(answer.body()).contains("choose a file of at most 8 MB");
		assertThat(this.photos.of(this.planting.id())).isEmpty();
	}

}
