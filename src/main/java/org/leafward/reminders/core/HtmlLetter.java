package org.leafward.reminders.core;

import java.util.List;
import org.leafward.reminders.core.Letter.Block;
import org.leafward.reminders.core.Letter.Entries;
import org.leafward.reminders.core.Letter.Line;
import org.leafward.reminders.core.Letter.Part;
import org.leafward.reminders.core.Letter.Piece;
import org.leafward.reminders.core.Letter.Sentence;

/**
 * The HTML part of a mail: one column, nothing to load. Colours stand beside each element
 * since many programs drop a style sheet; those that keep it show the dark ones at night.
 */
final class HtmlLetter {

	private static final String HEAD = """
			<meta charset="utf-8">
			<meta name="viewport" content="width=device-width, initial-scale=1">
			<meta name="color-scheme" content="light dark">
			<meta name="supported-color-schemes" content="light dark">
			<style>
			:root { color-scheme: light dark; }
			@media (prefers-color-scheme: dark) {
			.paper { background-color: #151a18 !important; color: #e8ebe4 !important; }
			.link { color: #74c0d6 !important; }
			.care { color: #f09c5e !important; border-color: #f09c5e !important; }
			.quiet { color: #aeb7b0 !important; border-color: #3d4641 !important; }
			}
			</style>
			""";

	private static final String BODY = "<body class=\"paper\" style=\"margin:0;padding:0;background-color:#fbfbf7;color:#1d2321\">\n"
			+ "<div class=\"paper\" style=\"max-width:36em;margin:0 auto;padding:16px;background-color:#fbfbf7;color:#1d2321;"
			+ "font-family:Georgia,serif;font-size:17px;line-height:1.5;overflow-wrap:anywhere;word-break:break-word\">\n";

	private static final String TITLE = "<h1 style=\"margin:0 0 16px;font-size:22px;line-height:1.3\">";

	private static final String PART = "<h2 style=\"margin:28px 0 8px;font-size:20px;line-height:1.3\">";

	private static final String TASK = " style=\"margin:24px 0 8px;font-size:18px;line-height:1.3\">";

	private static final String PARAGRAPH = "<p style=\"margin:0 0 6px\">";

	private static final String CAUTION = "<p class=\"care\" style=\"margin:0 0 6px;padding:0 0 0 10px;"
			+ "border-left:4px solid #a3460f;color:#a3460f\">";

	private static final String LIST = "<ul style=\"margin:0 0 8px;padding:0 0 0 20px\">\n";

	private static final String ENTRY = "<li style=\"margin:0 0 8px\">";

	private static final String LINKS = "<ul style=\"margin:0;padding:0;list-style:none\">\n";

	/** High enough for a finger. */
	private static final String LINK = "<li style=\"display:inline-block;margin:0 20px 0 0;padding:8px 0\">";

	private static final String FOOT = "<div class=\"quiet\" style=\"margin:32px 0 0;padding:12px 0 0;"
			+ "border-top:1px solid #c6ccc4;color:#525b56;font-size:15px\">\n";

	private final StringBuilder html = new StringBuilder(16_384);

	/** Of the headings of tasks: one below the part that they are in. */
	private String task = "h2";

	private HtmlLetter() {
	}

	static String of(Letter letter) {
		HtmlLetter html = new HtmlLetter();
		html.add("<!DOCTYPE html>\n<html lang=\"").text(letter.language()).add("\" dir=\"ltr\">\n<head>\n<title>");
		html.text(letter.title()).add("</title>\n").add(HEAD).add("</head>\n").add(BODY);
		html.add(TITLE).text(letter.title()).add("</h1>\n");
		letter.body().forEach(html::block);
		html.add(FOOT);
		letter.foot().forEach((line) -> html.add(PARAGRAPH).sentence(line).add("</p>\n"));
		return html.add("</div>\n</div>\n</body>\n</html>\n").html.toString();
	}

	private void block(Block block) {
		if (block instanceof Part part) {
			add(PART).text(part.heading()).add("</h2>\n");
			this.task = "h3";
		}
		else if (block instanceof Piece piece) {
			piece(piece);
		}
		else if (block instanceof Entries entries) {
			entries(LIST, ENTRY, entries.entries());
		}
		else if (block instanceof Sentence sentence) {
			add(PARAGRAPH).sentence(sentence).add("</p>\n");
		}
	}

	private void piece(Piece piece) {
		add("<").add(this.task).add(TASK).text(piece.heading()).add("</").add(this.task).add(">\n");
		for (Line line : piece.lines()) {
			add(line.caution() ? CAUTION : PARAGRAPH).add("<strong>").text(line.label()).add(":</strong> ");
			text(line.value()).add("</p>\n");
		}
		if (!piece.links().isEmpty()) {
			entries(LINKS, LINK, piece.links());
		}
	}

	private void entries(String list, String each, List<Sentence> entries) {
		add(list);
		entries.forEach((entry) -> add(each).sentence(entry).add("</li>\n"));
		add("</ul>\n");
	}

	private HtmlLetter sentence(Sentence sentence) {
		if (sentence.address() == null) {
			return text(sentence.words());
		}
		add("<a class=\"link\" style=\"color:#14566a\" href=\"").text(sentence.address()).add("\">");
		return text(sentence.words()).add("</a>");
	}

	private HtmlLetter add(String markup) {
		this.html.append(markup);
		return this;
	}

	private HtmlLetter text(String words) {
		int done = 0;
		for (int at = 0; at < words.length(); at++) {
			String escape = switch (words.charAt(at)) {
				case '&' -> "&amp;";
				case '<' -> "&lt;";
				case '>' -> "&gt;";
				case '"' -> "&quot;";
				case '\'' -> "&#39;";
				default -> "";
			};
			if (!escape.isEmpty()) {
				this.html.append(words, done, at).append(escape);
				done = at + 1;
			}
		}
		this.html.append(words, done, words.length());
		return this;
	}

}
