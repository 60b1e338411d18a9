package org.leafward.e2e;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.feeds.ical.FeedReading;
import org.openqa.selenium.By;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.Select;
import org.leafward.support.WalkServer;
import org.springframework.boot.test.web.server.LocalServerPort;

import static org.assertj.core.api.Assertions.assertThat;

/** Somebody finds the address of their county's calendar, with and without script. */
@WalkServer
class CountyWalkTests {

	@LocalServerPort
	private int port;

	private Browser browser;

	@AfterEach
	void close() {
		if (this.browser != null) {
			this.browser.close();
		}
	}

	@ParameterizedTest
	@ValueSource(booleans = { true, false })
	void fromTheCountyToAnAddressThatAnotherProgramReads(boolean script) throws Exception {
		this.browser = Browser.open(script);
		ChromeDriver page = this.browser.driver();
		page.get("http://localhost:" + this.port + "/quick");
		this.browser.follow(page.findElement(By.linkText("the calendar of your county")));
		look("list", script);
		this.browser.follow(page.findElement(By.linkText("Alder County")));
		look("county", script);
		this.browser.press("Show the address");
		assertThat(page.findElement(By.cssSelector("[role=alert]")).getText()).contains("no kind of plants is chosen");
		look("nothing-chosen", script);
		page.findElement(By.id("kind-roses")).click();
		page.findElement(By.id("kind-bulbs")).click();
		new Select(page.findElement(By.id("language"))).selectByValue("es");
		this.browser.press("Show the address");
		look("address", script);
		String address = page.findElement(By.id("address")).getText();
		assertThat(address).endsWith("/c/us-ia-alder-county/bulbs+roses/es-both/tasks.ics");
		byte[] octets = HttpClient.newHttpClient()
			.send(HttpRequest.newBuilder(URI.create(address)).build(), BodyHandlers.ofByteArray())
			.body();
		assertThat(FeedReading.read(octets)).hasSizeGreaterThan(10);
		assertThat(new String(octets, StandardCharsets.UTF_8)).contains("Cuidado de plantas");
	}

	private void look(String name, boolean script) {
		for (int width : new int[] { 1280, 390 }) {
			this.browser.width(width);
			assertThat(this.browser.pageWidth()).as("%s at %d pixels", name, width).isLessThanOrEqualTo(width);
			this.browser.whole("county-" + name + (script ? "" : "-no-script") + "-" + width);
			if (script) {
				assertThat(this.browser.violations()).as("%s at %d pixels", name, width).isEmpty();
			}
		}
	}

}
