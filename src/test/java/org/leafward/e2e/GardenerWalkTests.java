package org.leafward.e2e;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.leafward.support.WalkServer;
import org.springframework.boot.test.web.server.LocalServerPort;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * A gardener's first visit to the demo, in a real browser: from a name to a subscribed
 * calendar.
 */
@WalkServer
class GardenerWalkTests {

	private static final int PHONE = 390;

	private static final int DESK = 1280;

	private static final String LIGHT = "latitude=42.1&longitude=-91.6&zone=America/Chicago&date=2027-05-20"
			+ "&start=south-window&site=full-sun&held=4";

	@LocalServerPort
	private int port;

	private Browser browser;

	private ChromeDriver page;

	@BeforeEach
	void open() {
		this.browser = Browser.open();
		this.page = this.browser.driver();
		this.browser.width(PHONE);
		go("/");
		assertThat(this.page.getCurrentUrl()).as("the demo asks who is looking").endsWith("/people");
		this.browser.press("Ines Farrow");
	}

	@AfterEach
	void close() {
		if (this.browser != null) {
			this.browser.close();
		}
	}

	@Test
	void aTaskOpensToTheStationsBehindItsDate() {
		assertThat(heading()).isEqualTo("This week");
		this.browser.follow(this.page.findElement(By.cssSelector(".task-title a")));
		assertThat(this.page.getCurrentUrl()).contains("/tasks/");
		List<WebElement> steps = this.page.findElements(By.cssSelector(".why details"));
		steps.forEach((step) -> this.page.executeScript("arguments[0].open = true", step));
		assertThat(this.page.findElement(By.cssSelector(".why")).getText()).contains("Ferrow Mill")
			.contains("invented")
			.containsIgnoringCase("version");
	}

	@Test
	void aNewSiteAndPlantingHaveAYearAtOnce() {
		go("/sites/new");
		new Select(this.page.findElement(By.id("county"))).selectByVisibleText("Alder County");
		this.browser.press("Go on with this county");
		assertThat(this.page.findElement(By.id("elevation")).getAttribute("value")).as("filled in").isNotEmpty();
		this.browser.fill("name", "Orchard Lane");
		this.page.findElement(By.xpath("//summary[.='Find the soil by feel']")).click();
		new Select(this.page.findElement(By.id("soil"))).selectByValue("feel");
		new Select(this.page.findElement(By.id("ball"))).selectByValue("yes");
		new Select(this.page.findElement(By.id("ribbon"))).selectByValue("long");
		new Select(this.page.findElement(By.id("rubbed"))).selectByValue("neither");
		this.browser.press("Go on");
		assertThat(this.page.findElement(By.id("soil")).getAttribute("value")).isEqualTo("clay");
		this.browser.fill("latitude", "142.1");
		this.browser.press("Add the site");
		assertThat(this.page.findElement(By.cssSelector("[role=alert]")).getText()).contains("latitude")
			.contains("-90");
		assertThat(this.page.findElement(By.id("name")).getAttribute("value")).as("nothing typed is lost")
			.isEqualTo("Orchard Lane");
		this.browser.fill("latitude", "42.1");
		this.browser.press("Add the site");
		assertThat(heading()).isEqualTo("Orchard Lane");
		this.browser.follow(this.page.findElement(By.partialLinkText("Add a planting")));
		this.browser.fill("species", "buxus-sempervirens");
		this.browser.fill("label", "low hedge");
		this.page.executeScript("arguments[0].value = '2020-05-01'", this.page.findElement(By.id("plantedOn")));
		this.browser.press("Add the planting");
		assertThat(heading()).isEqualTo("Orchard Lane");
		assertThat(this.page.findElement(By.cssSelector("main svg")).getAttribute("outerHTML"))
			.contains("Leave evergreens unpruned");
	}

