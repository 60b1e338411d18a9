package org.leafward.e2e;

import java.net.URI;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.leafward.support.WalkServer;
import org.springframework.boot.test.web.server.LocalServerPort;

import static org.assertj.core.api.Assertions.assertThat;

/** This week on a phone, with script and without. */
@WalkServer
class ThisWeekWalkTests {

	private static final int PHONE = 390;

	private static final Duration LONGEST = Duration.ofSeconds(30);

	private static final String DONE = "form[action='/tasks/done'] button";

	private static final String UNDO = "form[action='/tasks/undo'] button";

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
		assertThat(this.page.findElement(By.tagName("h1")).getText()).isEqualTo("This week");
	}

	@AfterEach
	void close() {
		if (this.browser != null) {
			this.browser.close();
		}
	}

	@Test
	void doneChangesTheLineInPlaceAndUndoBringsItBack() {
		arrive(true);
		this.page.executeScript("window.sameAsBefore = true");
		WebElement done = this.page.findElement(By.cssSelector("li.task " + DONE));
		String id = done.getAttribute("id");
		String title = this.page.findElement(By.cssSelector("li.task:has(#" + id + ") .task-title")).getText();
		done.click();
		By undo = By.cssSelector("li.task " + UNDO + "#" + id);
		new WebDriverWait(this.page, LONGEST).until((driver) -> !driver.findElements(undo).isEmpty());
		assertThat(this.page.findElement(By.cssSelector("li.task:has(#" + id + ")")).getText()).contains(title,
				"Done on");
		new WebDriverWait(this.page, LONGEST)
			.until((driver) -> id.equals(driver.switchTo().activeElement().getAttribute("id")));
		assertThat(this.page.findElement(By.id("said")).getDomProperty("textContent"))
			.startsWith("Noted as done: " + title);
		healthy("week-done");
		this.page.findElement(undo).click();
		new WebDriverWait(this.page, LONGEST)
			.until((driver) -> !driver.findElements(By.cssSelector("li.task " + DONE + "#" + id)).isEmpty());
		assertThat(this.page.findElement(By.id("said")).getDomProperty("textContent"))
			.startsWith("Taken back: " + title);
		assertThat(this.page.executeScript("return window.sameAsBefore")).as("no page was left").isEqualTo(true);
		healthy("week-undone");
	}

	@Test
	void whatIsLeftOutNeedsAReasonAndGetsTheFocusBack() {
		arrive(true);
		WebElement skip = this.page.findElement(By.cssSelector("li.task details:has(form[action='/tasks/skip'])"));
		String reason = skip.findElement(By.cssSelector("input[name=reason]")).getAttribute("id");
		skip.findElement(By.tagName("summary")).click();
		this.browser.fill(reason, "The ground is too wet");
		skip.findElement(By.tagName("button")).click();
		By undo = By.id("act-" + reason.substring("reason-".length()));
		new WebDriverWait(this.page, LONGEST)
			.until((driver) -> driver.switchTo().activeElement().equals(driver.findElement(undo)));
		assertThat(this.page.findElement(By.id("said")).getDomProperty("textContent"))
			.startsWith("Left out this time: ");
		this.page.findElement(undo).click();
		new WebDriverWait(this.page, LONGEST).until(
				(driver) -> driver.findElement(By.id("said")).getDomProperty("textContent").startsWith("Taken back"));
	}

	@Test
	void theMenuOpensAndClosesByKeyboardWithoutScript() {
		arrive(false);
		WebElement more = this.page.findElement(By.cssSelector(".more summary"));
		for (int presses = 0; presses < 12 && !more.equals(this.page.switchTo().activeElement()); presses++) {
			this.page.switchTo().activeElement().sendKeys(Keys.TAB);
		}
		assertThat(this.page.switchTo().activeElement()).as("the menu is reached by the Tab key").isEqualTo(more);
		WebElement first = this.page.findElement(By.cssSelector(".more .rest a"));
		assertThat(first.isDisplayed()).isFalse();
		more.sendKeys(Keys.ENTER);
		assertThat(first.isDisplayed()).isTrue();
		more.sendKeys(Keys.TAB);
		assertThat(this.page.switchTo().activeElement()).isEqualTo(first);
		first.sendKeys(Keys.chord(Keys.SHIFT, Keys.TAB));
		assertThat(this.page.switchTo().activeElement()).isEqualTo(more);
		more.sendKeys(Keys.SPACE);
		assertThat(first.isDisplayed()).isFalse();
		more.sendKeys(Keys.SPACE, Keys.TAB);
		String leadsTo = first.getAttribute("href");
		this.page.switchTo().activeElement().sendKeys(Keys.ENTER);
		new WebDriverWait(this.page, LONGEST).until((driver) -> driver.getCurrentUrl().equals(leadsTo));
	}

	@Test
	void withoutScriptTheSameGoesByPages() {
		arrive(false);
		WebElement done = this.page.findElement(By.cssSelector("li.task " + DONE));
		String task = done.getAttribute("id").substring("act-".length());
		this.browser.follow(done);
		assertThat(this.page.findElement(By.cssSelector("section[role=status]")).getText())
			.startsWith("Noted as done: ");
		assertThat(this.browser.pageWidth()).isLessThanOrEqualTo(PHONE);
		this.browser.follow(this.page.findElement(By.cssSelector("li.task " + UNDO + "#act-" + task)));
		assertThat(this.page.findElement(By.cssSelector("section[role=status]")).getText()).startsWith("Taken back: ");
		assertThat(this.page.findElements(By.cssSelector("li.task " + DONE + "#act-" + task))).hasSize(1);
	}

	@Test
	void aPlantIsPickedWhileItsNameIsTyped() {
		arrive(true);
		form();
		this.browser.fill("species", "tomat");
		By tomato = By.id("pick-solanum-lycopersicum");
		new WebDriverWait(this.page, LONGEST).until((driver) -> !driver.findElements(tomato).isEmpty());
		assertThat(this.page.switchTo().activeElement().getAttribute("id")).isEqualTo("species");
		assertThat(this.page.findElement(By.id("found-count")).getText()).isNotBlank();
		healthy("planting-found");
		this.page.findElement(tomato).click();
		add("tomatoes by the wall");
	}

	@Test
	void withoutScriptAButtonFindsThePlant() {
		arrive(false);
		form();
		this.browser.fill("label", "in the corner");
		this.browser.fill("species", "tomat");
		this.browser.press("Find");
		assertThat(this.page.findElement(By.id("label")).getAttribute("value")).isEqualTo("in the corner");
		assertThat(this.browser.pageWidth()).isLessThanOrEqualTo(PHONE);
		this.page.findElement(By.id("pick-solanum-lycopersicum")).click();
		add("in the corner");
	}

	private void form() {
		go("/sites");
		assertThat(this.page.findElement(By.tagName("body")).getText()).contains("Farrow house");
		go(path(this.page.findElement(By.partialLinkText("Farrow house")).getAttribute("href")) + "/plantings/new");
	}

	private void add(String label) {
		this.browser.fill("label", label);
		this.page.executeScript("document.getElementById('plantedOn').value = arguments[0]",
				LocalDate.now(ZoneOffset.UTC).minusDays(3).toString());
		this.browser.press("Add the planting");
		assertThat(this.page.findElement(By.tagName("main")).getText()).contains(label, "Solanum lycopersicum");
	}

	private void healthy(String name) {
		assertThat(this.browser.pageWidth()).isLessThanOrEqualTo(PHONE);
		assertThat(this.browser.violations()).isEmpty();
		this.browser.picture(name);
	}

	private void go(String path) {
		this.page.get("http://localhost:" + this.port + path);
	}

	private static String path(String address) {
		return URI.create(address).getPath();
	}

}
