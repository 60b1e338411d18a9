package org.leafward.spoken;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.zip.GZIPInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.leafward.support.WalkServer;
import org.leafward.support.DemoVisitor;
import org.springframework.boot.test.web.server.LocalServerPort;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * A gardener reads the demo in Spanish: every page that a gardener can open, every task
 * of every site with its explanation. What the book doesn't know is marked as English by
 * the page itself, and none of it may be left.
 */
@WalkServer
class SpokenPagesTests {

	/** What a page may weigh, compressed, on a slow line; octets. */
	private static final int HEAVIEST = 60_000;

	/** A rule that the demo's specialist changed: the words of before would be wrong. */
	private static final String CHANGED = "Thin it by hand";

	@LocalServerPort
	private int port;

	@Test
	void everyPageOfAGardenerIsSpanish() throws Exception {
		DemoVisitor visitor = new DemoVisitor(this.port, "es-US,es;q=0.9,en;q=0.5");
		visitor.become("Ines Farrow");
		Set<String> pages = visitor.pages();
		assertThat(pages).hasSizeGreaterThan(60);
		Map<String, String> unspoken = new TreeMap<>();
		Set<String> changed = new HashSet<>();
		for (String path : pages) {
			Document page = visitor.page(path);
			assertThat(page.selectFirst("html").attr("lang")).as(path).isEqualTo("es");
			Set<String> english = english(page);
			if (page.selectFirst("h1").text().equals(CHANGED)) {
				changed.addAll(english);
			}
			english.forEach((text) -> unspoken.putIfAbsent(text, path));
		}
		unspoken.keySet().removeIf((text) -> changed.contains(text) || text.contains(CHANGED));
		List<String> lines = unspoken.entrySet().stream().map((one) -> one.getKey() + "\t" + one.getValue()).toList();
		Files.write(Path.of("target", "unspoken.txt"), lines);
		assertThat(lines).as("English on Spanish pages").isEmpty();
	}

	private static Set<String> english(Document page) {
		return page.select("body [lang=en]")
			.stream()
			.filter((one) -> one.closest("[translate=no]") == null)
			.map((one) -> one.ownText().strip())
			.collect(Collectors.toSet());
	}

	/** What is wrong with a form is told in Spanish, too. */
	@Test
	void everyPageOfThoseWhoLeadAGroupIsSpanish() throws Exception {
		DemoVisitor visitor = new DemoVisitor(this.port, "es-US,es;q=0.9,en;q=0.5");
		visitor.become("Tobias Wren");
		Map<String, String> unspoken = new TreeMap<>();
		Set<String> pages = visitor.pagesOfThoseWhoLead();
		assertThat(pages).hasSizeGreaterThan(8)
			.anyMatch((one) -> one.endsWith("/walk"))
			.anyMatch((one) -> one.endsWith("/move"));
		for (String path : pages) {
			Document page = visitor.page(path);
			english(page).forEach((text) -> unspoken.putIfAbsent(text, path));
			for (Element form : page.select("main form[novalidate]")) {
				Document refused = visitor.submit(form, "\u2028x".repeat(700) + "’\u202e");
				assertThat(refused.select("main").text()).as(path).doesNotContain("Whitelabel");
				english(refused).forEach((text) -> unspoken.putIfAbsent(text, form.attr("action") + " refused"));
			}
		}
		String paper = pages.stream().filter((one) -> one.endsWith("/checklist")).findFirst().orElseThrow() + ".pdf";
		try (PDDocument printed = Loader.loadPDF(visitor.answer(paper, "identity").body())) {
			assertThat(new PDFTextStripper().getText(printed))
				.contains("Equipo 1.", "Punto de encuentro:", "Quién trabajó")
				.doesNotContain("Meeting point", "Bring:");
		}
		List<String> lines = unspoken.entrySet().stream().map((one) -> one.getKey() + "\t" + one.getValue()).toList();
		Files.write(Path.of("target", "unspoken-lead.txt"), lines);
		assertThat(lines).as("English on Spanish pages").isEmpty();
	}

	@Test
	void noPageIsHeavy() throws Exception {
		DemoVisitor visitor = new DemoVisitor(this.port, "en");
		visitor.become("Ines Farrow");
		Map<String, Integer> parts = new TreeMap<>();
		Map<String, Integer> weights = new TreeMap<>();
		for (String path : visitor.pages()) {
			HttpResponse<byte[]> answer = visitor.answer(path, "gzip");
			int weight = answer.body().length;
			for (Element part : Jsoup.parse(unpacked(answer)).select("link[rel=stylesheet], script[src]")) {
				String address = part.hasAttr("href") ? part.attr("href") : part.attr("src");
				if (!parts.containsKey(address)) {
					parts.put(address, visitor.answer(address, "gzip").body().length);
				}
				weight += parts.get(address);
			}
			weights.put(path, weight);
		}
		assertThat(parts).hasSizeGreaterThan(2);
		assertThat(visitor.answer("/sites", "gzip").headers().firstValue("Content-Encoding")).hasValue("gzip");
		assertThat(weights).allSatisfy((path, weight) -> assertThat(weight).as(path).isLessThan(HEAVIEST));
	}

	private static String unpacked(HttpResponse<byte[]> answer) throws IOException {
		boolean packed = answer.headers().firstValue("Content-Encoding").filter("gzip"::equals).isPresent();
		InputStream octets = new ByteArrayInputStream(answer.body());
		return new String((packed ? new GZIPInputStream(octets) : octets).readAllBytes(), StandardCharsets.UTF_8);
	}

}
