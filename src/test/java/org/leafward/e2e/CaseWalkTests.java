package org.leafward.e2e;

import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.Wait;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.leafward.support.WalkServer;
import org.springframework.boot.test.web.server.LocalServerPort;

import static org.assertj.core.api.Assertions.assertThat;

/** A hedge looks wrong: questions on a phone, the answer, and its tasks. */
@WalkServer
class CaseWalkTests {

	private static final int PHONE = 390;

	private static final int WINDOW = 1280;

	private static final Duration LONGEST = Duration.ofSeconds(30);

	@LocalServerPort
	private int port;

	private Browser browser;

	private ChromeDriver page;

	private void arrive(boolean script) {
		this.browser = Browser.open(script);
		this.page = this.browser.driver();
		this.browser.width(PHONE);
		go("/");
		this.browser.press("Ines Farrow");
		// An empty list of sites later on would not say that nobody is signed in.
		swapped().until((driver) -> driver.findElement(By.tagName("h1")).getText().equals("This week"));
	}

	@AfterEach
	void close() {
		if (this.browser != null) {
			this.browser.close();
		}
	}

	private void go(String path) {
		this.page.get("http://localhost:" + this.port + path);
	}

	/**
	 * The script may take the question out of the page between finding and reading it.
	 */
	private Wait<WebDriver> swapped() {
		return new WebDriverWait(this.page, LONGEST).ignoring(StaleElementReferenceException.class);
	}

	private String question() {
		return this.page.findElement(By.id("ask")).getText();
	}

	private void begin(String label) {
		go("/sites");
		this.browser.follow(this.page.findElement(By.partialLinkText("Farrow house")));
		this.browser.follow(this.page.findElement(By.linkText("Why does it look like this? " + label)));
		this.browser.press("Begin with the questions");
	}

	@Test
	void questionsComeInPlaceAndTheAnswerHasTasks() {
		arrive(true);
		begin("hedge by the gate");
		this.page.executeScript("window.sameAsBefore = true");
		assertThat(this.browser.violations()).isEmpty();
		this.browser.picture("case-question");
		for (int i = 0; i < 2; i++) {
			String before = question();
			this.page.findElement(By.cssSelector("button[value=cannot-tell]")).click();
			swapped().until((driver) -> !question().equals(before));
		}
		assertThat(this.page.executeScript("return window.sameAsBefore")).as("no page was left").isEqualTo(true);
		assertThat(this.page.switchTo().activeElement().getAttribute("id")).isEqualTo("ask");
		String before = question();
		this.page.findElement(By.cssSelector(".answers input")).click();
		this.page.findElement(By.cssSelector(".actions button")).click();
		swapped().until((driver) -> driver.findElements(By.id("ask")).isEmpty() || !question().equals(before));
		this.browser.follow(this.page.findElement(By.linkText("See what it may be by now")));
		assertThat(this.page.findElement(By.id("causes")).getText()).isEqualTo("What it may be");
		assertThat(this.browser.pageWidth()).isLessThanOrEqualTo(PHONE);
		assertThat(this.browser.violations()).isEmpty();
		this.browser.picture("case-answer");
		this.browser.press("Put it on my calendar");
		assertThat(this.page.findElement(By.cssSelector(".note[role=status]")).getText()).contains("on your calendar");
		this.browser.width(WINDOW);
		assertThat(this.browser.pageWidth()).isLessThanOrEqualTo(WINDOW);
		this.browser.picture("case-answer-wide");
	}

	@Test
	void withoutScriptTheSameGoesByPages() {
		arrive(false);
		begin("lilac");
		String first = question();
		this.browser.follow(this.page.findElement(By.cssSelector("button[value=cannot-tell]")));
		assertThat(question()).isNotEqualTo(first);
		assertThat(this.browser.pageWidth()).isLessThanOrEqualTo(PHONE);
		this.browser.follow(this.page.findElement(By.cssSelector(".actions button")));
		assertThat(this.page.findElement(By.cssSelector("[role=alert]")).getText()).startsWith("nothing is ticked");
	}

}
