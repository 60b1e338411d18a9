package org.leafward.spoken.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Document.OutputSettings;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Entities;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.jsoup.parser.ParseSettings;
import org.jsoup.parser.Parser;
import org.leafward.language.Language;
import org.leafward.language.Phrasebook;
import org.leafward.language.Units;

/**
 * Says a page. The inline content of a block, its links and emphases included, is said as
 * one sentence if the book has it ({@link Run}); else each of its parts by itself. What
 * the book doesn't know stays as it is and is marked as English. Elements with
 * {@code translate="no"}, or of another language than the page, are left alone.
 */
public final class HtmlSpeech {

	private static final List<String> SAID_ATTRIBUTES = List.of("title", "alt", "aria-label", "placeholder");

	private static final String TITLE_END = " – Leafward";

	/** What a part of a sentence may begin or end with, the same in all our languages. */
	private static final Pattern EDGES = Pattern.compile("^([\\s,;:.()–—|·“”]*)(.*?)([\\s,;:.()–—|·“”]*)$",
			Pattern.DOTALL);

	private static final Pattern LETTERS = Pattern.compile("\\p{L}{2}");

	private final Phrasebook book;

	private final Units units;

	private final Consumer<String> unknown;

	/**
	 * Speaks a language.
	 * @param book its book
	 * @param units with which units
	 * @param unknown is told of each text that the book doesn't know
	 */
	public HtmlSpeech(Phrasebook book, Units units, Consumer<String> unknown) {
		this.book = book;
		this.units = units;
		this.unknown = unknown;
	}

	/**
	 * Says a page or a part of one.
	 * @param html HTML of our own templates
	 * @return the same elements with other words
	 */
	public String say(String html) {
		Parser parser = Parser.htmlParser().settings(ParseSettings.preserveCase);
		boolean whole = html.regionMatches(true, 0, "<!doctype", 0, 9);
		Document page = whole ? Jsoup.parse(html, "", parser) : Document.createShell("");
		if (!whole) {
			page.body().appendChildren(parser.parseFragmentInput(html, page.body(), ""));
		}
		page.outputSettings(new OutputSettings().prettyPrint(false).charset("UTF-8"));
		if (whole) {
			page.selectStream("html").forEach((root) -> root.attr("lang", this.book.language().code()));
			page.selectStream("head > title").forEach(this::title);
		}
		block(page.body());
		page.body()
			.select("textarea[placeholder]")
			.stream()
			.filter((area) -> area.closest("[translate=no]") == null)
			.forEach(this::example);
		return whole ? page.outerHtml() : page.body().html();
	}

	/**
	 * Says a page that goes to paper: well-formed XML before and after, without document
	 * type.
	 * @param xhtml XHTML of our own templates
	 * @return the same elements with other words
	 */
	public String sayPaper(String xhtml) {
		Document page = Jsoup.parse(xhtml, "", Parser.htmlParser().settings(ParseSettings.preserveCase));
		page.outputSettings(new OutputSettings().prettyPrint(false)
			.charset("UTF-8")
			.syntax(OutputSettings.Syntax.xml)
			.escapeMode(Entities.EscapeMode.xhtml));
		page.selectStream("html").forEach((root) -> root.attr("lang", this.book.language().code()));
		page.selectStream("head > title").forEach(this::title);
		page.selectStream("head > meta[content][name]")
			.filter((meta) -> !isOpaque(meta))
			.forEach((meta) -> meta.attr("content", words(meta.attr("content"))));
		block(page.body());
		Element root = page.selectFirst("html");
		return (root != null) ? root.outerHtml() : "";
	}

	/** Line by line; what somebody wrote into it is theirs. */
	private void example(Element area) {
		area.attr("placeholder", area.attr("placeholder").lines().map(this::words).collect(Collectors.joining("\n")));
	}

	private void title(Element title) {
		if (isOpaque(title)) {
			return;
		}
		String text = title.text();
		boolean ours = text.endsWith(TITLE_END);
		String said = words(ours ? text.substring(0, text.length() - TITLE_END.length()) : text);
		title.text(ours ? said + TITLE_END : said);
	}

	private void block(Element element) {
		attributes(element);
		List<Node> run = new ArrayList<>();
		for (Node child : List.copyOf(element.childNodes())) {
			if (child instanceof Element inner && !Run.isInline(inner)) {
				run(run);
				run.clear();
				if (isOpaque(inner)) {
					continue;
				}
				block(inner);
			}
			else if (child instanceof Element || child instanceof TextNode) {
				run.add(child);
			}
		}
		run(run);
	}

