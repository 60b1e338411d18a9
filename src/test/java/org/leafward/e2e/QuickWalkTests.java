package org.leafward.e2e;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.Select;
import org.leafward.support.WalkServer;
import org.springframework.boot.test.web.server.LocalServerPort;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * A stranger takes a calendar on a phone, in a real browser, with and without script.
 */
@WalkServer
class QuickWalkTests {

	private static final int PHONE = 390;

	private static final int DESK = 1280;

	@LocalServerPort
	private int port;

	private Browser browser;

	private ChromeDriver page;

	private String suffix;

	private void open(boolean script) {
		this.browser = Browser.open(script);
		this.page = this.browser.driver();
		this.suffix = script ? "" : "-no-script";
		this.browser.width(PHONE);
	}

	@AfterEach
	void close() {
		if (this.browser != null) {
			this.browser.close();
		}
	}

	@ParameterizedTest
	@ValueSource(booleans = { true, false })
	void fromTheMapToACalendarThatAnotherProgramReads(boolean script) throws Exception {
		open(script);
		this.page.get("data:text/html,<title>as written</title><script>document.title='changed'</script>");
		assertThat(this.page.getTitle()).isEqualTo(script ? "changed" : "as written");
		this.page.get("http://localhost:" + this.port + "/quick");
		look("place");
		WebElement map = this.page.findElement(By.id("map344"));
		assertThat(map.isDisplayed()).isTrue();
		assertThat(map.getSize().getWidth()).isEqualTo(344);
		assertThat(this.page.findElement(By.id("map280")).isDisplayed()).isFalse();
		// West of the middle lies Alder County.
		((JavascriptExecutor) this.page)
			.executeScript("arguments[0].scrollIntoView({block: 'center', behavior: 'instant'})", map);
		new Actions(this.page).moveToElement(map, -90, 30).perform();
		this.browser.follow(map);
		assertThat(heading()).as("a pointer in the middle").isEqualTo("Which plants do you look after?");
		this.browser.press("Back to the place");
		new Select(this.page.findElement(By.id("county"))).selectByVisibleText("Alder County");
		this.browser.press("Go on with this county");
		assertThat(words()).contains("Alder County", "225 m");

		this.browser.fill("search", "lilac, tomatos, hydrangea, Acer rubrun, frumious bandersnatch");
		this.browser.press("Add to my list");
		look("plants-asked");
		assertThat(words()).contains("tomato", "red maple", "Which “hydrangea”?",
				"We don’t know “frumious bandersnatch”");
		tick("bigleaf hydrangea");
		this.browser.press("Add what I ticked");
		assertThat(words()).contains("bigleaf hydrangea");
		assertThat(this.page.findElement(By.id("search")).getAttribute("value")).isEmpty();
		WebElement roses = this.page.findElements(By.cssSelector("details.drawer summary"))
			.stream()
			.filter((one) -> one.getText().startsWith("Roses"))
			.findFirst()
			.orElseThrow();
		roses.click();
		tick("hybrid tea rose");
		this.browser.press("Go on");
		look("light");
		assertThat(heading()).isEqualTo("What is the place like?");
		this.browser.press("Back to the plants");
		assertThat(words()).as("nothing is lost on the way back").contains("hybrid tea rose", "bigleaf hydrangea");
		tick("tomato");
		this.browser.press("Go on");
		new Select(this.page.findElement(By.id("sun"))).selectByValue("part-shade");
		this.browser.press("Make my calendar");
		look("made");
		assertThat(heading()).isEqualTo("Your calendar is ready");
		assertThat(this.page.findElements(By.cssSelector("ul.tasks li"))).hasSize(3);
		assertThat(this.page.findElement(By.linkText("Open in the calendar")).getAttribute("href"))
			.startsWith("webcal:");

		String address = this.page.findElement(By.id("address")).getText();
		String document = fetched(address).body();
		List<VEvent> events = Biweekly.parse(document).first().getEvents();
		assertThat(events).hasSizeGreaterThan(10);
		assertThat(events).extracting((event) -> event.getSummary().getValue())
			.anyMatch((summary) -> summary.contains("hybrid tea rose"))
			.noneMatch((summary) -> summary.contains("tomato"));

		this.browser.follow(this.page.findElement(By.cssSelector("#manage a")));
		look("manage");
		assertThat(words()).contains("bigleaf hydrangea");
		this.browser.fill("email", "no address");
		this.browser.press("Send me a link");
		assertThat(this.page.findElement(By.cssSelector("[role=alert]")).getText()).contains("not an e-mail address");
		this.browser.press("Make a new address");
		String second = this.page.findElement(By.id("address")).getText();
		assertThat(fetched(address).statusCode()).isEqualTo(410);
		assertThat(fetched(second).statusCode()).isEqualTo(200);
		this.page.findElement(By.cssSelector("main details summary")).click();
		this.browser.press("Yes, delete it for good");
		assertThat(heading()).isEqualTo("The calendar is deleted");
		assertThat(fetched(second).statusCode()).isEqualTo(410);
	}

	/** At both widths: fits, passes the rules, and a picture of it. */
	private void look(String name) {
		for (int width : new int[] { DESK, PHONE }) {
			this.browser.width(width);
			assertThat(this.browser.pageWidth()).as("%s at %d pixels", name, width).isLessThanOrEqualTo(width);
			this.browser.whole("quick-" + name + this.suffix + "-" + width);
			if (this.suffix.isEmpty() && width == PHONE) {
				assertThat(this.browser.violations()).as("%s at %d pixels", name, width).isEmpty();
			}
		}
	}

	private void tick(String plant) {
		this.page.findElements(By.cssSelector("label.tick"))
			.stream()
			.filter((label) -> label.getText().startsWith(plant))
			.findFirst()
			.orElseThrow(() -> new AssertionError("no box for " + plant))
			.click();
	}

	private static HttpResponse<String> fetched(String address) throws Exception {
		return HttpClient.newHttpClient()
			.send(HttpRequest.newBuilder(URI.create(address)).build(), BodyHandlers.ofString());
	}

	private String words() {
		return this.page.findElement(By.tagName("main")).getText();
	}

	private String heading() {
		return this.page.findElement(By.tagName("h1")).getText();
	}

}
