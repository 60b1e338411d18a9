package org.leafward.e2e;

import java.net.URI;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.care.CareLog;
import org.leafward.care.LogEntry;
import org.leafward.care.TaskId;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.leafward.support.WalkServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * A coordinator plans and moves a workday; a volunteer comes and ticks without a
 * connection.
 */
@WalkServer
class GroupWalkTests {

	private static final int PHONE = 390;

	private static final Duration LONGEST = Duration.ofSeconds(40);

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	@LocalServerPort
	private int port;

	@Autowired
	private CareLog log;

	@Autowired
	private People people;

	private Browser browser;

	private ChromeDriver page;

	private Line line;

	private void arrive(String name) {
		if (this.line == null) {
			this.line = new Line(this.port);
		}
		this.browser = Browser.open(true);
		this.page = this.browser.driver();
		this.browser.width(PHONE);
		go("/");
		this.browser.press(name);
		go("/groups");
	}

	@AfterEach
	void close() {
		if (this.browser != null) {
			this.browser.close();
		}
		if (this.line != null) {
			this.line.close();
		}
	}

	@Test
	void aCoordinatorPlansAndAVolunteerComesAndTicks() {
		arrive("Tobias Wren");
		healthy("groups");
		this.browser.follow(this.page.findElement(By.cssSelector(".pick a[href^='/groups/']")));
		String group = path();
		healthy("group");
		this.browser.press("Make a link");
		String join = URI.create(this.page.findElement(By.id("link")).getText()).getPath();
		go(group + "/plan");
		this.browser.press("Plan anew");
		assertThat(this.page.findElement(By.cssSelector("[role=status]")).getText()).startsWith("Planned anew: ");
		healthy("plan");
		String workday = path(
				this.page.findElement(By.xpath("//section[p/strong='fixed']//a[contains(@href,'/workdays/')]")));
		go(workday + "/move");
		this.page.executeScript("""
				document.getElementById('day').value = arguments[0];
				document.getElementById('rainDay').value = '';
				document.getElementById('begins').value = arguments[1];
				document.getElementById('ends').value = arguments[2];""", today().toString(),
				LocalTime.of(morning() ? 0 : 12, 0).toString(), morning() ? "12:00" : "23:59");
		healthy("workday-move");
		this.browser.press("Save");
		assertThat(this.page.findElement(By.tagName("main")).getText()).contains("Bram Ostrand", "Pia Ostrand");
		healthy("workday-lead");
		this.browser.close();

		arrive("Ines Farrow");
		go(workday);
		assertThat(this.page.findElement(By.tagName("main")).getText()).doesNotContain("Pia Ostrand", "555 0177");
		this.browser.press("I come");
		assertThat(this.page.findElement(By.cssSelector(".lead")).getText()).startsWith("You come on");
		healthy("workday");
		this.browser.follow(this.page.findElement(By.cssSelector("a.button[href$='/checklist']")));
		healthy("checklist");
		tickWithoutAConnection();
		go(join);
		assertThat(this.page.findElement(By.cssSelector(".lead")).getText()).startsWith("You belong to this group");
	}

	/**
	 * What is ticked stays on the phone, shows, and is sent once there is a connection;
	 * the list itself opens again without one.
	 */
	private void tickWithoutAConnection() {
		new WebDriverWait(this.page, LONGEST).until((driver) -> keptParts() >= 4);
		WebElement form = this.page.findElement(By.cssSelector("form[data-task]:not(.is-done)"));
		String task = form.getAttribute("data-task");
		connection(false);
		form.findElement(By.tagName("button")).click();
		new WebDriverWait(this.page, LONGEST)
			.until((driver) -> driver.findElement(By.id("queue")).getText().endsWith(": 1"));
		assertThat(form.getAttribute("class")).contains("is-done");
		assertThat(entry(task)).isNull();
		String list = this.page.getCurrentUrl();
		this.page.get("about:blank");
		this.page.get(list);
		assertThat(this.page.findElement(By.tagName("h1")).getText()).startsWith("Checklist");
		assertThat(this.page.findElement(By.cssSelector("form[data-task='%s']".formatted(task))).getAttribute("class"))
			.as("ticked before the list was opened again")
			.contains("is-done");
		assertThat(this.page.executeScript("return document.styleSheets[0].cssRules.length")).isNotEqualTo(0L);
		new WebDriverWait(this.page, LONGEST)
			.until((driver) -> driver.findElement(By.id("queue")).getText().endsWith(": 1"));
		healthy("checklist-offline");
		assertThat(entry(task)).isNull();
		connection(true);
		this.page.executeScript("window.dispatchEvent(new Event('online'))");
		new WebDriverWait(this.page, LONGEST)
			.until((driver) -> driver.findElement(By.id("queue")).getText().startsWith("Everything you ticked"));
		LogEntry logged = entry(task);
		assertThat(logged).isNotNull();
		assertThat(logged.by()).isEqualTo(this.people.withAddress("ines.farrow@example.org").orElseThrow().id());
		assertThat(logged.day()).isEqualTo(today());
		this.page.navigate().refresh();
		assertThat(this.page.findElement(By.cssSelector("form[data-task='%s']".formatted(task))).getAttribute("class"))
			.contains("is-done");
		assertThat(this.page.executeScript("return Object.keys(localStorage).length")).isEqualTo(0L);
	}

	private LogEntry entry(String task) {
		return this.log.of(new TaskId(UUID.fromString(task))).orElse(null);
	}

	/** The page, how long it is kept, its style and its script. */
	private int keptParts() {
		return ((Number) this.page.executeAsyncScript("""
				const done = arguments[arguments.length - 1];
				caches.open('leafward-list ' + location.pathname).then((one) => one.keys())
					.then((all) => done(all.length), () => done(0));""")).intValue();
	}

	private void connection(boolean there) {
		this.line.connect(there);
		this.page.executeCdpCommand("Network.enable", Map.of());
		this.page.executeCdpCommand("Network.emulateNetworkConditions",
				Map.of("offline", !there, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
	}

	private static LocalDate today() {
		return LocalDate.now(ZONE);
	}

	/** Whoever signs up does so before the end of the day. */
	private static boolean morning() {
		return LocalTime.now(ZONE).isBefore(LocalTime.of(11, 30));
	}

	private void healthy(String name) {
		assertThat(this.browser.pageWidth()).as(name).isLessThanOrEqualTo(PHONE);
		assertThat(this.browser.violations()).as(name).isEmpty();
		this.browser.picture(name);
	}

	private void go(String path) {
		this.page.get("http://localhost:" + this.line.port() + path);
	}

	private String path() {
		return URI.create(this.page.getCurrentUrl()).getPath();
	}

	private static String path(WebElement link) {
		return URI.create(link.getAttribute("href")).getPath();
	}

}
