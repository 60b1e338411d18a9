package org.leafward.e2e;

import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.Select;
import org.leafward.support.WalkServer;
import org.springframework.boot.test.web.server.LocalServerPort;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Pages as they are read with large letters, at night, by keyboard and in Spanish. The
 * criteria are those of WCAG 2.2.
 */
@WalkServer
class ReadableWalkTests {

	/** What is left of 1280 pixels at 400 % (1.4.10). */
	private static final int ENLARGED = 320;

	private static final int PHONE = 390;

	@LocalServerPort
	private int port;

	private Browser browser;

	private ChromeDriver page;

	private final List<String> pages = new ArrayList<>();

	@BeforeEach
	void open() {
		this.browser = Browser.open();
		this.page = this.browser.driver();
		this.browser.width(PHONE);
		go("/");
		this.browser.press("Ines Farrow");
		String task = path(this.page.findElement(By.cssSelector(".task-title a")));
		go("/sites");
		String site = path(this.page.findElement(By.partialLinkText("Farrow house")));
		this.pages.addAll(List.of("/", task, "/sites", site, site + "/weather", site + "/freezes", site + "/log",
				"/sites/new", "/subscribe", "/reminders", "/calculators/water", "/quick"));
	}

	@AfterEach
	void close() {
		if (this.browser != null) {
			this.browser.close();
		}
	}

	@Test
	void fourTimesEnlargedNothingIsPushedSideways() {
		this.browser.width(ENLARGED);
		for (String path : this.pages) {
			go(path);
			assertThat(this.browser.pageWidth()).as(path).isLessThanOrEqualTo(ENLARGED);
		}
	}

	/** 1.4.3 and 1.4.11, in the dark scheme; movement is asked to be reduced as well. */
	@Test
	void atNightContrastHoldsAndNothingMoves() {
		this.page.executeCdpCommand("Emulation.setEmulatedMedia",
				Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", "dark"),
						Map.of("name", "prefers-reduced-motion", "value", "reduce"))));
		for (String path : this.pages.subList(0, 6)) {
			go(path);
			assertThat(this.browser.violations()).as(path).isEmpty();
			assertThat((Long) this.page.executeScript("return document.getAnimations().length")).as(path).isZero();
			this.browser.picture("night" + path.replaceAll("[0-9a-f-]{36}", "one").replace('/', '-'));
		}
		String ground = String
			.valueOf(this.page.executeScript("return getComputedStyle(document.documentElement).backgroundColor + "
					+ "getComputedStyle(document.body).backgroundColor"));
		assertThat(ground).as("it is dark").doesNotContain("255, 255, 255");
	}

	/** 2.1.1, 2.4.1, 2.4.7 and 2.4.11. */
	@Test
	void theKeyboardReachesWhatIsToDo() {
		go("/");
		WebElement first = tab();
		assertThat(first.getAttribute("class")).isEqualTo("skip");
		first.sendKeys(Keys.ENTER);
		boolean done = false;
		for (int i = 0; i < 40 && !done; i++) {
			WebElement now = tab();
			assertThat(this.page.executeScript("""
					const style = getComputedStyle(arguments[0]);
					const box = arguments[0].getBoundingClientRect();
					return style.outlineStyle !== 'none' && box.bottom > 0 && box.top < innerHeight;""", now))
				.as("focus on <%s> %s is seen", now.getTagName(), now.getText())
				.isEqualTo(true);
			assertThat(this.page.executeScript("return !!arguments[0].closest('main, footer')", now))
				.as("the way leads past the head of the page")
				.isEqualTo(true);
			done = now.getText().startsWith("Done");
		}
		assertThat(done).isTrue();
		this.page.switchTo().activeElement().sendKeys(Keys.ENTER);
		assertThat(this.page.findElement(By.tagName("h1")).getText()).isEqualTo("This week");
	}

	@Test
	void inSpanishItFitsAPhoneAndStaysChosen() {
		go("/");
		new Select(this.page.findElement(By.id("reading-language"))).selectByValue("es");
		new Select(this.page.findElement(By.id("reading-units"))).selectByValue("us");
		this.browser.follow(this.page.findElement(By.cssSelector(".reading button")));
		assertThat(this.page.findElement(By.tagName("h1")).getText()).isEqualTo("Esta semana");
		for (String path : this.pages.subList(0, 6)) {
			go(path);
			assertThat(this.page.findElement(By.tagName("html")).getAttribute("lang")).as(path).isEqualTo("es");
			assertThat(this.browser.pageWidth()).as(path).isLessThanOrEqualTo(PHONE);
			this.browser.whole("es" + path.replaceAll("[0-9a-f-]{36}", "one").replace('/', '-'));
		}
	}

	private WebElement tab() {
		this.page.switchTo().activeElement().sendKeys(Keys.TAB);
		return this.page.switchTo().activeElement();
	}

	private void go(String path) {
		this.page.get("http://localhost:" + this.port + path);
	}

	private static String path(WebElement link) {
		return URI.create(link.getAttribute("href")).getPath();
	}

}