	@Test
	void aWateringIsLoggedDrawnAndUndone() {
		go("/sites");
		go(path(this.page.findElement(By.partialLinkText("Farrow house")).getAttribute("href")) + "/weather");
		int bars = this.page.findElements(By.cssSelector("rect.watering-bar")).size();
		LocalDate today = LocalDate.now(ZoneOffset.UTC);
		// The demo's waterings are those of summer, and the picture begins with the year.
		assertThat(bars).isGreaterThanOrEqualTo((today.getMonthValue() > 7) ? 1 : 0);
		this.browser.fill("amount", "much");
		this.browser.press("Record the watering");
		assertThat(this.page.findElement(By.cssSelector("[role=alert]")).getText()).contains("amount");
		this.browser.fill("amount", "0.75");
		new Select(this.page.findElement(By.id("unit"))).selectByValue("inches");
		this.browser.fill("note", "walked with a can");
		LocalDate day = (today.getDayOfYear() > 12) ? today.minusDays(12) : today;
		this.page.executeScript("arguments[0].value = '" + day + "'", this.page.findElement(By.id("day")));
		this.browser.press("Record the watering");
		assertThat(this.page.findElements(By.cssSelector("rect.watering-bar"))).hasSize(bars + 1);
		WebElement mine = this.page.findElements(By.cssSelector(".waterings li"))
			.stream()
			.filter((one) -> one.getText().contains("walked with a can"))
			.findFirst()
			.orElseThrow();
		assertThat(mine.getText()).contains("19 mm (0.75 in)", "Ines Farrow");
		this.browser.follow(mine.findElement(By.tagName("button")));
		assertThat(this.page.findElements(By.cssSelector("rect.watering-bar"))).hasSize(bars);
		assertThat(this.page.findElement(By.cssSelector(".waterings")).getText()).doesNotContain("walked with a can");
	}

	@Test
	void aTaskIsNotedAsDoneWithOnePressAndTakenBack() {
		WebElement line = this.page.findElement(By.cssSelector(".task:has(form[action='/tasks/done'])"));
		String task = path(line.findElement(By.cssSelector(".task-title a")).getAttribute("href"));
		line.findElement(By.cssSelector("form[action='/tasks/done'] button")).click();
		new WebDriverWait(this.page, Duration.ofSeconds(30)).until((
				driver) -> driver.findElement(By.id("said")).getDomProperty("textContent").startsWith("Noted as done"));
		assertThat(heading()).isEqualTo("This week");
		go(task);
		assertThat(this.page.findElement(By.cssSelector(".standing")).getText()).startsWith("Done on ");
		assertThat(this.page.findElement(By.tagName("main")).getText()).contains("logged by Ines Farrow");
		this.browser.press("Undo");
		assertThat(this.page.findElement(By.cssSelector(".standing")).getText()).doesNotContain("Done");
		this.page.findElements(By.tagName("summary"))
			.stream()
			.filter((summary) -> summary.getText().equals("Not this time"))
			.findFirst()
			.orElseThrow()
			.click();
		this.browser.fill("reason", "The ground is too wet");
		this.browser.press("Leave it out");
		assertThat(this.page.findElement(By.cssSelector(".standing")).getText())
			.isEqualTo("Left out this time: The ground is too wet.");
		this.browser.press("Undo");
		assertThat(this.page.findElement(By.tagName("main")).getText()).contains("Wanted after all");
	}

	@Test
	void whatWasSeenIsEnteredAndTakenBack() {
		go("/sites");
		go(path(this.page.findElement(By.partialLinkText("Farrow house")).getAttribute("href")));
		this.browser.follow(this.page.findElement(By.partialLinkText("What was seen here")));
		new Select(this.page.findElement(By.id("what"))).selectByVisibleText("leaf drop");
		this.browser.press("Enter it");
		assertThat(this.page.findElement(By.cssSelector("[role=alert]")).getText()).contains("planting");
		new Select(this.page.findElement(By.id("planting"))).selectByVisibleText("lilac");
		this.browser.press("Enter it");
		WebElement first = this.page.findElement(By.cssSelector(".logged li"));
		assertThat(first.getText()).containsIgnoringCase("leaf drop").contains("lilac", "Ines Farrow");
		this.browser.follow(first.findElement(By.tagName("button")));
		assertThat(this.page.findElement(By.tagName("main")).getText()).contains("Nothing is entered here yet.");
	}

