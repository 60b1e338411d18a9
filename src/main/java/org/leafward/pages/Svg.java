package org.leafward.pages;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;

/**
 * Writes a picture as inline SVG. Every text and attribute is escaped; attributes that
 * could carry script or style are refused, so that the result may stand in a page as it
 * is. Not safe for use by threads.
 */
public final class Svg {

	private static final Pattern NAME = Pattern.compile("[a-zA-Z][a-zA-Z0-9-]*");

	private final StringBuilder out = new StringBuilder();

	private final Deque<String> open = new ArrayDeque<>();

	/**
	 * Begins an element.
	 * @param name element name
	 * @param attributes name, value, name, value …; a null value leaves the attribute
	 * out, numbers are written with two decimals at most
	 * @return this
	 * @throws IllegalArgumentException when a name is not one, an attribute could carry
	 * script or style, or {@code href} leads out of the site
	 */
	public Svg open(String name, @Nullable Object... attributes) {
		tag(name, attributes);
		this.out.append('>');
		this.open.push(name);
		return this;
	}

	/**
	 * Ends the element that was begun last.
	 * @return this
	 * @throws IllegalStateException when none is open
	 */
	public Svg close() {
		if (this.open.isEmpty()) {
			throw new IllegalStateException("no element is open");
		}
		this.out.append("</").append(this.open.pop()).append('>');
		return this;
	}

	/**
	 * Adds an element without content.
	 * @param name element name
	 * @param attributes as for {@link #open}
	 * @return this
	 */
	public Svg empty(String name, @Nullable Object... attributes) {
		tag(name, attributes);
		this.out.append("/>");
		return this;
	}

	/**
	 * Adds an element that holds text.
	 * @param name element name
	 * @param text its text
	 * @param attributes as for {@link #open}
	 * @return this
	 */
	public Svg element(String name, String text, @Nullable Object... attributes) {
		open(name, attributes);
		escape(text);
		return close();
	}

	/**
	 * The picture.
	 * @return markup
	 * @throws IllegalStateException when an element is still open
	 */
	@Override
	public String toString() {
		if (!this.open.isEmpty()) {
			throw new IllegalStateException("element %s is still open".formatted(this.open.peek()));
		}
		return this.out.toString();
	}

	private void tag(String name, @Nullable Object... attributes) {
		this.out.append('<').append(name(name));
		if (attributes.length % 2 != 0) {
			throw new IllegalArgumentException("an attribute of %s has no value".formatted(name));
		}
		for (int i = 0; i < attributes.length; i += 2) {
			Object value = attributes[i + 1];
			if (value != null) {
				attribute(String.valueOf(attributes[i]), value);
			}
		}
	}

	private void attribute(String name, Object value) {
		String lower = name(name).toLowerCase(Locale.ROOT);
		if (lower.equals("style") || lower.startsWith("on")) {
			throw new IllegalArgumentException("attribute %s is not allowed".formatted(name));
		}
		String text = (value instanceof Number number) ? number(number.doubleValue()) : value.toString();
		if (lower.equals("href") && !(text.startsWith("/") && !text.startsWith("//") && text.indexOf('\\') < 0)) {
			throw new IllegalArgumentException("address '%s' leads out of the site".formatted(text));
		}
		this.out.append(' ').append(name).append("=\"");
		escape(text);
		this.out.append('"');
	}

	/**
	 * A number as SVG wants it.
	 * @param value any finite number
	 * @return at most two decimals, a point, no exponent
	 */
	static String number(double value) {
		BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
		return (rounded.signum() == 0) ? "0" : rounded.stripTrailingZeros().toPlainString();
	}

	private static String name(String name) {
		if (!NAME.matcher(name).matches()) {
			throw new IllegalArgumentException("'%s' is not a name".formatted(name));
		}
		return name;
	}

	private void escape(String text) {
		text.codePoints().forEach((point) -> {
			switch (point) {
				case '&' -> this.out.append("&amp;");
				case '<' -> this.out.append("&lt;");
				case '>' -> this.out.append("&gt;");
				case '"' -> this.out.append("&quot;");
				case '\'' -> this.out.append("&#39;");
				default -> {
					// Control characters have no place in XML.
					if (point >= ' ' || point == '\t' || point == '\n') {
						this.out.appendCodePoint(point);
					}
				}
			}
		});
	}

}
