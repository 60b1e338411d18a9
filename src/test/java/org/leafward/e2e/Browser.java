package org.leafward.e2e;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * A real browser without a window. Where Chromium and its driver are not installed the
 * tests that need it are skipped with a loud word; on a build server (environment
 * variable CI is true) their absence is a failure.
 */
final class Browser implements AutoCloseable {

	private static final List<String> BROWSERS = List.of("/usr/bin/chromium", "/usr/bin/chromium-browser",
			"/usr/bin/google-chrome");

	private static final List<String> DRIVERS = List.of("/usr/bin/chromedriver", "/usr/local/bin/chromedriver",
			"/usr/lib/chromium-browser/chromedriver");

	private static final Path AXE = Path.of("src/test/js/node_modules/axe-core/axe.min.js");

	private static final Duration LONGEST = Duration.ofSeconds(60);

	/** Browsers that nobody uses; to start one takes a second or two. */
	private static final List<Browser> IDLE = new ArrayList<>();

	private final ChromeDriver driver;

	private final boolean script;

	private Browser(ChromeDriver driver, boolean script) {
		this.driver = driver;
		this.script = script;
	}

	static Browser open() {
		return open(true);
	}

	/**
	 * Opens a browser that knows nothing yet, in a window of its own.
	 * @param script whether pages may run script; what a test itself runs is not a page's
	 * @return the browser
	 */
	static Browser open(boolean script) {
		synchronized (IDLE) {
			for (Browser one : IDLE) {
				if (one.script == script) {
					IDLE.remove(one);
					return one;
				}
			}
		}
		return start(script);
	}

	private static Browser start(boolean script) {
		System.setProperty("webdriver.chrome.driver", find("the Chromium driver", DRIVERS).toString());
		ChromeOptions options = new ChromeOptions();
		options.setBinary(find("Chromium", BROWSERS).toString());
		options.addArguments("--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run",
				"--disable-background-networking", "--disable-component-update", "--disable-sync",
				"--user-data-dir=" + profile());
		if (!script) {
			options.setExperimentalOption("prefs", Map.of("profile.managed_default_content_settings.javascript", 2));
		}
		Browser started = new Browser(new ChromeDriver(options), script);
		Runtime.getRuntime().addShutdownHook(new Thread(started.driver::quit));
		return started;
	}

	private static Path find(String what, List<String> places) {
		return places.stream().map(Path::of).filter(Files::isExecutable).findFirst().orElseGet(() -> absent(what));
	}

	private static Path absent(String what) {
		String word = "BROWSER TESTS NOT RUN: %s is not installed".formatted(what);
		if ("true".equals(System.getenv("CI"))) {
			throw new AssertionError(word);
		}
		System.err.println("*** " + word + " ***");
		Assumptions.abort(word);
		throw new IllegalStateException(word);
	}

	private static Path profile() {
		try {
			return Files.createTempDirectory("browser");
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	ChromeDriver driver() {
		return this.driver;
	}

	/** Takes the width of a window or of a phone in the hand. */
	void width(int pixels) {
		this.driver.executeCdpCommand("Emulation.setDeviceMetricsOverride",
				Map.of("width", pixels, "height", 900, "deviceScaleFactor", 1, "mobile", pixels < 600));
	}

	/**
	 * Width that the page takes; more than the window's means that it has to be pushed
	 * sideways.
	 */
	long pageWidth() {
		return ((Number) this.driver.executeScript("return document.documentElement.scrollWidth")).longValue();
	}

	/**
	 * Violations of WCAG 2.2 A and AA that axe-core finds on the page.
	 * @return one line each, empty when there are none
	 */
	@SuppressWarnings("unchecked")
	List<String> violations() {
		if (!Files.exists(AXE)) {
			absent("axe-core (npm install in src/test/js)");
		}
		try {
			this.driver.executeScript(Files.readString(AXE));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return (List<String>) this.driver.executeAsyncScript(
				"""
						const done = arguments[arguments.length - 1];
						axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']})
							.then(found => done(found.violations.map(v => v.id + ': ' + v.nodes.map(n => n.target).join(' ; '))));
						""");
	}

	/**
	 * Keeps a picture of the page for whoever wants to look, and says so with
	 * {@code -Dleafward.pictures=true}.
	 */
	void picture(String name) {
		if (!Boolean.getBoolean("leafward.pictures")) {
			return;
		}
		try {
			Path folder = Files.createDirectories(Path.of("target/pictures"));
			Files.write(folder.resolve(name + ".png"), this.driver.getScreenshotAs(OutputType.BYTES));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** Keeps a picture of the page to its end, like {@link #picture}. */
	void whole(String name) {
		if (!Boolean.getBoolean("leafward.pictures")) {
			return;
		}
		Number height = (Number) this.driver.executeScript("return document.documentElement.scrollHeight");
		Number width = (Number) this.driver.executeScript("return window.innerWidth");
		this.driver.executeCdpCommand("Emulation.setDeviceMetricsOverride", Map.of("width", width, "height",
				Math.min(height.intValue(), 4000), "deviceScaleFactor", 1, "mobile", width.intValue() < 600));
		picture(name);
		width(width.intValue());
	}

	void fill(String field, String text) {
		WebElement input = this.driver.findElement(By.id(field));
		input.clear();
		input.sendKeys(text);
	}

	void press(String words) {
		follow(this.driver.findElements(By.cssSelector("main button"))
			.stream()
			.filter((button) -> button.getText().contains(words))
			.findFirst()
			.orElseThrow(() -> new AssertionError("no button says " + words)));
	}

	/**
	 * Clicks what leads to another page and waits for that page. The old page is marked
	 * rather than one of its elements watched: in the middle of a change of pages the
	 * driver can't always tell what became of an element.
	 * @param link what to click
	 */
	void follow(WebElement link) {
		this.driver.executeScript("window.leftBehind = true");
		link.click();
		new WebDriverWait(this.driver, LONGEST).ignoring(WebDriverException.class)
			.until((one) -> Boolean.TRUE
				.equals(this.driver.executeScript("return !window.leftBehind && document.readyState === 'complete'")));
	}

	/**
	 * Leaves nothing of this walk to the next one: neither windows, with what they
	 * pretend to be, nor what the servers had it keep.
	 */
	@Override
	public void close() {
		Set<String> servers = new HashSet<>();
		List<String> old = List.copyOf(this.driver.getWindowHandles());
		for (String window : old) {
			this.driver.switchTo().window(window);
			String address = this.driver.getCurrentUrl();
			if (address != null && address.startsWith("http")) {
				URI uri = URI.create(address);
				servers.add("%s://%s".formatted(uri.getScheme(), uri.getAuthority()));
			}
		}
		String fresh = this.driver.switchTo().newWindow(WindowType.TAB).getWindowHandle();
		for (String window : old) {
			this.driver.switchTo().window(window);
			this.driver.close();
		}
		this.driver.switchTo().window(fresh);
		servers.forEach((server) -> this.driver.executeCdpCommand("Storage.clearDataForOrigin",
				Map.of("origin", server, "storageTypes", "all")));
		this.driver.executeCdpCommand("Network.clearBrowserCookies", Map.of());
		this.driver.executeCdpCommand("Network.clearBrowserCache", Map.of());
		synchronized (IDLE) {
			IDLE.add(this);
		}
	}

}
