package org.leafward.support;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpClient.Redirect;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Somebody who walks through the demo without a browser, in a language. */
public final class DemoVisitor {

	private static final List<String> OF_A_SITE = List.of("", "/weather", "/freezes", "/place", "/log", "/soil-tests",
			"/observations", "/plantings/new", "/plantings/several", "/thermometer", "/review");

	private static final List<String> FOR_EVERYBODY = List.of("/", "/people", "/sites", "/sites/new", "/stations",
			"/stations/ZZKBFERROWM", "/stations/NOWHERE", "/groups", "/subscribe", "/reminders", "/reminders/push",
			"/reminders/webhook", "/outbox", "/me", "/me/tokens", "/quick", "/county-calendars", "/calculators",
			"/calculators/water", "/calculators/water?what=bed&area=x&soil=clay", "/calculators/light",
			"/calculators/light?latitude=42.1&longitude=-91.6&zone=America/Chicago&date=2027-05-20"
					+ "&start=south-window&site=full-sun&held=4",
			"/calculators/salt", "/calculators/salt?area=10&walk=true&spray=true&ec=8", "/calculators/soil-test",
			"/calculators/soil-test?ph=8.8&ec=8&sar=40&cec=20&area=10", "/calculators/soil-test?ph=x",
			"/calculators/new-tree", "/calculators/new-tree?calliper=50&planted=2027-05-03", "/calculators/cover",
			"/calculators/cover?forecast=36&hurt=33&unit=fahrenheit", "/advisories", "/advisories/us-ia-merrow-county",
			"/season-dates", "/season-dates/last-freeze", "/season-dates/counties/us-ia-alder-county");

	private final HttpClient http = HttpClient.newBuilder()
		.cookieHandler(new CookieManager())
		.followRedirects(Redirect.NORMAL)
		.build();

	private final String server;

	private final String languages;

	/**
	 * Comes to the demo.
	 * @param port where it listens
	 * @param languages what the browser asks for, for example {@code es-US,es;q=0.9}
	 */
	public DemoVisitor(int port, String languages) {
		this.server = "http://localhost:" + port;
		this.languages = languages;
	}

	/**
	 * Becomes one of the invented people.
	 * @param name the name
	 */
	public void become(String name) throws IOException, InterruptedException {
		Element form = page("/people").select("form")
			.stream()
			.filter((one) -> one.text().contains(name))
			.findFirst()
			.orElseThrow();
		int status = send(form, "").statusCode();
		if (status != 200) {
			throw new IllegalStateException("became nobody: " + status);
		}
	}

	/**
	 * Sends a form, and goes where it leads.
	 * @param form of a page
	 * @param instead what its text fields hold instead; empty for what they hold
	 * @return the page that comes, also one that tells what is wrong
	 */
	public Document submit(Element form, String instead) throws IOException, InterruptedException {
		return Jsoup.parse(new String(send(form, instead).body(), StandardCharsets.UTF_8));
	}

	private HttpResponse<byte[]> send(Element form, String instead) throws IOException, InterruptedException {
		String body = form.select("input[name], textarea[name], select[name], button[name]")
			.stream()
			.filter((one) -> !one.attr("type").equals("checkbox") || one.hasAttr("checked"))
			.map((one) -> one.attr("name") + "="
					+ URLEncoder.encode((instead.isEmpty() || one.attr("type").equals("hidden")) ? one.val() : instead,
							StandardCharsets.UTF_8))
			.collect(Collectors.joining("&"));
		HttpRequest request = HttpRequest.newBuilder(URI.create(this.server + form.attr("action")))
			.header("Accept-Language", this.languages)
			.header("Content-Type", "application/x-www-form-urlencoded")
			.POST(BodyPublishers.ofString(body))
			.build();
		return this.http.send(request, BodyHandlers.ofByteArray());
	}

	/**
	 * Every page of the groups that somebody leads.
	 * @return their paths
	 */
	public Set<String> pagesOfThoseWhoLead() throws IOException, InterruptedException {
		Set<String> pages = new LinkedHashSet<>(List.of("/groups", "/groups/new"));
		for (Element link : page("/groups").select(".pick a[href^=/groups/]")) {
			String group = link.attr("href");
			List.of("", "/plan", "/settings", "/hours", "/me").forEach((more) -> pages.add(group + more));
			page(group).select("a[href$=/walk]").forEach((walk) -> pages.add(walk.attr("href")));
			for (Element day : page(group + "/plan").select("h2 ~ p a[href^=/workdays/]")) {
				List.of("", "/checklist", "/move").forEach((more) -> pages.add(day.attr("href") + more));
			}
		}
		return pages;
	}

	/**
	 * Every page that a gardener finds, each task of each site too.
	 * @return their paths
	 */
	public Set<String> pages() throws IOException, InterruptedException {
		Set<String> pages = new LinkedHashSet<>(FOR_EVERYBODY);
		Set<String> tasks = new LinkedHashSet<>();
		for (Element link : page("/sites").select(".pick a[href^=/sites/]")) {
			String site = link.attr("href");
			OF_A_SITE.forEach((more) -> pages.add(site + more));
			Document page = page(site);
			page.select("a[href$=/size]").stream().limit(1).forEach((size) -> pages.add(size.attr("href")));
			page.select("a[href$=/amounts]").stream().limit(3).forEach((one) -> pages.add(one.attr("href")));
			page.select("a[href^=/tasks/]").forEach((task) -> tasks.add(task.attr("href")));
		}
		pages.addAll(tasks);
		for (Element link : page("/groups").select("a[href^=/groups/], a[href^=/workdays/]")) {
			String path = link.attr("href");
			pages.add(path);
			pages.add(path + (path.startsWith("/groups/") ? "/me" : "/checklist"));
		}
		page("/advisories/us-ia-merrow-county").select(".task-title a").forEach((one) -> {
			pages.add(one.attr("href"));
			pages.add(one.attr("href") + "/share");
		});
		for (Element one : page("/cases").select(".pick a[href^=/cases/]")) {
			pages.addAll(List.of("/cases", "/cases/new", one.attr("href"), one.attr("href") + "/ask",
					one.attr("href") + "/ask/where-in-leaf"));
		}
		return pages;
	}

	/**
	 * Looks at a page.
	 * @param path path and query
	 * @return as HTML
	 */
	public Document page(String path) throws IOException, InterruptedException {
		return Jsoup.parse(new String(answer(path, "identity").body(), StandardCharsets.UTF_8));
	}

	/**
	 * Asks for a page.
	 * @param path path and query
	 * @param encoding {@code gzip} or {@code identity}
	 * @return the octets as they came
	 */
	public HttpResponse<byte[]> answer(String path, String encoding) throws IOException, InterruptedException {
		HttpRequest request = HttpRequest.newBuilder(URI.create(this.server + path))
			.header("Accept-Language", this.languages)
			.header("Accept-Encoding", encoding)
			.build();
		return this.http.send(request, BodyHandlers.ofByteArray());
	}

}
