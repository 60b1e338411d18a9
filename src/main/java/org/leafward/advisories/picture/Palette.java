package org.leafward.advisories.picture;

import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Component;

/**
 * The light colours of the style sheet, as a picture that is passed on sees no other
 * file.
 */
@Component
public class Palette {

	private static final String SHEET = "static/css/leafward.css";

	private static final Pattern COLOUR = Pattern.compile("--([a-z]+): (#[0-9a-f]{6});");

	private final Map<String, String> colours = new HashMap<>();

	/** Reads the style sheet. */
	public Palette() {
		try (InputStream stream = new ClassPathResource(SHEET).getInputStream()) {
			String sheet = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
			Matcher found = COLOUR.matcher(sheet.substring(0, sheet.indexOf('}')));
			while (found.find()) {
				this.colours.put(found.group(1), found.group(2));
			}
		}
		catch (IOException ex) {
			throw new UncheckedIOException(SHEET, ex);
		}
	}

	/**
	 * A colour.
	 * @param name as in the style sheet, without its dashes
	 * @return for example {@code #1d2321}
	 */
	public String of(String name) {
		String colour = this.colours.get(name);
		if (colour == null) {
			throw new IllegalArgumentException("%s has no colour '%s'".formatted(SHEET, name));
		}
		return colour;
	}

	/**
	 * Something between two colours.
	 * @param from name of the one
	 * @param to name of the other
	 * @param share how much of the other, 0 to 1
	 * @return for example {@code #8fa3b1}
	 */
	public String between(String from, String to, double share) {
		Color one = Color.decode(of(from));
		Color other = Color.decode(of(to));
		return "#%02x%02x%02x".formatted(mix(one.getRed(), other.getRed(), share),
				mix(one.getGreen(), other.getGreen(), share), mix(one.getBlue(), other.getBlue(), share));
	}

	private static int mix(int from, int to, double share) {
		return (int) Math.round(from + (to - from) * share);
	}

}
