package org.leafward.e2e;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.Select;
import org.leafward.support.DemoServer;
import org.leafward.support.TestDatabase;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.boot.test.web.server.LocalServerPort;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * A specialist changes a rule in the demo, in a real browser: from the list of rules to a
 * published version and back.
 */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT,
		properties = { "leafward.base-url=", "leafward.operator-token=" + DemoServer.TOKEN })
@ActiveProfiles("demo")
@ContextConfiguration(initializers = TestDatabase.class)
class SpecialistWalkTests {

	private static final int PHONE = 390;

	private static final int DESK = 1280;

	@LocalServerPort
	private int port;

	private Browser browser;

	private ChromeDriver page;

	@BeforeEach
	void open() {
		this.browser = Browser.open();
		this.page = this.browser.driver();
		this.browser.width(PHONE);
		go("/people");
		this.browser.press("Odile Marsh");
	}

	@AfterEach
	void close() {
		if (this.browser != null) {
			this.browser.close();
		}
	}

	@Test
	void aRuleIsChangedLookedAtPublishedAndTakenBack() {
		go("/rules");
		this.browser.fill("q", "boxwood");
		new Select(this.page.findElement(By.id("work"))).selectByValue("prune");
		this.browser.press("Find rules");
		this.browser.follow(this.page.findElement(By.partialLinkText("Trim lightly, or leave it")));
		assertThat(this.page.findElement(By.tagName("main")).getText()).contains("Designing Eden", "from memory",
				"Its figures were read in this publication.");
		check("rule");
		this.browser.follow(this.page.findElement(By.linkText("Change this rule")));
		String text = this.page.findElement(By.id("text")).getAttribute("value");
		assertThat(text).startsWith("  - id: last-light-trim").doesNotContain("winter-thinning");
		write(text.replace("kind: do", "kind: doo"));
		this.browser.press("See what it would change");
		assertThat(alert()).contains("Line 2", "hold-off");
		assertThat(this.page.findElement(By.id("text")).getAttribute("value")).as("nothing typed is lost")
			.contains("kind: doo");
		check("edit-broken");
		write(text.replace("days: -57", "days: -50"));
		this.browser.press("See what it would change");
		assertThat(this.page.findElement(By.tagName("main")).getText()).as("the hold-off goes before")
			.contains("New contradictions", "evergreens/no-late-pruning");
		write(text.replace("days: -57", "days: -64"));
		this.browser.press("See what it would change");
		assertThat(this.page.findElement(By.cssSelector("[role=status]")).getText()).contains("changed, 0 withdrawn");
		assertThat(this.page.findElement(By.tagName("main")).getText()).contains("Alder County", "until spring");
		check("edit-preview");
		this.browser.press("Publish");
		assertThat(alertOrField()).contains("note is missing");
		this.browser.fill("note", "A week shorter, as shoots harden late here");
		this.browser.press("Publish");
		assertThat(this.page.findElement(By.cssSelector("[role=status]")).getText()).contains("is in use");
		check("pack");
		go("/rules/boxwood/last-light-trim");
		assertThat(this.page.findElement(By.cssSelector(".history")).getText()).contains("Odile Marsh: A week shorter",
				"−     to:", "days: -57", "days: -64");
		go("/workshop/boxwood");
		List<WebElement> versions = this.page.findElements(By.cssSelector(".pick a[href*='/versions/']"));
		this.browser.follow(versions.get(1));
		check("version");
		this.browser.fill("note", "Too early after all");
		this.browser.press("Go back to version");
		go("/workshop/boxwood/edit?rule=last-light-trim");
		assertThat(this.page.findElement(By.id("text")).getAttribute("value")).isEqualTo(text);
	}

	@Test
	void whoeverWasOvertakenIsToldAndKeepsTheText() {
		go("/workshop/oaks/edit");
		String text = this.page.findElement(By.id("text")).getAttribute("value");
		String old = this.page.getWindowHandle();
		this.page.switchTo().newWindow(WindowType.TAB);
		publish("oaks", text.replaceFirst("title: ", "title: The "), "first");
		this.page.switchTo().window(old);
		write(text.replaceFirst("title: ", "title: All "));
		this.browser.press("See what it would change");
		this.browser.fill("note", "second");
		this.browser.press("Publish");
		assertThat(alert()).contains("Odile Marsh", "first");
		assertThat(this.page.findElement(By.id("text")).getAttribute("value")).contains("title: All ");
		check("conflict");
	}

	private void publish(String pack, String text, String note) {
		go("/workshop/" + pack + "/edit");
		write(text);
		this.browser.press("See what it would change");
		this.browser.fill("note", note);
		this.browser.press("Publish");
	}

