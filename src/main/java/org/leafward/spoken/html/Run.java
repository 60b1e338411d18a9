package org.leafward.spoken.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;

/**
 * Text with links and emphases in it, as one sentence. In its key the elements are
 * numbered in the order in which they begin: {@code Read <1>the label</1> first.}; one
 * without text is {@code <1/>}. The words of another language may put them in another
 * order.
 */
final class Run {

	/** Longer than any sentence in a file. */
	private static final int LONGEST = 1_500;

	private static final Set<String> INLINE = Set.of("a", "abbr", "b", "bdi", "bdo", "br", "cite", "code", "data",
			"dfn", "em", "i", "img", "input", "kbd", "mark", "q", "s", "samp", "small", "span", "strong", "sub", "sup",
			"svg", "time", "tspan", "u", "var", "wbr");

	private static final Set<String> DRAWN = Set.of("img", "input", "svg", "br", "wbr");

	private static final Pattern MARK = Pattern.compile("<(/?)(\\d{1,2})(/?)>");

	private final List<Node> nodes;

	private final List<Element> elements = new ArrayList<>();

	private final StringBuilder key = new StringBuilder();

	private final Predicate<Element> opaque;

	private Run(List<Node> nodes, Predicate<Element> opaque) {
		this.nodes = nodes;
		this.opaque = opaque;
	}

	/**
	 * Whether an element stands in a line of text.
	 * @param element the element
	 * @return false for one that makes a block, or holds one
	 */
	static boolean isInline(Element element) {
		return INLINE.contains(element.normalName())
				&& (element.normalName().equals("svg") || element.children().stream().allMatch(Run::isInline));
	}

	/**
	 * Nodes without what says nothing at both ends.
	 * @param nodes of one line
	 * @return from the first to the last with text
	 */
	static List<Node> core(List<Node> nodes) {
		int from = 0;
		int to = nodes.size();
		while (from < to && saysNothing(nodes.get(from))) {
			from++;
		}
		while (to > from && saysNothing(nodes.get(to - 1))) {
			to--;
		}
		return List.copyOf(nodes.subList(from, to));
	}

	private static boolean saysNothing(Node node) {
		if (node instanceof TextNode text) {
			return text.isBlank();
		}
		return !(node instanceof Element element) || isDrawn(element) || element.text().isBlank();
	}

	private static boolean isDrawn(Element element) {
		return DRAWN.contains(element.normalName());
	}

	/**
	 * Reads a sentence.
	 * @param nodes of one line
	 * @param opaque what is no word of ours
	 * @return nothing when it has no text of ours, or is longer than any that a book has
	 */
	static Optional<Run> of(List<Node> nodes, Predicate<Element> opaque) {
		Run run = new Run(nodes, opaque);
		nodes.forEach(run::add);
		return (run.key.length() <= LONGEST) ? Optional.of(run) : Optional.empty();
	}

	private void add(Node node) {
		if (node instanceof TextNode text) {
			this.key.append(text.getWholeText());
		}
		else if (node instanceof Element element) {
			this.elements.add(element);
			int number = this.elements.size();
			if (isDrawn(element) || element.text().isBlank()) {
				this.key.append('<').append(number).append("/>");
				return;
			}
			this.key.append('<').append(number).append('>');
			if (this.opaque.test(element)) {
				this.key.append(element.text());
			}
			else {
				element.childNodes().forEach(this::add);
			}
			this.key.append("</").append(number).append('>');
		}
	}

	/**
	 * The sentence with its elements numbered.
	 * @return with single spaces
	 */
	String key() {
		return this.key.toString().strip().replaceAll("\\s+", " ");
	}

	/**
	 * The elements in it.
	 * @return in the order of their numbers
	 */
	List<Element> elements() {
		return List.copyOf(this.elements);
	}

	/**
	 * Puts other words in its place.
	 * @param said with the same elements, each once
	 * @return false when it hasn't; then nothing was changed
	 */
	boolean replace(String said) {
		List<Node> made = new ArrayList<>();
		List<Element> open = new ArrayList<>();
		List<List<Node>> inside = new ArrayList<>();
		this.elements.forEach((element) -> inside.add(new ArrayList<>()));
		boolean[] seen = new boolean[this.elements.size()];
		Matcher marks = MARK.matcher(said);
		int end = 0;
		while (marks.find()) {
			put(said.substring(end, marks.start()), open, inside, made);
			end = marks.end();
			int number = Integer.parseInt(marks.group(2)) - 1;
			if (number < 0 || number >= seen.length) {
				return false;
			}
			Element element = this.elements.get(number);
			if (marks.group(1).isEmpty()) {
				if (seen[number]) {
					return false;
				}
				seen[number] = true;
				into(open, inside, made).add(element);
				if (marks.group(3).isEmpty()) {
					open.add(element);
				}
			}
			else if (open.isEmpty() || open.remove(open.size() - 1) != element) {
				return false;
			}
		}
		put(said.substring(end), open, inside, made);
		for (boolean one : seen) {
			if (!one) {
				return false;
			}
		}
		return open.isEmpty() && swap(made, inside);
	}

	private List<Node> into(List<Element> open, List<List<Node>> inside, List<Node> made) {
		return open.isEmpty() ? made : inside.get(this.elements.indexOf(open.get(open.size() - 1)));
	}

	private void put(String text, List<Element> open, List<List<Node>> inside, List<Node> made) {
		if (!text.isEmpty()) {
			into(open, inside, made).add(new TextNode(text));
		}
	}

	private boolean swap(List<Node> made, List<List<Node>> inside) {
		TextNode place = new TextNode(Character.isWhitespace(this.key.charAt(0)) ? " " : "");
		if (Character.isWhitespace(this.key.charAt(this.key.length() - 1))) {
			made.add(new TextNode(" "));
		}
		this.nodes.get(0).before(place);
		this.nodes.forEach(Node::remove);
		for (int i = 0; i < this.elements.size(); i++) {
			Element element = this.elements.get(i);
			if (!isDrawn(element) && !this.opaque.test(element) && !element.text().isBlank()) {
				element.empty();
				inside.get(i).forEach(element::appendChild);
			}
		}
		Node after = place;
		for (Node node : made) {
			after.after(node);
			after = node;
		}
		return true;
	}

}