	@Test
	void theAddressOfACalendarIsShownOnceAndServesWithValidators() throws Exception {
		go("/subscribe");
		this.browser.press("Make an address");
		URI address = URI.create(this.page.findElement(By.id("address")).getText());
		HttpClient http = HttpClient.newHttpClient();
		HttpResponse<String> first = http.send(HttpRequest.newBuilder(address).build(), BodyHandlers.ofString());
		assertThat(first.statusCode()).isEqualTo(200);
		assertThat(first.body()).startsWith("BEGIN:VCALENDAR").contains("hedge by the gate");
		HttpResponse<String> second = http.send(HttpRequest.newBuilder(address)
			.header("If-None-Match", first.headers().firstValue("ETag").orElseThrow())
			.build(), BodyHandlers.ofString());
		assertThat(second.statusCode()).isEqualTo(304);
		go("/subscribe");
		assertThat(this.page.getPageSource()).doesNotContain(address.getPath());
		this.browser.press("Stop it");
		assertThat(http.send(HttpRequest.newBuilder(address).build(), BodyHandlers.ofString()).statusCode())
			.isEqualTo(410);
	}

	@Test
	void everyPageFitsAPhoneAndPassesTheAccessibilityRules() {
		List<String> pages = new ArrayList<>(List.of("/", "/sites", "/sites/new", "/stations", "/stations/ZZKBFERROWM",
				"/subscribe", "/reminders", "/outbox", "/me/tokens", "/people", "/nowhere", "/calculators",
				"/calculators/salt", "/calculators/salt?area=10&walk=true&spray=true&ec=8", "/calculators/soil-test",
				"/calculators/soil-test?ph=8.8&ec=8&sar=40&cec=20&area=10", "/calculators/soil-test?ph=x", "/quick"));
		go("/");
		pages.add(path(this.page.findElement(By.cssSelector(".task-title a")).getAttribute("href")));
		go("/sites");
		pages.add(path(this.page.findElement(By.partialLinkText("Farrow house")).getAttribute("href")));
		String site = pages.get(pages.size() - 1);
		pages.addAll(List.of(site + "/plantings/new", site + "/weather", site + "/freezes", site + "/place",
				site + "/log", site + "/soil-tests", site + "/observations", site + "/plantings/several",
				site + "/thermometer", site + "/review"));
		go(site);
		pages.add(path(this.page.findElement(By.cssSelector("a[href$='/size']")).getAttribute("href")));
		pages.add(path(this.page.findElement(By.cssSelector("a[href$='/amounts']")).getAttribute("href")));
		pages.addAll(List.of("/calculators/water", "/calculators/water?what=bed&area=x&soil=clay", "/calculators/light",
				"/calculators/light?" + LIGHT, "/calculators/cover",
				"/calculators/cover?forecast=36&hurt=33&unit=fahrenheit"));
		pages.forEach(this::looksRight);
		// Whatever the time of day: an advisory came to her, and she has no quiet hours.
		go("/people");
		this.browser.press("Odile Marsh");
		looksRight(mail());
	}

	private void looksRight(String path) {
		this.browser.width(PHONE);
		go(path);
		fits(path, PHONE);
		// The same markup in the same colours; where targets are crowded a phone is the
		// harder case.
		assertThat(this.browser.violations()).as(path).isEmpty();
		this.browser.width(DESK);
		fits(path, DESK);
	}

	private void fits(String path, int width) {
		assertThat(this.browser.pageWidth()).as("%s at %d pixels", path, width).isLessThanOrEqualTo(width);
		this.browser.picture(("home" + path).replaceAll("[0-9a-f-]{36}", "one").replace('/', '-') + "-" + width);
	}

	/**
	 * The address of a reminder; the job that sends what is due runs every half minute.
	 */
	private String mail() {
		By link = By.cssSelector(".pick a[href^='/outbox/']");
		new WebDriverWait(this.page, Duration.ofSeconds(90), Duration.ofSeconds(2)).until((driver) -> {
			go("/outbox");
			return !this.page.findElements(link).isEmpty();
		});
		return path(this.page.findElement(link).getAttribute("href"));
	}

	@Test
	void nobodySeesAnotherPersonsGarden() {
		go("/sites");
		String mine = path(this.page.findElement(By.partialLinkText("Farrow house")).getAttribute("href"));
		go("/people");
		this.browser.press("Tobias Wren");
		go(mine);
		assertThat(heading()).doesNotContain("Farrow");
		assertThat(this.page.getPageSource()).doesNotContain("hedge by the gate");
	}

	private void go(String path) {
		this.page.get("http://localhost:" + this.port + path);
	}

	private static String path(String address) {
		return URI.create(address).getPath();
	}

	private String heading() {
		return this.page.findElement(By.tagName("h1")).getText();
	}

}