	@Test
	void aBrokenFileIsRefusedByLineAndAGoodOneIsShownFirst() throws Exception {
		go("/workshop");
		check("workshop");
		Path file = Files.createTempFile("pack", ".yaml");
		Files.writeString(file, "pack: novel\nversion: 1\ntitel: A new pack\n");
		this.page.findElement(By.id("file")).sendKeys(file.toString());
		this.browser.press("Read the file");
		assertThat(alert()).contains("Line 3", "titel");
		Files.writeString(file, Files.readString(Path.of("config/rulepacks/boxwood.yaml"))
			.replaceFirst("title: Boxwood hedges and edgings", "title: Boxwood"));
		this.page.findElement(By.id("file")).sendKeys(file.toString());
		this.browser.press("Read the file");
		assertThat(this.page.findElement(By.id("text")).getAttribute("value")).contains("title: Boxwood\n");
		Files.write(file, new byte[2_500_000]);
		go("/workshop");
		this.page.findElement(By.id("file")).sendKeys(file.toString());
		this.browser.press("Read the file");
		assertThat(this.page.getPageSource()).contains("has more than 262144 bytes");
		Files.delete(file);
	}

	@Test
	void gardenersReadRulesButDontChangeThem() {
		go("/people");
		this.browser.press("Ines Farrow");
		go("/rules");
		check("rules");
		assertThat(this.page.getPageSource()).doesNotContain("workshop");
		for (String path : List.of("/workshop", "/workshop/boxwood/edit", "/replanning")) {
			go(path);
			assertThat(this.page.findElements(By.id("text"))).isEmpty();
			assertThat(this.page.getPageSource()).doesNotContain("Rule packs").doesNotContain("Queue all sites");
		}
	}

	@Test
	void theOperatorQueuesAllSites() {
		go("/sign-in");
		this.page.findElement(By.cssSelector("main details summary")).click();
		this.browser.fill("token", DemoServer.TOKEN);
		this.browser.press("Sign in with the token");
		go("/replanning");
		this.browser.press("Queue all sites");
		assertThat(this.page.findElement(By.tagName("main")).getText()).contains("Last hour");
		check("replanning");
	}

	@Test
	void anAdvisoryIsWrittenLookedAtSentAndPassedOn() {
		go("/advisories/compose");
		this.browser.press("Write an advisory");
		this.browser.fill("headline", "Cold wind");
		this.browser.press("Save, and see whom it reaches");
		assertThat(alert()).contains("no county is chosen", "write 10 to 140");
		this.page.findElement(By.id("counties-us-ia-merrow-county")).click();
		for (List<String> one : List.of(List.of("event", "Cold wind"),
				List.of("headline", "Cold wind tomorrow: screen rhododendrons"),
				List.of("what", "Gusts of 30 mph at 14 °F over dry ground."), List.of("where", "Merrow County."),
				List.of("when", "From tomorrow morning on."),
				List.of("impacts", "Evergreen leaves dry out and turn brown."),
				List.of("toDo", "Put screens up on the windy side. Mind your back when you drive posts."))) {
			this.browser.fill(one.get(0), one.get(1));
		}
		this.browser.press("Save, and see whom it reaches");
		assertThat(this.page.findElement(By.cssSelector("main")).getText()).contains("Ready.", "Whom it reaches",
				"Merrow County");
		check("compose-ready");
		this.browser.press("Send now");
		assertThat(this.page.findElement(By.cssSelector("[role=status]")).getText()).contains("It was sent");
		assertThat(this.page.findElement(By.tagName("h1")).getText()).contains("screen rhododendrons");
		check("advisory");
		this.browser.follow(this.page.findElement(By.partialLinkText("Pass it on")));
		assertThat(this.page.findElement(By.cssSelector("figure img")).getAttribute("alt")).contains("Merrow County");
		go("/season-dates/last-freeze");
		check("season-date");
	}

	/** The page as it is now, on a phone and at a desk. */
	private void check(String name) {
		for (int width : new int[] { DESK, PHONE }) {
			this.browser.width(width);
			assertThat(this.browser.pageWidth()).as("%s at %d pixels", name, width).isLessThanOrEqualTo(width);
			if (width == PHONE) {
				assertThat(this.browser.violations()).as(name).isEmpty();
			}
			this.browser.picture("rules-" + name + "-" + width);
		}
	}

	private String alert() {
		return this.page.findElement(By.cssSelector("[role=alert]")).getText();
	}

	private String alertOrField() {
		return this.page.findElement(By.cssSelector(".wrong-text")).getText();
	}

	private void write(String text) {
		this.page.executeScript("arguments[0].value = arguments[1]", this.page.findElement(By.id("text")), text);
	}

	private void go(String path) {
		this.page.get("http://localhost:" + this.port + path);
	}

}