	private void run(List<Node> nodes) {
		List<Node> core = Run.core(nodes);
		nodes.stream()
			.filter((node) -> !core.contains(node) && node instanceof Element)
			.map(Element.class::cast)
			.filter((element) -> !isOpaque(element))
			.forEach(this::block);
		if (core.isEmpty()) {
			return;
		}
		if (core.size() == 1) {
			alone(core.get(0));
			return;
		}
		Optional<Run> whole = Run.of(core, HtmlSpeech::isOpaque);
		if (whole.isPresent()) {
			Run run = whole.get();
			Optional<String> said = this.book.language() == Language.ENGLISH ? Optional.empty()
					: this.book.find(run.key());
			if (said.isPresent() && run.replace(this.units.in(said.get()))) {
				run.elements().stream().filter((element) -> !isOpaque(element)).forEach(this::around);
				return;
			}
		}
		core.forEach(this::alone);
	}

	/** The words of a line are said already; those of a picture in it aren't. */
	private void around(Element element) {
		if (element.normalName().equals("svg")) {
			block(element);
		}
		else {
			attributes(element);
		}
	}

	private void alone(Node node) {
		if (node instanceof TextNode text) {
			say(text);
		}
		else if (node instanceof Element element && !isOpaque(element)) {
			block(element);
		}
	}

	private void say(TextNode node) {
		String text = node.getWholeText();
		if (!LETTERS.matcher(text).find()) {
			return;
		}
		String stripped = text.strip().replaceAll("\\s+", " ");
		String before = Character.isWhitespace(text.charAt(0)) ? " " : "";
		String after = Character.isWhitespace(text.charAt(text.length() - 1)) ? " " : "";
		Optional<String> said = find(stripped);
		if (said.isPresent()) {
			node.text(before + this.units.in(said.get()) + after);
			return;
		}
		this.unknown.accept(stripped);
		node.text(before + this.units.in(stripped) + after);
		mark(node);
	}

	/** Lets whoever hears the page hear English words as English (WCAG 2.2, 3.1.2). */
	private static void mark(TextNode node) {
		Element parent = node.parent();
		if (parent != null) {
			if (parent.childNodeSize() == 1) {
				parent.attr("lang", Language.ENGLISH.code());
			}
			else if (!isDrawn(parent)) {
				node.wrap("<span lang=\"en\"></span>");
			}
		}
	}

	private static boolean isDrawn(Element element) {
		return element.closest("svg") != null || element.normalName().equals("option");
	}

	private Optional<String> find(String text) {
		Optional<String> whole = this.book.find(text);
		if (whole.isPresent()) {
			return whole;
		}
		Matcher edges = EDGES.matcher(text);
		if (!edges.matches() || edges.group(2).length() == text.length()) {
			return Optional.empty();
		}
		Optional<String> toItsEnd = this.book.find(edges.group(2) + edges.group(3))
			.map((said) -> edges.group(1) + said);
		return toItsEnd.isPresent() ? toItsEnd
				: this.book.find(edges.group(2)).map((said) -> edges.group(1) + said + edges.group(3));
	}

	private String words(String text) {
		if (!LETTERS.matcher(text).find()) {
			return text;
		}
		Optional<String> said = find(text.strip().replaceAll("\\s+", " "));
		if (said.isEmpty()) {
			this.unknown.accept(text.strip());
		}
		return this.units.in(said.orElse(text));
	}

	private void attributes(Element element) {
		for (String name : SAID_ATTRIBUTES) {
			if (element.hasAttr(name) && !element.attr(name).isBlank()) {
				element.attr(name, words(element.attr(name)));
			}
		}
		// Sentences that a script shows; what has no space in it is a code.
		List<Attribute> kept = element.attributes().asList();
		kept.stream()
			.filter((one) -> one.getKey().startsWith("data-") && one.getValue().strip().contains(" "))
			.forEach((one) -> element.attr(one.getKey(), words(one.getValue())));
		String tag = element.normalName();
		boolean button = tag.equals("input") && List.of("submit", "reset", "button").contains(element.attr("type"));
		if (button && element.hasAttr("value")) {
			element.attr("value", words(element.attr("value")));
		}
		if ((tag.equals("option") || tag.equals("optgroup")) && element.hasAttr("label")) {
			element.attr("label", words(element.attr("label")));
		}
	}

	static boolean isOpaque(Element element) {
		return element.attr("translate").equals("no")
				|| (element.hasAttr("lang") && !element.attr("lang").equals(Language.ENGLISH.code()))
				|| switch (element.normalName()) {
					case "code", "kbd", "samp", "pre", "script", "style", "textarea" -> true;
					default -> false;
				};
	}

}
